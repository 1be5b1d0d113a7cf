import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { DishRole } from '../../../src/engine/course/dish-role.ts';
import type { RecipeChange } from '../../../src/engine/food/recipe.ts';
import { guestNeeds } from '../../../src/engine/menu/guest-needs.ts';
import { eatersOf } from '../../../src/engine/plan/demand/eaters.ts';
import type { EventDish, EventInput } from '../../../src/engine/plan/event-input.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { partDishes } from '../../../src/engine/plan/servings/portions.ts';
import { allInWords, foundInWords, inWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, prices, recipe, step } from './builders.ts';

const butter = food('butter', { name: 'Butter', from: ['milk'], allergens: ['milk'] });
const walnut = food('walnut', { name: 'Walnuts', allergens: ['walnut'] });
const beef = food('beef', { from: ['beef'] });
const without = (item: string, ...needs: string[]): RecipeChange => ({ item, instead: undefined, needs });

const mash = recipe('mash', '50 servings', [line(food('potato'), '10 lb'), line(butter, '1 lb')], {
  batches: 'whole',
  changes: [without('butter', 'vegan')],
  steps: [step('on the day', 'Mash.')],
  pack: { carry: 'pan' },
});
const stew = recipe('stew', '50 servings', [line(beef, '15 lb')], { steps: [step('on the day', 'Stew.')] });
const pot = recipe('pot', '20 servings', [line(food('beans'), '5 lb')]);
const crumble = recipe('crumble', '40 pieces', [line(food('apple'), '9 lb'), line(walnut, '1 lb')], {
  changes: [without('walnut', 'tree nuts')],
});
const pan = kitchen([['pan', '20 servings', '1']]);
const table = { adults: 100, children: 0, vendors: 0, staff: 0 };

function planned(dishes: readonly EventDish[], needs: [string, number][], noMeat?: string) {
  const facts = noMeat === undefined ? {} : { noMeat: new Fraction(noMeat) };
  return planEvent(event(dishes, { guests: table, needs: new Map(needs), ...facts }), pan, prices());
}
const rows = (plan: ReturnType<typeof planned>) =>
  plan.dishes.map(({ dish: { name }, counted, need }) => [
    name,
    counted.toFraction(),
    need.amount.toFraction(),
  ]);

/** What the plan tells besides that nothing here has a price. */
const told = (plan: ReturnType<typeof planned>) =>
  foundInWords(plan.findings)
    .map(({ what }) => what)
    .filter((what) => !what.startsWith('no price list'));

