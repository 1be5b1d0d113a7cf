import type { ClockFinding, WayOut } from './clock-finding.ts';
import type { DayClock, ServedOn } from './day-clock.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { type Trip, tripOf, tripsBetween, vehicleLacks, vehiclesOf } from './vehicles.ts';

/** Where a date's events need more vehicles at once than the kitchen states it has, each with what works instead. */
export function vehicleFindings(clock: DayClock, kitchen: ClockKitchen): ClockFinding[] {
  const has = vehiclesOf(kitchen);
  if (has === undefined) return [];
  const { served, date } = clock;
  const lacks = vehicleLacks(served.flatMap(ownTrip), has);
  if (lacks.length === 0) return [];
  const most = Math.max(...lacks.map(({ asked }) => asked));
  const busy = served.filter(({ plan: { input } }) => lacks.some(({ events }) => events.includes(input.id)));
  const ways: WayOut[] = [
    ...comingBack(served, busy, has),
    ...leavingEarly(clock, busy, has),
    { kind: 'vehicle', more: most - has },
  ];
  return lacks.map(
    ({ events, ...lack }): ClockFinding => ({
      kind: 'vehicles',
      date,
      ...lack,
      occasions: events.map((id) => occasionOf(served.find(({ plan }) => plan.input.id === id))),
      ways,
    }),
  );
}

/** A trip from when it is really loaded, which a busy door or busy hands may make earlier. */
function ownTrip(event: ServedOn): Trip[] {
  return tripOf(event).map((trip) => ({ ...trip, from: Math.min(trip.from, event.load.begins) }));
}

/** One event, else all of them, whose vehicle does not wait at the place. */
function comingBack(served: readonly ServedOn[], busy: readonly ServedOn[], has: number): WayOut[] {
  const tried = [...busy.map((one) => [one]), busy];
  const works = tried.find(
    (some) =>
      vehicleLacks(
        served.flatMap((each) => (some.includes(each) ? tripsBetween(each) : ownTrip(each))),
        has,
      ).length === 0,
  );
  return works ? [{ kind: 'comes back', occasions: works.map(occasionOf) }] : [];
}

/**
 * One event whose food is driven out so early that its vehicle is back when the others are loaded, and that comes again to
 * clear: where nothing then stands longer than it may, and the day's work still fits.
 */
function leavingEarly({ fitsWith }: DayClock, busy: readonly ServedOn[], has: number): WayOut[] {
  for (const one of [...busy].reverse()) {
    const [first, again] = tripsBetween(one);
    if (!first || !again) continue;
    const others = busy.filter((each) => each !== one).flatMap(ownTrip);
    const by = first.until - Math.min(...others.map(({ from }) => from));
    const moved = [{ ...first, from: first.from - by, until: first.until - by }, again];
    if (by <= 0 || vehicleLacks([...others, ...moved], has).length > 0) continue;
    if (fitsWith({ early: { event: one.plan.input.id, by } }))
      return [{ kind: 'leave early', occasion: occasionOf(one), at: one.clock.leave - by }];
  }
  return [];
}

function occasionOf(event: ServedOn | undefined): string {
  return event?.plan.input.occasion ?? '';
}
