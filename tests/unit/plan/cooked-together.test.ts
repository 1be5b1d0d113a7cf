import { describe, expect, test } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { cookedTogether } from '../../../src/engine/plan/days/cooked-together.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { day, dish, event, food, kitchen, line, pack, prices, recipe, step } from './builders.ts';

const beans = food('beans');
const stock = recipe('stock', '1 gal', [line(beans, '1 lb')], {
  batches: 'whole',
  steps: [step('the day before', 'Simmer')],
});
const soup = recipe('soup', '1 gal', [line(stock, '1 qt'), line(beans, '2 lb')], {
  batches: 'whole',
  steps: [step('on the day', 'Heat')],
});
const market = prices(pack('beans', '5 lb', '9.00'), pack('salt', '1 lb', '1.00'));

function plan(id: string, adults: number, date = '2027-05-15', of = soup) {
  const guests = { adults, children: 0, vendors: 0, staff: 0 };
  const input = event([dish(of, '8 fl oz per guest')], { id, occasion: id, guests, date: day(date) });
  return planEvent(input, kitchen(), market);
}

const uses = (of: ReturnType<typeof plan>) =>
  of.purchases.map(({ need, usedBy }) => [
    exactText(need),
    usedBy.map((use) => `${use.recipe} ${exactText(use.need)}`).sort(),
  ]);

describe('what events of one day buy', () => {
  /*
   * By hand: 1¼ and ⅝ gal of soup are 2 + 1 batches by themselves and 2 together, so each takes ⅔ of its own. Their stock is 1 + 1
   * batches by itself, and 1 for both: a half. Beans: 4 × ⅔ + ½ and 2 × ⅔ + ½, 5 lb in all.
   */
  test('is their share of the batches cooked together', () => {
    const [lunch, dinner] = cookedTogether([plan('lunch', 20), plan('dinner', 10)]);
    expect(uses(lunch!)).toEqual([['19/6 lb', ['soup 8/3 lb', 'stock 1/2 lb']]]);
    expect(uses(dinner!)).toEqual([['11/6 lb', ['soup 4/3 lb', 'stock 1/2 lb']]]);
    const alone = plan('lunch', 20).purchases[0];
    expect(lunch!.purchases[0]?.usedBy.map(({ why }) => why)).toEqual(alone?.usedBy.map(({ why }) => why));
  });

  test('is its own where no batch is saved, where the dates differ, and of what only one of them uses', () => {
    const apart = [plan('lunch', 20), plan('dinner', 10, '2027-05-22')];
    expect(cookedTogether(apart)).toEqual(apart);
    const dip = recipe('dip', '1 gal', [line(beans, '1 lb')], { steps: [step('on the day', 'Mash')] });
    const exact = [plan('lunch', 20, '2027-05-15', dip), plan('dinner', 10, '2027-05-15', dip)];
    expect(cookedTogether(exact)).toEqual(exact);
    const salad = recipe('salad', '1 gal', [line(food('salt'), '1 lb')]);
    const three = cookedTogether([
      plan('lunch', 20),
      plan('dinner', 10),
      plan('tea', 16, '2027-05-15', salad),
    ]);
    expect(uses(three[2]!)).toEqual([['1 lb', ['salad 1 lb']]]);
  });
});
