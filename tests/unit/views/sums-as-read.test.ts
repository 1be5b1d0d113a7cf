import { describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { figuresAsRead } from '../../../src/exports/words/figures-as-read.ts';
import { planAsRead } from '../../../src/views/sums-as-read.ts';
import { demoPlans } from '../exports/demo-plans.ts';

const plans = await demoPlans();

/** Every sum of a plan, in one order. */
function sumsOf(plan: PrepPlanDocument): string[] {
  const { event, odds, shopping, orders, lastChange } = plan;
  return [
    event.total,
    ...[...event.payments, ...event.received].map(({ amount }) => amount),
    plan.foodCost ?? '',
    plan.deliveryFees,
    plan.foodUsed ?? '',
    ...shopping.flatMap(({ packs, cost, leftWorth }) => [
      cost ?? '',
      leftWorth ?? '',
      ...packs.flatMap((pack) => [pack.price, pack.cost]),
    ]),
    ...orders.flatMap((each) => [each.goods, each.minimumOrder, each.deliveryFee, each.total, each.short]),
    ...(odds?.dishes ?? []).flatMap(({ more, advice }) => [
      ...more.map(({ cost }) => cost),
      ...(advice ? [advice.missing, advice.leftOver] : []),
    ]),
    ...[lastChange?.total, lastChange?.foodCost].flatMap((each) => (each ? [each.before, each.after] : [])),
  ].filter((sum) => sum !== '');
}

describe('a plan as people read it', () => {
  // Against the sums that the formatter built into Node writes for American readers (ECMA-402, CLDR's data).
  test('has every sum of the demo’s plans as Intl.NumberFormat writes it in American English', () => {
    const form = new Intl.NumberFormat('en-US', { style: 'currency', currency: 'USD' });
    const sums = plans.flatMap(sumsOf);
    expect(sums.length).toBeGreaterThan(400);
    expect(sums.filter((sum) => Number(sum) >= 1000).length).toBeGreaterThan(5);
    const shown = plans.flatMap((plan) => sumsOf(planAsRead(plan, 'en-US')));
    expect(shown).toEqual(sums.map((sum) => form.format(Number(sum))));
  });

  test('has the decimal mark of its sums in every amount and every why', () => {
    const figures = (plan: PrepPlanDocument) =>
      JSON.stringify([
        plan.dishes.map(({ need, why, containers }) => [need.printed, why, containers]),
        plan.recipes.map(({ makes, why, lines }) => [
          makes.printed,
          why,
          lines.map(({ amount }) => amount.printed),
        ]),
        plan.shopping.map(({ need, why, cost }) => [need.printed, why, cost]),
      ]).replace(/"exact":"[^"]*"/g, '');
    const [data, read] = [plans, plans.map((plan) => planAsRead(plan, 'de-DE'))].map((all) =>
      all.map(figures).join(),
    );
    expect(data?.match(/\d\.\d/g)?.length).toBeGreaterThan(100);
    expect(read?.match(/.{9}\d\.\d{1,2}(?!\d).{9}/g)).toBeNull();
    expect(read?.match(/\d,\d/g)?.length).toBeGreaterThan(100);
  });

  test('has all else as in the data, which keeps plain figures and the code of their currency', () => {
    for (const plan of plans) {
      const before = structuredClone(plan);
      const shown = JSON.stringify(planAsRead(plan, 'en-US'));
      expect(plan).toEqual(before);
      expect(plan.event.currency).toBe('USD');
      const plain = shown.replace(
        /(?<=")([+−]?)\$([\d,.]+)(?=")/g,
        (_, sign, sum) => sign + sum.replaceAll(',', ''),
      );
      // Clocks and percentages have tests of their own.
      expect(plain).toBe(JSON.stringify(figuresAsRead(plan, 'en-US')));
    }
  });

  test('follows the locale, and keeps the sign of what a change adds or takes away', () => {
    const [plan] = plans;
    const figures = { before: '2767.67', after: '2941.01', by: '+173.34' };
    const less = { before: '', after: '725.40', by: '−45.55' };
    const none = { before: '', after: '', by: '' };
    const change = {
      what: '',
      on: '',
      dishes: [],
      batches: [],
      packs: [],
      packOut: [],
      orders: [{ supplier: 'Hafen', ...less }],
      deliveryFees: [{ supplier: 'Hafen', ...figures }],
      staff: [],
      payments: [{ label: 'balance', due: '', ...figures }],
      balance: { before: '0.00', after: '-160.00', by: '−160.00' },
      days: [],
      handsOn: none,
      total: figures,
      foodCost: less,
      late: [],
    };
    const german = planAsRead({ ...plan!, lastChange: change }, 'de-DE');
    expect(german.lastChange?.total).toEqual({
      before: '2.767,67\u00a0$',
      after: '2.941,01\u00a0$',
      by: '+173,34\u00a0$',
    });
    const { orders, deliveryFees, payments, balance } = german.lastChange!;
    expect(orders).toEqual([{ supplier: 'Hafen', ...german.lastChange!.foodCost }]);
    expect(deliveryFees).toEqual([{ supplier: 'Hafen', ...german.lastChange!.total }]);
    expect(payments).toEqual([{ label: 'balance', due: '', ...german.lastChange!.total }]);
    expect(balance).toEqual({ before: '0,00\u00a0$', after: '−160,00\u00a0$', by: '−160,00\u00a0$' });
    expect(german.lastChange?.foodCost).toEqual({ before: '', after: '725,40\u00a0$', by: '−45,55\u00a0$' });
  });
});
