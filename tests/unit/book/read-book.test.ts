import { appendFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { allergenText } from '../../../src/engine/food/allergen.ts';
import { conversionText } from '../../../src/engine/measure/conversions.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { changed, contentWith } from '../../findings/small-content.ts';

async function read(changes: Record<string, string | null> = {}) {
  const { book, findings } = await readBook(contentWith(changes));
  if (!book) throw new Error('the kitchen could not be read');
  return { book, codes: findings.map(({ code }) => code) };
}

const containsOf = (book: Book, id: string) => book.ingredients.get(id)?.contains?.map(allergenText);

describe('what an error holds back', () => {
  test('a broken package holds back the proposal that offers it, with one finding, and nothing else', async () => {
    const { book, codes } = await read(changed('packages/supper.mdx', 'style: buffet', 'style: bufet'));
    expect(codes).toEqual(['unknown-word']);
    expect([...book.held]).toEqual([
      ['package/supper', '“style” can’t be “bufet” (packages/supper.mdx:3)'],
      ['proposal/gale', 'it needs package “supper”: “style” can’t be “bufet” (packages/supper.mdx:3)'],
    ]);
    expect([...book.recipes.keys()]).toEqual(['cheese-plate', 'lentil-soup']);
    expect(book.kitchen.addOns.has('late-soup')).toBe(true);
  });

  test('a broken ingredient holds back what is cooked with it, down to the proposal, and the root is named', async () => {
    const { book, codes } = await read(changed('ingredients/own.yaml', 'contains: milk', 'contains: mlik'));
    expect(codes).toEqual(['not-understood']);
    expect([...book.held.keys()]).toEqual([
      'ingredient/hill-cheese',
      'recipe/cheese-plate',
      'package/supper',
      'proposal/gale',
    ]);
    expect(book.held.get('proposal/gale')).toContain('ingredient “hill-cheese”: “mlik” is not an allergen');
    expect(book.ingredients.has('lentils')).toBe(true);
    expect(book.recipes.has('lentil-soup')).toBe(true);
  });

  test('a slip in one container of kitchen.yaml holds back what is packed in it and no more', async () => {
    const { book, codes } = await read(
      changed('kitchen.yaml', 'tray: { holds: 20 servings }', 'tray: { holds: 20 % }'),
    );
    expect(codes).toEqual(['not-understood']);
    expect(book.held.has('recipe/lentil-soup')).toBe(true);
    expect([...book.recipes.keys()]).toEqual(['cheese-plate']);
    expect(book.kitchen.containers.has('tub')).toBe(true);
  });

  test('a slip in the price of staff holds back every draft, since every quote has it', async () => {
    const { book } = await read(changed('kitchen.yaml', 'pay: 24.00 per hour', 'pay: 24.00'));
    expect([...book.held.keys()]).toEqual(['staff/server', 'proposal/gale']);
  });

  test('a slip anywhere else in kitchen.yaml leaves no Book, and all of its problems are told', async () => {
    const dir = contentWith(
      changed('kitchen.yaml', 'currency: USD\ntime zone: America/Chicago', 'currency: USX\nzone: Chicago'),
    );
    const { book, findings } = await readBook(dir);
    expect(book).toBeUndefined();
    expect(findings.map(({ code }) => code).sort()).toEqual(['missing-field', 'unknown-field']);
  });

  test('a duplicate key spoils the recipe it is in, though what is left reads well', async () => {
    const { book } = await read(
      changed('recipes/lentil-soup.mdx', '  lentils: 4 lb', '  lentils: 4 lb\n  lentils: 5 lb'),
    );
    expect(book.held.get('recipe/lentil-soup')).toContain('is there twice');
    expect(book.recipes.has('cheese-plate')).toBe(true);
  });

  test('notes with HTML are held back themselves; the recipe still feeds the guests', async () => {
    const { book, codes } = await read(
      changed('recipes/lentil-soup.mdx', 'Stir often.', 'Stir <b>often</b>.'),
    );
    expect(codes).toContain('body-html');
    expect([...book.held.keys()]).toEqual(['recipe-notes/lentil-soup']);
    expect(book.recipes.has('lentil-soup')).toBe(true);
    expect(book.recipeBodies.has('lentil-soup')).toBe(false);
  });

  test('an ingredients file that is no YAML holds back what it seems to hold, without a finding for each use', async () => {
    const { book, codes } = await read({
      'ingredients/own.yaml': 'lentils:\n  from: [plant\nhill-cheese:\n  from: "milk\n',
    });
    expect(codes.every((code) => code.startsWith('yaml-'))).toBe(true);
    expect(book.held.has('recipe/lentil-soup')).toBe(true);
    expect(book.held.has('recipe/cheese-plate')).toBe(true);
  });

  test('a broken row of a price list leaves the others, and no price is said to be missing', async () => {
    const { book, codes } = await read(changed('prices/hill-farm.csv', '31.00', 'thirty'));
    expect(codes).toEqual(['not-understood']);
    expect([...book.prices.keys()]).toEqual(['hill-cheese']);
    expect(book.recipes.has('lentil-soup')).toBe(true);
  });

  test('every recipe of a ring and what rests on it is held back, the rest of the menu stands', async () => {
    const { book, codes } = await read({
      ...changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'stock: 1 gal'),
      'recipes/stock.mdx':
        '---\nname: Stock\nmakes: 1 gal\ningredients: { lentil-soup: 1 gal }\nsteps: [{ do: Boil, station: stove }]\nhold: hot\n---\n',
    });
    expect(codes).toEqual(['circular-recipe']);
    expect([...book.held.keys()].sort()).toEqual([
      'add-on/late-soup',
      'package/supper',
      'proposal/gale',
      'recipe/lentil-soup',
      'recipe/stock',
    ]);
    expect(book.recipes.has('cheese-plate')).toBe(true);
  });
});

