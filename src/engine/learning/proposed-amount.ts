import type { EatenEstimate } from './eaten.ts';

/** So many events count as much as the figure that stands: with as many again, what was eaten has half the say. */
export const HALF_WAY_EVENTS = 5;

/** A proposed figure for each guest, and how much of the way to what was eaten it goes. */
export interface ProposedAmount {
  readonly perGuest: number;
  /** From 0 (stays as it is) to 1 (what was eaten). */
  readonly weight: number;
}

/**
 * The figure for each guest that events so far speak for: the present one moved towards the mean eaten, by events ÷
 * (events + `halfWay`), so that few events change little. Undefined where no event says how much would have been
 * eaten. Where every event ran out, what was eaten there is the least; only upwards is it moved then.
 */
export function proposedAmount(
  present: number,
  { events, mean, atLeast }: EatenEstimate,
  halfWay: number = HALF_WAY_EVENTS,
): ProposedAmount | undefined {
  const towards = mean ?? (atLeast !== undefined && atLeast > present ? atLeast : undefined);
  if (towards === undefined || events === 0) return undefined;
  const weight = events / (events + halfWay);
  return { perGuest: present + weight * (towards - present), weight };
}
