import type { Resource } from '../../schedule/problem.ts';
import { type CrewSpan, DAY_END, withSkill } from './crew-hours.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { vehiclesOf } from './vehicles.ts';

/** What the work of a date shares, by the names its tasks use. */
export const DOOR = 'door';
export const HANDS = 'hands';
export const VEHICLES = 'vehicles';
export const stationOf = (id: string) => `station ${id}`;
export const vehicleOf = (id: string) => `vehicle ${id}`;
export const skillOf = (name: string) => `skill ${name}`;
export const gearOf = (id: string) => `gear ${id}`;

/**
 * The kitchen's resources on a date: hands by the crew's hours, or around the clock where `hours` is false, those of them
 * with each skill, the loading door, places at each station, pieces of each kind of equipment. Hands and skills are left
 * out where no crew is stated.
 */
export function dayResources(kitchen: ClockKitchen, crew: readonly CrewSpan[], hours: boolean): Resource[] {
  const all = { from: -1440, until: 2 * DAY_END };
  const { vehicles } = kitchen;
  const skills = new Set(crew.flatMap((span) => [...(span.skills?.keys() ?? [])]));
  return [
    ...(crew.length > 0
      ? [
          peopleOf(HANDS, crew, hours, ({ people }) => people),
          ...[...skills].map((name) => peopleOf(skillOf(name), crew, hours, (span) => withSkill(span, name))),
        ]
      : []),
    { id: DOOR, capacity: [{ ...all, amount: 1 }] },
    ...(vehicles === undefined
      ? []
      : [{ id: VEHICLES, capacity: [{ ...all, amount: vehiclesOf(vehicles) }] }]),
    ...[...(vehicles?.values() ?? [])].map(({ id, count }) => ({
      id: vehicleOf(id),
      capacity: [{ ...all, amount: count }],
    })),
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

/**
 * People by the crew's hours. Cooks of an event who go home at their hour leave no one behind; the last of them is still
 * there to load.
 */
function peopleOf(
  id: string,
  crew: readonly CrewSpan[],
  hours: boolean,
  amountOf: (span: CrewSpan) => number,
): Resource {
  const [first, last] = [crew[0], crew.at(-1)];
  return {
    id,
    capacity: [
      ...(hours || !first ? [] : [{ from: -1440, until: first.from, amount: amountOf(first) }]),
      ...crew.map((span) => ({ from: span.from, until: span.until, amount: amountOf(span) })),
      ...(last && last.until < DAY_END
        ? [{ from: last.until, until: 2 * DAY_END, amount: amountOf(last) }]
        : []),
    ],
  };
}
