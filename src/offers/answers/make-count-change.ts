import type { Day } from '../../engine/calendar/day.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { CountChange } from '../../schema/count-change.ts';
import { digestOfRecord } from '../digest.ts';

/** Who changes the counts of which event, and when. */
export interface CountChangeBy {
  readonly event: string;
  /** The digest of the offer accepted. */
  readonly offer: string;
  readonly made: Day;
  readonly name: string;
  readonly note: string;
  /** Needs on record that the client was asked about and takes off; none where left out. */
  readonly withoutNeeds?: readonly string[];
}

/** The record of new counts with its own digest; of the choice only people, needs and mains go in. */
export function makeCountChange(
  choice: Pick<Choice, 'guests' | 'needs' | 'mains'>,
  { withoutNeeds = [], ...by }: CountChangeBy,
): CountChange {
  const record = {
    version: 1 as const,
    kind: 'count change' as const,
    ...by,
    guests: choice.guests,
    needs: choice.needs,
    ...(withoutNeeds.length > 0 ? { withoutNeeds: [...withoutNeeds] } : {}),
    mains: choice.mains,
  };
  return { ...record, digest: digestOfRecord(record) };
}
