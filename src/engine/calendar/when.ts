import { type Parsed, parsed } from '../parsed.ts';
import { daysBeforeText, parseDaysBefore } from './offset.ts';

/** When a task is done: whole days before the event's day, and whether it waits for the service itself. */
export interface When {
  readonly daysBefore: number;
  /** True for `at serving`: on the day, at the place, as guests are served. */
  readonly atServing: boolean;
}

/** Reads `2 days before`, `the day before`, `on the day` or `at serving`; fails as `parseDaysBefore` does. */
export function parseWhen(text: string): Parsed<When> {
  const days = parseDaysBefore(text);
  if (!days.ok) return days;
  return parsed({ daysBefore: days.value, atServing: text.trim().toLowerCase() === 'at serving' });
}

/** The words for it; `parseWhen` reads them back. */
export function whenText(when: When): string {
  return when.atServing ? 'at serving' : daysBeforeText(when.daysBefore);
}
