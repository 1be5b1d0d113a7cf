import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

describe('amounts and what they are counted in: what check says', () => {
  test('a negative amount', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'lentils: -4 lb'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:12 error not-understood "-4" is negative — write an amount above zero"`,
    );
  });

  test('an amount of nothing', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'lentils: 0 lb'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:12 error not-understood "0 lb" is zero — write an amount above zero, or leave the line out"`,
    );
  });

  test('a unit that no conversion leads from to the packs', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'lentils: 2 bunches'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:12 error unit-not-reached “lentils” is bought by the lb, and there is no conversion from bunch — add to the conversions of lentils what 1 bunch is, such as “1 bunch = … lb”"`,
    );
  });

  test('a unit that the recipe used as a part does not make', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('recipes/cheese-plate.mdx', 'hill-cheese: 3 lb', 'hill-cheese: 3 lb\n  lentil-soup: 2 lb'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/cheese-plate.mdx:6:16 error unit-not-reached “lentil-soup” makes serving, gal, and there is no conversion from lb — write the amount in serving, gal, or add to the “makes” of lentil-soup what a batch is in lb"`,
    );
  });

  test('a dish given out in a unit its recipe does not make', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('packages/supper.mdx', 'lentil-soup: 8 fl oz per guest', 'lentil-soup: 1 bowl per guest'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:20 error unit-not-made “lentil-soup” is served by the bowl, but its recipe makes serving, gal — write the amount in serving, gal, or add to the recipe’s “makes” what a batch is in bowl"`,
    );
  });

  test('conversions that disagree', async () => {
    expect(
      await foundIn(
        contentWith(
          changed(
            'ingredients/own.yaml',
            '[1 cup = 192 g]',
            '[1 cup = 192 g, 1 sack = 25 lb, 1 sack = 90 cups]',
          ),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:48 warning conversions-disagree “1 sack = 90 cups” of lentils does not match “1 sack = 25 lb” and “1 cup = 192 g” — weigh or measure it again, and keep the one that is right"`,
    );
  });

  test('a slash in a conversion that could mean another amount', async () => {
    const written = (text: string) =>
      foundIn(contentWith(changed('ingredients/own.yaml', '[1 cup = 192 g]', `[1 cup = 192 g, ${text}]`)));
    expect(await written('1 case = 24/12 oz')).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:32 warning conversion-slash “24/12 oz” is read as 24 × 12 oz = 288 oz — write 288 oz if that is right, or 2 oz if you meant that"`,
    );
    expect(await written('1 case = 2/10 lb')).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:32 warning conversion-slash “2/10 lb” is read as 2 × 10 lb = 20 lb — write 20 lb if that is right, or ⅕ lb if you meant that"`,
    );
    expect(await written('1 scoop = 3/16 lb')).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:32 warning conversion-slash “3/16 lb” is read as a fraction of 1 lb — write 0.1875 lb if that is right, or 48 lb if you meant that"`,
    );
    expect(await written('1 scoop = 3/7 lb')).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:4:32 warning conversion-slash “3/7 lb” is read as a fraction of 1 lb — write 3 lb, and 7 times the other side, if that is right, or 21 lb if you meant that"`,
    );
    for (const plain of [
      '1 case = 24 lb',
      '1 bowl = 3/8 lb',
      '1 slice = 1/20 loaf',
      '1 case = 4/1 lb',
      '1 scoop = 0.1875 lb',
    ])
      expect(await written(plain)).toBe('');
  });

  test('batches that say two different things', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('recipes/lentil-soup.mdx', '[40 servings, 2 gal]', '[40 servings, 2 gal, 4 gal]'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:3:29 warning conversions-disagree “40 servings = 4 gal” does not match the other amounts that a batch makes — weigh and measure a batch again, and keep the right one"`,
    );
  });

  test('a preparation without a yield beside others that have one', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('ingredients/own.yaml', '  conversions: [1 cup = 192 g]', '  yields: { rinsed: 98 % }'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:3 warning yield-unsaid “lentils” states a yield for “rinsed” but none for this line, so nothing extra is bought for trim — use one of those words, or give lentils a “yield:” for any other prep"`,
    );
  });

  test('food that loses weight when made ready, without a yield', async () => {
    expect(
      await foundIn(
        contentWith(changed('recipes/lentil-soup.mdx', '  lentils: 4 lb', '  lentils, drained: 4 lb')),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:3 note trim-not-stated “lentils” states no yield, so 4 lb drained is bought as 4 lb, with nothing extra for trim — write “yield:” for lentils, 100 % if nothing comes off"`,
    );
  });

  test('raw fish bought whole without a yield, but not once one is stated, ground, or counted', async () => {
    const fish = (facts: string, amount = '10 lb') =>
      foundIn(
        contentWith({
          ...changed('recipes/cheese-plate.mdx', 'hill-cheese: 3 lb', `pike: ${amount}`),
          'ingredients/own.yaml': `${SMALL_CONTENT['ingredients/own.yaml']}pike: { from: fish, contains: fish (pike), conversions: 1 each = 3 lb${facts} }\n`,
          'prices/hill-farm.csv': `${SMALL_CONTENT['prices/hill-farm.csv']}pike,10 lb,60.00,,2026-01-01\n`,
        }),
      );
    const found = async (...of: Parameters<typeof fish>) =>
      (await fish(...of)).split('\n').filter((line) => line.includes('trim-not-stated'));
    expect(await found('')).toEqual([
      'content/recipes/cheese-plate.mdx:5:3 note trim-not-stated “pike” states no yield, so 10 lb ready to cook is bought as 10 lb, with nothing extra for trim — write “yield:” for pike, 100 % if nothing comes off',
    ]);
    expect(await found(', yield: 100 %')).toEqual([]);
    expect(await found(', sold as: ground')).toEqual([]);
    expect(await found('', '4 each')).toEqual([]);
  });

  test('a container that takes far more than it holds', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('kitchen.yaml', 'tray: { holds: 20 servings }', 'tray: { holds: 20 servings, over: 30 % }'),
        ),
      ),
    ).toContain('error not-understood “30 %” is too much to overfill — write a percentage from 0 % to 25 %');
  });

  test('a container measured in what the recipe does not make', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/cheese-plate.mdx', 'hold: cold', 'hold: cold\npack: tub'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/cheese-plate.mdx:10:7 warning container-not-reached “tub” is measured by the fl oz, but “cheese-plate” does not state what it makes in that unit — add to “makes” what a batch is in fl oz, or write how much goes in each, such as “20 servings per tub”"`,
    );
  });

  test('hot food in a container for cold', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'serve: tray', 'serve: tub'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:12:16 warning container-temperature “tub” is for cold food, but “lentil-soup” is served hot — name another container"`,
    );
  });

  test('a pack that no line can reach', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('prices/hill-farm.csv', 'lentils,25', 'lentils,6 x 1 can,9.00,L2,2026-01-01\nlentils,25'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:5:12 warning pack-not-reached “lentils” is also sold by the can, but there is no conversion from lb, so those packs are never bought for this — add a conversion to lentils, such as “1 lb = … can”"`,
    );
  });

  test('a price that is none, by the number of its field', async () => {
    expect(
      await foundIn(contentWith(changed('prices/hill-farm.csv', '31.00', 'thirty'))),
    ).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:2:3 error not-understood "thirty" is not an amount in USD — write an amount such as "1250.00""`,
    );
  });

  test('a date on a price list that does not exist', async () => {
    expect(
      await foundIn(contentWith(changed('prices/hill-farm.csv', 'L1,2026-01-01', 'L1,2026-02-30'))),
    ).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:2:5 error not-understood 2026-02-30 does not exist — that month runs from 2026-02-01 to 2026-02-28"`,
    );
  });
});
