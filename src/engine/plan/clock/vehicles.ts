import type { Kitchen } from '../../kitchen/kitchen.ts';
import type { EventInput } from '../event-input.ts';
import { DAY_END } from './crew-hours.ts';
import type { EventClock } from './event-clock.ts';

/** A stretch in which an event has one vehicle, in minutes from the midnight of its date. */
export interface Trip {
  readonly event: string;
  /** The kind it takes, by its id; undefined where any will do. */
  readonly kind: string | undefined;
  readonly from: number;
  readonly until: number;
}

/** When more vehicles are asked for than there are: from when to when, how many at the most, and for which events. */
export interface VehicleLack {
  /** The kind of which there are too few; undefined for vehicles of all kinds. */
  readonly name: string | undefined;
  readonly from: number;
  readonly until: number;
  readonly asked: number;
  readonly has: number;
  readonly events: readonly string[];
}

/** What of an event its vehicle is counted by. */
export interface Driven {
  readonly plan: { readonly input: Pick<EventInput, 'id' | 'away' | 'vehicle'> };
  readonly clock: EventClock;
}

/** The vehicles that there are, by kind. */
export type Fleet = NonNullable<Kitchen['vehicles']>;

/** How many vehicles there are, of all kinds. */
export function vehiclesOf(fleet: Fleet): number {
  return [...fleet.values()].reduce((sum, { count }) => sum + count, 0);
}

/**
 * When an event has a vehicle: from loading until it is unloaded back at the kitchen, or for the rest of the date where
 * it is not stated how long is served. None where the way there is stated to take no time.
 */
export function tripOf({ plan: { input }, clock }: Driven): Trip[] {
  if (input.away?.travel === 0) return [];
  const { id: event, vehicle } = input;
  return [{ event, kind: vehicle?.id, from: clock.load, until: clock.unloaded ?? DAY_END }];
}

/**
 * The trips of a date that share vehicles and can: none where there is one for each event, and none where there are too
 * few whatever is loaded when, which is told.
 */
export function sharedTrips(
  served: readonly Driven[],
  { vehicles: fleet }: Pick<Kitchen, 'vehicles'>,
): Trip[] {
  const trips = served.flatMap(tripOf);
  const shares =
    fleet !== undefined &&
    (trips.length > vehiclesOf(fleet) ||
      [...fleet.values()].some(({ id, count }) => trips.filter(({ kind }) => kind === id).length > count));
  return shares && vehicleLacks(trips, fleet).length === 0 ? trips : [];
}

/**
 * The same where it does not wait at the place: it is unloaded there, in the time that loading takes, drives home, and
 * comes again to clear. One trip where it would hardly be back before it has to leave, or a time is not stated.
 */
export function tripsBetween({ plan: { input }, clock }: Driven): Trip[] {
  const [travel, unloading] = [input.away?.travel, clock.leave - clock.load];
  const back = clock.leave + 2 * (travel ?? 0) + unloading;
  if (!travel || clock.cleared === undefined || clock.unloaded === undefined)
    return tripOf({ plan: { input }, clock });
  const again = clock.cleared - travel;
  if (again <= back) return tripOf({ plan: { input }, clock });
  const trip = { event: input.id, kind: input.vehicle?.id };
  return [
    { ...trip, from: clock.load, until: back },
    { ...trip, from: again, until: clock.unloaded },
  ];
}

/** Where trips ask for more vehicles than there are, of any one kind or of all; stretches that touch are one. */
export function vehicleLacks(trips: readonly Trip[], fleet: Fleet): VehicleLack[] {
  return [
    ...lacksOf(trips, vehiclesOf(fleet), undefined),
    ...[...fleet.values()].flatMap(({ id, name, count }) =>
      lacksOf(
        trips.filter(({ kind }) => kind === id),
        count,
        name,
      ),
    ),
  ];
}

function lacksOf(trips: readonly Trip[], has: number, name: string | undefined): VehicleLack[] {
  const times = [...new Set(trips.flatMap(({ from, until }) => [from, until]))].sort((a, b) => a - b);
  const found: VehicleLack[] = [];
  for (const [index, from] of times.entries()) {
    const until = times[index + 1];
    const out = trips.filter((trip) => trip.from <= from && trip.until > from);
    if (until === undefined || out.length <= has) continue;
    const events = out.map(({ event }) => event);
    const last = found.at(-1);
    if (last?.until === from) {
      const asked = Math.max(last.asked, out.length);
      found[found.length - 1] = { ...last, until, asked, events: [...new Set([...last.events, ...events])] };
    } else found.push({ name, from, until, asked: out.length, has, events });
  }
  return found;
}
