import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AcceptedFact } from '../../src/schema/event-fact.ts';

/** The fact that an acceptance of the second kitchen's evening was recorded as. */
export function acceptedFactOf(dir: string): AcceptedFact {
  return JSON.parse(readFileSync(join(dir, 'events/lifeboat-evening/001-accepted.json'), 'utf8'));
}
