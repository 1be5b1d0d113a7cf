import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type Day, daysBetween } from '../../src/engine/calendar/day.ts';
import type { Recipe } from '../../src/engine/food/recipe.ts';
import { minutes } from '../../src/engine/measure/duration.ts';
import type { Schedule } from '../../src/engine/plan/clock/event-work.ts';
import { scheduleOf } from '../../src/engine/plan/clock/schedule.ts';
import { workAhead } from '../../src/engine/plan/clock/work-ahead.ts';
import type { EventPlan } from '../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { FOOD_CODE_2022 } from '../../src/engine/safety/limits.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from '../unit/plan/builders.ts';

// What is looked at here is counted anew from the schedules and shares no code with what moves the work.

const SATURDAY = day('2027-05-15');
const STATIONS = ['cold', 'stove'];
const pepper = food('pepper');

const made = fc.record({
  when: fc.constantFrom(...Array<string>(6).fill('on the day'), 'on the day only', 'the day before'),
  handsOn: fc.integer({ min: 30, max: 120 }),
  station: fc.nat(1),
  keeps: fc.constantFrom(undefined, 1, 2, 2, 4, 4),
  hold: fc.constantFrom(...Array<string>(5).fill('cold'), 'room', 'hot'),
  stands: fc.constantFrom(...Array<undefined>(4).fill(undefined), 180),
  /** The dish before it goes into it. */
  with: fc.constantFrom(true, false, false),
});
const kitchens = fc.record({
  events: fc.array(
    fc.record({
      dishes: fc.array(made, { minLength: 1, maxLength: 4 }),
      after: fc.nat(1),
      serve: fc.integer({ min: 12, max: 16 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  people: fc.integer({ min: 1, max: 3 }),
  from: fc.integer({ min: 7, max: 10 }),
  shift: fc.integer({ min: 4, max: 9 }),
});

type Given = typeof kitchens extends fc.Arbitrary<infer T> ? T : never;

function planned({ events, people, from, shift }: Given) {
  const recipes = events.map(({ dishes }, at) =>
    dishes.reduce<Recipe[]>((all, each, index) => {
      const part = each.with ? all.at(-1) : undefined;
      const own = recipe(
        // Two events share their first dish.
        index === 0 && at < 2 ? 'shared' : `dish-${at}-${index}`,
        '1 gal',
        [line(pepper, '1 lb'), ...(part ? [line(part, '1 cup')] : [])],
        {
          hold: each.hold as 'cold',
          keepsDays: each.keeps,
          ...(each.stands !== undefined && { stands: minutes(each.stands) }),
          steps: [
            step(each.when, 'Make', { station: STATIONS[each.station]!, handsOn: minutes(each.handsOn) }),
          ],
        },
      );
      all.push(own);
      return all;
    }, []),
  );
  const shared = recipes[0]?.[0];
  const plans = events.map(({ after, serve }, at) => {
    const of = recipes[at]!.map((each, index) => (index === 0 && at === 1 && shared ? shared : each));
    const input = event(
      of.map((each) => dish(each, '8 fl oz per guest')),
      {
        id: `event-${at}`,
        date: addDays(SATURDAY, after),
        serveAt: `${serve}:00`,
        guests: { adults: 16, children: 0, vendors: 0, staff: 0 },
        away: { travel: minutes(20), setUp: minutes(60), service: minutes(120) },
      },
    );
    return planEvent(input, kitchen(), prices());
  });
  const clocked = {
    equipment: new Map(),
    containers: kitchen().containers,
    crew: { people, each: minutes(shift * 60), from: `${from}:00` },
    day: { pack: minutes(30), load: minutes(20), clear: minutes(60), unload: minutes(30) },
    stations: new Map(STATIONS.map((id) => [id, id])),
    foodSafety: FOOD_CODE_2022,
  };
  const written = new Map(plans.map((plan) => [plan.input.id, plan]));
  const before = scheduleOf(plans, clocked);
  const after = workAhead(
    written,
    plans.map(({ input }) => input.date),
    {
      kitchen: clocked,
      planned: (input) => planEvent(input, kitchen(), prices()),
      settled: () => undefined,
      open: () => ({ days: 7, done: [] }),
      isThere: () => true,
    },
  );
  return {
    plans,
    before,
    after,
    moves: [...after.plans.values()].flatMap(({ input }) => input.earlier ?? []),
  };
}

const DAYS = [-3, -2, -1, 0, 1].map((days) => addDays(SATURDAY, days));

const kindsOn = (schedule: Schedule, date: Day) =>
  Object.fromEntries(
    [...Map.groupBy(schedule.on(date).findings, ({ kind }) => kind)].map(([kind, all]) => [kind, all.length]),
  );

/** What is done for an event, whatever the day. */
const workOf = ({ days }: EventPlan) =>
  days
    .flatMap(({ tasks }) =>
      tasks.map(({ recipe: { id }, number, batches }) => `${id} ${number} ${batches.toFraction()}`),
    )
    .sort();

/** Parts that are done on a later day than what they go into. */
const partsTooLate = ({ recipes }: EventPlan) =>
  recipes.flatMap(({ recipe: { steps, lines } }) =>
    lines.flatMap(({ item }) =>
      item.kind === 'recipe' && item.recipe.steps[0]!.when.daysBefore < steps[0]!.when.daysBefore
        ? [item.recipe.id]
        : [],
    ),
  );

describe('work that is moved to the day before', () => {
  test('adds no finding to any day, and leaves those that had no room with room', () => {
    let moved = 0;
    fc.assert(
      fc.property(kitchens, (given) => {
        const { before, after, moves, plans } = planned(given);
        for (const date of DAYS) {
          const had = kindsOn(before, date);
          for (const [kind, count] of Object.entries(kindsOn(after.schedule, date)))
            expect(count, `${kind} on ${date}`).toBeLessThanOrEqual(had[kind] ?? 0);
        }
        moved += moves.length;
        for (const { input } of plans) {
          const { date } = input;
          const { kept } = before.on(date).clock;
          const full =
            !kept.quality || ['before crew', 'clash'].some((kind) => kind in kindsOn(before, date));
          const now = after.plans.get(input.id)?.input.earlier ?? [];
          if (now.length > 0) expect(full).toBe(true);
          if (now.length > 0) expect(kindsOn(after.schedule, date)).not.toHaveProperty('before crew');
        }
      }),
      { numRuns: 60 },
    );
    expect(moved).toBeGreaterThan(0);
  });

  test('is the same work, keeps until it is served, and takes no more hands than there are', () => {
    fc.assert(
      fc.property(kitchens, (given) => {
        const { plans, after } = planned(given);
        for (const plan of plans) {
          const now = after.plans.get(plan.input.id)!;
          expect(workOf(now)).toEqual(workOf(plan));
          for (const { recipe: id, days = 1 } of now.input.earlier ?? []) {
            const task = now.days.find(({ tasks }) => tasks.some(({ recipe: { id: own } }) => own === id))!;
            const { keepsDays, hold, stands } = now.recipes.find(
              ({ recipe: each }) => each.id === id,
            )!.recipe;
            expect([daysBetween(task.date, plan.input.date), hold, stands]).toEqual([
              days,
              'cold',
              undefined,
            ]);
            expect(days).toBeLessThanOrEqual(3);
            expect(keepsDays).toBeGreaterThanOrEqual(days + 1);
          }
          // A part that was written too late may now be in time, and no other becomes late.
          const late = partsTooLate(plan);
          expect(partsTooLate(now).filter((id) => !late.includes(id))).toEqual([]);
        }
        for (const date of DAYS) {
          const { clock } = after.schedule.on(date);
          if (!clock.kept.resources) continue;
          for (let minute = 0; minute < 1440; minute += 1) {
            const busy = clock.steps.filter(({ begins, handsOff }) => begins <= minute && minute < handsOff);
            expect(busy.reduce((sum, { hands }) => sum + hands, 0)).toBeLessThanOrEqual(given.people);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
});
