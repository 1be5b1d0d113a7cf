import { expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import { allFoods, words } from './read-store-room.ts';

const foods = allFoods();

/** Ids of the foods that contain the allergen, sorted. */
function containing(allergen: string): string[] {
  return foods
    .filter((food) => words(food.fields.contains).includes(allergen))
    .map((food) => food.id)
    .sort();
}

// Written down a second time by hand, food by food, so that no slip in a file passes unseen.
const CONTAINS: Readonly<Record<string, string>> = {
  milk: 'butter buttermilk clarified-butter cream goat-milk half-and-half light-cream milk plain-yogurt salted-butter skim-milk',
  egg: 'egg quail-egg',
  peanut: 'peanut',
  soy: 'edamame soy-flour soybean tofu',
  sesame: 'sesame-oil sesame-seed tahini',
  celery: 'celeriac celery celery-seed',
  mustard: 'dry-mustard mustard-seed',
  lupin: 'lupin-bean lupin-flour',
  sulphites: 'balsamic-vinegar red-wine-vinegar white-wine-vinegar',
  wheat:
    'all-purpose-flour bread-flour bulgur cake-flour couscous farro freekeh semolina wheat-berries wheat-bran wheat-germ whole-wheat-flour',
  spelt: 'spelt-berries spelt-flour',
  khorasan: 'khorasan-berries',
  rye: 'dark-rye-flour rye-berries rye-flour',
  barley: 'barley-flour hulled-barley malt-vinegar pearled-barley',
  oats: 'oat-bran oat-flour rolled-oats steel-cut-oats',
  almond: 'almond ground-almond slivered-almond',
  hazelnut: 'hazelnut hazelnut-oil',
  walnut: 'walnut walnut-oil',
  cashew: 'cashew',
  pecan: 'pecan',
  'brazil nut': 'brazil-nut',
  pistachio: 'pistachio',
  macadamia: 'macadamia',
  'pine nut': 'pine-nut',
  chestnut: 'chestnut',
  'fish (cod)': 'cod',
  'fish (hake)': 'hake',
  'fish (salmon)': 'salmon',
  'fish (trout)': 'trout',
  'fish (tuna)': 'tuna',
  'crustacean (shrimp)': 'shell-on-shrimp shrimp',
  'crustacean (crab)': 'crab crabmeat',
  'crustacean (lobster)': 'lobster',
  'crustacean (crayfish)': 'crayfish',
  'mollusc (mussel)': 'mussel',
  'mollusc (clam)': 'clam',
  'mollusc (oyster)': 'oyster',
  'mollusc (scallop)': 'scallop',
  'mollusc (squid)': 'squid',
  'mollusc (octopus)': 'octopus',
};

test.each(Object.entries(CONTAINS))('%s is contained in these foods and no other', (allergen, ids) => {
  expect(containing(allergen)).toEqual(ids.split(' '));
});

test('every other allergen in the store-room is a kind of fish, and each fish names its own', () => {
  const others = foods.flatMap((food) =>
    words(food.fields.contains)
      .filter((allergen) => CONTAINS[allergen] === undefined)
      .map((allergen) => [food.id, allergen] as const),
  );
  for (const [id, allergen] of others) expect(allergen).toBe(`fish (${id.replaceAll('-', ' ')})`);
});

test('foods that sound like an allergen and are none say so', () => {
  for (const id of [
    'coconut',
    'coconut-flakes',
    'coconut-oil',
    'buckwheat',
    'buckwheat-flour',
    'nutmeg',
    'sticky-rice',
  ])
    expect(foods.find((food) => food.id === id)?.fields.contains, id).toBe('none');
});

test('oats may contain the cereals they are milled beside, shrimp and lobster the sulphites they are dipped in', () => {
  const mayContain = (id: string) =>
    words(foods.find((food) => food.id === id)?.fields['may contain'] ?? 'none');
  for (const id of containing('oats')) expect(mayContain(id), id).toEqual(['wheat', 'rye', 'barley']);
  for (const id of ['shrimp', 'shell-on-shrimp', 'lobster'])
    expect(mayContain(id), id).toEqual(['sulphites']);
});

/** All groups that occur, with their kinds. */
function found(): Map<string, Set<string | null>> {
  const groups = new Map<string, Set<string | null>>();
  for (const food of foods)
    for (const word of words(food.fields.contains)) {
      const allergen = parseAllergen(word);
      if (!allergen.ok) throw new Error(`${food.id}: ${allergen.what}`);
      const kinds = groups.get(allergen.value.group) ?? new Set();
      groups.set(allergen.value.group, kinds.add(allergen.value.kind));
    }
  return groups;
}

// 21 U.S.C. 321(qq), with sesame by the FASTER Act of 2021.
test('each of the nine major allergens of the US has a food', () => {
  const groups = found();
  for (const group of ['milk', 'egg', 'fish', 'crustacean', 'tree nut', 'peanut', 'soy', 'sesame'])
    expect(groups.has(group), group).toBe(true);
  expect(groups.get('cereal')).toContain('wheat');
});

// Regulation (EU) No 1169/2011, Annex II, nos. 1 to 14; the kinds of nos. 1 and 8 as they stand there.
test('each of the fourteen groups of the EU has a food, and each cereal and nut that is named', () => {
  const groups = found();
  expect([...groups.keys()].sort()).toEqual(
    [
      'cereal',
      'crustacean',
      'egg',
      'fish',
      'peanut',
      'soy',
      'milk',
      'tree nut',
      'celery',
      'mustard',
      'sesame',
      'sulphites',
      'lupin',
      'mollusc',
    ].sort(),
  );
  for (const cereal of ['wheat', 'spelt', 'khorasan', 'rye', 'barley', 'oats'])
    expect(groups.get('cereal'), cereal).toContain(cereal);
  for (const nut of [
    'almond',
    'hazelnut',
    'walnut',
    'cashew',
    'pecan',
    'brazil nut',
    'pistachio',
    'macadamia',
  ])
    expect(groups.get('tree nut'), nut).toContain(nut);
});
