import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import type { DishPortions, EventInput } from '../../../src/engine/plan/event-input.ts';
import { componentsOf } from '../../../src/engine/plan/load/components.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { dish, event, food, kitchen, line, must, prices, recipe, step } from './builders.ts';

const leaves = food('leaves', { storage: 'chilled' });
const cheese = food('cheese', { storage: 'chilled', allergens: ['milk'] });
const beet = food('beet', { storage: 'dry' });
const egg = food('egg', { from: ['egg'], storage: 'chilled' });
const water = food('water', { from: ['water'], storage: 'dry' });
const coffee = food('coffee', { storage: 'dry' });
const crumb = recipe('crumb', '1 lb', [line(food('rye'), '1 lb')], { hold: 'room', pack: { carry: 'tub' } });

const here = step('the day before', 'Roast it');
const there = step('at serving', 'Plate it', { station: 'line' });
const to = (temperature: string) => ({ cookTo: must(parseHeldTemperature(temperature)) });
const taken = (of: Parameters<typeof line>[0], amount: string, ...steps: number[]) => ({
  ...line(of, amount),
  steps,
});

const PLATE = [
  taken(beet, '2 lb', 0),
  taken(cheese, '1 lb', 0, 1),
  taken(leaves, '8 oz', 1),
  taken(crumb, '4 oz', 1),
];
const plate = recipe('plate', '10 servings', PLATE, { steps: [here, there] });
const urn = recipe('urn', '1 gal', [line(coffee, '8 oz'), line(water, '1 gal')], {
  hold: 'hot',
  steps: [there],
});

/** For 100 guests, in a kitchen whose tubs hold a pound. */
function found(dishes: Parameters<typeof event>[0], facts: Partial<EventInput> = {}) {
  const tubs = kitchen([['tub', '1 lb', '1']]);
  return componentsOf(planEvent(event(dishes, facts), tubs, prices()), tubs.containers);
}

const told = (components: ReturnType<typeof found>) =>
  components.map(({ line: { item }, state, amount, hold, packed }) => [
    item.kind === 'recipe' ? item.recipe.id : item.ingredient.id,
    state,
    exactText(amount),
    hold,
    packed?.count,
  ]);

const KIT = { ovens: 0, burners: 0, circuits: [], coldSpace: false, cover: false, stairs: false };

