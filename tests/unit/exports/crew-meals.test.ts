import { expect, test } from 'vitest';
import { allergensCsv } from '../../../src/exports/files/allergens-csv.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { buffetCards } from '../../../src/views/kitchen/buffet-cards.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { accepted, offerOf, planOf, secondKitchen, withFacts } from '../offers/second-kitchen.ts';

const say = wordsIn('en-US');
const PROPOSAL = 'proposals/lifeboat-evening.md';
const STEW = 'Butter bean and leek stew (crew)';

/** The evening with chowder for its guests, and for its three of staff what is written. */
const eats = (meal: string): Change => [PROPOSAL, 'lines: 1\n', `lines: 1\ncrew meal: ${meal}\n`];
const ownStew = eats('{ bean-and-leek-stew: 1 serving, apple-oat-crumble: 2 pieces }');

async function eveningWith(...changes: readonly Change[]) {
  return planOf(accepted(await secondKitchen(...changes)));
}

test('a crew’s own dishes are cooked, bought, packed by themselves and labeled with what is in them', async () => {
  const plan = await eveningWith(ownStew);
  const without = await eveningWith();
  // 3 of staff × 1 serving; × 2 pieces.
  expect(plan.crewMeals?.map(({ name, need, why }) => [name, need.printed, why[0]])).toEqual([
    [STEW, '3 servings', '3 people × 1 serving = 3 servings'],
    ['Apple and oat crumble (crew)', '6 pieces', '3 people × 2 pieces = 6 pieces'],
  ]);
  // The stew is on no guest's plate, and its celery comes with the broth.
  expect(plan.crewMeals?.[0]?.contains).toContain('celery');
  expect(plan.recipes.find(({ id }) => id === 'bean-and-leek-stew')?.usedBy).toMatchObject([{ by: STEW }]);
  expect(without.shopping.some(({ ingredient }) => ingredient === 'tinned-butter-beans')).toBe(false);
  expect(plan.shopping.some(({ ingredient }) => ingredient === 'tinned-butter-beans')).toBe(true);
  expect(plan.days.flatMap(({ tasks }) => tasks).some(({ recipe }) => recipe === 'bean-and-leek-stew')).toBe(
    true,
  );
  expect(plan.packOut.filter(({ item }) => item === STEW)).toMatchObject([
    { group: 'food', count: 1, hold: 'hot' },
  ]);
  const labels = plan.labels.filter(({ dish }) => dish === STEW);
  expect(labels).toMatchObject([
    // Half a batch is the least that is cooked: 15 servings, 5 l.
    { of: '1 of 1', amount: '5 l', guests: 'CREW MEAL for 3 people, not for guests' },
  ]);
  expect(labels[0]?.contains).toContain('CELERY');
  expect(plan.packOut.find(({ item }) => item === 'Staff meals')?.note).toContain(
    'Butter bean and leek stew, Apple and oat crumble',
  );
});

test('guests’ dishes, cards and allergen list say nothing of what the crew eats, and so does the offer', async () => {
  const plan = await eveningWith(ownStew);
  const without = await eveningWith();
  const claims = ({ dishes }: typeof plan) =>
    dishes.map(({ name, need, contains, mayContain, unsaid, diets, needs }) => ({
      name,
      need,
      contains,
      mayContain,
      unsaid,
      diets,
      needs,
    }));
  expect(claims(plan)).toEqual(claims(without));
  expect(plan.coverage).toEqual(without.coverage);
  expect(plan.alerts).toEqual(without.alerts);
  expect(buffetCards(plan, 'en-US')).toEqual(buffetCards(without, 'en-US'));
  expect(allergensCsv(plan, ['eu'], say)).toBe(allergensCsv(without, ['eu'], say));
  const { digest, ...offer } = offerOf(await secondKitchen(ownStew));
  const { digest: plain, ...same } = offerOf(await secondKitchen());
  expect(digest).toBe(plain);
  expect(offer).toEqual(same);
});

