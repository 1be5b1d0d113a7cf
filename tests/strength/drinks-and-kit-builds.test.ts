import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { recordFile, timesFile } from '../../src/build/own-files.ts';
import { type Change, change, pictureOf } from '../commands/kitchen-copy.ts';
import { salver } from '../commands/run.ts';
import { DRINKS_CONTENT } from '../unit/drinks/drinks-kitchen.ts';
import { EVENT, supperKitchen } from '../unit/events/supper-kitchen.ts';
import { LONG } from './long.ts';

const DAY = '2027-05-10';
const KITCHEN = 'kitchen.yaml';
const PACKAGE = 'packages/lunch.mdx';
const PROPOSAL = `proposals/${EVENT}.md`;
const SHEET = 'site-sheets/net-loft.yaml';
const DRAFT = 'proposals/reed-supper.md';

const CONTENT = {
  ...DRINKS_CONTENT,
  [KITCHEN]: `${DRINKS_CONTENT[KITCHEN]}usual kit: yes
kit:
  tongs: 3 per cook
containers:
  kettle: { name: Soup kettle, holds: 3 gal, for: hot }
carriers:
  hot-box: { name: Hot box, count: 9, for: hot, holds: 1 kettle }
`,
  [SHEET]: 'name: The Net Loft\nwater: no\nphone: 555-0119\n',
  'recipes/lentil-soup.mdx': `${DRINKS_CONTENT['recipes/lentil-soup.mdx']}`.replace(
    'hold: hot',
    'hold: hot\npack: { carry: 20 servings per kettle }',
  ),
};

/** The recipes of the supper’s kitchen, whose foods this one has not. */
const SUPPER_FOOD = ['bean-fritters', 'bean-pot', 'herb-yogurt', 'lamb-stew', 'pea-pot'];

/** In turn, each on top of those before it. */
const EDITS: readonly (readonly [what: string, ...Change])[] = [
  [
    'drinks of the kitchen',
    KITCHEN,
    'drinks: { ice: bagged-ice }',
    'drinks: { ice: bagged-ice, ice per glass: 5 oz, hot day: { from: 80 °F, more: 50 % } }',
  ],
  ['drinks of the package', PACKAGE, '2 in the first hour', '3 in the first hour'],
  [
    'a kind of the package with another allergen',
    PACKAGE,
    'ice: tub }\n  water',
    'ice: tub, with: { milk-jug: 1 fl oz } }\n  water',
  ],
  ['drinks of the add-on', KITCHEN, 'milk-jug: ½ fl oz', 'milk-jug: 2 fl oz'],
  ['weather', PROPOSAL, 'weather: 30 °C', 'weather: 60 °F'],
  ['kit', KITCHEN, 'tongs: 3 per cook', 'tongs: 5 per event'],
  ['usual kit', KITCHEN, 'usual kit: yes\n', ''],
  [
    'a drink with another allergen',
    'ingredients/own.yaml',
    'pear-juice: { from: plant, contains: none }',
    'pear-juice: { from: plant, contains: sesame }',
  ],
  ['a site sheet that no event names', SHEET, 'phone: 555-0119', 'phone: 555-0120'],
  [
    'the site sheet of an event and a draft',
    PROPOSAL,
    'place: hill-town\n',
    'place: hill-town\nsite sheet: net-loft\n',
  ],
  ['a fact of a site sheet', SHEET, 'water: no', 'water: yes'],
  ['the name of a site sheet', SHEET, 'The Net Loft', 'The Net Loft, upper floor'],
  ['carriers', KITCHEN, 'hot-box: { name: Hot box', 'hot-box: { name: Steel hot box'],
];

/** What a build takes over goes by whole files, so that in the short run those of one file are made at once. */
const byFile = [...Map.groupBy(EDITS, ([, file]) => file).values()];

/** All that was published, by its place, but for the record of the build itself. */
function published(out: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(pictureOf(out))
      .filter(([path]) => ![recordFile, timesFile].includes(basename(path)))
      .map(([path, digest]) => [relative(out, path), digest]),
  );
}

test('after a change of drinks, weather, kit, carriers or a site sheet a build into the last output equals one into an empty folder', async () => {
  const dir = await supperKitchen(CONTENT);
  for (const other of SUPPER_FOOD) rmSync(join(dir, 'recipes', `${other}.mdx`));
  rmSync(join(dir, 'packages/supper.mdx'));
  // A draft that is shared shows its drinks as they stand now, an accepted offer as they were.
  const draft = readFileSync(join(dir, PROPOSAL), 'utf8')
    .replace('link: m', 'share: draft\nlink: n')
    .replace(/^date: .*$/m, 'date: 2027-06-19')
    .replace(/^valid until: .*$/m, 'valid until: 2027-06-01');
  writeFileSync(join(dir, DRAFT), draft);
  const outputs = mkdtempSync(join(tmpdir(), 'salver-drinks-'));
  onTestFinished(() => rmSync(outputs, { recursive: true, force: true }));
  const build = async (out: string) =>
    (await salver(['build', '--no-pdf', '--content', dir, '--out', out, '--today', DAY])).code;
  const kept = join(outputs, 'kept');
  expect(await build(kept)).toBe(0);
  for (const edits of LONG ? EDITS.map((edit) => [edit]) : byFile) {
    const what = edits.map(([name]) => name).join(', ');
    const before = published(kept);
    for (const [, ...edit] of edits) change(dir, edit);
    const fresh = join(outputs, 'fresh');
    expect(await build(kept), what).toBe(await build(fresh));
    const now = published(kept);
    expect(now, what).toEqual(published(fresh));
    expect(now, `${what} changes something`).not.toEqual(before);
    rmSync(fresh, { recursive: true, force: true });
  }
}, 300_000);
