import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Hold } from '../../../src/engine/food/recipe.ts';
import type { Carrier } from '../../../src/engine/kitchen/carrier.ts';
import { loadCarriers, type TimedFood } from '../../../src/engine/plan/load/carriers.ts';
import { type CarriedEvent, carrierLacks } from '../../../src/engine/plan/load/carriers-out.ts';
import { q } from './builders.ts';

const hotBox: Carrier = {
  id: 'hot-box',
  name: 'Hot box',
  count: 3,
  for: ['hot'],
  holds: [
    { count: 5, container: 'flat' },
    { count: 3, container: 'deep' },
  ],
};
const smallBox: Carrier = {
  ...hotBox,
  id: 'small',
  name: 'Small box',
  holds: [{ count: 2, container: 'flat' }],
};
const coolBox: Carrier = {
  ...hotBox,
  id: 'cool-box',
  name: 'Cool box',
  for: ['cold', 'frozen'],
  holds: [{ count: 4, container: 'flat' }],
};

/** Some containers of a food, needed at a minute; a share stands for small ones that no kitchen names. */
function food(
  name: string,
  count: number,
  facts: { in?: string; hold?: Hold; raw?: boolean; at?: number; share?: string } = {},
): TimedFood {
  const { in: container = 'flat', hold = 'hot', raw = false, at = 720, share } = facts;
  const each = q('1 lb');
  return {
    food: {
      name,
      hold,
      raw: raw ? { foods: [], next: 'cooked there', cookTo: undefined } : undefined,
      container: { container, containerName: container, count, each, last: each },
    } as unknown as TimedFood['food'],
    neededAt: at,
    ...(share !== undefined && { share: new Fraction(share) }),
  };
}

const told = (foods: readonly TimedFood[], kinds: readonly Carrier[] = [hotBox, coolBox]) =>
  loadCarriers(foods, kinds).carriers.map(
    ({ number, carrier, foods: inside }) =>
      `${number} ${carrier.name}: ${inside.map(({ food: { name }, from, count }) => `${name} ${from + 1}–${from + count}`).join(', ')}`,
  );

describe('containers go into carriers', () => {
  test('with what is needed first in the lowest number, each where there is room left', () => {
    // Three deep pans fill a box; of five flat ones two deep leave a third, which takes one flat.
    expect(
      told([
        food('squash', 4, { at: 800 }),
        food('braise', 2, { in: 'deep', at: 760 }),
        food('soup', 3, { in: 'deep', at: 740 }),
      ]),
    ).toEqual(['1 Hot box: soup 1–3', '2 Hot box: braise 1–2, squash 1–1', '3 Hot box: squash 2–4']);
  });

  test('hot, cold and frozen never together, although one kind may keep two of them', () => {
    expect(
      told([food('ice cream', 1, { hold: 'frozen' }), food('salad', 1, { hold: 'cold' }), food('stew', 1)]),
    ).toEqual(['1 Cool box: ice cream 1–1', '2 Cool box: salad 1–1', '3 Hot box: stew 1–1']);
  });

  test('raw food never with ready food', () => {
    const cold = { hold: 'cold' as const };
    const { carriers } = loadCarriers(
      [
        food('salad', 1, cold),
        food('patties', 1, { ...cold, raw: true }),
        food('hake', 1, { ...cold, raw: true }),
      ],
      [coolBox],
    );
    expect(carriers.map(({ raw, foods }) => [raw, foods.map((each) => each.food.name)])).toEqual([
      [false, ['salad']],
      [true, ['patties', 'hake']],
    ]);
  });

  test('small ones of their own with the others of their temperature, and a tiny one takes no room', () => {
    expect(
      told([food('stew', 5), food('vegan stew', 1, { share: '0' }), food('sauce', 1, { share: '1/4' })]),
    ).toEqual(['1 Hot box: stew 1–5, vegan stew 1–1', '2 Hot box: sauce 1–1']);
  });

  test('the roomiest kind first, another when none of it is left, and too many rather than none', () => {
    const kinds = [smallBox, { ...hotBox, count: 1 }];
    expect(told([food('stew', 7)], kinds)).toEqual(['1 Hot box: stew 1–5', '2 Small box: stew 6–7']);
    // Carriers of another kind take none of it away.
    expect(
      told(
        [food('salad', 8, { hold: 'cold', at: 700 }), food('stew', 5)],
        [{ ...hotBox, count: 2 }, smallBox, coolBox],
      ).at(-1),
    ).toBe('3 Hot box: stew 1–5');
    expect(loadCarriers([food('stew', 26)], [{ ...hotBox, count: 3 }]).carriers).toHaveLength(6);
  });

  test('and what no carrier holds is told, not lost', () => {
    const { loose, carriers } = loadCarriers(
      [food('broth', 1, { in: 'urn' }), food('ice', 1, { hold: 'frozen' })],
      [hotBox],
    );
    expect([loose.map((each) => each.food.name), carriers]).toEqual([['broth', 'ice'], []]);
  });
});