describe('portions for needs, worked by hand', () => {
  test('what is made apart is taken off the dish itself: 100 guests, 2 of them vegan', () => {
    const plan = planned([dish(mash, '1 serving per guest', { overage: '8/100' })], [['vegan', 2]]);
    // 98 × 1.08 = 105.84 → 106; 2 × 1.08 = 2.16 → 3.
    expect(rows(plan)).toEqual([
      ['mash', '98', '106'],
      ['mash (without butter)', '2', '3'],
    ]);
    expect(plan.dishes.map(({ why }) => allInWords(why)[0])).toEqual([
      '100 guests − 2 who get it made separately = 98 guests',
      '2 guests (2 × vegan): made separately, without butter',
    ]);
    // 106 of 50 → 3 whole batches; 3 of 50 are not worth a whole one.
    expect(plan.recipes.map(({ recipe: { id }, batches }) => [id, batches.toFraction()])).toEqual([
      ['mash', '3'],
      ['mash--without-butter', '3/50'],
    ]);
    expect(plan.dishes[1]?.contains).toEqual([]);
    expect(told(plan)).toEqual([]);
  });

  test('what is made separately is cooked before all else of its day', () => {
    const plan = planned(
      [dish(stew, '1 serving per guest'), dish(mash, '1 serving per guest')],
      [['vegan', 2]],
    );
    expect(plan.days.map(({ tasks }) => tasks.map(({ recipe: { id } }) => id))).toEqual([
      ['mash--without-butter', 'stew', 'mash'],
    ]);
  });

  test('guests who need the same changes share a batch, each counted once', () => {
    const plan = planned(
      [dish(mash, '1 serving per guest')],
      [
        ['vegan', 2],
        ['vegan + sesame', 1],
        ['milk', 1],
      ],
    );
    expect(rows(plan)).toEqual([
      ['mash', '97', '97'],
      ['mash (without butter)', '3', '3'],
    ]);
    expect(plan.dishes[1]?.dish.portions?.needs).toEqual([
      { need: 'vegan', guests: 2 },
      { need: 'vegan + sesame', guests: 1 },
    ]);
    // Nothing is done for milk, so it is a gap, and the guest stays among those counted.
    expect(told(plan)).toEqual(['Table: nothing for 1 × allergy: milk']);
  });

  test('a dish for those who need it: they, and 20 % of all others (15 to 25 % is common practice, no source)', () => {
    const main = dish(stew, '1 serving per guest');
    const other = { ...dish(pot, '1 serving per guest'), others: new Fraction('1/5') };
    const plan = planned(
      [main, other],
      [
        ['vegetarian', 10],
        ['vegan', 2],
        ['sesame', 1],
      ],
    );
    // 12 cannot eat the stew; the one with the sesame allergy can. 12 + 88 × 20 % = 29.6.
    expect(rows(plan)).toEqual([
      ['stew', '100', '100'],
      ['pot', '148/5', '30'],
    ]);
    expect(allInWords(plan.dishes[1]?.why).slice(0, 2)).toEqual([
      '12 guests need it (10 × vegetarian, 2 × vegan)',
      '12 guests + 20 % of the other 88 = 29.6 guests',
    ]);
  });

  test('held back it is for those alone, and told where nobody needs it', () => {
    const heldBack = { ...dish(pot, '1 serving per guest'), others: new Fraction(0n) };
    const main = dish(stew, '1 serving per guest');
    expect(rows(planned([main, heldBack], [['vegan', 2]]))[1]).toEqual(['pot', '2', '2']);
    const none = planned([main, heldBack], [['vegan', 0]]);
    expect(rows(none)).toEqual([['stew', '100', '100']]);
    expect(foundInWords(none.findings)[0]?.what).toBe(
      'pot in Table is held back for guests who need it, but nobody does, so none is planned',
    );
  });

  test('where the client has not said, the kitchen’s share is fed, and nothing made apart that another dish spares', () => {
    const main = { ...dish(stew, '1 serving per guest'), role: 'main' as const };
    const other = { ...dish(pot, '1 serving per guest'), role: 'main' as const, others: new Fraction(0n) };
    const plan = planned([main, other], [['sesame', 1]], '2/25');
    expect(rows(plan)[1]).toEqual(['pot', '8', '8']);
    expect(plan.coverage.map(({ need: { text, said }, whole }) => [text, said, whole])).toEqual([
      ['sesame', true, 'every course'],
      ['vegetarian', false, 'every course'],
    ]);
    const tartlet = recipe('tartlet', '10 pieces', [line(beef, '1 lb'), line(food('leek'), '1 lb')], {
      changes: [without('beef', 'vegetarian')],
    });
    const mains = [tartlet, pot].map((each) => ({
      ...dish(each, '1 serving per guest'),
      role: 'main' as const,
    }));
    const besides = planned(
      [{ ...mains[0]!, perGuest: dish(tartlet, '1 piece per guest').perGuest }, mains[1]!],
      [],
      '2/25',
    );
    expect(rows(besides).map(([name]) => name)).toEqual(['tartlet', 'pot']);
    // Beside bread it is made for them: bread is no main.
    const bread = { ...dish(pot, '1 serving per guest'), role: 'bread' as const };
    expect(rows(planned([mains[0]!, bread], [], '2/25')).map(([name]) => name)).toEqual([
      'tartlet',
      'tartlet (without beef)',
      'pot',
    ]);
    expect(rows(planned([dish(tartlet, '1 piece per guest')], [], '2/25'))).toEqual([
      ['tartlet', '92', '92'],
      ['tartlet (without beef)', '8', '8'],
    ]);
  });

  test('held back for those who need it, and bread in the course feeds nobody in its place', () => {
    const rolls = recipe('rolls', '45 pieces', [line(food('flour', { allergens: ['wheat'] }), '5 lb')]);
    const served = (...roles: (DishRole | undefined)[]) => [
      { ...dish(stew, '1 serving per guest'), role: roles[0] },
      { ...dish(rolls, '1 piece per guest'), role: roles[1] },
      { ...dish(pot, '1 serving per guest'), role: roles[2], others: new Fraction('1/4') },
    ];
    // 8 vegetarians and 92 × 25 % = 23 others: 31. Without their share it would be 25.
    expect(rows(planned(served('main', 'bread', 'main'), [['vegetarian', 8]]))[2]).toEqual([
      'pot',
      '31',
      '31',
    ]);
    // The same where no role is stated.
    expect(rows(planned(served(undefined, undefined, undefined), [['vegetarian', 8]]))[2]).toEqual([
      'pot',
      '31',
      '31',
    ]);
    // Where another main is for them it is not needed.
    const other = { ...dish(crumble, '1 piece per guest'), role: 'main' as const };
    const spared = planned([...served('main', 'bread', 'main'), other], [['vegetarian', 8]]);
    expect(rows(spared)[2]).toEqual(['pot', '25', '25']);
  });

  test('by guest: nobody’s stated need is met by what the plan makes, or it is told that it is not', () => {
    const rennet = food('hard-cheese', { from: ['milk', 'animal rennet'] as never, allergens: ['milk'] });
    const gratin = recipe('gratin', '20 servings', [line(food('leek'), '9 lb'), line(rennet, '1 lb')], {
      changes: [without('hard-cheese', 'vegetarian')],
    });
    const chosen = [
      dish(gratin, '1 serving per guest', { chosenBy: 60 }),
      dish(stew, '1 serving per guest', { chosenBy: 40 }),
    ];
    const plan = planned(chosen, [], '7/100');
    // 7 of 100 are assumed to eat no meat; nothing chosen suits them as it is, so it is made for them.
    expect(rows(plan)).toEqual([
      ['gratin', '53', '53'],
      ['gratin (without hard-cheese)', '7', '7'],
      ['stew', '40', '40'],
    ]);
    expect(plan.coverage[0]?.courses[0]).toMatchObject({
      fed: true,
      onRequest: [{ changes: [{ values: { item: 'hard-cheese' } }] }],
    });
    const plain = recipe('gratin', '20 servings', gratin.lines);
    const unfed = planned([dish(plain, '1 serving per guest', { chosenBy: 60 }), chosen[1]!], [], '7/100');
    expect(unfed.coverage[0]?.courses[0]?.fed).toBe(false);
    expect(told(unfed)[0]).toBe('Table: nothing for 7 × vegetarian (not stated; assumed)');
  });

  test('by guest: nothing is made separately for those assumed while anything chosen suits; what nobody chose does not', () => {
    const trimmed = recipe('tartlet', '10 servings', [line(beef, '1 lb'), line(food('leek'), '1 lb')], {
      changes: [without('beef', 'vegetarian')],
    });
    const by = (pots: number) =>
      rows(
        planned(
          [
            dish(trimmed, '1 serving per guest', { chosenBy: 100 - pots }),
            dish(pot, '1 serving per guest', { chosenBy: pots }),
          ],
          [],
          '7/100',
        ),
      ).map(([name, guests]) => `${guests} ${name}`);
    expect(by(5)).toEqual(['95 tartlet', '5 pot']);
    expect(by(0)).toContain('7 tartlet (without beef)');
  });

  test('by guest: whoever has a need is given a dish that suits, within what was chosen', () => {
    const mains = (...counts: number[]) => [
      dish(stew, '1 serving per guest', { chosenBy: counts[0]! }),
      dish(mash, '1 serving per guest', { chosenBy: counts[1]! }),
      dish(pot, '1 serving per guest', { chosenBy: counts[2]! }),
    ];
    const needs: [string, number][] = [
      ['vegetarian', 9],
      ['vegan', 4],
    ];
    // Vegetarians make room: 9 take mash as it is, the 4 vegans the 4 pots, and nothing is made apart.
    expect(rows(planned(mains(84, 12, 4), needs))).toEqual([
      ['stew', '84', '84'],
      ['mash', '12', '12'],
      ['pot', '4', '4'],
    ]);
    // One pot only: three vegans get mash without butter.
    const apart = planned(mains(87, 12, 1), needs);
    expect(rows(apart)).toEqual([
      ['stew', '87', '87'],
      ['mash', '9', '9'],
      ['mash (without butter)', '3', '3'],
      ['pot', '1', '1'],
    ]);
    // 10 portions for 13 guests: three are told of.
    const short = planned(mains(90, 9, 1), needs);
    expect(foundInWords(short.findings)[0]).toMatchObject({
      what: expect.stringMatching(/^3 × vegan: by the counts chosen, no portion in Table is left for them$/),
      wayOut: 'ask the client to take more of pot',
    });
    expect(rows(short).reduce((sum, [, counted]) => sum + Number(counted), 0)).toBe(100);
  });
});

