import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { acceptedKitchen, issuedKitchen } from './accepted-kitchen.ts';
import { change } from './kitchen-copy.ts';
import { run } from './run.ts';

const DEMO = join(import.meta.dirname, '../../content');

describe('plan', () => {
  test('prints what to cook, what to buy and what to do on which day', async () => {
    const { code, out, err } = await run(await acceptedKitchen(), 'plan', 'lifeboat-evening');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('Crew evening, Dunmarrow Lifeboat Crew (accepted)\n');
    // 38 guests × 350 ml × 1.06 = 14.098 l; 38 pieces × 1.06 = 40.28, up to 41, of which a batch makes 24.
    expect(out).toMatch(
      /^ {2}Smoked haddock chowder +38 +350 ml per guest +6% +14\.1 l +2 × GN 1\/1, 100 mm$/m,
    );
    expect(out).toMatch(/^ {2}Apple and oat crumble +2 +48 pieces +3 days$/m);
    expect(out).toMatch(/^Wednesday, 19 May 2027 \(2 days before\), hands-on 20 min$/m);
  });

  test('as JSON is the same plan again and again', async () => {
    const dir = await acceptedKitchen();
    const [one, two] = [
      await run(dir, 'plan', 'lifeboat-evening', '--json'),
      await run(dir, 'plan', 'lifeboat-evening', '--json'),
    ];
    expect(one).toEqual(two);
    expect(JSON.parse(one.out)).toMatchObject({ kind: 'prep plan', event: { id: 'lifeboat-evening' } });
  });

  test('cooks what was accepted by the recipes as they are now', async () => {
    const dir = await acceptedKitchen();
    change(dir, [
      'packages/chowder-lunch.mdx',
      'haddock-chowder: 350 ml per guest',
      'haddock-chowder: 900 ml per guest',
    ]);
    change(dir, ['recipes/haddock-chowder.mdx', 'parsley: 100 g', 'parsley: 200 g']);
    const { dishes, shopping } = JSON.parse((await run(dir, 'plan', 'lifeboat-evening', '--json')).out);
    expect(dishes[0].need.exact).toBe('14098 ml');
    const parsley = shopping.find((each: { ingredient: string }) => each.ingredient === 'parsley');
    // 200 g × 14.098 l ÷ 14 l, of which 95 % is left when made ready
    expect(parsley.need.exact).toBe('212 g');
  });

  test.each<[string, (dir: string) => void, string]>([
    [
      'whose recipe has an error, saying which',
      (dir) => change(dir, ['recipes/haddock-chowder.mdx', 'makes: [40 servings, 14 l]', 'makes: plenty']),
      'the recipe haddock-chowder of the accepted dish “Smoked haddock chowder” can’t be used',
    ],
    [
      'whose facts cannot be read, saying which',
      (dir) => writeFileSync(join(dir, 'events/lifeboat-evening/002-confirmed.json'), 'nonsense'),
      'the event lifeboat-evening can’t be used',
    ],
    [
      'whose offer was changed since',
      (dir) => change(dir, ['offers/lifeboat-evening-r1.json', '"350 ml per guest"', '"3500 ml per guest"']),
      'the event lifeboat-evening can’t be used: ',
    ],
  ])('is refused for an event %s', async (_, damage, sentence) => {
    const dir = await acceptedKitchen();
    damage(dir);
    const { code, out, err } = await run(dir, 'plan', 'lifeboat-evening');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(sentence);
    const json = await run(dir, 'plan', 'lifeboat-evening', '--json');
    expect(JSON.parse(json.out).refused).toContain(sentence);
  });

  test('of what is offered and not accepted, or misspelt, is refused with the way out', async () => {
    expect((await run(await issuedKitchen(), 'plan', 'lifeboat-evening')).err).toBe(
      'Can’t do that: there is no event lifeboat-evening — `accept` turns an offer into an event.\n',
    );
    expect((await run(await acceptedKitchen(), 'plan', 'lifeboat-evenin')).err).toContain(
      'did you mean lifeboat-evening?',
    );
  });
});

describe('explain', () => {
  test('a dish, from the guests down to the packs', async () => {
    const dir = await acceptedKitchen();
    const { code, out } = await run(dir, 'explain', 'lifeboat-evening', 'Smoked', 'haddock', 'chowder');
    expect(code).toBe(0);
    const lines = out.split('\n').map((line) => line.trim());
    for (const link of [
      'Smoked haddock chowder, Bowls',
      '34 adults + 3 children + 1 vendor = 38 guests',
      '38 guests × 350 ml = 13300 ml',
      'Recipe: Strand broth',
      // Loaded hot at 17:20, 25 min of hands before it; the broth is made on the day before, when no hour is stated.
      'Smoked haddock chowder, step 2: Friday, 21 May 2027, 16:55 to 17:20',
      'to be loaded hot at 17:20',
      'Buy: Smoked haddock, undyed',
    ])
      expect(lines).toContain(link);
    expect((await run(dir, 'explain', 'lifeboat-evening', 'haddock-chowder')).out).toBe(out);
  });

  test('a recipe that is part of a dish: summed, divided, rounded up to half batches once', async () => {
    const { out } = await run(await acceptedKitchen(), 'explain', 'lifeboat-evening', 'strand-broth');
    expect(out).toMatch(/^Recipe: Strand broth$/m);
    expect(out).toMatch(/^ {2}rounded up to half batches: 0\.5 batches$/m);
    expect(out).toMatch(/^Buy: Onions$/m);
  });

  test('an ingredient, as JSON: every recipe that uses it and the packs', async () => {
    const { out } = await run(await acceptedKitchen(), 'explain', 'lifeboat-evening', 'leek', '--json');
    const steps: { about: string }[] = JSON.parse(out);
    expect(steps.map(({ about }) => about)).toEqual(
      expect.arrayContaining(['Leeks in Strand broth', 'Leeks in Smoked haddock chowder', 'Buy: Leeks']),
    );
  });

  test('an allergen as the country spells it, and the hour by which food is cold as its people read it', async () => {
    const { out } = await run(
      DEMO,
      'explain',
      'farrowick-wedding',
      'pears-in-cider',
      '--today',
      '2027-04-26',
    );
    expect(out).toMatch(/^contains sulfites$/m);
    expect(out).toMatch(/^ {2}cold by 11:20 AM$/m);
  });

  test('what the plan does not have, with the nearest it has', async () => {
    const dir = await acceptedKitchen();
    const { code, out, err } = await run(dir, 'explain', 'lifeboat-evening', 'smoked-hadock');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toBe(
      'Can’t do that: the plan of lifeboat-evening has no dish, recipe, ingredient, ice, rental, fuel, piece of kit or carrier “smoked-hadock” — did you mean smoked-haddock?\n',
    );
    expect(await run(dir, 'explain', 'lifeboat-evening')).toMatchObject({ code: 2, out: '' });
  });
});
