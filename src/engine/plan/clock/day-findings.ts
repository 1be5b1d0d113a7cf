import { type DayUse, firstFit } from '../days/day-clashes.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockFinding } from './clock-finding.ts';
import type { TimedStep } from './clock-step.ts';
import { DAY_END } from './crew-hours.ts';
import type { DayClock } from './day-clock.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { tooLong, waitingOf } from './waiting.ts';
import { waysOut } from './ways-out.ts';

/** What of a date's clock does not fit, over all its events; `plans` are those with work on it. */
export function dayFindings(
  clock: DayClock,
  plans: readonly EventPlan[],
  kitchen: ClockKitchen,
): ClockFinding[] {
  const { date, steps, kept, crew, served } = clock;
  const ways = kept.hours && kept.resources ? [] : waysOut(clock, plans, kitchen);
  const onClock = steps.filter((step) => step.clock);
  const starts = crew[0]?.from;
  const first = Math.min(...onClock.map(({ begins }) => begins));
  const early: ClockFinding[] =
    starts !== undefined && first < starts
      ? [{ kind: 'before crew', date, at: first, crew: starts, ways }]
      : [];
  const clashes = kept.resources ? [] : clashesOf(onClock, crew[0]?.people);
  return [
    ...early,
    ...clashes.map((clash): ClockFinding => ({ kind: 'clash', date, clash, ways })),
    ...lateFindings(clock, kitchen),
    ...served.flatMap(({ plan, clock: event, place }): ClockFinding[] => {
      const waiting = waitingOf(plan, [...steps, ...place.steps], event).filter((each) => tooLong(each) > 0);
      const { tooEarly, cooks, moreCooks } = place;
      const { id } = plan.input;
      return [
        ...waiting.map((each): ClockFinding => ({ kind: 'waits', date, event: id, waiting: each })),
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

/** Hands that go on after the crew has gone, and a day longer than one person works. */
function lateFindings(
  { date, steps, crew, served }: DayClock,
  { crew: usual }: ClockKitchen,
): ClockFinding[] {
  const onClock = steps.filter(({ clock, handsFor }) => clock && handsFor > 0);
  if (onClock.length === 0 || crew.length === 0 || !usual) return [];
  const from = Math.min(...onClock.map(({ begins }) => begins));
  const until = Math.max(...onClock.map(({ handsOff }) => handsOff), ...served.map(({ load }) => load.ends));
  const gone = crew.at(-1)?.until ?? DAY_END;
  if (gone < DAY_END) return until > gone ? [{ kind: 'after crew', date, at: until, crew: gone }] : [];
  const each = usual.each;
  if (until - from <= each) return [];
  return served.length === 0
    ? [{ kind: 'after crew', date, at: until, crew: from + each }]
    : [{ kind: 'long day', date, from, until, each }];
}

function clashesOf(steps: readonly TimedStep[], people: number | undefined) {
  const uses = steps.flatMap(({ batch, step, begins, handsOff, ends, hands, load }): DayUse[] => {
    const what = `${batch.recipe.name}: ${step.text}`;
    return [
      ...(handsOff > begins ? [{ what, gear: null, from: begins, until: handsOff, uses: hands }] : []),
      ...(load && ends > handsOff
        ? [{ what, gear: load.equipment, from: handsOff, until: ends, uses: load.uses }]
        : []),
    ];
  });
  return firstFit([], uses, 0, [0], people).clashes;
}
