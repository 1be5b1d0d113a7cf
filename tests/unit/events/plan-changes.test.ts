import { describe, expect, test } from 'vitest';
import { lateChanges } from '../../../src/engine/plan/changes/late-changes.ts';
import { planChanges } from '../../../src/engine/plan/changes/plan-changes.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
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
        ({ about, what }) => `${about}: ${what}`,
      );
    expect(late('2027-05-10')).toEqual([]);
    // 84 ÷ 10 up is 9 batches, 104 ÷ 10 up is 11: 45 lb and 55 lb, 5 and 6 bags.
    const beansLate = 'beans: quay took orders until 2027-05-10: buy 1 × 10 lb bag elsewhere, or ask';
    expect(late('2027-05-12')).toEqual([beansLate]);
    // The stew is braised on the 13th; on that day itself its cook can still be told.
    expect(late('2027-05-13')).not.toContainEqual(expect.stringContaining('stew'));
    expect(late('2027-05-14')).toEqual([
      'stew: started on 2027-05-13 for 9 batches: cook 2 batches more',
      beansLate,
      'peas: wharf took orders until 2027-05-12: buy 1 × 10 lb bag elsewhere, or ask',
    ]);
    const fewer = lateChanges(
      planChanges(after, before),
      after,
      { today: day('2027-05-14'), orderBy },
      (id) => id,
    );
    expect(fewer.map(({ what }) => what)).toEqual([
      'started on 2027-05-13 for 11 batches: 2 batches of it no longer needed',
      'quay took orders until 2027-05-10: ask whether 1 × 10 lb bag can still be canceled',
      'wharf took orders until 2027-05-12: ask whether 1 × 10 lb bag can still be canceled',
    ]);
  });
});
