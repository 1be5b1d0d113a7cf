import { type CrewSpan, withSkill } from './crew-hours.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import type { ServedEvent } from './stands.ts';

/** Something that could be changed about a date so that its work fits. */
export interface ClockChange {
  /** So many more cooks, all day. */
  readonly people?: number;
  /** What those more cooks can do, by the name of the skill. */
  readonly skill?: string | undefined;
  /** Ids of equipment of which there is one more. */
  readonly equipment?: string;
  /** A station at which one more can work. */
  readonly station?: string;
  /** An event whose food is driven out so many minutes earlier. */
  readonly early?: { readonly event: string; readonly by: number };
  /** Ids of recipes whose work is done the day before. */
  readonly without?: ReadonlySet<string>;
}

/** A kitchen with one more of the equipment, or one more place at the station, that a change names. */
export function changedKitchen(kitchen: ClockKitchen, { equipment, station }: ClockChange): ClockKitchen {
  return {
    ...kitchen,
    equipment: new Map(
      [...kitchen.equipment].map(([id, each]) => [
        id,
        id === equipment ? { ...each, count: each.count + 1 } : each,
      ]),
    ),
    ...(station !== undefined && {
      stationPlaces: new Map([
        ...(kitchen.stationPlaces ?? []),
        [station, (kitchen.stationPlaces?.get(station) ?? 1) + 1],
      ]),
    }),
  };
}

/** An event that is driven out earlier, where a change says so. */
export function changedHours(event: ServedEvent, { early }: ClockChange): ServedEvent {
  if (early?.event !== event.plan.input.id) return event;
  const { clock } = event;
  return { ...event, clock: { ...clock, load: clock.load - early.by, leave: clock.leave - early.by } };
}

/** A crew with as many more cooks as a change adds, and with what they can do. */
export function changedCrew(
  crew: readonly CrewSpan[],
  { people = 0, skill }: ClockChange,
): readonly CrewSpan[] {
  return crew.map((span) => ({
    ...span,
    people: span.people + people,
    ...(skill !== undefined && {
      skills: new Map([...(span.skills ?? []), [skill, withSkill(span, skill) + people]]),
    }),
  }));
}
