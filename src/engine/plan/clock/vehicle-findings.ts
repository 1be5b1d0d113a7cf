import type { ClockFinding, WayOut } from './clock-finding.ts';
import type { DayClock, ServedOn } from './day-clock.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { type Fleet, type Trip, tripOf, tripsBetween, vehicleLacks } from './vehicles.ts';

/** Where a date's events need more vehicles at once than the kitchen states it has, each with what works instead. */
export function vehicleFindings(clock: DayClock, kitchen: ClockKitchen): ClockFinding[] {
  const { vehicles: fleet } = kitchen;
  if (fleet === undefined) return [];
  const { served, date } = clock;
  const lacks = vehicleLacks(served.flatMap(ownTrip), fleet);
  if (lacks.length === 0) return [];
  const busy = served.filter(({ plan: { input } }) => lacks.some(({ events }) => events.includes(input.id)));
  const tried: WayOut[] = [
    ...anotherKind(served, busy, fleet),
    ...comingBack(served, busy, fleet),
    ...leavingEarly(clock, busy, fleet),
  ];
  const more = (of: string | undefined) =>
    Math.max(...lacks.filter(({ name }) => name === of).map(({ asked, has }) => asked - has));
  return lacks.map(
    ({ events, ...lack }): ClockFinding => ({
      kind: 'vehicles',
      date,
      ...lack,
      occasions: events.map((id) => occasionOf(served.find(({ plan }) => plan.input.id === id))),
      ways: [...tried, { kind: 'vehicle', more: more(lack.name), name: lack.name }],
    }),
  );
}

/** A trip from when it is really loaded, which a busy door or busy hands may make earlier. */
function ownTrip(event: ServedOn): Trip[] {
  return tripOf(event).map((trip) => ({ ...trip, from: Math.min(trip.from, event.load.begins) }));
}

/** One event that asks for a kind of vehicle and can have another, which is free. */
function anotherKind(served: readonly ServedOn[], busy: readonly ServedOn[], fleet: Fleet): WayOut[] {
  const one = busy
    .filter(({ plan }) => plan.input.vehicle !== undefined)
    .find(
      (each) =>
        vehicleLacks(
          served.flatMap((other) =>
            ownTrip(other).map((trip) => (other === each ? { ...trip, kind: undefined } : trip)),
          ),
          fleet,
        ).length === 0,
    );
  return one ? [{ kind: 'another vehicle', occasion: occasionOf(one) }] : [];
}

/** One event, else all of them, whose vehicle does not wait at the place. */
function comingBack(served: readonly ServedOn[], busy: readonly ServedOn[], fleet: Fleet): WayOut[] {
  const tried = [...busy.map((one) => [one]), busy];
  const works = tried.find(
    (some) =>
      vehicleLacks(
        served.flatMap((each) => (some.includes(each) ? tripsBetween(each) : ownTrip(each))),
        fleet,
      ).length === 0,
  );
  return works ? [{ kind: 'comes back', occasions: works.map(occasionOf) }] : [];
}

/**
 * One event whose food is driven out so early that its vehicle is back when the others are loaded, and that comes again to
 * clear: where nothing then stands longer than it may, and the day's work still fits.
 */
function leavingEarly({ fitsWith }: DayClock, busy: readonly ServedOn[], fleet: Fleet): WayOut[] {
  for (const one of [...busy].reverse()) {
    const [first, again] = tripsBetween(one);
    if (!first || !again) continue;
    const others = busy.filter((each) => each !== one).flatMap(ownTrip);
    const by = first.until - Math.min(...others.map(({ from }) => from));
    const moved = [{ ...first, from: first.from - by, until: first.until - by }, again];
    if (by <= 0 || vehicleLacks([...others, ...moved], fleet).length > 0) continue;
    if (fitsWith({ early: { event: one.plan.input.id, by } }))
      return [{ kind: 'leave early', occasion: occasionOf(one), at: one.clock.leave - by }];
  }
  return [];
}

function occasionOf(event: ServedOn | undefined): string {
  return event?.plan.input.occasion ?? '';
}