describe('files as they are now', () => {
  test('a changed schema field, price row and body show at the next reading of the same folder', async () => {
    const dir = contentWith();
    const before = (await readBook(dir)).book;
    appendFileSync(join(dir, 'prices/hill-farm.csv'), 'lentils,25 lb sack,35.00,L1,2027-01-01\n');
    appendFileSync(join(dir, 'recipes/lentil-soup.mdx'), 'Salt at the end.\n');
    const own = 'lentils:\n  from: plant\n  contains: peanut\nhill-cheese:\n  from: milk\n  contains: milk\n';
    writeFileSync(join(dir, 'ingredients/own.yaml'), own);
    const after = (await readBook(dir)).book;
    expect(before?.prices.get('lentils')).toHaveLength(1);
    expect(after?.prices.get('lentils')?.map((pack) => pack.price.toFixed(2))).toEqual(['31.00', '35.00']);
    expect(after?.recipeBodies.get('lentil-soup')).toContain('Salt at the end.');
    expect(after && containsOf(after, 'lentils')).toEqual(['peanut']);
  });
});

describe('the store-room', () => {
  test('gives plain foods, each field of which a caterer’s own entry replaces', async () => {
    const { book } = await read({
      'ingredients/zz.yaml': 'butter:\n  keeps: 90 days\n  contains: milk, soy\n',
    });
    const plain = (await read()).book;
    expect(containsOf(plain, 'butter')).toEqual(['milk']);
    expect(containsOf(book, 'butter')).toEqual(['milk', 'soy']);
    expect(book.ingredients.get('butter')?.keepsDays).toBe(90);
    expect(book.ingredients.get('butter')?.from).toEqual(plain.ingredients.get('butter')?.from);
  });

  test('keeps its measures and yields that a caterer’s own do not speak of', async () => {
    const { book } = await read({
      'ingredients/zz.yaml':
        'lemon:\n  conversions: 1 each = 4 oz\n  yields: { juiced: 40 % }\npotato:\n  conversions: [1 cup = 6 oz]\n',
    });
    const measures = (id: string) => book.ingredients.get(id)?.conversions.map(conversionText);
    expect(measures('lemon')).toEqual(['1 each = 4 oz', '1 fl oz = 30½ g']);
    expect(measures('potato')).toEqual(['1 cup = 6 oz', '1 each = 213 g']);
    const yields = book.ingredients.get('lemon')?.yields;
    expect(yields?.get('juiced')?.toFraction()).toBe('2/5');
    expect(yields?.get('peeled')?.toFraction()).toBe('53/100');
  });

  test('does not stand in for a caterer’s entry with an error, which may be in the very allergen', async () => {
    const { book } = await read({ 'ingredients/zz.yaml': 'butter:\n  contains: milk, shelfish\n' });
    expect(book.ingredients.has('butter')).toBe(false);
    expect(book.held.has('ingredient/butter')).toBe(true);
  });
});

