import { type Choice, checkChoice } from '../../engine/quote/choice.ts';
import { type ChoiceProblem, problemAt } from '../../engine/quote/choice-problem.ts';
import { atTable, type Guests } from '../../engine/quote/counts.ts';
import type { Terms } from '../../engine/quote/terms.ts';

/** What of an offer holds a client's answer. */
export interface AnsweredOffer {
  readonly terms: Terms;
  /** People by group as the kitchen proposed them. */
  readonly proposed: Guests;
}

/** So many times the guests proposed may be named without asking; a bound of our own, no practice of the trade. */
const MOST_TIMES = 5;
/** A small party may grow to this in any case. */
const ALWAYS_MOST = 200;

/**
 * Everything that keeps a client's answer from being taken: more than the offer lets a client set, or beyond its
 * bounds. The crew's meals are the kitchen's own; menu, dishes, add-ons and hours are held to the terms; guests at the
 * table to five times those proposed (200 at least), vendor meals to the guests at the table. `recorded` are the
 * people on record of an accepted event, who may stay whatever they are.
 */
export function answerProblems(
  { terms, proposed }: AnsweredOffer,
  choice: Choice,
  recorded: Guests = proposed,
): ChoiceProblem[] {
  const { guests } = choice;
  const table = atTable(guests);
  const most = Math.max(atTable(proposed) * MOST_TIMES, ALWAYS_MOST, atTable(recorded));
  const mostVendors = Math.max(table, proposed.vendors, recorded.vendors);
  const problems: ChoiceProblem[] = [];
  if (guests.staff !== proposed.staff && guests.staff !== recorded.staff)
    problems.push(
      problemAt('guests.staff', 'problem.crew', { recorded: recorded.staff, given: guests.staff }),
    );
  if (table > most) problems.push(problemAt('guests.adults', 'problem.asking', { most, guests: table }));
  if (guests.vendors > mostVendors)
    problems.push(problemAt('guests.vendors', 'problem.vendors', { vendors: guests.vendors, guests: table }));
  return [...checkChoice(terms, choice), ...problems];
}

/** A need on record that an answer would leave nobody with, and the guests who have it. */
export interface DroppedNeed {
  readonly name: string;
  readonly guests: number;
}

/** The needs on record that an answer takes off. Upper case and spaces make no other need. */
export function needsDropped(recorded: Choice['needs'], answered: Choice['needs']): DroppedNeed[] {
  const left = new Set(
    Object.entries(answered)
      .filter(([, guests]) => guests > 0)
      .map(([name]) => plain(name)),
  );
  return Object.entries(recorded)
    .filter(([name, guests]) => guests > 0 && !left.has(plain(name)))
    .map(([name, guests]) => ({ name, guests }));
}

function plain(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}