describe('what a step at the place takes', () => {
  test('goes there in containers of its own, and what only the kitchen takes does not', () => {
    // 100 servings of 10 are 10 batches; 40 oz of crumb are 2½ tubs.
    expect(told(found([dish(plate, '1 serving per guest')]))).toEqual([
      ['cheese', 'half-made', '10 lb', 'cold', undefined],
      ['leaves', 'bought', '80 oz', 'cold', undefined],
      ['crumb', 'made', '40 oz', 'room', 3],
    ]);
  });

  test('is all of a dish that is made there, with its water where the place is not known to have any', () => {
    // 800 fl oz are 6¼ batches of a gallon.
    const made = [dish(urn, '8 fl oz per guest')];
    const all = [
      ['coffee', 'bought', '50 oz', 'room', undefined],
      ['water', 'bought', '25/4 gal', 'room', undefined],
    ];
    expect(told(found(made))).toEqual(all);
    expect(told(found(made, { venueKit: { ...KIT, water: false } }))).toEqual(all);
    expect(told(found(made, { venueKit: { ...KIT, water: true } }))).toEqual(all.slice(0, 1));
  });

  test('is nothing where a kitchen states no lines of a step and begins the dish at home', () => {
    const salad = recipe('salad', '10 servings', [line(leaves, '1 lb')], { steps: [here, there] });
    expect(found([dish(salad, '1 serving per guest')])).toEqual([]);
  });

  test('is not what is given out beside the dish, which has containers of its own', () => {
    const sauce = { ...plate, beside: ['crumb'] };
    expect(told(found([dish(sauce, '1 serving per guest')])).map(([id]) => id)).toEqual(['cheese', 'leaves']);
  });

  test('comes from one container for a dish and its portions for a diet, and from their own for an allergy', () => {
    const lighter: Recipe = { ...plate, id: 'plate--without-beet', lines: PLATE.slice(1) };
    const portions = (need: string): DishPortions => ({
      guests: new Fraction(10n),
      needs: [{ need, guests: 10 }],
      apart: { recipe: 'plate', changes: [] },
      why: [],
    });
    const split = (need: string) =>
      found([
        dish(plate, '1 serving per guest'),
        { ...dish(lighter, '1 serving per guest'), portions: portions(need) },
      ]);
    // 100 servings of the one and 10 of the other: 11 batches.
    expect(told(split('vegan'))).toEqual([
      ['cheese', 'half-made', '11 lb', 'cold', undefined],
      ['leaves', 'bought', '88 oz', 'cold', undefined],
      ['crumb', 'made', '44 oz', 'room', 3],
    ]);
    expect(told(split('tree nuts'))).toHaveLength(6);
  });

  test('travels as it is stored, cold where that is not stated; what was begun at home as its dish, or colder', () => {
    const holds = (storage: 'dry' | 'chilled' | 'frozen' | undefined, ...steps: number[]) => {
      const stew = recipe('stew', '10 servings', [taken(food('beans', { storage }), '1 lb', ...steps)], {
        hold: 'hot',
        steps: [here, there],
      });
      return found([dish(stew, '1 serving per guest')]).map(({ hold }) => hold);
    };
    const each = ['dry', undefined, 'chilled', 'frozen'] as const;
    expect(each.map((storage) => holds(storage, 1))).toEqual([['room'], ['cold'], ['cold'], ['frozen']]);
    expect(each.map((storage) => holds(storage, 0, 1))).toEqual([['hot'], ['hot'], ['cold'], ['cold']]);
  });

  test('goes in the container that it is chilled in where its recipe names none for the road', () => {
    const packed = (pack: object) => {
      const glaze = recipe('glaze', '1 lb', [line(food('rye'), '1 lb')], { hold: 'room', pack });
      const bowl = recipe('bowl', '10 servings', [taken(glaze, '4 oz', 1)], { steps: [here, there] });
      return found([dish(bowl, '1 serving per guest')]).map((each) => each.packed?.stage);
    };
    expect(packed({ chill: 'tub' })).toEqual(['chill']);
    expect(packed({ chill: 'tub', carry: 'tub' })).toEqual(['carry']);
    expect(packed({ serve: 'tub' })).toEqual([undefined]);
    // 4 cups are no part of a pound of it: how much goes where is not known.
    const glaze = recipe('glaze', '1 lb', [line(food('rye'), '1 lb')], {
      hold: 'room',
      pack: { carry: 'tub' },
    });
    const bowl = recipe('bowl', '10 servings', [taken(glaze, '1 cup', 1)], { steps: [here, there] });
    expect(found([dish(bowl, '1 serving per guest')]).map((each) => each.packed)).toEqual([undefined]);
  });

  test('is raw where it is not cooked before, with what its own dish does to it there', () => {
    const cooked = [
      { ...here, ...to('165 °F') },
      { ...there, ...to('155 °F') },
    ];
    const raw = (...steps: number[]) => {
      const cakes = recipe('cakes', '10 servings', [taken(beet, '2 lb', 0), taken(egg, '1 lb', ...steps)], {
        hold: 'hot',
        steps: cooked,
      });
      return found([dish(cakes, '1 serving per guest')]).map((each) => each.raw?.next);
    };
    // FDA Food Code 2022, 3-401.11(A)(2): eggs not for one order to 155 °F.
    expect(raw(0, 1)).toEqual([undefined]);
    // The kitchen's step does not cook what only the next one takes.
    expect(raw(1)).toEqual(['cooked there']);
  });
});
