import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '../../../../src/engine/calendar/day.ts';
import type { Recipe } from '../../../../src/engine/food/recipe.ts';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import type { ClockKitchen } from '../../../../src/engine/plan/clock/kitchen-steps.ts';
import { type MovingSetting, workAhead } from '../../../../src/engine/plan/clock/work-ahead.ts';
import type { EventPlan } from '../../../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../../../src/engine/plan/plan-event.ts';
import { FOOD_CODE_2022 } from '../../../../src/engine/safety/limits.ts';
import { day, kitchen, prices, step } from '../builders.ts';
import { DATE, hot, planned } from './clocked.ts';

const BEFORE = addDays(DATE, -1);

/** An hour at the cold bench on the event’s day; it keeps three days, cold. */
const jar = (id: string, facts: Partial<Recipe> = {}, when = 'on the day') =>
  hot(id, [step(when, 'Layer', { station: 'cold', handsOn: minutes(60) })], {
    hold: 'cold',
    keepsDays: 3,
    ...facts,
  } as never);

const oneCook: ClockKitchen = {
  equipment: new Map(),
  containers: kitchen().containers,
  // One cook from 8:00, eight hours; trucks leave at 11:00 and packing takes an hour.
  crew: { people: 1, each: minutes(480), from: '8:00' },
  day: { pack: minutes(60), load: minutes(30), clear: minutes(75), unload: minutes(30) },
  stations: new Map([['cold', 'Cold bench']]),
  stationPlaces: new Map(),
  foodSafety: FOOD_CODE_2022,
};

const open: MovingSetting = {
  kitchen: oneCook,
  planned: (input) => planEvent(input, kitchen(), prices()),
  settled: () => undefined,
  open: () => ({ days: 7, done: [] }),
  isThere: () => true,
};

function ahead(plans: readonly EventPlan[], setting: Partial<MovingSetting> = {}) {
  const written = new Map(plans.map((plan) => [plan.input.id, plan]));
  const { plans: now, schedule } = workAhead(
    written,
    plans.map(({ input }) => input.date),
    { ...open, ...setting },
  );
  const earlier = [...now.values()].map(({ input }) => (input.earlier ?? []).map(({ recipe }) => recipe));
  const kinds = (on: Day) => schedule.on(on).findings.map(({ kind }) => kind);
  const work = (on: Day) =>
    schedule.on(on).clock.steps.map(({ batch, begins }) => `${batch.recipe.id} ${begins}`);
  return { now, earlier, kinds, work };
}

