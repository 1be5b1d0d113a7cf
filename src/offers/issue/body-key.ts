import { createHash } from 'node:crypto';

/**
 * The name under which a recipe's notes or a package's story is compiled: its digest, so that a frozen offer's
 * story and today's of the same package are two bodies, and equal texts one. Empty for an empty body.
 */
export function bodyKey(text: string): string {
  const trimmed = text.trim();
  return trimmed === '' ? '' : createHash('sha256').update(trimmed, 'utf8').digest('hex').slice(0, 24);
}
