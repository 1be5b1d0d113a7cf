import { describe, expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { lateChanges } from '../../../src/engine/plan/changes/late-changes.ts';
import { planChanges } from '../../../src/engine/plan/changes/plan-changes.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { inWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, pack, prices, recipe, step } from '../plan/builders.ts';

const beans = food('beans');
const peas = food('peas');
const stew = recipe('stew', '10 servings', [line(beans, '5 lb')], {
  batches: 'whole',
  steps: [step('2 days before', 'Braise.'), step('on the day', 'Warm.')],
});
const pot = recipe('pot', '10 servings', [line(peas, '5 lb')]);
const list = prices(
  pack('beans', '10 lb bag', '8.00'),
  pack('peas', '10 lb bag', '9.00', { supplier: 'wharf' }),
);
const plan = (guests: number, ...served: readonly (typeof stew)[]) =>
  planEvent(
    event(
      served.map((each) => dish(each, '1 serving per guest')),
      { guests: { adults: guests, children: 0, vendors: 0, staff: 0 } },
    ),
    kitchen(),
    list,
  );

describe('two plans of one event', () => {
  test('that are the same have no changes', () => {
    const changes = planChanges(plan(84, stew, pot), plan(84, stew, pot));
    expect([changes.dishes, changes.batches, changes.packs, changes.days]).toEqual([[], [], [], []]);
    expect(changes.foodCost.by?.amount.isZero()).toBe(true);
  });

  test('list what came and what went, and each change is the other way round when they are exchanged', () => {
    const [before, after] = [plan(84, stew), plan(92, pot)];
    const there = planChanges(before, after);
    const back = planChanges(after, before);
    expect(there.dishes.map(({ name, by }) => [name, by?.amount.toFraction()])).toEqual([
      ['pot', '92'],
      ['stew', '-84'],
    ]);
    const counts = (changes: typeof there) =>
      changes.packs
        .map((each): [string, number, number] => [each.ingredient, each.before, each.after])
        .sort();
    // 92 servings take 46 lb of peas: 5 bags. 84 take 9 whole batches of stew, 45 lb of beans: 5 bags.
    expect(counts(there)).toEqual([
      ['beans', 5, 0],
      ['peas', 0, 5],
    ]);
    expect(counts(back)).toEqual(counts(there).map(([id, was, is]) => [id, is, was]));
  });

  test('are late where cooking has begun and where the supplier takes no more orders, and nowhere else', () => {
    const [before, after] = [plan(84, stew, pot), plan(104, stew, pot)];
    const changes = planChanges(before, after);
    const orderBy = new Map([
      ['quay', day('2027-05-10')],
      ['wharf', day('2027-05-12')],
    ]);
    const late = (today: string) =>
      lateChanges(changes, before, { today: day(today), orderBy }, (id) => id).map(
        ({ about, what }) => `${about}: ${inWords(what)}`,
      );
    expect(late('2027-05-10')).toEqual([]);
    // 84 ÷ 10 up is 9 batches, 104 ÷ 10 up is 11: 45 lb and 55 lb, 5 and 6 bags.
    const beansLate =
      'beans: quay took orders until Monday, May 10, 2027: buy 1 × 10 lb bag elsewhere, or ask';
    expect(late('2027-05-12')).toEqual([beansLate]);
    // The stew is braised on the 13th; on that day itself its cook can still be told.
    expect(late('2027-05-13')).not.toContainEqual(expect.stringContaining('stew'));
    expect(late('2027-05-14')).toEqual([
      'stew: started on Thursday, May 13, 2027 for 9 batches: cook 2 batches more',
      beansLate,
      'peas: wharf took orders until Wednesday, May 12, 2027: buy 1 × 10 lb bag elsewhere, or ask',
    ]);
    // Begun on the first of its days, however many have passed; a supplier without a last day is never late.
    expect(late('2027-05-16')[0]).toMatch(/^stew: started on Thursday, May 13, 2027 /);
    expect(
      lateChanges(changes, before, { today: day('2027-05-12'), orderBy: new Map() }, (id) => id),
    ).toEqual([]);
    const fewer = lateChanges(
      planChanges(after, before),
      after,
      { today: day('2027-05-14'), orderBy },
      (id) => id,
    );
    expect(fewer.map(({ what }) => inWords(what))).toEqual([
      'started on Thursday, May 13, 2027 for 11 batches: 2 batches of it no longer needed',
      'quay took orders until Monday, May 10, 2027: ask whether 1 × 10 lb bag can still be canceled',
      'wharf took orders until Wednesday, May 12, 2027: ask whether 1 × 10 lb bag can still be canceled',
    ]);
  });

  test('list the days whose hands-on time changes in their order, those of one plan alone with 0 in the other', () => {
    const minutesOf = (changes: ReturnType<typeof planChanges>) =>
      changes.days.map((each) => [each.date, each.before, each.after]);
    const early = recipe('relish', '10 servings', [line(peas, '1 lb')], {
      steps: [step('3 days before', 'Pickle.', { handsOn: minutes(25), handsOnPerBatch: true })],
    });
    // 84 servings are 8.4 batches of relish, 9 begun, at 25 minutes; the stew takes 10 minutes on each of its days.
    const there = planChanges(plan(84, stew), plan(84, stew, early));
    expect(minutesOf(there)).toEqual([['2027-05-12', 0, 210]]);
    expect(there.handsOn).toEqual({ before: 20, after: 230 });
    const swapped = planChanges(plan(84, early), plan(84, stew));
    expect(minutesOf(swapped)).toEqual([
      ['2027-05-12', 210, 0],
      ['2027-05-13', 0, 10],
      ['2027-05-15', 0, 10],
    ]);
    expect(swapped.handsOn).toEqual({ before: 210, after: 20 });
  });

  test('tell a dish by its course, and do not subtract amounts in different units', () => {
    const tray = recipe('stew', ['10 servings', '2 trays'], [line(beans, '5 lb')]);
    const served = (perGuest: string, course: string) =>
      planEvent(
        event([{ ...dish(tray, perGuest), course }], {
          guests: { adults: 40, children: 0, vendors: 0, staff: 0 },
        }),
        kitchen(),
        list,
      );
    const inTrays = planChanges(
      served('1 serving per guest', 'Supper'),
      served('1 tray per 5 guests', 'Supper'),
    );
    expect(inTrays.dishes).toMatchObject([{ name: 'stew', course: 'Supper', by: undefined }]);
    expect(inTrays.dishes[0]?.before?.need.unit).toBe('serving');
    // As many trays as there were servings are a change all the same.
    const asMany = planChanges(served('1 serving per guest', 'Supper'), served('1 tray per guest', 'Supper'));
    expect(asMany.dishes.map(({ by, after }) => [by, after?.need.unit])).toEqual([[undefined, 'tray']]);
    const moved = planChanges(served('1 serving per guest', 'Supper'), served('1 serving per guest', 'Late'));
    expect(moved.dishes.map(({ course, by }) => [course, by?.amount.toFraction(), by?.unit])).toEqual([
      ['Late', '40', 'serving'],
      ['Supper', '-40', 'serving'],
    ]);
  });

  test('give a difference of food cost only where both sides are priced', () => {
    const unpriced = planEvent(
      event([dish(pot, '1 serving per guest')], {
        guests: { adults: 10, children: 0, vendors: 0, staff: 0 },
      }),
      kitchen(),
      prices(),
    );
    expect(planChanges(plan(10, pot), unpriced).foodCost).toMatchObject({ after: null, by: undefined });
    expect(planChanges(unpriced, plan(10, pot)).foodCost).toMatchObject({ before: null, by: undefined });
    // 10 and 20 servings take 5 and 10 lb: a bag at 9.00 each; 30 take 15 lb, two bags.
    expect(planChanges(plan(10, pot), plan(30, pot)).foodCost.by?.amount.toFixed(2)).toBe('9.00');
  });
});
