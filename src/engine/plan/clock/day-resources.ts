import type { Resource } from '../../schedule/problem.ts';
import { type CrewSpan, DAY_END } from './crew-hours.ts';
import type { ClockKitchen } from './kitchen-steps.ts';

/** What the work of a date shares, by the names its tasks use. */
export const DOOR = 'door';
export const HANDS = 'hands';
export const stationOf = (id: string) => `station ${id}`;
export const gearOf = (id: string) => `gear ${id}`;

/**
 * The kitchen's resources on a date: hands by the crew's hours, or around the clock where `hours` is false, the loading
 * door, places at each station, pieces of each kind of equipment. Hands are left out where no crew is stated.
 */
export function dayResources(kitchen: ClockKitchen, crew: readonly CrewSpan[], hours: boolean): Resource[] {
  const all = { from: -1440, until: 2 * DAY_END };
  const [first] = crew;
  const hands: Resource[] = first
    ? [
        {
          id: HANDS,
          capacity: [
            ...(hours ? [] : [{ from: all.from, until: first.from, amount: first.people }]),
            ...crew.map(({ from, until, people }) => ({ from, until, amount: people })),
            ...afterHours(crew),
          ],
        },
      ]
    : [];
  return [
    ...hands,
    { id: DOOR, capacity: [{ ...all, amount: 1 }] },
    ...[...kitchen.stations.keys()].map((id) => ({
      id: stationOf(id),
      capacity: [{ ...all, amount: kitchen.stationPlaces?.get(id) ?? 1 }],
    })),
    ...[...kitchen.equipment.values()].map(({ id, count }) => ({
      id: gearOf(id),
      capacity: [{ ...all, amount: count }],
    })),
  ];
}

/** Cooks of an event who go home at their hour leave no one behind; the last of them is still there to load. */
function afterHours(crew: readonly CrewSpan[]): Resource['capacity'] {
  const last = crew.at(-1);
  return last && last.until < DAY_END ? [{ from: last.until, until: 2 * DAY_END, amount: last.people }] : [];
}
