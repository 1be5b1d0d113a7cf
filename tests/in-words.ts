import type { PlanFinding } from '../src/engine/plan/event-plan.ts';
import type { Said } from '../src/engine/text/statement.ts';
import { statementsIn } from '../src/exports/words/statement-text.ts';

/** A statement in American English, as the pages of an American kitchen say it. */
export const inWords = statementsIn('en-US');

/** The same for a chain of them; none for none. */
export function allInWords(said: readonly Said[] | undefined): string[] {
  return (said ?? []).map(inWords);
}

/** Findings in words. */
export function foundInWords(findings: readonly PlanFinding[]) {
  return findings.map((each) => ({ ...each, what: inWords(each.what), wayOut: inWords(each.wayOut) }));
}