describe('a dish in place of another', () => {
  const plums = recipe('plums', '20 servings', [line(food('plum'), '5 lb')]);
  const cake = recipe('cake', '40 pieces', [
    line(food('flour', { allergens: ['wheat'] }), '5 lb'),
    line(butter, '2 lb'),
  ]);
  const instead = (facts: Partial<EventDish> = {}): EventDish => ({
    ...dish(plums, '1 serving per guest', { overage: '1/10' }),
    others: new Fraction(0n),
    insteadOf: { recipe: 'cake', needs: ['vegan', 'no gluten'] },
    ...facts,
  });

  test('is made for those who need it and taken off the other, each guest once, with an overage of its own', () => {
    const plan = planned(
      [dish(cake, '1 piece per guest', { overage: '5/100' }), instead()],
      [
        ['vegan', 4],
        ['no gluten', 2],
        ['vegan + no gluten', 1],
        ['milk', 3],
      ],
    );
    // 4 + 2 + 1 = 7 get plums: 7 × 1.1 = 7.7 → 8. Cake for 93: 93 × 1.05 = 97.65 → 98. Milk is not among the needs named.
    expect(rows(plan)).toEqual([
      ['cake', '93', '98'],
      ['plums', '7', '8'],
    ]);
    expect(plan.dishes.map(({ why }) => allInWords(why)[0])).toEqual([
      '100 guests − 7 who get plums instead (4 × vegan, 2 × no gluten, 1 × vegan + no gluten) = 93 guests',
      '7 guests get it instead of cake (4 × vegan, 2 × no gluten, 1 × vegan + no gluten)',
    ]);
    expect(plan.coverage.map(({ need, courses }) => [need.text, courses[0]?.suits, courses[0]?.fed])).toEqual(
      [
        ['vegan', ['plums'], true],
        ['no gluten', ['plums'], true],
        ['vegan + no gluten', ['plums'], true],
        // They can eat plums too, but nobody counts any for them.
        ['milk', ['plums'], false],
      ],
    );
  });

  test('is for whoever cannot eat the other where no need is named, and for nobody who can', () => {
    const { needs: _, ...all } = { recipe: 'cake', needs: [] };
    const plan = planned(
      [dish(cake, '1 piece per guest'), instead({ insteadOf: all })],
      [
        ['milk', 3],
        ['egg', 2],
      ],
    );
    expect(rows(plan)).toEqual([
      ['cake', '97', '97'],
      ['plums', '3', '4'],
    ]);
    // Nobody needs it: it is not made, and nothing is to be told.
    const none = planned([dish(cake, '1 piece per guest'), instead({ insteadOf: all })], [['egg', 2]]);
    expect(rows(none)).toEqual([['cake', '100', '100']]);
    expect(told(none)).toEqual([]);
  });

  test('goes before the other made separately, and helps nobody whom it does not suit', () => {
    const soft = recipe('cake', '40 pieces', cake.lines, { changes: [without('butter', 'vegan')] });
    const plan = planned(
      [dish(soft, '1 piece per guest'), instead()],
      [
        ['vegan', 4],
        ['vegan + no gluten', 1],
      ],
    );
    expect(rows(plan).map(([name, counted]) => [name, counted])).toEqual([
      ['cake', '95'],
      ['plums', '5'],
    ]);
    const custard = recipe('plums', '20 servings', [line(butter, '5 lb')]);
    const spoiled = planned([dish(soft, '1 piece per guest'), instead({ recipe: custard })], [['vegan', 4]]);
    expect(rows(spoiled).map(([name, counted]) => [name, counted])).toEqual([
      ['cake', '96'],
      ['cake (without butter)', '4'],
    ]);
  });

  test('is planned for those assumed to need it, and cooked for everybody all the same', () => {
    const roast = dish(stew, '1 serving per guest');
    const other = instead({ insteadOf: { recipe: 'stew' } });
    expect(rows(planned([roast, other], [], '2/25')).map(([name, counted]) => [name, counted])).toEqual([
      ['stew', '100'],
      ['plums', '8'],
    ]);
  });
});

