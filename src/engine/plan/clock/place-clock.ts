import type { Lag, Resource, ScheduleProblem, Task } from '../../schedule/problem.ts';
import type { DayBatch } from '../days/day-batches.ts';
import { inUseFrom } from '../days/loads.ts';
import { changedKitchen } from './clock-change.ts';
import type { ClockStep, TimedStep } from './clock-step.ts';
import { type ChainLink, chainFrom } from './day-chain.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { type PlaceWork, placeSteps } from './place-steps.ts';
import { dayProblem, type Solved } from './solved.ts';
import { type ServedEvent, serveOf } from './stands.ts';
import { timedSteps } from './timed-steps.ts';

/** What is done at an event's place, by its clock. */
export interface PlaceClock {
  readonly steps: readonly TimedStep[];
  /** What holds a step where it is, and that in turn, in order of time. */
  readonly chainOf: (id: string) => readonly ChainLink[];
  /** By how many minutes the work begins before the crew is there, or what is brought for it hot; 0 where it fits. */
  readonly tooEarly: number;
  /** Cooks there, as sold; undefined where that is not known: then nobody is counted. */
  readonly cooks: number | undefined;
  /** How many more cooks, up to this many, let it fit after arriving; undefined where it fits or none do. */
  readonly moreCooks: number | undefined;
  /** Works out the place again with one more of some equipment, or so many more cooks. */
  readonly stepsWith: (change: PlaceChange) => readonly TimedStep[];
}

/** Something that could be changed about a place. */
export interface PlaceChange {
  /** Id of the equipment of which one more is brought. */
  readonly equipment?: string;
  /** So many more cooks. */
  readonly cooks?: number;
}

const HANDS = 'hands';
/** The most additional cooks that are tried. */
const MOST_MORE = 4;

/**
 * The work at a place, as late as each course allows: the first plate of its course for what is done in one go, its share
 * of the course's time for a later wave. Cooks are those that the offer sells; equipment that is brought runs once it is
 * unloaded and hot.
 */
export function placeClock(
  event: ServedEvent,
  batches: readonly DayBatch[],
  kitchen: ClockKitchen,
): PlaceClock {
  const { plan, clock } = event;
  const cooks = plan.input.placeCooks;
  const stepsWith = ({ equipment, cooks: more = 0 }: PlaceChange) => {
    const input = { ...plan.input, ...(cooks !== undefined && { placeCooks: cooks + more }) };
    const changed = equipment === undefined ? kitchen : changedKitchen(kitchen, { equipment });
    return placeClock({ ...event, plan: { ...plan, input } }, batches, changed).steps;
  };
  const workOf = (people: number | undefined) => placeSteps(plan, batches, kitchen, people);
  const work = workOf(cooks);
  const fits = { tooEarly: 0, cooks, moreCooks: undefined, stepsWith };
  if (work.steps.length === 0) return { steps: [], chainOf: () => [], ...fits };
  const within = dayProblem(problemAt(event, work, cooks, true)).solved('trial');
  const timed = (solution: Solved) => {
    const steps = timedSteps(
      work.steps,
      solution,
      'late',
      work.steps,
      new Set(solution.schedule.criticalPath),
    );
    return { steps, chainOf: (id: string) => chainFrom(id, solution, steps) };
  };
  if (within.complete) return { ...timed(within), ...fits };
  const early = dayProblem(problemAt(event, work, cooks, false)).solved('trial');
  const found = early.complete ? early : dayProblem(problemAt(event, work, undefined, false)).solved('trial');
  const { steps, chainOf } = timed(found);
  const moreCooks =
    cooks === undefined
      ? undefined
      : Array.from({ length: MOST_MORE }, (_, index) => index + 1).find((more) =>
          dayProblem(problemAt(event, workOf(cooks + more), cooks + more, true)).fits(),
        );
  const tooEarly = Math.max(
    0,
    ...steps.map((step) => firstAt(step, work.equipment, clock.arrive) - step.begins),
  );
  return { steps, chainOf, tooEarly, cooks, moreCooks, stepsWith };
}

/** When a step can begin at the soonest: once the truck is there, and by when what is brought for it is hot. */
function firstAt(step: TimedStep, equipment: PlaceWork['equipment'], arrive: number): number {
  const { load } = step;
  const gear = load && equipment.find((each) => each.equipment.id === load.equipment.id);
  if (!gear || load.uses <= gear.there) return arrive;
  return Math.max(arrive, arrive + (gear.equipment.heats ?? 0) - inUseFrom(step));
}

function problemAt(
  { plan, clock }: ServedEvent,
  { steps, equipment, courseOf }: PlaceWork,
  cooks: number | undefined,
  afterArriving: boolean,
): ScheduleProblem {
  const from = afterArriving ? clock.arrive : clock.arrive - 1440;
  const until = Math.max(clock.serve, ...[...clock.courses.values()].map((course) => course.until)) + 1440;
  const resources: Resource[] = [
    ...(cooks === undefined ? [] : [{ id: HANDS, capacity: [{ from, until, amount: Math.max(1, cooks) }] }]),
    ...equipment.map(
      ({ equipment: { id, count, heats = 0 }, there }): Resource => ({
        id: gearOf(id),
        capacity: [
          ...(there > 0 ? [{ from, until, amount: there }] : []),
          ...(count > there ? [{ from: from + heats, until, amount: count - there }] : []),
        ],
      }),
    ),
  ];
  const has = new Set(resources.map(({ id }) => id));
  const marks = [...clock.courses].map(
    ([course, { from: at }]): Task => ({
      id: serveOf(plan.input.id, course),
      minutes: 0,
      needs: [],
      fixed: at,
    }),
  );
  return {
    direction: 'late',
    horizon: { from: from - 1440, until: until + 1440 },
    tasks: [...steps.map((step) => taskOf(step, has, from)), ...marks],
    lags: steps.flatMap((step) => lagsOf(step, steps, plan.input.id, courseOf.get(step.id), clock)),
    resources,
  };
}

function taskOf(step: ClockStep, has: ReadonlySet<string>, from: number): Task {
  const { id, hands, handsFor, unattended, load } = step;
  const minutes = handsFor + unattended;
  const needs = [
    { resource: HANDS, amount: hands, from: 0, until: handsFor },
    {
      resource: gearOf(load?.equipment.id ?? ''),
      amount: load?.uses ?? 0,
      from: inUseFrom(step),
      until: minutes,
    },
  ];
  return {
    id,
    minutes,
    needs: needs.filter((need) => has.has(need.resource) && need.amount > 0 && need.until > need.from),
    windows: [{ from, until: from + 2 * 1440 }],
    weight: 1,
  };
}

function lagsOf(
  step: ClockStep,
  steps: readonly ClockStep[],
  event: string,
  course: string | undefined,
  clock: ServedEvent['clock'],
): Lag[] {
  const after = step.after.map((id): Lag => {
    const before = steps.find((other) => other.id === id);
    return { from: id, to: step.id, kind: 'end-begin', least: before?.step.rest ?? 0, why: 'step' };
  });
  const [first] = clock.courses.keys();
  const name = course ?? first;
  const time = name === undefined ? undefined : clock.courses.get(name);
  if (name === undefined || !time) return after;
  const { number, of } = step.wave ?? { number: 1, of: 1 };
  const later = Math.floor(((time.until - time.from) * (number - 1)) / of);
  return [
    ...after,
    { from: step.id, to: serveOf(event, name), kind: 'end-begin', least: -later, why: 'serve' },
  ];
}

const gearOf = (id: string) => `gear ${id}`;
