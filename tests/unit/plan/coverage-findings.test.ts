import { describe, expect, test } from 'vitest';
import type { DishRole } from '../../../src/engine/course/dish-role.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import type { MenuDish } from '../../../src/engine/menu/fillers.ts';
import type { EventDish } from '../../../src/engine/plan/event-input.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { inWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, must, prices, recipe } from './builders.ts';

const beef = food('beef', { from: ['beef'] });
const roast = recipe('roast', '10 servings', [line(beef, '5 lb')]);
const greens = recipe('greens', '10 servings', [line(food('kale'), '5 lb')]);
const loaf = recipe('loaf', '10 servings', [line(food('nut-flour', { contains: undefined }), '5 lb')]);
const pilaf = recipe('pilaf', '10 servings', [line(food('farro'), '5 lb')]);
const sorbet = recipe('sorbet', '10 servings', [line(food('plum'), '5 lb')]);

const served = (of: typeof roast, course: string, role?: DishRole): EventDish => ({
  ...dish(of, '1 serving per guest'),
  course,
  role,
  perGuest: must(parsePerGuest('1 serving per guest')),
});
const offered = (of: typeof roast, course: string, at: number, role?: DishRole): MenuDish => ({
  recipe: of,
  package: 'table',
  course,
  at,
  given: 'count',
  role,
});

/** What is told of the menu itself. */
function told(dishes: readonly EventDish[], need: string, alternatives?: readonly MenuDish[]) {
  const facts = {
    needs: new Map([[need, 2]]),
    packageId: 'table',
    ...(alternatives && { alternatives }),
  };
  return planEvent(event(dishes, facts), kitchen(), prices())
    .findings.filter(({ about }) => about === need)
    .map(({ what, wayOut }) => [inWords(what), inWords(wayOut)]);
}

const CHANGE = 'state in a recipe what can be left out or swapped for them';

describe('what a menu lacks for guests', () => {
  test('is nothing where every course has a dish for them', () => {
    expect(told([served(roast, 'Table', 'main'), served(pilaf, 'Table', 'main')], 'vegan')).toEqual([]);
  });

  test('is told course by course, with dishes of the kitchen that would do there and are not there yet', () => {
    const menu = [served(roast, 'Table'), served(sorbet, 'Sweet')];
    expect(told(menu, 'vegan')).toEqual([['Table: nothing for 2 × vegan', CHANGE]]);
    const others = [offered(roast, 'Table', 0), offered(pilaf, 'Table', 0), offered(sorbet, 'Sweet', 1)];
    expect(told(menu, 'vegan', others)).toEqual([
      ['Table: nothing for 2 × vegan', `pilaf would work; or ${CHANGE}`],
    ]);
    // For the last course what stands last is looked for.
    const late = [served(pilaf, 'Table'), served(roast, 'Late')];
    expect(told(late, 'vegan', others)).toEqual([
      ['Late: nothing for 2 × vegan', `sorbet would work; or ${CHANGE}`],
    ]);
  });

  test('is the main where they have a side alone, filled by a main alone', () => {
    const menu = [served(roast, 'Table', 'main'), served(greens, 'Table', 'side')];
    const others = [offered(pilaf, 'Table', 0, 'main'), offered(sorbet, 'Table', 0, 'side')];
    expect(told(menu, 'vegan', others)).toEqual([
      ['Table: no main for 2 × vegan', `pilaf would work; or ${CHANGE}`],
    ]);
  });

  test('is asked for where no role is stated, and names what is not known', () => {
    const asked = told([served(roast, 'Table', 'main'), served(greens, 'Table')], 'vegan');
    expect(asked).toEqual([
      [
        'Table: maybe no main for 2 × vegan; no role is stated for greens',
        'state it in the package or the recipe, such as “role: main”: main, side, bread, sauce, drink or sweet',
      ],
    ]);
    expect(told([served(loaf, 'Table')], 'tree nuts')).toEqual([
      ['Table: nothing for 2 × allergy: tree nuts; not known for loaf', CHANGE],
    ]);
  });

  test('cannot be told for words that are no diet and no allergen', () => {
    expect(told([served(roast, 'Table')], 'early riser')).toEqual([
      [
        '“early riser” is not a diet or an allergen that Salver knows, so no dish is checked for it',
        'ask the client, and check every dish by hand',
      ],
    ]);
  });
});
