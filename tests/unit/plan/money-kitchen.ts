import Fraction from 'fraction.js';
import type { Rental, StaffRole } from '../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import type { Place } from '../../../src/engine/menu/place.ts';
import type { EventInput } from '../../../src/engine/plan/event-input.ts';
import type { MoneySetting } from '../../../src/engine/plan/money/at.ts';
import type { CostKitchen } from '../../../src/engine/plan/money/costs.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import type { OrderedPlan } from '../../../src/engine/plan/purchases/ordered.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { DEFAULT_COUNTS } from '../../../src/engine/quote/counts.ts';
import type { Terms } from '../../../src/engine/quote/terms.ts';
import { orderPlan } from '../../../src/solver/order-plan.ts';
import { sampleChoice, samplePackage, sampleTerms } from '../quote/sample-terms.ts';
import { day, dish, event, food, kitchen, line, must, pack, prices, q, recipe, step } from './builders.ts';

/*
 * A kitchen with one dish, every figure of which can be worked out in the head. For n adults: ½ lb of rice each from
 * batches of 10 lb with 5 lb of grain, so n ÷ 40 bags of 10 lb at 12.00, up, and 15.00 for bringing them; half an
 * hour a batch in proportion, a quarter batch's time at least, in whole minutes, and a quarter to pack, at 20.00 an hour; a server for 15 guests, 4 hours, billed at 30.00 and paid 18.00; plates
 * at 0.50 with a tenth to spare; a drink billed at 2.00 and costing 1.10.
 */
const grain = food('grain');
const rice = recipe('rice', '10 lb', [line(grain, '5 lb', 'as purchased')], {
  steps: [
    step('on the day', 'Boil.', { handsOn: minutes(30), handsOnPerBatch: true }),
    step('at serving', 'Set out.', { handsOn: minutes(60) }),
  ],
});
export const bags = prices(pack('grain', '10 lb bag', '12.00'));

export const terms: Terms = sampleTerms({
  packages: [
    samplePackage({
      tiers: [
        { from: 1, to: 59, perHead: '20.00' },
        { from: 60, to: null, perHead: '18.00' },
      ],
    }),
  ],
  staff: [
    {
      role: 'server',
      name: 'Servers',
      rate: '30.00',
      hours: '4',
      one: 1,
      per: 15,
      counts: DEFAULT_COUNTS,
      atLeast: 0,
    },
  ],
  delivery: { label: 'Delivery', price: '60.00' },
  addOns: [
    { id: 'cordial', name: 'Cordial', class: 'drink', price: '2.00', per: 'guest', counts: DEFAULT_COUNTS },
    { id: 'arch', name: 'Arch', class: 'rental', price: '200.00', per: 'flat', counts: DEFAULT_COUNTS },
  ],
});

const server: StaffRole = {
  id: 'server',
  name: 'Servers',
  price: '30.00',
  pay: '18.00',
  guestsEach: new Map([['buffet', 15]]),
  hours: '4',
  atLeast: 0,
  counts: DEFAULT_COUNTS,
};
const plate: Rental = {
  id: 'plate',
  name: 'Plates',
  amount: must(parsePerGuest('1 each per guest')),
  spare: new Fraction('1/10'),
  styles: [],
  cost: '0.50',
};
const addOn = { counts: DEFAULT_COUNTS, dishes: [] };

/** What the kitchen says of its costs; `way` is what going there costs, as money text. */
export function costs(way: string | undefined, change: Partial<CostKitchen> = {}): CostKitchen {
  const place: Place = { ...terms.place, delivery: '60.00', ...(way !== undefined && { deliveryCost: way }) };
  return {
    currency: 'USD',
    locale: 'en-US',
    staff: new Map([['server', server]]),
    crew: { people: 2, each: minutes(480), from: undefined, pay: '20.00' },
    day: { pack: minutes(15), load: minutes(30), clear: minutes(30), unload: minutes(15) },
    rentals: new Map([['plate', plate]]),
    counts: DEFAULT_COUNTS,
    addOns: new Map([
      [
        'cordial',
        {
          id: 'cordial',
          name: 'Cordial',
          class: 'drink',
          price: '2.00 per guest',
          cost: '1.10 per guest',
          ...addOn,
        },
      ],
      ['arch', { id: 'arch', name: 'Arch', class: 'rental', price: '200.00', ...addOn }],
    ]),
    places: new Map([[place.id, place]]),
    ...change,
  };
}

const quay = {
  id: 'quay',
  name: 'Quay',
  leadDays: 1,
  deliveryDays: [],
  minimumOrder: '0',
  deliveryFee: '15.00',
};

/** An event for so many adults, with both add-ons. */
export function setting(adults: number, kitchenCosts: CostKitchen): MoneySetting {
  const [chosen] = terms.packages;
  if (!chosen) throw new Error('the terms have a package');
  const guests = { adults, children: 0, vendors: 0, staff: 0 };
  const choice: Choice = sampleChoice(guests, { addOns: { cordial: 1, arch: 1 } });
  const input: EventInput = event([dish(rice, '8 oz per guest')], { guests });
  return {
    terms,
    chosen,
    style: 'buffet',
    kitchen: kitchenCosts,
    input,
    choice,
    buying: {
      prices: bags,
      day: input.buyingDay,
      currency: 'USD',
      suppliers: new Map([['quay', quay]]),
      usual: new Set(['quay']),
      stock: new Map(),
    },
  };
}

/** The event's plan with its order. */
export function ordered(of: MoneySetting, inStock?: string): Promise<OrderedPlan> {
  const stock = inStock === undefined ? [] : [{ ingredient: 'grain', amount: q(inStock), useBy: undefined }];
  return orderPlan(
    planEvent(of.input, kitchen(), bags),
    bags,
    new Map(stock.length > 0 ? [['grain', stock]] : []),
    {
      suppliers: of.buying.suppliers,
      kitchen: of.kitchen,
      today: day('2027-05-01'),
      secondSupplierSaves: '0',
    },
  );
}

/** The margin in cents for so many adults, by the figures above and nothing of the code; `way` in cents. */
export function marginInCents(n: number, way: number): number {
  const servers = Math.ceil(n / 15);
  const earned = n * (n < 60 ? 2000 : 1800) + servers * 12_000 + 6000 + n * 200 + 20_000;
  const food = Math.ceil(n / 40) * 1200 + 1500;
  // 20 guests a batch: a guest is a minute and a half, five are the quarter batch.
  const minutesAtWork = Math.ceil((3 * Math.max(n, 5)) / 2);
  const labour = servers * 7200 + Math.round(((minutesAtWork + 15) * 100) / 3);
  return earned - food - labour - way - Math.ceil((n * 11) / 10) * 50 - n * 110;
}
