import { type Parsed, parsed } from '../parsed.ts';
import { daysBeforeText, parseDaysBefore } from './offset.ts';

/** When a task is done: whole days before the event's day, and whether it waits for the service itself. */
export interface When {
  readonly daysBefore: number;
  /** True for `at serving`: on the day, at the place, as guests are served. */
  readonly atServing: boolean;
  /** True for `on the day only`: however full that day is, it is done on no other. */
  readonly only?: true;
  /** True where it is done a day before the one its recipe says, since that one is full. */
  readonly early?: true;
}

const ONLY = / +only$/i;

/**
 * Reads `2 days before`, `the day before`, `on the day` or `at serving`, each with `only` after it where it may be done on
 * no other day; fails as `parseDaysBefore` does.
 */
export function parseWhen(text: string): Parsed<When> {
  const words = text.trim();
  const day = words.replace(ONLY, '');
  const days = parseDaysBefore(day);
  if (!days.ok) return days;
  const atServing = day.toLowerCase() === 'at serving';
  return parsed({ daysBefore: days.value, atServing, ...(day !== words && { only: true as const }) });
}

/** The words for it; `parseWhen` reads them back. */
export function whenText({ daysBefore, atServing, only }: When): string {
  return `${atServing ? 'at serving' : daysBeforeText(daysBefore)}${only ? ' only' : ''}`;
}
