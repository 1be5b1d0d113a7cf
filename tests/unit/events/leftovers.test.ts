import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import type { BrandView } from '../../../src/views/brand/brand-view.ts';
import { leftoversView } from '../../../src/views/kitchen/leftovers-view-of.ts';
import { run } from '../../commands/run.ts';
import { bookOf, done, EVENT, factsIn, refusal, supperKitchen } from './supper-kitchen.ts';

function csv(text: string): string {
  const dir = mkdtempSync(join(tmpdir(), 'salver-left-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  const file = join(dir, 'left.csv');
  writeFileSync(file, text);
  return file;
}

const LEFT = `dish,came back,ran out,note
bean-fritters,half a tray and 4 pieces,,
Lamb stew,,20:15,second table had none
pea-pot,1 serving,,
`;

test('what came back is frozen with what went out, for how many, who came and what it cost', async () => {
  const dir = await supperKitchen();
  const said = await done(dir, '2027-05-15', 'leftovers', EVENT, '--from', csv(LEFT), '--adults', '80');
  // 63 stews in whole batches of 10 are 70. 80 of 84 came, so 60 of the 63 who chose stew: 70 ÷ 60 = 1⅙.
  // Fritters: 20 take 2 lb of beans at $2 and 1 qt of yogurt at $4, so 84 × $0.40. Stew: 10 take 4 lb ÷ 80 % at $8.
  expect(said).toMatchInlineSnapshot(`
    "Leftovers of pell-supper: 80 adults came.
    dish           went out     came back           eaten per guest         note
    Bean fritters  84 pieces    14 pieces           0.88 pieces
    Lamb stew      70 servings  ran out at 8:15 PM  at least 1.17 servings  second table had none
    Pea pot        21 servings  1 serving           1 serving
    No plan was saved on the day; what went out is taken from a new plan, made from today’s recipes.
    "
  `);
  const facts = factsIn(dir).slice(2);
  expect(facts.map(({ file }) => file)).toEqual(['003-served.json', '004-leftovers.json']);
  expect(facts[1]?.fact).toMatchInlineSnapshot(`
    {
      "came": {
        "adults": 80,
        "children": 0,
        "staff": 0,
        "vendors": 0,
      },
      "dishes": [
        {
          "back": "14 piece",
          "came": "80",
          "carried": "84 piece",
          "cost": "33.60",
          "counted": "84",
          "course": "First",
          "name": "Bean fritters",
          "perGuest": "1 piece per guest",
          "planned": "84 piece",
          "recipe": "bean-fritters",
          "said": "half a tray and 4 pieces",
        },
        {
          "at": "20:15",
          "back": "0 serving",
          "came": "60",
          "carried": "70 serving",
          "cost": "280.00",
          "counted": "63",
          "course": "Main",
          "name": "Lamb stew",
          "note": "second table had none",
          "perGuest": "1 serving per guest",
          "planned": "63 serving",
          "ranOut": true,
          "recipe": "lamb-stew",
          "said": "ran out at 20:15",
        },
        {
          "back": "1 serving",
          "came": "20",
          "carried": "21 serving",
          "cost": "12.60",
          "counted": "21",
          "course": "Main",
          "name": "Pea pot",
          "perGuest": "1 serving per guest",
          "planned": "21 serving",
          "recipe": "pea-pot",
          "said": "1 serving",
        },
      ],
      "kind": "leftovers",
      "on": "2027-05-15",
      "package": "supper",
      "plan": "made anew",
      "style": "plated",
      "version": 1,
    }
  `);
  await bookOf(dir);
});

test('before its day, for nobody known to have come, and for what no dish is, nothing is recorded', async () => {
  const dir = await supperKitchen();
  expect(await refusal(dir, '2027-05-14', 'leftovers', EVENT, '--from', csv(LEFT))).toMatch(
    /^Can’t do that: pell-supper is on Saturday, May 15, 2027, so nothing has come back yet/,
  );
  expect(await refusal(dir, '2027-05-16', 'leftovers', EVENT, '--from', csv(LEFT))).toMatch(
    /how many came to pell-supper is not recorded — give it with --adults/,
  );
  const wrong = csv('dish,came back,ran out\npea-pott,1 serving,\nlamb-stew,2 servings,20:15\n');
  expect(await refusal(dir, '2027-05-16', 'leftovers', EVENT, '--from', wrong, '--adults', '80')).toBe(
    'Can’t do that: row 2: “pea-pott” is not a dish that went out; did you mean pea-pot?\n' +
      'row 3: it ran out, but 2 servings came back; keep one of the two — fix the list; nothing was recorded from it.',
  );
  const much = csv('dish,came back\nbean-fritters,6 trays\n');
  expect(await refusal(dir, '2027-05-16', 'leftovers', EVENT, '--from', much, '--adults', '80')).toMatch(
    /^Can’t do that: Bean fritters: “6 trays” is 120 pieces, but only 8\d pieces went out/,
  );
  expect(factsIn(dir)).toHaveLength(2);
});

test('said again it is refused, corrected it replaces', async () => {
  const dir = await supperKitchen();
  const file = csv(LEFT);
  await done(dir, '2027-05-15', 'leftovers', EVENT, '--from', file, '--adults', '80');
  expect(await refusal(dir, '2027-05-16', 'leftovers', EVENT, '--from', file)).toMatch(
    /these leftovers are the same as the last ones/,
  );
  await done(dir, '2027-05-16', 'leftovers', EVENT, '--from', csv('dish,came back\npea-pot,2 servings\n'));
  expect(
    factsIn(dir)
      .map(({ file: name }) => name)
      .at(-1),
  ).toBe('005-leftovers.json');
});

test('what events speak for is proposed as a diff, and only what is accepted is written', async () => {
  const dir = await supperKitchen();
  const file = csv('dish,came back\nbean-fritters,64 pieces\nlamb-stew,ran out\n');
  await done(dir, '2027-05-15', 'leftovers', EVENT, '--from', file, '--adults', '80');
  const menu = join(dir, 'packages/supper.mdx');
  const before = readFileSync(menu, 'utf8');
  const said = await done(dir, '2027-05-16', 'portions');
  // 20 of 84 pieces for 80 guests are ¼ each. One event has a sixth of the say: 1 − ¾ ÷ 6 = ⅞, up to 9 for 10 guests.
  // The stew ran out at 1⅙ for each: 1 + ⅙ ÷ 6, up to 11 for 10.
  expect(said).toMatch(
    /Bean fritters +supper +plated +1 +0\.25 pieces +1 piece per guest +9 pieces per 10 guests\n/,
  );
  expect(said).toMatch(
    /Lamb stew +supper +plated +1 +1 +1\.17 servings or more +1 serving per guest +11 servings per 10 guests\n/,
  );
  expect(said).toContain(
    '\n-      bean-fritters: 1 piece per guest\n+      bean-fritters: 9 pieces per 10 guests\n',
  );
  expect(readFileSync(menu, 'utf8')).toBe(before);
  await done(dir, '2027-05-16', 'portions', 'bean-fritters', '--accept');
  expect(readFileSync(menu, 'utf8')).toBe(
    before.replace('bean-fritters: 1 piece per guest', 'bean-fritters: 9 pieces per 10 guests'),
  );
  await bookOf(dir);
  expect(await refusal(dir, '2027-05-16', 'portions', 'pea-pot')).toMatch(
    /no leftovers of “pea-pot” have been recorded yet/,
  );
});

test('only events of a season are asked, over the turn of the year too', async () => {
  const dir = await supperKitchen();
  const file = csv('dish,came back\nbean-fritters,64 pieces\n');
  await done(dir, '2027-05-15', 'leftovers', EVENT, '--from', file, '--adults', '80');
  const rows = async (months: string) =>
    JSON.parse(await done(dir, '2027-05-16', 'portions', '--months', months, '--json')) as unknown[];
  expect(await rows('5')).toHaveLength(1);
  expect(await rows('3-5')).toHaveLength(1);
  expect(await rows('11-5')).toHaveLength(1);
  expect(await rows('6-4')).toHaveLength(0);
  expect(await done(dir, '2027-05-16', 'portions', '--months', '11-2')).toBe(
    'No leftovers have been recorded yet.\n',
  );
  expect((await run(dir, 'portions', '--months', 'summer', '--today', '2027-05-16')).err).toBe(
    '--months: “summer” is not a range of months; write 3-5 for March to May.\n',
  );
});

test('where it went is recorded, told back with the caution, and summed by food cost for the owner', async () => {
  const dir = await supperKitchen();
  const went = `dish,came back,where it went
bean-fritters,14 pieces,Given away
lamb-stew,7 servings,thrown away
pea-pot,1 serving,
`;
  const told = await done(dir, '2027-05-15', 'leftovers', EVENT, '--from', csv(went), '--adults', '80');
  expect(told).toMatch(/Bean fritters +84 pieces +14 pieces .*given away/);
  expect(told).toContain('Giving food away is subject to local rules');
  const fact = factsIn(dir).at(-1)?.fact as { dishes: { destiny?: string }[] } | undefined;
  expect(fact?.dishes.map(({ destiny }) => destiny)).toEqual(['given away', 'thrown away', undefined]);
  const book = await bookOf(dir);
  const view = leftoversView(book, {} as BrandView, null);
  // Fritters: 14 of 84 at $33.60 in all; stew: 7 of 70 at $280.00.
  expect(
    view?.figures
      .filter(({ label }) => label.startsWith('Food cost'))
      .map(({ label, amount }) => [label, amount]),
  ).toEqual([
    ['Food cost thrown away', '$28.00'],
    ['Food cost given away', '$5.60'],
  ]);
  expect(view?.dishes.flatMap(({ events }) => events.map(({ destiny }) => destiny)).sort()).toEqual([
    '',
    'given away',
    'thrown away',
  ]);
});

test('a list with another word for where it went, or where nothing was left, is refused whole', async () => {
  const dir = await supperKitchen();
  const of = (row: string) => csv(`dish,came back,where it went\n${row}\n`);
  for (const [row, what] of [
    ['bean-fritters,14 pieces,eaten by the crew', '“eaten by the crew” is not where it went'],
    ['bean-fritters,nothing,given away', 'nothing came back, so none was given away'],
  ] as const)
    expect(
      await refusal(dir, '2027-05-15', 'leftovers', EVENT, '--from', of(row), '--adults', '80'),
    ).toContain(what);
});
