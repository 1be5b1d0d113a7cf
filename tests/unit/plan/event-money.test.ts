import { beforeEach, describe, expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import { type EventMoney, eventMoney, staffMealsCost } from '../../../src/engine/plan/money/event-money.ts';
import { revenueOf } from '../../../src/engine/plan/money/revenue.ts';
import { quote } from '../../../src/engine/quote/quote.ts';
import { sampleTerms } from '../quote/sample-terms.ts';
import { dish, event, food, line, pack, prices, recipe } from './builders.ts';
import { bags, costs, marginInCents, ordered, setting } from './money-kitchen.ts';

const fifty = setting(50, costs('40.00'));
/* Worked out anew for each test, so that each stands for what it asks. */
let money50: EventMoney;
beforeEach(async () => {
  money50 = eventMoney(await ordered(fifty), fifty.choice, fifty);
});
const text = (sum: { amount: unknown } | null) => (sum ? moneyText(sum as never) : null);

describe('the money of an event for 50, worked out by hand', () => {
  test('earns what is billed without tax, line by line', () => {
    // 50 × 20.00, 50 × 2.00, 200.00, 4 servers × 4 h × 30.00, 60.00; 7 % and 6 % of tax come on top and are left out.
    expect(money50.revenue.lines.map(({ key, amount }) => `${key} ${moneyText(amount)}`)).toEqual([
      'menu 1000.00',
      'add-on:cordial 100.00',
      'add-on:arch 200.00',
      'staff:server 480.00',
      'delivery 60.00',
    ]);
    expect(moneyText(money50.revenue.net)).toBe('1840.00');
  });

  test('costs packs, fees, pay, preparation, the way, plates and add-ons, and guesses nothing that is not said', () => {
    expect(money50.costs.map(({ key, amount }) => `${key} ${text(amount)}`)).toEqual([
      'food 24.00',
      'food-fees 15.00',
      'staff:server 288.00',
      'prep 30.00',
      'delivery 40.00',
      'rental:plate 27.50',
      'add-on:cordial 55.00',
      'add-on:arch null',
    ]);
    expect([text(money50.spent), text(money50.margin)]).toEqual(['479.50', '1360.50']);
    expect(marginInCents(50, 4000)).toBe(136_050);
  });

  test('says what its food is worth from each side: 12½ lb of 20 lb are needed', () => {
    const { used, bought, fees, left, stock } = money50.food;
    expect([used, bought, fees, left, stock].map(text)).toEqual(['15.00', '24.00', '15.00', '9.00', '0.00']);
    // 1360.50 + 24.00 − 15.00: what is left over is not lost.
    expect(text(money50.marginUsed)).toBe('1369.50');
  });

  test('sets food against food and drink billed, labour and margin against all that is earned', () => {
    const { foodUsed, foodBought, labour, margin } = money50.shares;
    // 15 ÷ 1100, 39 ÷ 1100, 318 ÷ 1840, 1360.50 ÷ 1840
    expect([foodUsed, foodBought, labour, margin].map((share) => share?.toFixed(4))).toEqual([
      '0.0136',
      '0.0355',
      '0.1728',
      '0.7394',
    ]);
  });
});

describe('what a margin rests on', () => {
  test('pay that is not said leaves its line without a sum, and out of the total', async () => {
    const unpaid = setting(50, costs(undefined, { crew: undefined, rentals: new Map() }));
    const { costs: lines, spent } = eventMoney(await ordered(unpaid), unpaid.choice, unpaid);
    expect(lines.filter(({ amount }) => amount === null).map(({ key }) => key)).toEqual([
      'prep',
      'delivery',
      'add-on:arch',
    ]);
    expect(text(spent)).toBe('382.00');
  });

  test('a food without a price leaves no margin at all, not a flattering one', async () => {
    const plan = await ordered(fifty);
    const unknown = { ...plan, foodCost: null };
    const { spent, margin, marginUsed, shares } = eventMoney(unknown, fifty.choice, fifty);
    expect([spent, margin, marginUsed, shares.foodUsed, shares.margin]).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
  });

  test('pays for the hours people are there and not for those sold, whichever are more', async () => {
    const plan = await ordered(fifty);
    const at = (from: number, until: number) => {
      const sold = { role: 'server', name: 'Servers', people: 4, each: minutes(240) };
      const hours = [{ sold, from, until, served: 0, missing: 4 * (until - from - 240) }];
      const { costs: lines, margin } = eventMoney(plan, fifty.choice, { ...fifty, hours });
      return [text(lines.find(({ key }) => key === 'staff:server')?.amount ?? null), text(margin)];
    };
    // 4 × 7 h 45 × 18.00, 270.00 more than the 4 h sold; 4 × 3 h × 18.00, 72.00 less.
    expect(at(900, 1365)).toEqual(['558.00', '1090.50']);
    expect(at(900, 1080)).toEqual(['216.00', '1432.50']);
  });

  test('what the store-room gives is planned and not bought again', async () => {
    const { food: eaten } = eventMoney(await ordered(fifty, '5 lb'), fifty.choice, fifty);
    // 12½ lb needed, 5 lb in stock: one bag, of which 2½ lb are left; 5 lb are worth 6.00.
    expect([eaten.used, eaten.bought, eaten.left, eaten.stock].map(text)).toEqual([
      '15.00',
      '12.00',
      '3.00',
      '6.00',
    ]);
  });

  test('tax within the prices is never earned: 10 × 10.70 with 7 % in it are 100.00', () => {
    const base = sampleTerms();
    const gross = sampleTerms({
      place: { ...base.place, taxIncluded: true },
      packages: base.packages.map((each) => ({ ...each, tiers: [{ from: 1, to: null, perHead: '10.70' }] })),
    });
    const guests = { adults: 10, children: 0, vendors: 0, staff: 0 };
    const priced = quote(gross, { ...fifty.choice, guests, addOns: {} });
    const { lines, net, food: eaten } = revenueOf(priced, gross);
    expect(lines.map(({ amount }) => moneyText(amount))).toEqual(['107.00', '-7.00']);
    expect(lines.map(({ why }) => why)).toEqual([
      { why: expect.objectContaining({ of: 'meals' }), quantity: '10', unitPrice: '10.70' },
      { of: 'tax within', rate: '7 %', base: '107.00' },
    ]);
    expect([net, eaten].map(moneyText)).toEqual(['100.00', '100.00']);
  });

  test('the crew’s own meals are told apart where a dish counts them, and only there', () => {
    const soup = recipe('soup', '1 gal', [line(food('leek'), '2 lb', 'as purchased')]);
    const list = prices(pack('leek', '5 lb', '10.00'));
    const guests = { adults: 20, children: 0, vendors: 0, staff: 4 };
    const fed = event([dish(soup, '1 pt per guest', { counts: 'adults, staff' })], { guests });
    // 4 × 1 pt = ½ gal, 1 lb of leeks at 2.00.
    expect(staffMealsCost(fed, list, 'USD')).toEqual(money('2', 'USD'));
    const unfed = event([dish(soup, '1 pt per guest')], { guests });
    expect(staffMealsCost(unfed, list, 'USD')).toBeUndefined();
    expect(staffMealsCost(fed, bags, 'USD')).toBeNull();
    // Nobody of the crew comes, and of a dish that guests choose nobody knows whether the crew does.
    expect(staffMealsCost({ ...fed, guests: { ...guests, staff: 0 } }, list, 'USD')).toBeUndefined();
    const mains = event([dish(soup, '1 pt per guest', { counts: 'adults, staff', chosenBy: 3 })], { guests });
    expect(staffMealsCost(mains, list, 'USD')).toBeUndefined();
  });
});
