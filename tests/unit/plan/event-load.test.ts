import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import type { Carrier } from '../../../src/engine/kitchen/carrier.ts';
import type { Container } from '../../../src/engine/kitchen/container.ts';
import { parseTemperature } from '../../../src/engine/measure/temperature.ts';
import type { ServedOn } from '../../../src/engine/plan/clock/day-clock.ts';
import type { EventDish, EventInput } from '../../../src/engine/plan/event-input.ts';
import { eventLoad } from '../../../src/engine/plan/load/event-load.ts';
import { foodGrams } from '../../../src/engine/plan/load/food-weight.ts';
import { neededAt, type PackedFood, packedFood } from '../../../src/engine/plan/load/packed-food.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { carrierFindings } from '../../../src/exports/plan/carriers.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { dish, event, food, kitchen, line, must, prices, q, recipe, step } from './builders.ts';

const PAN: Container = {
  id: 'pan',
  name: 'Pan',
  holds: q('5 lb'),
  fill: new Fraction(1n),
  grams: new Fraction(1000n),
};
const containers = new Map([[PAN.id, PAN]]);
const box: Carrier = {
  id: 'box',
  name: 'Box',
  count: 9,
  for: ['hot', 'cold'],
  holds: [{ count: 4, container: 'pan' }],
  grams: new Fraction(8000n),
};
const LOADED = 10 * 60;
const SERVED = 12 * 60;

function planned(dishes: readonly EventDish[], facts: Partial<EventInput> = {}) {
  const guests = { adults: 10, children: 0, vendors: 0, staff: 0 };
  const shelves = { ...kitchen(), containers };
  return planEvent(event(dishes, { guests, ...facts }), shelves, prices());
}

type Plan = ReturnType<typeof planned>;

/** Served at noon, loaded at ten; with steps at the place by recipe, number and minute. */
function servedOf(plan: Plan, steps: readonly [string, number, number][] = []): ServedOn {
  return {
    plan,
    load: { begins: LOADED },
    clock: { courses: new Map([['Table', { from: SERVED }]]), serve: SERVED - 30 },
    place: { steps: steps.map(([id, number, begins]) => ({ batch: { recipe: { id } }, number, begins })) },
  } as unknown as ServedOn;
}

function loadOf(of: Recipe, perGuest: string, facts: Partial<Carrier> = {}, input: Partial<EventInput> = {}) {
  const plan = planned([dish(of, perGuest)], input);
  const carriers = new Map([[box.id, { ...box, ...facts }]]);
  return eventLoad(plan, servedOf(plan), { containers, carriers });
}

const stew = recipe('stew', '10 lb', [line(food('beans'), '10 lb')], { hold: 'hot', pack: { carry: 'pan' } });
const slaw = recipe('slaw', '10 lb', [line(food('cabbage'), '10 lb')], {
  hold: 'cold',
  pack: { carry: 'pan' },
});
const POUND = 453.59237;

describe('what food on the van weighs', () => {
  const weight = (of: Recipe, amount: string) => {
    const packed = { kind: 'dish', planned: { dish: { recipe: of } } } as unknown as PackedFood;
    return foodGrams(packed, q(amount))?.valueOf();
  };
  const beans = line(food('beans'), '5 lb');

  test('is what its recipe states, or as much as water where only a volume is known', () => {
    expect(weight(recipe('chili', ['1 gal', '8 lb'], [beans]), '2 gal')).toBeCloseTo(16 * POUND, 6);
    expect(weight(recipe('broth', '1 gal', [beans]), '2 l')).toBe(2000);
  });

  test('is what goes into it where its recipe states neither, parts of parts too, and unknown where one is', () => {
    const sauce = recipe('sauce', '1 batch', [line(food('tomato'), '3 lb'), line(food('oil'), '1 lb')]);
    const bake = recipe('bake', '10 servings', [beans, line(sauce, '½ batch')]);
    expect(weight(bake, '5 servings')).toBeCloseTo(3.5 * POUND, 6);
    expect(
      weight(recipe('rolls', '10 rolls', [beans, line(food('egg'), '3 each')]), '5 rolls'),
    ).toBeUndefined();
    expect(weight(bake, '1 pan')).toBeUndefined();
    expect(weight(recipe('air', '1 batch', []), '1 batch')).toBeUndefined();
  });

  test('of a food that a step at the place takes is by what it is sold as, or by its own recipe', () => {
    const part = (item: ReturnType<typeof line>, amount: string) => {
      const packed = { kind: 'component', component: { line: item } } as unknown as PackedFood;
      return foodGrams(packed, q(amount))?.valueOf();
    };
    const egg = food('egg', { sold: ['1 dozen = 24 oz', '1 dozen = 12 each'] });
    expect(part(line(egg, '1 each'), '6 each')).toBeCloseTo(0.75 * POUND, 6);
    expect(part(line(stew, '1 lb'), '2 lb')).toBeCloseTo(2 * POUND, 6);
  });
});

