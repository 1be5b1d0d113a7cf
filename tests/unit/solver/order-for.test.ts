import { describe, expect, test } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import type { PlacedOrder } from '../../../src/engine/plan/purchases/ordered.ts';
import type { Supplier } from '../../../src/engine/purchase/price-list.ts';
import type { StockLot } from '../../../src/engine/purchase/stock.ts';
import { orderFor } from '../../../src/solver/order-for.ts';
import { orderPlan } from '../../../src/solver/order-plan.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, pack, prices, q, recipe, step } from '../plan/builders.ts';

const quay: Supplier = {
  id: 'quay',
  name: 'Quay',
  leadDays: 2,
  deliveryDays: [2, 4],
  minimumOrder: '0',
  deliveryFee: '10.00',
};
const setting = (today = '2027-05-01') => ({
  suppliers: new Map([['quay', quay]]),
  kitchen: { currency: 'USD', locale: 'en-US' },
  secondSupplierSaves: '0',
  today: day(today),
});

const rice = food('rice', { storage: 'dry' });
const trout = food('trout', { storage: 'chilled', keepsDays: 2 });
/* For 100 guests: 20 lb of rice, begun two days before; 30 lb of trout, begun on the day. */
const pilaf = recipe('pilaf', '100 servings', [line(rice, '20 lb')], {
  steps: [step('2 days before', 'Soak.'), step('on the day', 'Steam.')],
});
const fish = recipe('fish', '100 servings', [line(trout, '30 lb')], { steps: [step('on the day', 'Bake.')] });
const offered = prices(
  pack('rice', '25 lb sack', '30.00'),
  pack('rice', '5 lb bag', '7.00'),
  pack('trout', '10 lb box', '80.00'),
);
const supper = (id: string, date: string) =>
  planEvent(
    event([dish(pilaf, '1 serving per guest'), dish(fish, '1 serving per guest')], { id, date: day(date) }),
    kitchen(),
    offered,
  );
const lines = (order: PlacedOrder | undefined) =>
  order?.purchases.flatMap(({ packs }) =>
    packs.map(({ pack: { packText }, count }) => `${count} × ${packText}`),
  );

describe('a plan’s order', () => {
  test('takes stock off first, values the need and what is left at pack prices, and keeps fees apart', async () => {
    const stock = new Map<string, StockLot[]>([
      ['rice', [{ ingredient: 'rice', amount: q('5 lb'), useBy: undefined }]],
      ['trout', [{ ingredient: 'trout', amount: q('10 lb'), useBy: day('2027-05-14') }]],
    ]);
    const plan = await orderPlan(supper('supper', '2027-05-15'), offered, stock, setting());
    const [bought, boughtTrout] = ['rice', 'trout'].map((id) =>
      plan.purchases.find(({ ingredient }) => ingredient.id === id),
    );
    // 20 − 5 = 15 lb: three bags at 21.00 against the sack at 30.00.
    expect(bought?.packs.map(({ pack: { packText }, count }) => `${count} × ${packText}`)).toEqual([
      '3 × 5 lb bag',
    ]);
    expect(allInWords(bought?.why).slice(0, 2)).toEqual([
      '20 lb − 5 lb in stock = 15 lb to buy',
      '3 × 5 lb bag from quay at $7.00 = $21.00',
    ]);
    // The trout in stock is past its day on the 15th.
    expect(boughtTrout?.stock).toBeNull();
    expect(foundInWords(plan.findings).map(({ about, what }) => `${about}: ${what}`)).toEqual([
      'trout: 10 lb of trout in stock will be past its use-by when it is needed, so fresh is bought',
    ]);
    // 21 + 240; used 20 lb × 1.40 + 240; the fee stands by itself.
    expect([plan.foodCost, plan.order.used, plan.order.fees].map((each) => each && moneyText(each))).toEqual([
      '261.00',
      '268.00',
      '10.00',
    ]);
  });

  test('covered by stock whole costs nothing and is valued at the lowest rate on offer', async () => {
    const stock = new Map([['rice', [{ ingredient: 'rice', amount: q('50 lb'), useBy: undefined }]]]);
    const plan = await orderPlan(supper('supper', '2027-05-15'), offered, stock, setting());
    const bought = plan.purchases.find(({ ingredient }) => ingredient.id === 'rice');
    expect([bought?.packs.length, bought?.cost && moneyText(bought.cost)]).toEqual([0, '0.00']);
    // 30.00 ÷ 25 lb = 1.20 × 20 lb.
    expect(bought?.used && moneyText(bought.used)).toBe('24.00');
    expect(exactText(bought?.stock ?? q('1 lb'))).toBe('20 lb');
  });

  test('is due in time for the first task, says when that is past, and that fish would not keep till it is cooked', async () => {
    // Rice is soaked on Thursday the 13th: delivery that day, order by the 11th. Trout then keeps until the 15th.
    const onTime = await orderPlan(supper('supper', '2027-05-15'), offered, new Map(), setting('2027-05-11'));
    expect(onTime.order.orders).toMatchObject([{ deliverOn: '2027-05-13', orderBy: '2027-05-11' }]);
    expect(onTime.findings).toEqual([]);
    // A Monday's supper: soaked on Saturday the 15th, delivered on Thursday, cooked four days later.
    const late = await orderPlan(supper('supper', '2027-05-17'), offered, new Map(), setting('2027-05-12'));
    expect(foundInWords(late.findings).map(({ about, what }) => `${about}: ${what}`)).toEqual([
      'quay: to arrive in time for Saturday, May 15, 2027, the order from Quay had to go out by Tuesday, May 11, 2027 (delivery on Thursday, May 13, 2027), and that date has passed',
      'trout: trout, delivered on Thursday, May 13, 2027, keeps 2 days, but is still needed on Monday, May 17, 2027',
    ]);
  });

  test('says by how much it may be from the best where the solver stopped at its limit', async () => {
    // Six houses whose minimum orders press, more than the exact search goes through: that is for the solver.
    const names = ['alder', 'birch', 'cedar', 'hazel', 'larch', 'rowan'];
    const houses = names.map((id, index): [string, Supplier] => [
      id,
      { ...quay, id, name: id, minimumOrder: `${90 + 20 * index}.00`, deliveryFee: '10.00' },
    ]);
    const foods = Array.from({ length: 5 }, (_, index) => food(`food-${index}`, { storage: 'dry' }));
    const list = prices(
      ...foods.flatMap(({ id }, index) =>
        names.flatMap((supplier, at) => [
          pack(id, '10 lb', `${14 + ((index * 7 + at * 5) % 11)}.37`, { supplier }),
          pack(id, '3 lb', `${5 + ((index * 5 + at * 3) % 7)}.19`, { supplier }),
        ]),
      ),
    );
    const mash = recipe(
      'mash',
      '100 servings',
      foods.map((each, index) => line(each, `${9 + index} lb`)),
    );
    const plan = planEvent(event([dish(mash, '1 serving per guest')]), kitchen(), list);
    const limits = { seconds: 0, nodes: 0 };
    const pressed = { ...setting(), suppliers: new Map(houses) };
    const stopped = await orderPlan(plan, list, new Map(), { ...pressed, limits });
    const best = await orderPlan(plan, list, new Map(), pressed);
    const told = foundInWords(stopped.findings).find(({ what }) =>
      what.includes('there may be a cheaper order'),
    );
    expect(told?.what).toMatch(/by at most \$\d+\.\d\d; the search stopped at its limit/);
    const most = Number(/\$([\d.]+)/.exec(told?.what ?? '')?.[1]);
    const sums = [stopped, best].map(
      ({ foodCost, order }) => Number(foodCost && moneyText(foodCost)) + Number(moneyText(order.fees)),
    ) as [number, number];
    // What is said holds: the best that the solver finds with all its time is no further below than that.
    expect(sums[0] - sums[1]).toBeGreaterThanOrEqual(0);
    expect(sums[0] - sums[1]).toBeLessThanOrEqual(most);
    expect(foundInWords(best.findings).filter(({ what }) => what.includes('cheaper'))).toEqual([]);
  });
});

