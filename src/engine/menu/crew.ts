import type { Minutes } from '../measure/duration.ts';

/** Who cooks on a day of preparation, or on the day of the event that states a crew of its own. */
export interface Crew {
  readonly people: number;
  /** What each of them works. */
  readonly each: Minutes;
  /** HH:MM; undefined where not stated. */
  readonly from: string | undefined;
  /** What one of them is paid, money text per hour; left out where not stated. */
  readonly pay?: string;
  /** How many of them have a skill, by its name; left out where none is stated. Who has two is counted in each. */
  readonly skills?: ReadonlyMap<string, number>;
}
