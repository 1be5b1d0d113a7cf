import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Whose an event's file is in an output of which the record does not say it, as an earlier Salver left it: the digest of
 * the accepted offer, from the plan that lies beside the file. Undefined where that cannot be told either.
 */
export function keptOwners(out: string, file: string): string[] | undefined {
  const folder = /^private\/kitchen\/events\/[^/]+\//.exec(file)?.[0];
  if (folder === undefined) return undefined;
  try {
    const plan = JSON.parse(readFileSync(join(out, folder, 'prep-plan.json'), 'utf8')) as {
      event: { offer: { digest: unknown } };
    };
    const { digest } = plan.event.offer;
    return typeof digest === 'string' ? [digest] : undefined;
  } catch {
    return undefined;
  }
}