describe('work of a full day', () => {
  // Packed from 9:30 to 10:30, so one hour from 8:30 is all there is time for before it, and a second would begin at 7:30.
  const [first, second] = [jar('eggplant jar'), jar('pepper jar')];

  test('stays on its day as long as that has room', () => {
    const { earlier, work } = ahead([planned('lunch', [first])]);
    expect(earlier).toEqual([[]]);
    expect(work(BEFORE)).toEqual([]);
    expect(work(DATE)).toEqual(['eggplant jar 510']);
  });

  test('is done the day before, as little of it as is enough, with the reason kept', () => {
    const { earlier, kinds, work, now } = ahead([planned('lunch', [first, second])]);
    expect(earlier).toEqual([['eggplant jar']]);
    expect([kinds(BEFORE), kinds(DATE)]).toEqual([[], []]);
    // The crew of the day before begins with it.
    expect([work(BEFORE), work(DATE)]).toEqual([['eggplant jar 480'], ['pepper jar 510']]);
    const because = { kind: 'early', at: 450, crew: 480 };
    expect(now.get('lunch')?.input.earlier).toEqual([{ recipe: 'eggplant jar', because }]);
    // Every surface is made from the plan’s own recipes and days.
    expect(now.get('lunch')?.days.map(({ date, daysBefore }) => [date, daysBefore])).toEqual([
      [BEFORE, 1],
      [DATE, 0],
    ]);
    const made = now.get('lunch')?.dishes.find(({ dish }) => dish.recipe.id === 'eggplant jar');
    expect(made?.dish.recipe.steps[0]?.when).toEqual({ daysBefore: 1, atServing: false, early: true });
  });

  test.each([
    ['keeps for its own day alone', { keepsDays: 1 }],
    ['does not state how long it keeps', { keepsDays: undefined }],
    ['states how long it stands', { stands: minutes(480) }],
    ['is held hot', { hold: 'hot', reheat: true }],
    ['stands at room temperature and needs the cold', { hold: 'room' }],
  ])('stays where it %s', (_, facts) => {
    const stays = ['a', 'b'].map((id) => jar(id, facts as Partial<Recipe>));
    const { earlier, kinds } = ahead([planned('lunch', stays)]);
    expect(earlier).toEqual([[]]);
    expect(kinds(DATE)).toContain('before crew');
  });

  test('moves at room temperature where that is safe', () => {
    const bars = ['a', 'b'].map((id) => jar(id, { hold: 'room', temperatureControl: false }));
    expect(ahead([planned('lunch', bars)]).earlier).toEqual([['a']]);
  });

  test('stays where its recipe says that day only', () => {
    const own = [jar('a', {}, 'on the day only'), jar('b', {}, 'on the day only')];
    expect(ahead([planned('lunch', own)]).earlier).toEqual([[]]);
    const other = ahead([planned('lunch', [own[0]!, second])]);
    expect(other.earlier).toEqual([['pepper jar']]);
  });

  test('stays where its food is not there the day before', () => {
    const isThere = ({ id }: Recipe) => id !== 'eggplant jar';
    expect(ahead([planned('lunch', [first, second])], { isThere }).earlier).toEqual([['pepper jar']]);
    expect(ahead([planned('lunch', [first, second])], { isThere: () => false }).earlier).toEqual([[]]);
  });

  test('is what it was once the day before is over', () => {
    const because = { kind: 'clash' as const };
    const settled = () => [{ recipe: 'pepper jar', because }];
    expect(ahead([planned('lunch', [first, second])], { settled }).earlier).toEqual([['pepper jar']]);
    // Also where the day has room by now: it has been made.
    expect(ahead([planned('lunch', [second])], { settled }).work(BEFORE)).toEqual(['pepper jar 480']);
    expect(ahead([planned('lunch', [first, second])], { settled: () => [] }).earlier).toEqual([[]]);
  });

  test('stays where the day before would gain a finding', () => {
    // That day’s crew is done at 16:00 with seven and a half hours of its own.
    const stock = hot('stock', [step('the day before', 'Simmer', { handsOn: minutes(450) })]);
    // Two days keep it for the day before alone.
    const two = ['eggplant jar', 'pepper jar'].map((id) => jar(id, { keepsDays: 2 }));
    const busy = planned('lunch', [...two, stock]);
    const { earlier, kinds } = ahead([busy]);
    expect(earlier).toEqual([[]]);
    expect([kinds(BEFORE), kinds(DATE)]).toEqual([[], ['before crew']]);
    // Half an hour less, and it just fits.
    const less = hot('stock', [step('the day before', 'Simmer', { handsOn: minutes(420) })]);
    expect(ahead([planned('lunch', [...two, less])]).earlier).toEqual([['eggplant jar']]);
  });

  test('goes two days before where the day before has no room, as far as it keeps', () => {
    const stock = hot('stock', [step('the day before', 'Simmer', { handsOn: minutes(450) })]);
    const busy = (keepsDays: number) =>
      planned('lunch', [jar('a', { keepsDays }), jar('b', { keepsDays }), stock]);
    const early = addDays(DATE, -2);
    const { earlier, kinds, work, now } = ahead([busy(3)]);
    expect(earlier).toEqual([['a']]);
    expect(now.get('lunch')?.input.earlier).toEqual([
      { recipe: 'a', days: 2, because: { kind: 'early', at: 450, crew: 480 } },
    ]);
    expect([kinds(early), kinds(BEFORE), kinds(DATE)]).toEqual([[], [], []]);
    expect([work(early), work(DATE)]).toEqual([['a 480'], ['b 510']]);
    // Two days keep it for the day before alone.
    expect(ahead([busy(2)]).earlier).toEqual([[]]);
    // It is too late to do it two days before, or its food is not there.
    expect(ahead([busy(3)], { open: () => ({ days: 1, done: [] }) }).earlier).toEqual([[]]);
    expect(ahead([busy(3)], { isThere: (_, __, days) => days < 2 }).earlier).toEqual([[]]);
  });

  test('leaves alone what was done on days that are over, also where the day has room by now', () => {
    const done = [{ recipe: 'pepper jar', days: 2, because: { kind: 'clash' as const } }];
    const { work } = ahead([planned('lunch', [second])], { open: () => ({ days: 1, done }) });
    expect([work(addDays(DATE, -2)), work(BEFORE), work(DATE)]).toEqual([['pepper jar 480'], [], []]);
    const three = ahead([planned('lunch', [first, second, jar('c')])], { open: () => ({ days: 1, done }) });
    expect(three.earlier).toEqual([['pepper jar', 'c']]);
    expect(three.now.get('lunch')?.input.earlier?.map(({ days }) => days)).toEqual([2, undefined]);
  });

  test('does not go between the other steps of its recipe, nor before its parts', () => {
    const stock = hot('stock', [step('the day before', 'Simmer', { handsOn: minutes(450) })]);
    const layered = ['a', 'b'].map((id) =>
      jar(id, {
        steps: [
          step('the day before', 'Salt', { station: 'cold' }),
          step('on the day', 'Layer', { station: 'cold', handsOn: minutes(60) }),
        ],
      } as never),
    );
    expect(ahead([planned('lunch', [...layered, stock])]).earlier).toEqual([[]]);
  });

  test('of two events moves for both as one batch', () => {
    const [a, b] = ['lunch', 'picnic'].map((id) => planned(id, [first, second]));
    const { now, earlier } = ahead([a!, b!], {
      kitchen: { ...oneCook, crew: { people: 2, each: minutes(480), from: '8:00' } },
    });
    expect(earlier[0]).toEqual(earlier[1]);
    expect(earlier[0]?.length).toBeGreaterThan(0);
    const moved = [...now.values()].map(
      ({ dishes }) => dishes.find(({ dish }) => dish.recipe.id === earlier[0]?.[0])?.dish.recipe,
    );
    expect(moved[0]).toBe(moved[1]);
  });

  test('makes room for the next day’s work, the earlier day first', () => {
    const friday = planned('friday', [first, second], { date: BEFORE });
    const saturday = planned('saturday', [jar('c'), jar('d')]);
    const { earlier, kinds, work } = ahead([saturday, friday]);
    expect(earlier).toEqual([['c'], ['eggplant jar']]);
    expect([kinds(addDays(BEFORE, -1)), kinds(BEFORE), kinds(DATE)]).toEqual([[], [], []]);
    expect(work(addDays(BEFORE, -1))).toEqual(['eggplant jar 480']);
  });

  test('goes to no event of another day', () => {
    const other = planned('sunday', [second], { date: day('2027-05-16') });
    const { earlier } = ahead([planned('lunch', [first, jar('c')]), other]);
    expect(earlier.filter((each) => each.length > 0)).toHaveLength(1);
    expect(earlier[1]).toEqual([]);
  });
});
