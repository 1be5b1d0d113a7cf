import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import { offerContent } from '../../../src/offers/issue/offer-content.ts';
import { packageTiers } from '../../../src/offers/issue/package-tiers.ts';
import { change, copyOf } from '../../commands/kitchen-copy.ts';
import { day, eveningOf, must } from './second-kitchen.ts';

/** A bread supper of bought loaves, priced by what the bread costs: 3.10 a loaf of 16 slices, 6 % overage on a buffet. */
async function breadSupper(
  priceLine = '',
  targets = '{ food cost: 25 %, rounded up to: 0.05, for: [10, 40] }',
) {
  const dir = copyOf();
  writeFileSync(
    join(dir, 'recipes/bread-board.mdx'),
    '---\nname: Bread board\nmakes: 16 slices\ningredients:\n  soda-bread: 16 slices\nsteps:\n  - do: Slice.\n    station: bench\nhold: room\n---\n',
  );
  writeFileSync(
    join(dir, 'packages/bread-supper.mdx'),
    `---\nname: Bread supper\nstyle: buffet\nprice: ${targets}\nminimum guests: ${/\[(\d+)/.exec(targets)?.[1]}\ncourses:\n  - name: Board\n    dishes:\n      bread-board: 2 slices per guest\n---\nBread.\n`,
  );
  change(dir, [
    'prices/strand-stores.csv',
    'soda-bread,1 loaf,3.10,SB1,2027-01-04\n',
    `soda-bread,1 loaf,3.10,SB1,2027-01-04\n${priceLine}`,
  ]);
  change(dir, [
    'proposals/lifeboat-evening.md',
    'packages: chowder-lunch,',
    'packages: bread-supper, chowder-lunch,',
  ]);
  const { book } = await readBook(dir);
  return { book: book!, chosen: book!.packages.get('bread-supper')! };
}

describe('a price from the share of it that food may cost', () => {
  test('is the food cost at each tier’s first count over the target, up to the next step', async () => {
    const { book, chosen } = await breadSupper();
    // 10: 20 slices + 6 % = 21.2, 22 whole slices = 22/16 loaf × 3.10 = 4.2625; ÷ 10 ÷ 25 % = 1.705, up to 1.75.
    // 40: 80 slices + 6 % = 84.8, 85 whole slices = 85/16 × 3.10 = 16.46875; ÷ 40 ÷ 25 % = 1.646875, up to 1.65.
    expect(must(packageTiers(chosen, day('2027-05-21'), book))).toEqual([
      { from: 10, to: 39, perHead: '1.75' },
      { from: 40, to: null, perHead: '1.65' },
    ]);
  });

  test('takes the prices of the event’s buying day, two days before it, and no later ones', async () => {
    const dearer = 'soda-bread,1 loaf,6.20,SB1,2027-05-20\n';
    const { book, chosen } = await breadSupper(dearer);
    const at = (date: string) => must(packageTiers(chosen, day(date), book)).map(({ perHead }) => perHead);
    expect(at('2027-05-21')).toEqual(['1.75', '1.65']);
    // Twice the cost: 3.41 up to 3.45, 3.29375 up to 3.30.
    expect(at('2027-05-22')).toEqual(['3.45', '3.30']);
  });

  test('keeps a price that is a whole number of steps', async () => {
    // 100: 200 slices + 6 % = 212; 212/16 × 3.10 = 41.075; ÷ 100 = 0.41075; ÷ 41.075 % = 1.00 exactly.
    const { book, chosen } = await breadSupper(
      '',
      '{ food cost: 41.075 %, rounded up to: 0.50, for: [100] }',
    );
    expect(must(packageTiers(chosen, day('2027-05-21'), book))).toEqual([
      { from: 100, to: null, perHead: '1.00' },
    ]);
  });

  test('is refused while food of it has no price, naming it, and so is the whole proposal', async () => {
    const { book, chosen } = await breadSupper();
    const prices = new Map(book.prices);
    prices.delete('soda-bread');
    const unpriced = packageTiers(chosen, day('2027-05-21'), { ...book, prices });
    expect(unpriced).toMatchObject({
      ok: false,
      what: expect.stringContaining('there is no price on 2027-05-19 for soda-bread'),
    });
    expect(offerContent({ ...book, prices }, eveningOf(book))).toMatchObject({
      ok: false,
      what: expect.stringContaining('soda-bread'),
    });
  });
});
