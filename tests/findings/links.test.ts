import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

/** Thirty-one recipes, each the only part of the next. */
function deepChain(): Record<string, string> {
  const recipe = (part: string) =>
    `---\nname: Step\nmakes: 1 lb\ningredients: { ${part}: 1 lb }\nsteps: [{ do: Stir, station: stove }]\nhold: cold\n---\n`;
  const chain = Array.from({ length: 31 }, (_, index) => [
    `recipes/step-${index}.mdx`,
    recipe(index === 0 ? 'hill-cheese' : `step-${index - 1}`),
  ]);
  return Object.fromEntries(chain);
}

describe('what one file says of another: what check says', () => {
  test('a mistyped ingredient, with the nearest', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'lentlis: 4 lb'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:3 error unknown-id no ingredient or recipe is called “lentlis” — did you mean lentil?"`,
    );
  });

  test('a mistyped recipe in a package', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '      lentil-soup:', '      lentil-soop:'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:7 error unknown-id no recipe is called “lentil-soop” — did you mean lentil-soup?"`,
    );
  });

  test('an unknown station', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'station: stove', 'station: oven'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:8:14 error unknown-id no station is called “oven” — write one of stove"`,
    );
  });

  test('an unknown container', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'serve: tray', 'serve: trey'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:12:16 error unknown-id no container is called “trey” — did you mean tray?"`,
    );
  });

  test('an unknown place and add-on', async () => {
    expect(
      await foundIn(
        contentWith({
          'proposals/gale.md': changed('proposals/gale.md', 'place: hill-town', 'place: hil-town')[
            'proposals/gale.md'
          ]!.replace('packages: supper', 'packages: supper\nadd-ons: espresso'),
        }),
      ),
    ).toMatchInlineSnapshot(`
      "content/proposals/gale.md:7:8 error unknown-id no place is called “hil-town” — did you mean hill-town?
      content/proposals/gale.md:11:10 error unknown-id no add-on is called “espresso” — write one of late-soup"
    `);
  });

  test('a price list of a supplier nobody knows', async () => {
    expect(
      await foundIn(contentWith({ 'prices/valley.csv': 'ingredient,pack,price,item number,valid from\n' })),
    ).toMatchInlineSnapshot(
      `"content/prices/valley.csv:1:1 error unknown-id no supplier is called “valley” — add the supplier in suppliers.yaml under the id in the file’s name"`,
    );
  });

  test('a food on a price list that nobody knows', async () => {
    expect(
      await foundIn(contentWith(changed('prices/hill-farm.csv', 'lentils', 'lentlis'))),
    ).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:2:1 warning price-row-misnamed no ingredient is called “lentlis”, so the row is left out — did you mean lentil?"`,
    );
  });

  test('an id that is both an ingredient and a recipe', async () => {
    expect(
      await foundIn(
        contentWith({
          'recipes/lentils.mdx':
            '---\nname: Lentils\nmakes: 1 lb\ningredients: { hill-cheese: 1 lb }\nsteps: [{ do: Boil, station: stove }]\nhold: cold\n---\n',
        }),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:3 error ambiguous-id “lentils” is both an ingredient and a recipe — rename recipes/lentils.mdx and every line that means it"`,
    );
  });

  test('a recipe with the id of its own ingredient, which is no ring', async () => {
    const plate = changed('recipes/cheese-plate.mdx', 'name: Cheese plate', 'name: Hill cheese');
    expect(
      await foundIn(
        contentWith({
          'recipes/hill-cheese.mdx': plate['recipes/cheese-plate.mdx'] as string,
        }),
      ),
    ).toMatchInlineSnapshot(`
      "content/recipes/cheese-plate.mdx:5:3 error ambiguous-id “hill-cheese” is both an ingredient and a recipe — rename recipes/hill-cheese.mdx and every line that means it
      content/recipes/hill-cheese.mdx:5:3 error ambiguous-id “hill-cheese” is both an ingredient and a recipe — rename recipes/hill-cheese.mdx and every line that means it"
    `);
  });

  test('an ingredient defined in two files', async () => {
    expect(
      await foundIn(contentWith({ 'ingredients/zz.yaml': 'lentils:\n  from: plant\n' })),
    ).toMatchInlineSnapshot(
      `"content/ingredients/zz.yaml:1:1 error defined-twice “lentils” is defined here and in ingredients/own.yaml — keep one of the two"`,
    );
  });

  test('recipes that go round in a ring, with the way', async () => {
    expect(
      await foundIn(
        contentWith({
          ...changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'stock: 1 gal'),
          'recipes/stock.mdx':
            '---\nname: Stock\nmakes: 1 gal\ningredients:\n  lentils: 1 lb\n  lentil-soup: 1 gal\nsteps: [{ do: Boil, station: stove }]\nhold: hot\n---\n',
        }),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:3 error circular-recipe the recipe is part of itself: lentil-soup → stock → lentil-soup — remove one of these lines"`,
    );
  });

  test('a column that a price list lacks', async () => {
    expect(
      await foundIn(
        contentWith(changed('prices/hill-farm.csv', 'ingredient,pack,price', 'ingredient,pack,cost')),
      ),
    ).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:1:1 error missing-column the price list has no column “price” — name it on the first line, or write in suppliers.yaml under “columns” what the list calls “price”"`,
    );
  });

  test('a column of a price list that nobody reads', async () => {
    const list = changed('prices/hill-farm.csv', 'item number', 'item no');
    expect(await foundIn(contentWith(list))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:1:4 warning unknown-column the price list has a column “item no” that is not read — the columns are ingredient, pack, price, item number, valid from"`,
    );
  });

  test('a row of a price list without its pack', async () => {
    const list = changed('prices/hill-farm.csv', '25 lb sack', '');
    expect(await foundIn(contentWith(list))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:2:2 error not-understood the row has no pack — write what one pack holds: 50 lb sack, 2/10 lb, 6/#10, 6 x 1 can, about 12 lb piece"`,
    );
  });

  test('a pinned pack that is on no list', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('ingredients/own.yaml', '  from: plant', '  from: plant\n  buy: hill-farm 50 lb'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:3:8 warning pinned-pack-unknown hill-farm does not list “50 lb” of lentils, so the cheapest pack is bought — its packs there are 25 lb sack"`,
    );
  });

  test('recipes nested deeper than anyone cooks', async () => {
    expect(await foundIn(contentWith(deepChain()))).toMatchInlineSnapshot(
      `"content/recipes/step-30.mdx:4:1 error recipe-too-deep “step-30” has recipes nested 31 deep — 30 is the most; join some of them"`,
    );
  });

  test('what nothing uses', async () => {
    expect(
      await foundIn(
        contentWith({
          ...changed('packages/supper.mdx', '      cheese-plate: 1 serving per guest\n', ''),
          ...changed(
            'ingredients/own.yaml',
            'lentils:',
            'red-lentils:\n  from: plant\n  contains: none\nlentils:',
          ),
        }),
      ),
    ).toMatchInlineSnapshot(`
      "content/ingredients/own.yaml:1:1 note ingredient-unused no recipe uses the ingredient “red-lentils” — use it, or keep it for later
      content/recipes/cheese-plate.mdx:2:1 note recipe-unused nothing uses the recipe “cheese-plate” — add it to a package, or keep it for later"
    `);
  });
});