describe('one order for several events', () => {
  test('buys together what keeps, and says what that saves', async () => {
    const both = [supper('b', '2027-05-15'), supper('a', '2027-05-15')];
    const joint = await orderFor(both, offered, new Map(), setting());
    // Apart: 20 lb in four bags 28.00 + 240 + 10 each, 556.00. Together 40 lb: a sack and three bags 51.00 + 480 + 10.
    expect(joint.rounds.map(lines)).toEqual([['1 × 25 lb sack', '3 × 5 lb bag', '6 × 10 lb box']]);
    expect([joint.total, joint.separate, joint.saves].map((each) => each && moneyText(each))).toEqual([
      '541.00',
      '556.00',
      '15.00',
    ]);
  });

  test('buys for batches as they are cooked: one that two events share is bought for once', async () => {
    const whole = { ...pilaf, makes: [q('30 servings')] as const, batches: 'whole' as const };
    const lunch = (id: string, adults: number) =>
      planEvent(
        event([dish(whole, '1 serving per guest')], {
          id,
          date: day('2027-05-15'),
          guests: { adults, children: 0, vendors: 0, staff: 0 },
        }),
        kitchen(),
        offered,
      );
    // 40 and 20 guests are 2 and 1 batches of 30 by themselves and 2 together: 2 × 20 lb rather than 3 × 20 lb.
    const joint = await orderFor([lunch('a', 40), lunch('b', 20)], offered, new Map(), setting());
    const [rice] = joint.rounds[0]?.purchases ?? [];
    expect(rice && exactText(rice.need)).toBe('40 lb');
    expect(rice?.usedBy.map(({ need }) => exactText(need))).toEqual(['80/3 lb', '40/3 lb']);
  });

  test('leaves to a second round what would spoil before the later event', async () => {
    // The rice of both in one round with the first trout; the second trout a week later: 51 + 240 + 10, 240 + 10.
    const both = [supper('a', '2027-05-15'), supper('b', '2027-05-22')];
    const joint = await orderFor(both, offered, new Map(), setting());
    expect(joint.rounds.map(lines)).toEqual([
      ['1 × 25 lb sack', '3 × 5 lb bag', '3 × 10 lb box'],
      ['3 × 10 lb box'],
    ]);
    expect(joint.total && moneyText(joint.total)).toBe('551.00');
    expect(joint.saves && moneyText(joint.saves)).toBe('5.00');
  });

  test('gives stock to the earlier event, and none of it twice', async () => {
    const stock = new Map([['rice', [{ ingredient: 'rice', amount: q('30 lb'), useBy: undefined }]]]);
    const joint = await orderFor(
      [supper('b', '2027-05-16'), supper('a', '2027-05-15')],
      offered,
      stock,
      setting(),
    );
    // 40 lb needed, 30 in stock: 10 lb in two bags.
    expect(lines(joint.rounds[0])).toEqual(['2 × 5 lb bag', '6 × 10 lb box']);
  });
});
