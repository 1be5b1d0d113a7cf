import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { contentWith, SMALL_CONTENT } from './small-content.ts';

const FOODS = `pear-juice: { from: plant, contains: none }
still-cider: { from: "plant, alcohol", contains: none }
`;
const drink = (name: string, food: string) => `---
name: ${name}
makes: 1 gal
ingredients: { ${food}: 1 gal }
steps:
  - { do: Pour., station: stove }
keeps: 2 days
hold: cold
temperature control: no
---
`;

/** The small kitchen whose supper has drinks, with some lines of the drinks of the test's own. */
function drinks(
  lines: string,
  { hours = 'hours: 4 hours', kitchen = '', foods = FOODS } = {},
): Promise<string> {
  const supper = SMALL_CONTENT['packages/supper.mdx'] as string;
  return foundIn(
    contentWith({
      'kitchen.yaml': `${SMALL_CONTENT['kitchen.yaml']}${kitchen}`,
      'prices/hill-farm.csv': `${SMALL_CONTENT['prices/hill-farm.csv']}pear-juice,1 gal,9.00,P1,2026-01-01\nstill-cider,1 gal,30.00,C2,2026-01-01\n`,
      'ingredients/own.yaml': `${SMALL_CONTENT['ingredients/own.yaml']}${foods}`,
      'recipes/pear-cup.mdx': drink('Pear cup', 'pear-juice'),
      'recipes/cider-cup.mdx': drink('Cider cup', 'still-cider'),
      'packages/supper.mdx': supper.replace(
        '---\nA plain supper.',
        `${hours}\ndrinks:\n  name: To drink\n${lines}---\nA plain supper.`,
      ),
    }),
  );
}

const RATE = '  per guest: 2 in the first hour, then 1 per hour\n';
const at = (text: string) =>
  text
    .split('\n')
    .filter((line) => line.includes('packages/supper.mdx') || line.includes('kitchen.yaml'))
    .join('\n');

describe('drinks of a menu', () => {
  test('are read without a finding, alcohol beside something without it', async () => {
    expect(await drinks(`${RATE}  kinds: { pear-cup: 60 %, cider-cup: 20 % }\n  water: 20 %\n`)).toBe('');
  });

  test('may hold alcohol in every kind where there is water', async () => {
    expect(at(await drinks(`${RATE}  kinds: { cider-cup: 80 % }\n  water: 20 %\n`))).toBe('');
  });

  test('are free of alcohol only if that is stated', async () => {
    const foods = FOODS.replace('pear-juice: { from: plant,', 'pear-juice: {');
    const found = at(await drinks(`${RATE}  kinds: { pear-cup: 100 % }\n`, { foods }));
    expect(found).toContain('error alcohol-free-missing');
  });

  test.each([
    [
      'with alcohol for children alone',
      `${RATE}  kinds:\n    pear-cup: 100 %\n    cider-cup: { share: 20 %, for: children }\n`,
      'content/packages/supper.mdx:18:36 error alcohol-for-children “cider-cup” is planned for children, but it holds alcohol or nobody has stated that it does not — plan it for adults alone, or state under “from” what its ingredients come from',
    ],
    [
      'whose shares do not add up',
      `${RATE}  kinds: { pear-cup: 60 %, cider-cup: 20 % }\n`,
      'content/packages/supper.mdx:16:3 error drink-shares the shares of the adults’ drinks add up to 80 % — make them add up to 100 %, water included',
    ],
    [
      'whose shares do not add up for children',
      `${RATE}  kinds:\n    pear-cup: { share: 80 %, children: 70 % }\n    cider-cup: 20 %\n`,
      'content/packages/supper.mdx:16:3 error drink-shares the shares of the children’s drinks add up to 70 % — make them add up to 100 %, water included',
    ],
    [
      'of which none is free of alcohol',
      `${RATE}  kinds: { cider-cup: 100 % }\n`,
      'content/packages/supper.mdx:16:3 error alcohol-free-missing every drink holds alcohol, or nobody has stated that it does not — add a drink without alcohol, or for example “water: 20 %”',
    ],
    [
      'with alcohol for children',
      `${RATE}  kinds:\n    pear-cup: 80 %\n    cider-cup: { share: 20 %, children: 20 % }\n`,
      'content/packages/supper.mdx:18:41 error alcohol-for-children “cider-cup” is planned for children, but it holds alcohol or nobody has stated that it does not — plan it for adults alone, or state under “from” what its ingredients come from',
    ],
    [
      'without a rate',
      '  kinds: { pear-cup: 100 % }\n',
      'content/packages/supper.mdx:13:1 error missing-field “per guest” is missing — write it, such as “per guest: 2 in the first hour, then 1 per hour” (how many drinks one guest takes in the first hour and in each hour after it)',
    ],
    [
      'at a rate that is none',
      '  per guest: plenty\n  kinds: { pear-cup: 100 % }\n',
      'content/packages/supper.mdx:15:14 error not-understood “plenty” does not say how many drinks per hour — write it as “2 in the first hour, then 1 per hour” or “1 per hour”',
    ],
    [
      'at a rate that no crowd has',
      '  per guest: 6 per hour\n  kinds: { pear-cup: 100 % }\n',
      'content/packages/supper.mdx:15:14 warning drinks-beyond-sense each guest takes 6 drinks an hour; crowds take between ½ and 3 — check the amounts and the hours, such as “2 in the first hour, then 1 per hour”',
    ],
    [
      'served in what the kitchen does not pack per drink',
      `${RATE}  kinds:\n    pear-cup: { share: 100 %, in: tumbler }\n`,
      'content/packages/supper.mdx:17:35 error unknown-id no rental per drink is called “tumbler” — add it under “rentals” with an amount such as “1 each per drink”',
    ],
    [
      'poured by what its recipe does not make',
      `${RATE}  kinds:\n    pear-cup: { share: 100 %, glass: 1 bottle }\n`,
      'content/packages/supper.mdx:17:38 error unit-not-made “pear-cup” is poured by the bottle, but its recipe makes gal — write “glass” in gal, or add to the recipe’s “makes” what a batch is in bottle',
    ],
  ])('%s are told, with a way out', async (_, lines, finding) => {
    expect(at(await drinks(lines))).toBe(finding);
  });

  test('need hours, of their own or of the package', async () => {
    expect(at(await drinks(`${RATE}  kinds: { pear-cup: 100 % }\n`, { hours: 'child: 50 %' }))).toBe(
      'content/packages/supper.mdx:13:1 error drinks-no-hours how long drinks are served is not stated — write for example “hours: 4 hours” under “drinks”',
    );
    expect(
      at(await drinks(`${RATE}  hours: 3 hours\n  kinds: { pear-cup: 100 % }\n`, { hours: 'child: 50 %' })),
    ).toBe('');
  });

  test('are iced with a food that the kitchen has', async () => {
    const found = await drinks(`${RATE}  kinds: { pear-cup: 100 % }\n`, {
      kitchen: 'drinks: { ice: hail, ice per glass: 1 cup }\n',
    });
    expect(found).toContain('error not-understood 1 cup is not a weight — write it as 4 oz or 120 g');
  });
});
