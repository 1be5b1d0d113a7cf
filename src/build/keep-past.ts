import type { Site } from '../views/site.ts';
import type { LastOutput } from './build-record.ts';
import { keptOwners } from './kept-owners.ts';
import type { Output } from './output.ts';

/** Takes over what stays of the last output though it is not made now: the files of events whose day has passed. */
export function keepPast(stays: Site['stays'], last: LastOutput, output: Output): void {
  if (!stays) return;
  for (const [file, known] of Object.entries(last.record.files)) {
    const ours = stays(file);
    if (!ours) continue;
    const of = known.of ?? keptOwners(last.dir, file);
    if (of === undefined || of.some((digest) => ours.has(digest))) output.keep(file, of);
  }
}