describe('the food that travels', () => {
  const there = recipe('fritters', '10 lb', [line(food('corn'), '10 lb')], {
    steps: [step('on the day', 'Fry', { at: 'place' })],
  });
  const plate = recipe('plate', '10 lb', [line(food('greens'), '10 lb')], {
    steps: [step('on the day', 'Wash'), step('at serving', 'Plate')],
  });

  test('is every dish but what is made at the place, whose foods go instead', () => {
    const plan = planned([dish(stew, '1 lb per guest'), dish(there, '½ lb per guest')]);
    expect(
      packedFood(plan, containers).map(({ kind, name, amount, hold, container }) => [
        kind,
        name,
        `${amount.amount.toFraction()} ${amount.unit}`,
        hold,
        container?.count,
      ]),
    ).toMatchObject([
      ['dish', 'stew', '10 lb', 'hot', 2],
      ['component', 'corn', '5 lb', 'cold', undefined],
    ]);
  });

  test('is needed when the first step that takes it begins, else when its course is served', () => {
    const plan = planned([dish(plate, '1 lb per guest')]);
    const [food_] = packedFood(plan, containers) as [PackedFood];
    expect(neededAt(food_, servedOf(plan, [['plate', 2, 700]]))).toBe(700);
    expect(
      neededAt(
        food_,
        servedOf(plan, [
          ['plate', 2, 710],
          ['plate', 2, 690],
        ]),
      ),
    ).toBe(690);
    // Another dish's step, and one that is done in the kitchen, say nothing of it.
    expect(neededAt(food_, servedOf(plan, [['other', 2, 700]]))).toBe(SERVED);
    expect(neededAt(food_, servedOf(plan, [['plate', 1, 700]]))).toBe(SERVED);
    expect(neededAt(food_, servedOf(plan, [['plate', 9, 700]]))).toBe(SERVED);
    const uncounted = { ...servedOf(plan), clock: { courses: new Map(), serve: 690 } } as unknown as ServedOn;
    expect(neededAt(food_, uncounted)).toBe(690);
  });
});

describe('a loaded carrier', () => {
  // Two pans of 5 lb: 8 kg + 2 × 1 kg + 10 lb.
  test('weighs its own weight, its pans and its food, and nothing certain where one is not known', () => {
    const { loading } = loadOf(stew, '1 lb per guest');
    expect(loading?.carriers.map(({ foods }) => foods.map(({ count }) => count))).toEqual([[2]]);
    expect(loading?.carriers[0]?.foodGrams.valueOf()).toBeCloseTo(10 * POUND, 6);
    expect(loading?.carriers[0]?.grams?.valueOf()).toBeCloseTo(10_000 + 10 * POUND, 6);
    const [bare] = loadOf(stew, '1 lb per guest', { grams: undefined }).loading?.carriers ?? [];
    expect([bare?.grams, bare?.unweighed]).toEqual([undefined, []]);
    const mystery = recipe('mystery', '10 servings', [line(food('egg'), '10 each')], {
      hold: 'hot',
      pack: { carry: { container: 'pan', each: q('5 servings') } },
    });
    const [unknown] = loadOf(mystery, '1 serving per guest').loading?.carriers ?? [];
    expect([unknown?.grams, unknown?.unweighed, unknown?.warmth]).toEqual([
      undefined,
      ['mystery'],
      undefined,
    ]);
  });

  test('weighs what is in it where the last pan is not full', () => {
    const { loading } = loadOf(stew, '0.7 lb per guest');
    expect(loading?.carriers[0]?.foodGrams.valueOf()).toBeCloseTo(7 * POUND, 6);
    // Twenty-two pounds are five pans, of which four fill the first box.
    const two = loadOf(stew, '2.2 lb per guest').loading?.carriers ?? [];
    expect(two.map(({ foodGrams: grams }) => Math.round(grams.valueOf() / POUND))).toEqual([20, 2]);
  });

  /*
   * 1 W for a degree is 860 g of water by one degree an hour. Two hours at 25 °C: 43,001; 10 lb of food, eight tenths of water,
   * cooled by 2 °C: 7,257; by 79.8 of the heat of ice, and a quarter more: 787 g.
   */
  test('of cold food takes ice until the last of it is needed, in whole packs where it has some', () => {
    const [cold] = loadOf(slaw, '1 lb per guest').loading?.carriers ?? [];
    expect(cold?.ice?.grams.valueOf()).toBeCloseTo(787.4, 0);
    expect([cold?.ice?.hours.valueOf(), cold?.ice?.packs, cold?.warmth]).toEqual([2, undefined, undefined]);
    expect(cold?.grams?.valueOf()).toBeCloseTo(10_000 + 10 * POUND + 787.4, 0);
    const packs = { icePackGrams: new Fraction(500n) };
    const [packed] = loadOf(slaw, '1 lb per guest', packs).loading?.carriers ?? [];
    expect(packed?.ice?.packs).toBe(2);
    expect(packed?.grams?.valueOf()).toBeCloseTo(11_000 + 10 * POUND, 6);
    const freezing = { weather: { high: must(parseTemperature('0 °C')) } };
    const [none] = loadOf(slaw, '1 lb per guest', {}, freezing).loading?.carriers ?? [];
    expect(none?.ice).toBeUndefined();
  });

  /*
   * Ten pounds in two hours lose 1,720 ÷ 3,629 ÷ 8 of their heat in each of eight steps and keep 0.6135 of it: from 71.11 °C with
   * 25 °C around to 53.3 °C, under the 57 °C of hot holding. It would have to go in at 25 + 32 ÷ 0.6135 = 77.2 °C.
   */
  test('of hot food says how warm it still is, and how hot it has to go in', () => {
    const [hot] = loadOf(stew, '1 lb per guest').loading?.carriers ?? [];
    expect(hot?.ice).toBeUndefined();
    expect(hot?.warmth?.after.valueOf()).toBeCloseTo(53.3, 1);
    expect(hot?.warmth?.enough).toBe(false);
    expect(hot?.warmth?.goesInAt?.valueOf()).toBeCloseTo(77.16, 1);
    // A pound loses nearly all: no food goes in as hot as that would take.
    const [little] = loadOf(stew, '0.1 lb per guest').loading?.carriers ?? [];
    expect([little?.warmth?.enough, little?.warmth?.goesInAt]).toEqual([false, undefined]);
    const [much] = loadOf(stew, '2 lb per guest').loading?.carriers ?? [];
    expect(much?.warmth?.enough).toBe(true);
  });

  test('is by the weather where that is stated, and nothing is loaded where there is no carrier or no clock', () => {
    const mild = loadOf(stew, '1 lb per guest', {}, { weather: { high: must(parseTemperature('40 °C')) } });
    expect([mild.outside.degrees.valueOf(), mild.outside.stated]).toEqual([40, true]);
    const usual = loadOf(stew, '1 lb per guest');
    expect([usual.outside.degrees.valueOf(), usual.outside.stated]).toEqual([25, false]);
    const plan = planned([dish(stew, '1 lb per guest')]);
    const carriers = new Map([[box.id, box]]);
    expect(eventLoad(plan, undefined, { containers, carriers }).loading).toBeUndefined();
    expect(eventLoad(plan, servedOf(plan), { containers }).loading).toBeUndefined();
    expect(eventLoad(plan, servedOf(plan), { containers }).foods).toHaveLength(1);
  });
});

