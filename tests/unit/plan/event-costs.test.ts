import { beforeEach, describe, expect, test } from 'vitest';
import { NO_DRINKS } from '../../../src/engine/drinks/drink-counts.ts';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import type { MoneySetting } from '../../../src/engine/plan/money/at.ts';
import {
  type CostKitchen,
  type CostLine,
  costsOf,
  type EventWork,
  spentOn,
} from '../../../src/engine/plan/money/costs.ts';
import { DEFAULT_COUNTS } from '../../../src/engine/quote/counts.ts';
import type { Terms } from '../../../src/engine/quote/terms.ts';
import { inWords } from '../../in-words.ts';
import { sampleDish, sampleGuests } from '../quote/sample-terms.ts';
import { costs, setting, terms } from './money-kitchen.ts';

const usd = (text: string) => money(text, 'USD');

/** Fifty adults, 24.00 of food and 15.00 of fees, 75 minutes of preparation. */
const work: MoneySetting & EventWork = {
  ...setting(50, costs('40.00')),
  food: { goods: usd('24.00'), fees: usd('15.00') },
  prepMinutes: 75,
  drinks: NO_DRINKS,
};
const linesOf = (
  kitchen: CostKitchen,
  change: Partial<typeof work> = {},
  sold: Partial<Terms> = {},
): CostLine[] => {
  const done = { ...work, ...change };
  return costsOf(done, { ...done, kitchen, terms: { ...terms, ...sold } });
};
const found = (lines: readonly CostLine[], key: string) => lines.find((each) => each.key === key);
const keys = (lines: readonly CostLine[]) => lines.map(({ key }) => key);
/** A line as it is read: what it is for, and how it comes about. */
const told = (lines: readonly CostLine[], key: string) => {
  const line = found(lines, key);
  if (!line) return undefined;
  const why = typeof line.why === 'string' || 'key' in line.why ? inWords(line.why) : line.why;
  return [inWords(line.label), why];
};

describe('each cost of an event', () => {
  /* Made again for each test, so that each stands for what it asks. */
  let lines: CostLine[];
  beforeEach(() => {
    lines = linesOf(costs('40.00'));
  });

  test('says what it is for and how it is calculated', () => {
    expect(told(lines, 'food')).toEqual(['Food, in whole packs', 'the packs of the shopping list']);
    expect(told(lines, 'food-fees')).toEqual([
      'Delivery fees of suppliers',
      'one for each supplier in the order',
    ]);
    expect(told(lines, 'staff:server')).toEqual([
      'Servers, pay',
      {
        why: expect.objectContaining({ of: 'service', people: 4, hours: '4' }),
        quantity: '16',
        unitPrice: '18.00',
      },
    ]);
    expect(told(lines, 'prep')).toEqual([
      'Preparation and packing in the kitchen',
      '1 h 30 min hands-on before serving, 15 min of it packing, × $20.00 an hour',
    ]);
    expect(told(lines, 'delivery')).toEqual([`Delivery to ${terms.place.name}, cost`, 'from kitchen.yaml']);
    // 50 plates and a tenth more.
    expect(told(lines, 'rental:plate')).toEqual(['Plates', '55 pieces, spares included, × $0.50']);
    expect(told(lines, 'add-on:cordial')).toEqual([
      'Cordial, cost',
      { why: expect.objectContaining({ of: 'guests' }), quantity: '50', unitPrice: '1.10' },
    ]);
  });

  test('is of one kind, by which labor and food are summed', () => {
    const sums = (['food', 'labour', 'delivery', 'rental', 'add-on'] as const).map((kind) => {
      const sum = spentOn(lines, 'USD', kind);
      return sum && moneyText(sum);
    });
    // Preparation and packing are an hour and a half at 20.00: 30.00, beside 288.00 for those who serve.
    expect(sums).toEqual(['39.00', '318.00', '40.00', '27.50', '55.00']);
  });

  test('that is not stated names where to state it, and is left out of the sum', () => {
    const silent = linesOf(costs(undefined, { crew: undefined }));
    expect(told(silent, 'prep')).toEqual([
      'Preparation and packing in the kitchen',
      '1 h 30 min hands-on, 15 min of it packing; the crew’s pay is not stated (crew: pay:)',
    ]);
    expect(told(silent, 'delivery')).toEqual([
      `Delivery to ${terms.place.name}, cost`,
      'its cost to the kitchen is not stated (delivery cost: at the place)',
    ]);
    expect(told(silent, 'add-on:arch')).toEqual([
      'Arch, cost',
      'its cost to the kitchen is not stated (cost: at the add-on)',
    ]);
    expect(['prep', 'delivery', 'add-on:arch'].map((key) => found(silent, key)?.amount)).toEqual([
      null,
      null,
      null,
    ]);
    const unpriced = linesOf(costs('40.00'), { food: { goods: null, fees: usd('15.00') } });
    expect(told(unpriced, 'food')?.[1]).toBe('a food has no price; the shopping list shows which');
    expect(spentOn(unpriced, 'USD')).toBeNull();
    expect(spentOn(unpriced, 'USD', 'labour')).toEqual(usd('318.00'));
  });

  test('of a role, an add-on or a place that the kitchen no longer has is not guessed', () => {
    const gone = linesOf(costs('40.00', { staff: new Map(), addOns: new Map(), places: new Map() }));
    expect(['staff:server', 'delivery', 'add-on:cordial'].map((key) => found(gone, key)?.amount)).toEqual([
      null,
      null,
      null,
    ]);
    expect(told(gone, 'staff:server')?.[1]).toBe('kitchen.yaml no longer has the role server');
  });
});

