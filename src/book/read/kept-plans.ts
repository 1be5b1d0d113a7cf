import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { ContentFolder } from '../files/list-content.ts';
import { unreadable } from '../files/walk-folder.ts';
import { finding } from '../findings/finding.ts';
import type { Ledger } from '../ledger.ts';

/** A plan that an event was cooked from, as it lies among the event's facts. */
export interface KeptPlanFile {
  readonly file: string;
  /** Absolute. */
  readonly path: string;
}

/** The name of a kept plan's file: its number, and the beginning of the SHA-256 of its bytes. */
export function keptPlanName(number: number, bytes: string): string {
  return `plan-${String(number).padStart(3, '0')}-${keptPlanDigest(bytes)}.json`;
}

/** The digest by which a kept plan is known. */
export function keptPlanDigest(bytes: string | Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex').slice(0, 12);
}

/**
 * The kept plans by event, in the order written. They are large and seldom needed, so that here each is only held to
 * the digest in its name; one that was altered is an error and not used.
 */
export function readKeptPlans(ledger: Ledger, { files }: ContentFolder): Map<string, KeptPlanFile[]> {
  const plans = new Map<string, KeptPlanFile[]>();
  for (const { id, file, path, collection } of files) {
    if (collection !== 'plans') continue;
    try {
      const named = /-([0-9a-f]{12})\.json$/.exec(file)?.[1];
      if (named === keptPlanDigest(readFileSync(path))) {
        plans.set(id, [...(plans.get(id) ?? []), { file, path }]);
        continue;
      }
      const what = 'the saved plan is not as Salver wrote it';
      const wayOut = 'restore the file from your history or backup';
      ledger.findings.push(finding('record-form', { file, line: 1, column: 1 }, what, wayOut));
    } catch (error) {
      ledger.findings.push(unreadable(file, error));
    }
  }
  return plans;
}