test('what stands by itself needs no carrier, nor do cases that are too heavy for one', () => {
  const urn = new Map([['pan', { ...PAN, onItsOwn: true as const }]]);
  const loose = (of: Recipe, perGuest: string, kinds: ReadonlyMap<string, Container> = containers) => {
    const plan = planned([dish(of, perGuest)]);
    const { loading } = eventLoad(plan, servedOf(plan), {
      containers: kinds,
      carriers: new Map([[box.id, box]]),
    });
    return [loading?.carriers.length, loading?.loose.length];
  };
  expect(loose(stew, '1 lb per guest', urn)).toEqual([0, 0]);
  const bottles = recipe('bottles', '10 lb', [line(food('cider'), '10 lb')], { hold: 'cold' });
  // Ten pounds in no container go into a box; a hundred, more than the 20 kg that fill one, on the floor.
  expect(loose(bottles, '1 lb per guest')).toEqual([1, 0]);
  expect(loose(bottles, '10 lb per guest')).toEqual([0, 0]);
});

describe('cold food in a rack that goes without a carrier', () => {
  const rack = new Map([['pan', { ...PAN, onItsOwn: true as const }]]);
  const found = (of: Recipe, kinds: ReadonlyMap<string, Container> = rack, high?: string) => {
    const plan = planned(
      [dish(of, '1 lb per guest')],
      high ? { weather: { high: must(parseTemperature(high)) } } : {},
    );
    const load = eventLoad(plan, servedOf(plan), { containers: kinds, carriers: new Map([[box.id, box]]) });
    const words = {
      system: 'us',
      locale: 'en-US',
      say: wordsIn('en-US'),
      inWords: statementsIn('en-US'),
    } as const;
    return carrierFindings(load, [], words);
  };

  test('gets no ice, and the plan says so with its way out', () => {
    expect(found(slaw)).toEqual([
      {
        about: 'slaw',
        what: 'slaw travels cold in Pan with no carrier and no ice, and is needed at 12:00',
        wayOut: expect.stringMatching(
          /^carry it in a carrier for cold food; or load it last, and measure it/,
        ),
      },
    ]);
  });

  test('is nothing to say of hot food, of food in a carrier, or where it is as cold outside as the food must be', () => {
    expect(found(stew)).toEqual([]);
    expect(found(slaw, containers)).toEqual([]);
    // FDA Food Code 3-501.16(A)(2): 41 °F or less.
    expect(found(slaw, rack, '41 °F')).toEqual([]);
    expect(found(slaw, rack, '42 °F')).toHaveLength(1);
  });
});