test('a food of the crew’s whose allergens nobody stated is told before anything is cooked', async () => {
  const now = await secondKitchen(
    ownStew,
    ['recipes/bean-and-leek-stew.mdx', '  rosemary: 15 g\n', '  mystery-paste: 15 g\n'],
    ['ingredients/own.yaml', '', 'mystery-paste:\n  from: plant\n'],
  );
  const { offers, events } = accepted(await secondKitchen(ownStew));
  const plan = await planOf({ ...now, offers, events });
  expect(plan.alerts.find(({ about }) => about === STEW)?.what).toMatch(/mystery-paste|Mystery paste/);
  expect(plan.labels.find(({ dish }) => dish === STEW)?.contains.join()).toMatch(/NOT ALL/i);
});

test('a share of the menu is a share of each guest’s amount, and mains follow what guests chose', async () => {
  const half = await eveningWith(eats('50 % of the menu'));
  // 3 × 350 ml × ½, 3 × 1 piece × ½, up to whole pieces.
  expect(half.crewMeals?.map(({ name, need }) => [name, need.printed])).toEqual([
    ['Smoked haddock chowder (crew)', '525 ml'],
    ['Apple and oat crumble (crew)', '2 pieces'],
  ]);
  const book = accepted(await secondKitchen(eats('the menu')), {
    package: 'storm-supper',
    courses: {},
    mains: { Main: { 'haddock-chowder': 29, 'bean-and-leek-stew': 9 } },
  });
  // 3 of 38: 29 and 9 give 2.3 and 0.7, so two and one.
  expect((await planOf(book)).crewMeals?.map(({ name, need }) => [name, need.printed])).toEqual([
    ['Smoked haddock chowder (crew)', '2 servings'],
    [STEW, '1 serving'],
    ['Apple and oat crumble (crew)', '5 pieces'],
  ]);
});

test('a crew that brings its own is on no list, and where nothing is said all is as it was', async () => {
  const none = await eveningWith(eats('none'));
  expect(none).not.toHaveProperty('crewMeals');
  expect(none.packOut.some(({ item }) => item === 'Staff meals')).toBe(false);
  const unsaid = await eveningWith();
  expect(unsaid).not.toHaveProperty('crewMeals');
  expect(unsaid.packOut.find(({ item }) => item === 'Staff meals')?.count).toBe(3);
});

test('what kitchen.yaml says holds where a proposal says nothing', async () => {
  const kitchen: Change = ['kitchen.yaml', 'staff:', 'crew meal: { bean-and-leek-stew: 300 ml }\nstaff:'];
  expect((await eveningWith(kitchen)).crewMeals?.map(({ need }) => need.printed)).toEqual(['900 ml']);
  expect(await eveningWith(kitchen, eats('none'))).not.toHaveProperty('crewMeals');
});

test('vendors whom no dish counts eat with the crew', async () => {
  const counts: Change = [
    'packages/chowder-lunch.mdx',
    'counts: adults, children, vendors',
    'counts: adults, children',
  ];
  // 3 of staff and 1 vendor.
  const plan = await eveningWith(ownStew, counts);
  expect(plan.crewMeals?.[0]?.need.printed).toBe('4 servings');
  expect(plan.labels.find(({ dish }) => dish === STEW)?.guests).toContain('4 people');
});

test('a food that the event swaps is swapped in the crew’s pot too, so that one recipe is cooked one way', async () => {
  const book = accepted(await secondKitchen(ownStew));
  const swap = {
    version: 1,
    kind: 'substitution',
    on: '2027-04-29',
    what: 'ingredient',
    from: 'olive-oil',
    to: 'butter',
    tell: [],
    contains: [],
    mayContain: [],
    without: [],
    dietsLost: [],
  } as unknown as EventFact;
  const plan = await planOf(withFacts(book, swap));
  expect(plan.crewMeals?.[0]?.contains).toContain('milk');
});