describe('carriers that are out at once', () => {
  /** An event with so many hot boxes, from loading until it is unloaded, in hours. */
  function out(occasion: string, boxes: number, from: number, until?: number) {
    const carriers = loadCarriers([food('stew', boxes * 5)], [{ ...hotBox, count: 99 }]).carriers;
    const served = {
      load: { begins: from * 60 },
      clock: { unloaded: until === undefined ? undefined : until * 60 },
      plan: { input: { occasion } },
    };
    return {
      served,
      carriers: carriers.map((each) => ({ ...each, carrier: hotBox })),
    } as unknown as CarriedEvent;
  }
  const lacks = (own: CarriedEvent, ...others: readonly CarriedEvent[]) =>
    carrierLacks(own, [own, ...others]).map(({ carrier, taken, others: with_ }) => [
      carrier.name,
      taken,
      ...with_,
    ]);

  test('are too few for one event, or for several whose trucks are out together', () => {
    expect(lacks(out('Lunch', 3, 9, 15))).toEqual([]);
    expect(lacks(out('Lunch', 4, 9, 15))).toEqual([['Hot box', 4]]);
    const supper = out('Supper', 2, 14, 23);
    expect(lacks(out('Lunch', 2, 9, 15), supper)).toEqual([['Hot box', 4, 'Supper']]);
    expect(lacks(supper, out('Lunch', 2, 9, 15))).toEqual([['Hot box', 4, 'Lunch']]);
  });

  test('do for events one after the other, though a third overlaps both', () => {
    const [breakfast, brunch, supper] = [
      out('Breakfast', 2, 6, 10),
      out('Brunch', 1, 8, 14),
      out('Supper', 2, 12, 22),
    ];
    expect(lacks(brunch, breakfast, supper)).toEqual([]);
    expect(lacks(out('Brunch', 2, 8, 14), breakfast, supper)).toEqual([['Hot box', 4, 'Breakfast']]);
  });

  test('are free again for a truck that is loaded as another is unloaded, and other kinds are nobody’s matter', () => {
    expect(lacks(out('Lunch', 2, 9, 15), out('Supper', 2, 15, 23))).toEqual([]);
    expect(lacks(out('Supper', 2, 15, 23), out('Lunch', 2, 9, 15))).toEqual([]);
    const tea = out('Tea', 3, 9, 15);
    const cool = { ...tea, carriers: tea.carriers.map((each) => ({ ...each, carrier: coolBox })) };
    expect(lacks(out('Lunch', 3, 9, 15), cool)).toEqual([]);
    expect(lacks(out('Lunch', 2, 9, 15), cool, out('Supper', 2, 14, 23))).toEqual([['Hot box', 4, 'Supper']]);
  });

  test('are out for the rest of the date where it is not stated how long is served', () => {
    expect(lacks(out('Lunch', 2, 9), out('Supper', 2, 20, 23))).toEqual([['Hot box', 4, 'Supper']]);
  });
});

test('every container is in one carrier that keeps its food, and none is fuller than full', () => {
  const some = fc.record({
    count: fc.integer({ min: 1, max: 9 }),
    in: fc.constantFrom('flat', 'deep', 'urn'),
    hold: fc.constantFrom<Hold>('hot', 'cold', 'frozen', 'room'),
    raw: fc.boolean(),
    at: fc.integer({ min: 0, max: 20 }),
  });
  fc.assert(
    fc.property(fc.array(some, { maxLength: 12 }), fc.integer({ min: 1, max: 4 }), (list, count) => {
      const foods = list.map((each, index) => food(`food ${index}`, each.count, each));
      const kinds = [{ ...hotBox, count }, smallBox, coolBox];
      const { carriers, loose } = loadCarriers(foods, kinds);
      for (const each of foods) {
        const places = carriers.flatMap((carrier) =>
          carrier.foods
            .filter((inside) => inside.food === each.food)
            .flatMap((inside) => Array.from({ length: inside.count }, (_, index) => inside.from + index)),
        );
        const all = loose.some(({ food: left }) => left === each.food)
          ? []
          : Array.from({ length: each.food.container?.count ?? 0 }, (_, index) => index);
        expect(places.sort((a, b) => a - b)).toEqual(all);
      }
      for (const { carrier, hold, raw, foods: inside, opened, emptied } of carriers) {
        const full = inside.reduce((sum, { food: { container }, count: some }) => {
          const most = carrier.holds.find((held) => held.container === container?.container)?.count;
          return sum.add(new Fraction(some, most ?? 0));
        }, new Fraction(0n));
        expect(full.lte(1n)).toBe(true);
        expect(carrier.for).toContain(hold);
        for (const { food: each, neededAt } of inside) {
          expect([each.hold, each.raw !== undefined]).toEqual([hold, raw]);
          expect(opened <= neededAt && neededAt <= emptied).toBe(true);
        }
      }
      const opens = carriers.map(({ opened }) => opened);
      expect(opens).toEqual([...opens].sort((a, b) => a - b));
    }),
    { numRuns: 300 },
  );
});
