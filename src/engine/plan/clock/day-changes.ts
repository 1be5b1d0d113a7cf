import type Fraction from 'fraction.js';
import type { Day } from '../../calendar/day.ts';
import type { DayBatch } from '../days/day-batches.ts';
import { mostChilled, unchilledOf } from './chilling.ts';
import { type ClockChange, changedCrew, changedHours, changedKitchen } from './clock-change.ts';
import type { ClockStep } from './clock-step.ts';
import type { CrewSpan } from './crew-hours.ts';
import { STRICT, type Strictness, servingProblem } from './day-problem.ts';
import { heldOf } from './holding.ts';
import { overIn, type SolvedDay, withRoom } from './holding-search.ts';
import { type ClockKitchen, kitchenSteps } from './kitchen-steps.ts';
import { forward, solvedForward } from './prep-clock.ts';
import type { PrepWork } from './prep-problem.ts';
import { dayProblem } from './solved.ts';
import { type ServedEvent, standsLonger } from './stands.ts';

/** A date as it was solved. */
export interface SolvedDate {
  readonly date: Day;
  readonly batches: readonly DayBatch[];
  readonly served: readonly ServedEvent[];
  readonly kitchen: ClockKitchen;
  readonly crew: readonly CrewSpan[];
  /** How many cook, where it is stated. */
  readonly people: number | undefined;
  /** What its own events wait for, as it could cool. */
  readonly ownSteps: readonly ClockStep[];
  readonly late: { readonly steps: readonly ClockStep[]; readonly kept: Strictness };
  readonly prep: PrepWork;
}

/** A date worked out again with something changed. */
export interface DayChanges {
  /** When each step of what is served that day begins, by id. */
  readonly beginsWith: (change: ClockChange) => ReadonlyMap<string, number>;
  /** Whether all then fits. */
  readonly fitsWith: (change: ClockChange) => boolean;
  /** Whether with one more of this equipment all that it would hold is chilled in it. */
  readonly chillsWith: (equipment: string) => boolean;
  /** By how much more than all of it what keeps food hot and cold is taken up at the most; undefined where the day does not fit. */
  readonly overWith: (change: ClockChange) => Fraction | undefined;
}

export function dayChanges(solved: SolvedDate): DayChanges {
  const { date, batches, served, kitchen, crew, people, ownSteps, late, prep } = solved;
  const again = (change: ClockChange, leaving: readonly ServedEvent[]): SolvedDay & { over: Fraction } => {
    const changed = changedKitchen(kitchen, change);
    const steps = leftOf(late.steps, change);
    const problem = servingProblem(steps, leaving, date, changed, changedCrew(crew, change), late.kept);
    const held = heldOf(steps, leaving, date, changed);
    const first = { problem, solution: dayProblem(problem).solved('final') };
    const day = late.kept.quality ? withRoom(first, steps, held) : first;
    return { ...day, over: overIn(day, held) };
  };
  const leavingWith = (change: ClockChange) => {
    const leaving = served.map((event) => changedHours(event, change));
    return leaving.some((event, index) => standsLonger(event, served[index] as ServedEvent))
      ? undefined
      : leaving;
  };
  return {
    beginsWith: (change) =>
      new Map(again(change, served).solution.schedule.placed.map(({ id, begin }) => [id, begin])),
    overWith: (change) => {
      const leaving = leavingWith(change);
      const found = leaving && again(change, leaving);
      return found?.solution.complete ? found.over : undefined;
    },
    fitsWith: (change) => {
      const changed = changedKitchen(kitchen, change);
      const leaving = leavingWith(change);
      if (!leaving) return false;
      const spans = changedCrew(crew, change);
      // Prep fits into any day's hours, which may end later; only those who can do it may be missing.
      return (
        mostChilled(
          leftOf(ownSteps, change),
          (tried) => dayProblem(servingProblem(tried, leaving, date, changed, spans, STRICT)),
          (day) => day.fits(),
        ) !== undefined &&
        (change.skill === undefined || forward(prep, changed, spans).complete)
      );
    },
    chillsWith: (equipment) => {
      const changed = changedKitchen(kitchen, { equipment });
      const steps = kitchenSteps(batches, date, changed, people);
      if (steps.some(({ cools }) => cools?.tooSlow)) return false;
      const onDate = steps.filter(({ id }) => late.steps.some((step) => step.id === id));
      const before = steps.filter(({ id }) => prep.steps.some((step) => step.id === id));
      const chilled = solvedForward({ ...prep, steps: before }, changed, crew);
      return (
        unchilledOf(before, chilled.steps).length === 0 &&
        dayProblem(servingProblem(onDate, served, date, changed, crew, late.kept)).fits()
      );
    },
  };
}

/** The steps that are left on a date where some recipes' work is done the day before. */
function leftOf(steps: readonly ClockStep[], { without }: ClockChange): readonly ClockStep[] {
  const left = steps.filter(({ batch }) => !without?.has(batch.recipe.id));
  const ids = new Set(left.map(({ id }) => id));
  return left.map((step) => ({ ...step, after: step.after.filter((id) => ids.has(id)) }));
}