describe('a dish cooked only for those who can eat it', () => {
  const guests = { adults: 102, children: 0, vendors: 0, staff: 0 };
  const plan = (facts: Partial<EventDish>, more: Partial<EventInput> = {}) =>
    planEvent(
      event([{ ...dish(stew, '1 serving per guest'), ...facts }], {
        guests,
        needs: new Map([
          ['vegetarian', 8],
          ['sesame', 2],
        ]),
        ...more,
      }),
      pan,
      prices(),
    );

  test('102 guests of whom 8 eat no meat: meat for 94, and for 102 where nothing is said', () => {
    expect(rows(plan({ onlyForEaters: true }))[0]).toEqual(['stew', '94', '94']);
    expect(allInWords(plan({ onlyForEaters: true }).dishes[0]?.why)[0]).toBe(
      '102 guests − 8 who can’t eat it (8 × vegetarian) = 94 guests',
    );
    expect(rows(plan({}))[0]).toEqual(['stew', '102', '102']);
  });

  test('leaves out nobody whose need is assumed, and a child who may be the guest by its half portion', () => {
    const assumed = plan({ onlyForEaters: true }, { needs: new Map(), noMeat: new Fraction('2/25') });
    expect(rows(assumed)[0]).toEqual(['stew', '102', '102']);
    const family = { adults: 92, children: 10, vendors: 0, staff: 0 };
    // 92 + 10 × ½ = 97; the 8 may be children: 97 − 8 × ½ = 93.
    const halves = plan(
      { onlyForEaters: true, counts: { adults: '1', children: '1/2' } },
      { guests: family },
    );
    expect(rows(halves)[0]).toEqual(['stew', '93', '93']);
    // Where children are not counted at all nobody is left out.
    const adults = plan({ onlyForEaters: true, counts: { adults: '1' } }, { guests: family });
    expect(rows(adults)[0]).toEqual(['stew', '92', '92']);
  });
});

