import { daysBeforeText } from '../../calendar/offset.ts';
import { durationText, minutes } from '../../measure/duration.ts';
import type { Crew } from '../../menu/crew.ts';
import type { PlanFinding } from '../event-plan.ts';
import type { Move } from './work-day-moves.ts';

/** A day's work as it is held against the crew's time. */
export interface DayLoad {
  readonly daysBefore: number;
  /** Hands-on minutes of all tasks in the kitchen. */
  readonly handsOn: number;
  /** From the first task to the end of the last. */
  readonly span: number;
}

/** Where a day does not fit: more hands-on time than the crew has, or work that takes longer than its shift. */
export interface Overfull {
  readonly byHands: number;
  readonly bySpan: number;
}

/** By how many minutes a day is too full; undefined where it fits, or where nobody has said who cooks. */
export function overfull({ handsOn, span }: DayLoad, crew: Crew | undefined): Overfull | undefined {
  if (!crew) return undefined;
  const byHands = Math.max(0, handsOn - crew.people * crew.each);
  const bySpan = Math.max(0, span - crew.each);
  return byHands === 0 && bySpan === 0 ? undefined : { byHands, bySpan };
}

/** `4 × 8 h = 32 h`, what a crew has in a day. */
export function crewText({ people, each }: Crew): string {
  return `${people} × ${text(each)} = ${text(people * each)}`;
}

/** The most moves that a finding names. */
const NAMED = 5;

/**
 * What to say of a day that is too full, and what of it could be done the day before: of the moves only those that the
 * day before has hands for, `room` being its minutes left.
 */
export function overfullFinding(
  day: DayLoad,
  crew: Crew,
  moves: readonly Move[],
  room: number,
): PlanFinding | undefined {
  const over = overfull(day, crew);
  if (!over) return undefined;
  const when = daysBeforeText(day.daysBefore);
  const hands = `${text(day.handsOn)} hands-on, but the crew has ${crewText(crew)}`;
  const span = `it takes ${text(day.span)} from the first task to the last, but the shift is ${text(crew.each)}`;
  let left = room;
  const named: string[] = [];
  for (const { recipe, handsOnMinutes } of moves) {
    if (handsOnMinutes > left || named.length === NAMED) continue;
    left -= handsOnMinutes;
    named.push(`${recipe.name} (${text(handsOnMinutes)})`);
  }
  const before = daysBeforeText(day.daysBefore + 1);
  return {
    about: when,
    what: `the work does not fit: ${over.byHands > 0 ? hands : span}`,
    wayOut:
      named.length > 0
        ? `${named.join(', ')} would keep if done ${before}; or bring in more people`
        : `none of it keeps if done ${before}, going by the recipes; bring in more people or start earlier`,
  };
}

function text(length: number): string {
  return durationText(minutes(length));
}
