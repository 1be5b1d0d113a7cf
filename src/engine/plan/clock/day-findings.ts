import type { Day } from '../../calendar/day.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import { citation } from '../../safety/limit-said.ts';
import type { EventPlan } from '../event-plan.ts';
import { clashesOf } from './clashes.ts';
import type { ClockFinding } from './clock-finding.ts';
import type { TimedStep } from './clock-step.ts';
import type { DayClock, ServedOn } from './day-clock.ts';
import { holdingFindings } from './holding-findings.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { placeWays } from './place-ways.ts';
import { hoursOf, soldShort } from './presence.ts';
import { throwAways } from './throw-away.ts';
import { vehicleFindings } from './vehicle-findings.ts';
import { tooLong, waitingOf } from './waiting.ts';
import { waysOut } from './ways-out.ts';

/** What of a date's clock does not fit, over all its events; `plans` are those with work on it. */
export function dayFindings(
  clock: DayClock,
  plans: readonly EventPlan[],
  kitchen: ClockKitchen,
): ClockFinding[] {
  const { date, steps, kept, crew, served } = clock;
  const onClock = steps.filter((step) => step.clock);
  const clashes = clashesOf(onClock, crew);
  const ways =
    kept.hours && kept.resources && clashes.length === 0 ? [] : waysOut(clock, clashes, plans, kitchen);
  const starts = crew[0]?.from;
  // Packing takes hands as well.
  const first = Math.min(...onClock.map(({ begins }) => begins), ...served.map(({ pack }) => pack.begins));
  const early: ClockFinding[] =
    starts !== undefined && first < starts
      ? [{ kind: 'before crew', date, at: first, crew: starts, ways }]
      : [];
  return [
    ...early,
    ...clashes.map((clash): ClockFinding => ({ kind: 'clash', date, clash, ways })),
    ...chillerFindings(clock, kitchen),
    ...holdingFindings(clock, plans, kitchen),
    ...vehicleFindings(clock, kitchen),
    ...lateFindings(clock, kitchen),
    ...served.flatMap((each): ClockFinding[] => {
      const { plan, clock: event, place } = each;
      const waiting = waitingOf(plan, [...steps, ...place.steps], event).filter((each) => tooLong(each) > 0);
      const { tooEarly, cooks, moreCooks } = place;
      const { id } = plan.input;
      return [
        ...soldFindings(date, each, kitchen),
        ...controlFindings(date, each, steps),
        ...waiting.map(
          (late): ClockFinding => ({
            kind: 'waits',
            date,
            event: id,
            waiting: late,
            ways: late.there ? placeWays(each, late.dish) : [],
          }),
        ),
        ...(tooEarly > 0
          ? [
              {
                kind: 'place' as const,
                date,
                event: id,
                minutes: tooEarly,
                arrive: event.arrive,
                serve: event.serve,
                cooks,
                moreCooks,
              },
            ]
          : []),
      ];
    }),
  ];
}

function chillerFindings({ date, unchilled, chillsWith }: DayClock, { foodSafety }: ClockKitchen) {
  return [...Map.groupBy(unchilled, ({ equipment }) => equipment)].map(
    ([{ id, name }, foods]): ClockFinding => ({
      kind: 'chiller',
      date,
      equipment: name,
      recipes: [...new Set(foods.map(({ recipe }) => recipe.name))],
      source: citation(foodSafety, 'cooling'),
      ways: chillsWith(id) ? [{ kind: 'equipment', name }] : [],
    }),
  );
}

function soldFindings(date: Day, event: ServedOn, kitchen: ClockKitchen): ClockFinding[] {
  const roles = soldShort(hoursOf(event) ?? [], kitchen);
  return roles.length > 0 ? [{ kind: 'sold short', date, event: event.plan.input.id, roles }] : [];
}

function controlFindings(date: Day, event: ServedOn, steps: readonly TimedStep[]): ClockFinding[] {
  const { plan, clock } = event;
  const { end } = clock;
  if (end === undefined) return [];
  const source = citation(plan.foodSafety, 'time without control');
  return throwAways(plan, steps, event)
    .filter(({ dish, by }) => dish !== undefined && by < end)
    .map(
      (food): ClockFinding => ({ kind: 'without control', date, event: plan.input.id, food, end, source }),
    );
}

/**
 * Hands that go on after those have gone who work them: the cooks of an event at their hour, the kitchen's crew after one
 * shift. Where the crew cooks for an event of the date, its day ends with the truck and may only not be longer than a shift.
 */
function lateFindings({ date, steps, served }: DayClock, { crew }: ClockKitchen): ClockFinding[] {
  const withHands = steps.filter(({ clock, handsFor }) => clock && handsFor > 0);
  const isOf = ({ batch }: TimedStep, id: string) => batch.events.some(({ plan }) => plan.input.id === id);
  const events = served.flatMap(({ plan: { input }, load }): ClockFinding[] => {
    const own = withHands.filter((step) => isOf(step, input.id));
    const cooks = input.cooks ?? crew;
    if (own.length === 0 || cooks?.from === undefined) return [];
    const until = Math.max(...own.map(({ handsOff }) => handsOff), load.ends);
    const gone = minutesOfClock(cooks.from) + cooks.each;
    if (input.cooks) return until > gone ? [{ kind: 'after crew', date, at: until, crew: gone }] : [];
    const from = Math.min(...own.map(({ begins }) => begins));
    return until - from > cooks.each ? [{ kind: 'long day', date, from, until, each: cooks.each }] : [];
  });
  const prep = withHands.filter((step) => !served.some(({ plan }) => isOf(step, plan.input.id)));
  if (prep.length === 0 || crew?.from === undefined) return events;
  const ends = Math.max(...prep.map(({ handsOff }) => handsOff));
  const gone = minutesOfClock(crew.from) + crew.each;
  return ends > gone ? [...events, { kind: 'after crew', date, at: ends, crew: gone }] : events;
}
