import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { parseDay } from '../../src/engine/calendar/day.ts';
import { exactText } from '../../src/engine/measure/quantity.ts';
import { packsOn } from '../../src/engine/purchase/packs-on.ts';
import { must } from '../unit/plan/builders.ts';
import { foundIn } from './found-in.ts';
import { contentWith, SMALL_CONTENT } from './small-content.ts';

const LIST = SMALL_CONTENT['prices/hill-farm.csv'] ?? '';
const rows = (...more: string[]) => ({ 'prices/hill-farm.csv': `${LIST}${more.join('\n')}\n` });
const supplier = (more: string) => ({ 'suppliers.yaml': `${SMALL_CONTENT['suppliers.yaml']}${more}` });

/** What each pack of a food holds. */
async function packsOf(food: string, changes: Record<string, string>): Promise<string[]> {
  const { book } = await readBook(contentWith(changes));
  return (book?.prices.get(food) ?? []).map(({ contents }) => exactText(contents));
}

describe('a slash in a pack: what check says', () => {
  const halves = rows(
    'lentils,1/2 LB,1.20,L2,2026-01-01',
    'lentils,2/10 LB,24.00,L3,2026-01-01',
    'hill-cheese,1/4 LB,2.40,C2,2026-01-01',
  );

  test('that could be a fraction or a count', async () => {
    expect(await packsOf('lentils', halves)).toEqual(['25 lb', '1/2 lb', '20 lb']);
    expect(await foundIn(contentWith(halves))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:4:2 note pack-slash “1/2 LB” is read as ½ LB, and so 1 other row (line 6) — if it means 1 x 2 LB, write it that way; to settle it for the whole list, write “slash in packs: fraction” or “slash in packs: count/size” under hill-farm in suppliers.yaml"`,
    );
  });

  test('nothing, once the supplier’s notation is stated', async () => {
    const counted = { ...halves, ...supplier('  slash in packs: count/size\n') };
    expect(await packsOf('lentils', counted)).toEqual(['25 lb', '2 lb', '20 lb']);
    const fractions = { ...halves, ...supplier('  slash in packs: fraction\n') };
    expect(await packsOf('lentils', fractions)).toEqual(['25 lb', '1/2 lb', '20 lb']);
    expect(await foundIn(contentWith(fractions))).toBe('');
  });

  test('of a notation that there is none of', async () => {
    expect(await foundIn(contentWith(supplier('  slash in packs: of\n')))).toContain(
      'suppliers.yaml:3:19 error unknown-word “slash in packs” can’t be “of”',
    );
  });
});

describe('cans of two sizes: what check says', () => {
  test('keeps those of No. 10, since “can” can stand for one size only', async () => {
    const cans = rows(
      'lentils,24/#300,18.00,L2,2026-01-01',
      'lentils,6/#10,33.00,L3,2026-01-01',
      'lentils,1 can,6.00,L4,2026-01-01',
    );
    const sized = {
      ...cans,
      'ingredients/own.yaml': (SMALL_CONTENT['ingredients/own.yaml'] ?? '').replace(
        '[1 cup = 192 g]',
        '[1 cup = 192 g, 1 can = 110 oz]',
      ),
    };
    expect(await packsOf('lentils', sized)).toEqual(['25 lb', '6 can', '1 can']);
    expect(await foundIn(contentWith(sized))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:4:2 warning cans-of-two-sizes lentils is also sold as “6/#10”: cans of No. 300 and No. 10 are different sizes, and “can” can mean only one of them, so this row is left out — write what a can of this row holds, such as 24 x 15 oz"`,
    );
  });
});

describe('rows of a price list: what check says', () => {
  test('of foods that the kitchen does not have: one note', async () => {
    const list = rows(
      'frozen okra crinkle cut,12/3 LB,30.00,X1,2026-01-01',
      'paper napkins two-ply,1/3000 CT,41.00,X2,not a day',
    );
    expect(await foundIn(contentWith(list))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:4:1 note price-rows-unused 2 rows are left out because there is no ingredient called “frozen okra crinkle cut”, “paper napkins two-ply” — ignore this, or to buy one of them add the ingredient, or name the ingredient it is in suppliers.yaml under “names”"`,
    );
  });

  test('of foods that no recipe uses: a note, though they cannot be read', async () => {
    const list = rows('potato,50 lb sack,ask,P1,2026-01-01');
    expect(await foundIn(contentWith(list))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:4:3 note price-rows-unused 1 row is left out because they can’t be read; no recipe needs them: “potato” — correct them when a recipe uses them"`,
    );
  });

  test('of foods that a recipe may use, while one cannot be read: an error as ever', async () => {
    const list = {
      ...rows('potato,50 lb sack,ask,P1,2026-01-01'),
      'recipes/broken.mdx': 'no data\n',
    };
    expect(await foundIn(contentWith(list))).toContain(
      'content/prices/hill-farm.csv:4:3 error not-understood "ask" is not an amount in USD',
    );
  });

  test('with the same trouble in every row: the first, and where the others are', async () => {
    const list = rows(...[1, 2, 3, 4, 5].map((n) => `lentils,${n} lb sack,"${n},50",L${n}0,2026-01-01`));
    expect(await foundIn(contentWith(list))).toMatchInlineSnapshot(`
      "content/prices/hill-farm.csv:4:3 error not-understood "1,50" is not an amount in USD — use a decimal point: write 1.50
      content/prices/hill-farm.csv:5:3 error not-understood the price of 4 other rows (lines 5, 6, 7, 8) can’t be read either — correct the first one, then the others the same way"
    `);
  });

  test('called by a name that suppliers.yaml gives to no ingredient: once, where the name is given', async () => {
    const list = {
      ...rows('LENTIL BROWN,10 lb,12.00,L2,2026-01-01', 'LENTIL BROWN,20 lb,22.00,L3,2026-01-01'),
      ...supplier('  names:\n    LENTIL BROWN: lentlis\n'),
    };
    expect(await foundIn(contentWith(list))).toMatchInlineSnapshot(
      `"content/suppliers.yaml:4:19 error unknown-id “LENTIL BROWN” is mapped to “lentlis”, but there is no ingredient called that — did you mean lentil?"`,
    );
  });
});

describe('one pack at two prices from one date: what check says', () => {
  const twice = rows(
    'lentils,10 lb bag,12.00,L2,2026-01-01',
    'lentils,10 LB  bag,21.00,L2,2026-01-01',
    'lentils,10 lb bag,13.00,L2,2026-03-01',
  );

  test('which of them counts, the later row', async () => {
    expect(await foundIn(contentWith(twice))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:5:2 warning price-twice “10 LB bag” of lentils has two prices from 2026-01-01: 12.00 USD in line 4 and 21.00 USD here; the one here counts — delete the row that is wrong, or correct its date"`,
    );
    const { book } = await readBook(contentWith(twice));
    const offered = packsOn(book?.prices.get('lentils') ?? [], must(parseDay('2026-02-01')));
    expect(offered.map(({ price }) => price.toFixed(2))).toContain('21.00');
    expect(offered.map(({ price }) => price.toFixed(2))).not.toContain('12.00');
  });

  test('nothing of the same price twice, and nothing of a food that no recipe uses', async () => {
    const same = rows('lentils,10 lb bag,12.00,L2,2026-01-01', 'lentils,10 lb bag,12.00,L2,2026-01-01');
    expect(await foundIn(contentWith(same))).toBe('');
    const idle = rows('potato,50 lb sack,12.00,P1,2026-01-01', 'potato,50 lb sack,13.00,P1,2026-01-01');
    expect(await foundIn(contentWith(idle))).toBe('');
  });
});