describe('linking', () => {
  test('a supplier’s own columns and names are taken in by its mapping', async () => {
    const { book, codes } = await read({
      'suppliers.yaml': `hill-farm:
  name: Hill Farm
  columns: { ingredient: Item, pack: Size, price: Case Price, valid from: Since, item number: Code }
  names: { "LENTILS BRN": lentils }
`,
      'prices/hill-farm.csv':
        'Code,Item,Size,Case Price,Since\r\nL1,Lentils BRN,25 lb sack,31.00,2026-01-01\r\nC1,hill-cheese,about 5 lb wheel,8.40 per lb,2026-01-01\r\n',
    });
    expect(codes).toEqual([]);
    expect(book.prices.get('lentils')?.[0]?.packText).toBe('25 lb sack');
    expect(book.prices.get('hill-cheese')?.[0]).toMatchObject({ aboutWeight: true, supplier: 'hill-farm' });
    expect(book.prices.get('hill-cheese')?.[0]?.price.toFixed(2)).toBe('42.00');
  });

  test('a line says what is used, how it is prepared, and whether it is weighed as bought', async () => {
    const { book } = await read(
      changed(
        'recipes/lentil-soup.mdx',
        '  lentils: 4 lb',
        '  lentils,  Well Rinsed: 4 lb\n  butter, as purchased: { amount: ½ lb, note: cold }',
      ),
    );
    const lines = book.recipes
      .get('lentil-soup')
      ?.lines.map(({ item, preparation, asPurchased, amount, note }) => ({
        id: item.kind === 'ingredient' ? item.ingredient.id : item.recipe.id,
        preparation,
        asPurchased,
        amount: exactText(amount),
        note,
      }));
    expect(lines).toEqual([
      { id: 'lentils', preparation: 'well rinsed', asPurchased: false, amount: '4 lb', note: undefined },
      { id: 'butter', preparation: null, asPurchased: true, amount: '1/2 lb', note: 'cold' },
    ]);
  });

  test('a count may be said to be trimmed, unless the food has a measure of that name', async () => {
    const lineOf = async (amount: string, conversions = '1 head = 8 oz, 1 cup = 192 g') => {
      const { book, codes } = await read({
        ...changed('recipes/lentil-soup.mdx', '  lentils: 4 lb', `  lentils: ${amount}`),
        ...changed('ingredients/own.yaml', '1 cup = 192 g', conversions),
      });
      const line = book.recipes.get('lentil-soup')?.lines[0];
      return [...codes, line && exactText(line.amount), line?.trimmed];
    };
    expect(await lineOf('8 heads')).toEqual(['8 head', undefined]);
    expect(await lineOf('8 trimmed heads')).toEqual(['8 head', true]);
    expect(await lineOf('8 heads trimmed')).toEqual(['8 head', true]);
    expect(await lineOf('6 trimmed', '1 each = 8 oz')).toEqual(['6 each', true]);
    expect(await lineOf('8 trimmed heads', '1 trimmed head = 6 oz')).toEqual(['8 trimmed head', undefined]);
  });

  test('every item and field has a place, shorthand included', async () => {
    const { book } = await read();
    expect(book.placeOf('package/supper', ['courses', 0, 'dishes', 'lentil-soup', 'amount'])).toEqual({
      file: 'packages/supper.mdx',
      line: 10,
      column: 20,
    });
    expect(book.placeOf('container/tub', [], 'key')).toEqual({ file: 'kitchen.yaml', line: 13, column: 3 });
    expect(book.placeOf('recipe/nobody')).toBeUndefined();
  });

  test('a proposal takes the kitchen’s rules where it has none of its own', async () => {
    const rules = `service charge: { rate: 18 %, on: food }
guarantee: { deadline: 10 days before }
payments: [50 % when accepted, balance 10 days before]
stations:`;
    const { book } = await read({
      ...changed('kitchen.yaml', 'stations:', rules),
      ...changed(
        'proposals/gale.md',
        'packages: supper',
        'packages: supper\nguarantee: { floor: 90 % }\nservice charge: 0 %',
      ),
    });
    const proposal = book.proposals.get('gale');
    expect(proposal?.guarantee).toEqual({ daysBefore: 10, floorRate: '90 %' });
    expect(proposal?.serviceCharge).toBeNull();
    expect(proposal?.payments).toEqual([
      { of: 'rate', rate: '50 %', due: 'accepted' },
      { of: 'balance', due: 10 },
    ]);
  });
});
