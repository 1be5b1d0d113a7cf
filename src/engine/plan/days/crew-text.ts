import { durationText, minutes } from '../../measure/duration.ts';
import type { Crew } from '../../menu/crew.ts';

/** `4 × 8 h = 32 h`, what a crew has in a day. */
export function crewText({ people, each }: Crew): string {
  return `${people} × ${durationText(minutes(each))} = ${durationText(minutes(people * each))}`;
}
