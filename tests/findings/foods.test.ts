import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

describe('facts about foods: what check says', () => {
  test('allergens that nobody has said', async () => {
    expect(
      await foundIn(contentWith(changed('ingredients/own.yaml', '  contains: none\n', ''))),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:1:1 warning allergens-unsaid the allergens of “lentils” are not stated, so no offer with it can be issued — read its label and write “contains:” with its allergens, or “contains: none”"`,
    );
  });

  test('an origin that nobody has said', async () => {
    expect(
      await foundIn(contentWith(changed('ingredients/own.yaml', '  from: plant\n', ''))),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:1:1 warning origin-unsaid what “lentils” comes from is not stated, so no dish with it claims a diet — write “from:” with plant, milk, fish and so on"`,
    );
  });

  test('an allergen whose kind is not said', async () => {
    expect(
      await foundIn(contentWith(changed('ingredients/own.yaml', 'contains: milk', 'contains: milk, fish'))),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:7:13 error not-understood “fish” does not name the kind of fish — write the kind in parentheses, such as fish (cod)"`,
    );
  });

  test('cans by their trade number in a conversion, where a price list may have them', async () => {
    const said = (side: string) =>
      foundIn(
        contentWith(changed('ingredients/own.yaml', '[1 cup = 192 g]', `[1 cup = 192 g, "${side} = 41 lb"]`)),
      );
    expect(await said('6/#10')).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:32 error not-understood “6/#10” names cans by their trade number, and a conversion is true of any can of the food — write 6 can here; the number goes into the pack in the price list"`,
    );
    expect(await said('No. 10 can')).toContain('“No. 10 can” names cans by their trade number');
    expect(await said('6 can')).toBe('');
  });

  test('none beside an allergen', async () => {
    expect(
      await foundIn(contentWith(changed('ingredients/own.yaml', 'contains: milk', 'contains: milk, none'))),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:7:13 error not-understood “none” is listed with an allergen — write none by itself, or the allergens without it"`,
    );
  });

  test('a yield of more than the whole', async () => {
    expect(
      await foundIn(
        contentWith(changed('ingredients/own.yaml', '  contains: none', '  contains: none\n  yield: 120 %')),
      ),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:10 error not-understood “120 %” is not a part of the whole — write a percentage above 0 % and up to 100 %"`,
    );
  });

  test('an ingredient without a price', async () => {
    expect(
      await foundIn(
        contentWith(changed('prices/hill-farm.csv', 'hill-cheese,5 lb,42.00,C1,2026-01-01\n', '')),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/cheese-plate.mdx:5:3 warning not-priced no price list has “hill-cheese”, so costs leave it out — add it to a file in prices/"`,
    );
  });

  test('cold food kept longer than the food code allows', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('recipes/cheese-plate.mdx', 'hold: cold\nkeeps: 1 day', 'keeps: 9 days\nhold: cold'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/cheese-plate.mdx:9:8 warning keeps-too-long “cheese-plate” keeps 9 days cold, but FDA Food Code 2022, 3-501.17 allows 7, counting the day it is made, for ready-to-eat food that must be kept cold — write 7 days or fewer, freeze it, or write “temperature control: no” if it does not have to be kept cold; the local food code and a licensed food-safety manager decide"`,
    );
  });
});

test('how long a dish keeps, where nobody states it', async () => {
  expect(
    await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'keeps: 3 days\n', ''))),
  ).toMatchInlineSnapshot(
    `"content/recipes/lentil-soup.mdx:2:1 warning keeps-not-stated “lentil-soup” does not state how long it keeps, so labels with it leave “Use by” blank — write “keeps:”, such as keeps: 3 days (at most 7 where it needs the cold), or fill in each label by hand"`,
  );
});