describe('the crew between its tasks', () => {
  const there = (all: number, atWork: number) =>
    linesOf(costs('40.00'), { kitchenHours: { there: all, work: atWork } });

  test('is paid too, and the count served makes no difference to it', () => {
    // 2 h 40 min there, 1 h 30 min of it work: 1 h 10 min at 20.00 is 23.33.
    expect(told(there(160, 90), 'between')).toEqual([
      'Kitchen crew between tasks',
      'there 2 h 40 min from each cook’s first task of a day to the last, 1 h 30 min of it hands-on and packing: 1 h 10 min, loading included, × $20.00 an hour',
    ]);
    expect(found(there(160, 90), 'between')?.amount).toEqual(usd('23.33'));
    expect(spentOn(there(160, 90), 'USD', 'labour')).toEqual(usd('341.33'));
  });

  test('has no line where it has no such time, or its pay is not stated', () => {
    expect(keys(there(90, 90))).not.toContain('between');
    expect(keys(linesOf(costs('40.00')))).not.toContain('between');
    const silent = linesOf(costs('40.00', { crew: undefined }), { kitchenHours: { there: 160, work: 90 } });
    expect(keys(silent)).not.toContain('between');
  });
});

describe('what costs nothing has no line', () => {
  test('work that nobody does before serving', () => {
    expect(keys(linesOf(costs('40.00'), { prepMinutes: 0 }))).not.toContain('prep');
  });

  test('a way that is neither sold nor costs anything; one that only costs has one', () => {
    expect(keys(linesOf(costs(undefined), {}, { delivery: null }))).not.toContain('delivery');
    expect(found(linesOf(costs('40.00'), {}, { delivery: null }), 'delivery')?.amount).toEqual(usd('40.00'));
  });

  test('people of a role that serves another menu, or of whom none are needed', () => {
    const [server] = terms.staff;
    if (!server) throw new Error('the terms have a role');
    const serving = (change: object) =>
      keys(linesOf(costs('40.00'), {}, { staff: [{ ...server, ...change }] }));
    expect(serving({ packages: [work.chosen.id] })).toContain('staff:server');
    expect(serving({ packages: ['another'] })).not.toContain('staff:server');
    expect(serving({ counts: { staff: '1' } })).not.toContain('staff:server');
  });

  test('rentals that are the kitchen’s own, and those that nobody of the event is counted for', () => {
    const [plate] = costs(undefined).rentals.values();
    if (!plate) throw new Error('the kitchen has plates');
    const { cost: _, ...own } = plate;
    const rented = (rental: typeof own & { cost?: string }) =>
      keys(linesOf(costs('40.00', { rentals: new Map([['plate', rental]]) })));
    expect(rented(own)).not.toContain('rental:plate');
    expect(rented({ ...plate, counts: { vendors: '1' } })).not.toContain('rental:plate');
  });

  test('add-ons that are not taken, and those that are food, which is among the food already', () => {
    const choice = { ...work.choice, addOns: { cordial: 0, arch: 1 } };
    expect(keys(linesOf(costs('40.00'), { choice }))).not.toContain('add-on:cordial');
    const { choice: all } = work;
    const none = linesOf(costs('40.00'), { choice: { ...all, addOns: {} } });
    expect(keys(none).filter((key) => key.startsWith('add-on'))).toEqual([]);
    const sold = (dishes: readonly ReturnType<typeof sampleDish>[]) =>
      keys(linesOf(costs('40.00'), {}, { addOns: terms.addOns.map((each) => ({ ...each, dishes })) }));
    expect(sold([sampleDish()])).not.toContain('add-on:arch');
    expect(sold([])).toContain('add-on:arch');
  });

  test('a drink per guest where no guest of those it counts comes', () => {
    const guests = sampleGuests(0, { vendors: 3 });
    const choice = { ...work.choice, guests };
    expect(DEFAULT_COUNTS).not.toHaveProperty('vendors');
    expect(keys(linesOf(costs('40.00'), { choice }))).not.toContain('add-on:cordial');
  });
});