test('the odds leave nobody out twice who gets another dish, or for whom it is not cooked', () => {
  const cake = recipe('cake', '40 pieces', [line(butter, '2 lb')]);
  const plums = {
    ...dish(pot, '1 serving per guest'),
    others: new Fraction(0n),
    insteadOf: { recipe: 'cake' },
  };
  const roast = { ...dish(stew, '1 serving per guest'), onlyForEaters: true };
  const needs = guestNeeds(new Map([['vegan', 7]]), table, undefined);
  const split = partDishes([dish(cake, '1 piece per guest'), plums, roast], table, needs).dishes;
  const eaters = (name: string) => eatersOf(split.find((each) => each.name === name)!, split, table, needs);
  // 93 of 100 are left for each, and all of them can eat it.
  expect(eaters('cake')).toEqual({ sure: 0, cannot: 0, free: 93 });
  expect(eaters('stew')).toEqual({ sure: 0, cannot: 0, free: 93 });
  expect(eaters('pot')).toEqual({ sure: 7, cannot: 0, free: 0 });
});

describe('what is made apart', () => {
  const plan = planned(
    [
      dish(stew, '1 serving per guest'),
      dish(mash, '1 serving per guest'),
      dish(crumble, '1 piece per guest'),
    ],
    [
      ['vegan', 2],
      ['tree nuts', 3],
    ],
  );

  test('is first in the day, before the rest of the work', () => {
    expect(plan.days[0]?.tasks.map(({ recipe: { id } }) => id)).toEqual([
      'mash--without-butter',
      'stew',
      'mash',
    ]);
  });

  test('is in containers of its own, for an allergy one sealed for each guest', () => {
    const packed = plan.dishes.map(({ dish: { name }, containers }) => [
      name,
      ...containers.map(
        ({ containerName, count, each }) => `${count} ${inWords(containerName)}, ${each.amount.toFraction()}`,
      ),
    ]);
    // The mash left is 98 servings in whole batches of 50: 100 ÷ 20 in a pan.
    expect(packed).toEqual([
      ['stew'],
      ['mash', '5 pan, 20'],
      ['mash (without butter)', '1 Own container, 2'],
      ['crumble'],
      ['crumble (without walnuts)', '3 Sealed container, 1'],
    ]);
  });

  test('fills whole containers of the kitchen where it is much', () => {
    const many = planned([dish(mash, '1 serving per guest')], [['vegan', 45]]);
    expect(many.dishes[1]?.containers.map(({ containerName, count }) => [containerName, count])).toEqual([
      ['pan', 3],
    ]);
  });

  test('is bought for: the butter of 98 guests, not of 100', () => {
    const butterNeed = plan.purchases.find(({ ingredient }) => ingredient.id === 'butter');
    expect(butterNeed?.need.amount.toFraction()).toBe('2');
    const exact = recipe('exact', '50 servings', mash.lines, { changes: mash.changes ?? [] });
    const less = planned([dish(exact, '1 serving per guest')], [['vegan', 2]]);
    expect(
      less.purchases.find(({ ingredient }) => ingredient.id === 'butter')?.need.amount.toFraction(),
    ).toBe('49/25');
  });
});
