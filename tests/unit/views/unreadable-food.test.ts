import { appendFileSync, readFileSync, renameSync, rmSync, unlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../../src/check/findings-on.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { recordCorrections } from '../../../src/offers/corrections/record-corrections.ts';
import { coverageOf } from '../../../src/views/client/proposal-choice-dishes.ts';
import type { ProposalPage } from '../../../src/views/client/proposal-page.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { clientTerms } from '../../../src/views/client/terms-of.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import { acceptedKitchen, issuedKitchen } from '../../commands/accepted-kitchen.ts';
import { change } from '../../commands/kitchen-copy.ts';
import { day, EVENING } from '../offers/second-kitchen.ts';

const TODAY = day('2027-05-01');
const STEW = 'bean-and-leek-stew';
const STEW_NAME = 'Butter bean and leek stew';
const [STEW_FILE, BROTH_FILE, OWN] = [
  `recipes/${STEW}.mdx`,
  'recipes/strand-broth.mdx',
  'ingredients/own.yaml',
];

type Spoil = (dir: string) => void;
const text =
  (file: string, from: string, to: string): Spoil =>
  (dir) =>
    change(dir, [file, from, to]);
const gone =
  (file: string): Spoil =>
  (dir) =>
    unlinkSync(join(dir, file));
const moved =
  (from: string, to: string): Spoil =>
  (dir) =>
    renameSync(join(dir, from), join(dir, to));
const latin1 =
  (file: string): Spoil =>
  (dir) =>
    appendFileSync(join(dir, file), Buffer.from([0x0a, 0x23, 0x20, 0xe9, 0x0a]));
const written =
  (file: string, content: string): Spoil =>
  (dir) =>
    writeFileSync(join(dir, file), content);
const both =
  (...spoils: readonly Spoil[]): Spoil =>
  (dir) => {
    for (const each of spoils) each(dir);
  };

const OIL = 'olive-oil:\n  contains: none\n  may contain: none\n';

/** Every way in which what the stew is made of can become unreadable or go away. */
const WAYS: readonly (readonly [name: string, spoil: Spoil])[] = [
  ['a word that its recipe’s field does not know', text(STEW_FILE, 'hold: hot', 'hold: hott')],
  ['a field that recipes do not have', text(STEW_FILE, 'reheat: yes', 'reheats: yes')],
  ['a slip of YAML in its recipe', text(STEW_FILE, 'reheat: yes', 'reheat: yes: no')],
  ['a key that stands twice in its recipe', text(STEW_FILE, 'hold: hot', 'hold: hot\nhold: cold')],
  ['its recipe’s data without an end', text(STEW_FILE, '\n---\n', '\n')],
  ['its recipe empty', written(STEW_FILE, '')],
  ['its recipe not in UTF-8', latin1(STEW_FILE)],
  ['an amount that is none', text(STEW_FILE, 'salt: 30 g', 'salt: a pinch of it')],
  ['an ingredient that nobody knows', text(STEW_FILE, '  salt: 30 g', '  sallt: 30 g')],
  ['its recipe deleted', gone(STEW_FILE)],
  ['its recipe renamed', moved(STEW_FILE, 'recipes/bean-stew.mdx')],
  ['its recipe under another ending', moved(STEW_FILE, `recipes/${STEW}.md`)],
  ['a ring of recipes', text(BROTH_FILE, '  water: 12 l', `  water: 12 l\n  ${STEW}: 1 l`)],
  ['a word that its part’s field does not know', text(BROTH_FILE, 'hold: cold', 'hold: colder')],
  ['its part deleted', gone(BROTH_FILE)],
  [
    'a slip two recipes down',
    both(
      text(BROTH_FILE, '  water: 12 l', '  water: 12 l\n  leek-stock: 1 l'),
      written(
        'recipes/leek-stock.mdx',
        '---\nname: Leek stock\nmakes: 5 l\ningredients:\n  leek: some\n---\n',
      ),
    ),
  ],
  [
    'an unreadable “may contain”',
    text(OWN, 'contains: egg\n  may contain: none', 'contains: egg\n  may contain: traces'),
  ],
  ['an unreadable “contains”', text(OWN, 'contains: egg', 'contains: eggg')],
  ['an unreadable origin', text(OWN, 'from: plant, egg', 'from: plants and egg')],
  ['a slip of YAML in its ingredients’ file', text(OWN, 'storage: chilled', 'storage: [chilled')],
  [
    'its ingredient deleted',
    (dir) => {
      const whole = readFileSync(join(dir, OWN), 'utf8');
      writeFileSync(join(dir, OWN), whole.slice(0, whole.indexOf('tinned-butter-beans:')));
    },
  ],
  ['its ingredient renamed', text(OWN, 'tinned-butter-beans:', 'butter-beans-in-tins:')],
  ['its ingredient under a name that is no id', text(OWN, 'tinned-butter-beans:', 'Tinned Butter Beans:')],
  [
    'its ingredient twice in a file',
    (dir) =>
      appendFileSync(join(dir, OWN), '\ntinned-butter-beans:\n  contains: none\n  may contain: none\n'),
  ],
  [
    'its ingredient in two files',
    written('ingredients/two.yaml', 'tinned-butter-beans:\n  contains: none\n'),
  ],
  ['its ingredients’ file deleted', gone(OWN)],
  ['its ingredients’ file under another ending', moved(OWN, 'ingredients/own.yml')],
  ['its ingredients’ file under a name that is no id', moved(OWN, 'ingredients/My own.yaml')],
  ['its ingredients’ file not in UTF-8', latin1(OWN)],
  ['its ingredients’ file a list', written(OWN, '- tinned-butter-beans\n')],
  [
    'a fact of the store-room overridden by what is none',
    written('ingredients/oils.yaml', OIL.replace('may contain: none', 'may contain: x')),
  ],
  [
    'a file that overrides the store-room with a slip of YAML',
    written('ingredients/oils.yaml', `${OIL}  keeps: [`),
  ],
  ['a file that overrides the store-room under another ending', written('ingredients/oils.yml', OIL)],
  [
    'a file that overrides the store-room not in UTF-8',
    both(written('ingredients/oils.yaml', OIL), latin1('ingredients/oils.yaml')),
  ],
  [
    'a food of the store-room overridden under a name that is no id',
    written('ingredients/oils.yaml', OIL.replace('olive-oil', 'Olive Oil')),
  ],
  ['a food of the store-room overridden twice', written('ingredients/oils.yaml', `${OIL}${OIL}`)],
];

/** The beans turn out to hold egg, and the page that says so is published. */
async function correct(dir: string): Promise<void> {
  change(dir, [
    OWN,
    'large tin\n  from: plant\n  contains: none',
    'large tin\n  from: plant, egg\n  contains: egg',
  ]);
  await recordCorrections(dir, (await readBook(dir, offerProblem)).book!, TODAY);
}

async function shown(dir: string) {
  const { book, findings } = await readBook(dir, offerProblem);
  const [page] = clientSite(book!, TODAY).pages;
  const view = page?.view as ProposalView;
  const dishes = view.packages.flatMap(({ courses }) => courses.flatMap((each) => each.dishes));
  const stews = dishes.filter(({ name }) => name === STEW_NAME);
  expect(stews.length).toBeGreaterThan(0);
  const { menus, once } = view.allergenTable;
  const rows = [...menus, ...once].flatMap((each) => each.rows).filter(({ dish }) => dish === STEW_NAME);
  const source = page?.source as ProposalPage;
  const data = clientTerms(source);
  const all = [...findings, ...findingsOn(book!, TODAY)];
  return { book: book!, view, stews, rows, data, from: page?.known?.cacheKey, findings: all };
}

describe('while what is in a dish cannot be read, for', () => {
  test.each(WAYS)(
    '%s, nobody is told that it suits, and what was published of it stays',
    async (_, spoil) => {
      const dir = await issuedKitchen();
      await correct(dir);
      const before = await shown(dir);
      spoil(dir);
      const { view, stews, rows, data, from, findings } = await shown(dir);

      expect(findings.some(({ severity }) => severity === 'error')).toBe(true);
      expect(from).not.toBe(before.from);
      for (const { marks, needs, allergens } of stews) {
        expect(marks).toEqual([]);
        expect(needs.suits).toMatch(/^[nu]+$/);
        expect(needs.made).toBe('');
        expect(allergens).toMatch(/eggs?\b/);
        expect(allergens).toMatch(/not known|ask/i);
      }
      expect(rows.length).toBeGreaterThan(0);
      for (const { cells } of rows) expect(cells.map(({ says }) => says)).not.toContain('');
      const menu = JSON.parse(view.answering.linkedData) as { '@graph': object[] };
      const item = new RegExp(`"name":"${STEW_NAME}"[^}]*suitableForDiet`);
      expect(JSON.stringify(menu)).not.toMatch(item);
      for (const { name, suits, ask } of data.needs) {
        expect(suits ?? [], name).not.toContain(STEW);
        if (name !== 'celery') expect(ask, name).toContain(STEW);
      }
      expect(view.since.texts.join('\n')).toMatch(new RegExp(`${STEW_NAME} contains eggs?\\b`));
      expect(view.since.texts.join('\n')).toMatch(new RegExp(`${STEW_NAME}: ask us before eating it`));
    },
  );

  test.each(WAYS)('%s, the kitchen plans nothing that could claim it', async (_, spoil) => {
    const dir = await acceptedKitchen(SERVES_STEW);
    await correct(dir);
    expect(await isPlanned(dir)).toBe(true);
    spoil(dir);
    expect(await isPlanned(dir)).toBe(false);
  });
});

const SERVES_STEW = [`proposals/${EVENING}.md`, 'Bowls: [haddock-chowder]', `Bowls: [${STEW}]`] as const;

async function isPlanned(dir: string): Promise<boolean> {
  const { book } = await readBook(dir, offerProblem);
  const planned = await plannedEvent(book!, EVENING, TODAY);
  return planned.ok && planned.value.plan.ok;
}

test('a dish that cannot be read leaves all others as they are', async () => {
  const dir = await issuedKitchen();
  const marksOf = async () =>
    (await shown(dir)).view.packages.flatMap(({ courses }) =>
      courses.flatMap(({ dishes }) => dishes.filter(({ name }) => name !== STEW_NAME)),
    );
  const before = await marksOf();
  text(STEW_FILE, 'hold: hot', 'hold: hott')(dir);
  expect(await marksOf()).toEqual(before);
});

test('a comparison asks for the kitchen where a course has a dish that cannot be read, and claims none', async () => {
  const dir = await issuedKitchen();
  const words = async () => {
    const { data } = await shown(dir);
    const choice = data.choices.find((each) => each.package === 'storm-supper')!;
    return coverageOf(scriptWordsIn('en-US'), data, choice).find(({ label }) => label === 'vegan')?.words;
  };
  expect(await words()).toBe('nothing in After');
  text(STEW_FILE, 'hold: hot', 'hold: hott')(dir);
  expect(await words()).toBe('nothing in After; please ask us about Main');
});

describe('a correction that was published', () => {
  test.each<[string, Spoil]>([
    ['a slip in the package', text('packages/chowder-lunch.mdx', 'style: buffet', 'style: buffets')],
    ['the package deleted', gone('packages/chowder-lunch.mdx')],
    ['a slip in another recipe', text('recipes/haddock-chowder.mdx', 'hold: hot', 'hold: hott')],
    ['a slip in its proposal', text(`proposals/${EVENING}.md`, 'lines: 1', 'lines: one')],
    ['its proposal deleted', gone(`proposals/${EVENING}.md`)],
    ['a slip in the price list', text('prices/strand-stores.csv', 'price', 'prices')],
  ])('stays after %s', async (_, spoil) => {
    const dir = await issuedKitchen();
    await correct(dir);
    spoil(dir);
    const { stews, view } = await shown(dir);
    expect(view.since.texts.join('\n')).toMatch(
      new RegExp(`${STEW_NAME} contains eggs?\\. ${STEW_NAME} can no longer be relied on as`),
    );
    for (const { marks } of stews) expect(marks).not.toContain('vegan');
  });

  test('is recorded once, before anything else is known', async () => {
    const dir = await issuedKitchen();
    await correct(dir);
    const record = JSON.parse(readFileSync(join(dir, `corrections/${EVENING}-001.json`), 'utf8'));
    expect(record).toEqual({
      version: 1,
      kind: 'correction',
      on: TODAY,
      proposal: EVENING,
      revision: 1,
      dishes: [{ recipe: STEW, dish: STEW_NAME, contains: ['egg'], mayContain: [], lostMarks: ['vegan'] }],
    });
    const { book } = await shown(dir);
    expect(await recordCorrections(dir, book, TODAY)).toEqual([]);
  });

  test('stays while the ingredient no longer says it, and the author is told how to take it back', async () => {
    const dir = await issuedKitchen();
    await correct(dir);
    change(dir, [OWN, 'from: plant, egg\n  contains: egg', 'from: plant\n  contains: none']);
    const { view, findings } = await shown(dir);
    expect(view.since.texts).toEqual([
      expect.stringMatching(/^Correction, .* contains eggs?\. .* can no longer be relied on as/),
    ]);
    expect(findings.filter(({ code }) => code === 'correction-kept')).toEqual([
      {
        code: 'correction-kept',
        severity: 'warning',
        place: { file: `corrections/${EVENING}-001.json`, line: 1, column: 1 },
        what: `the page of ${EVENING} says that “${STEW_NAME}” contains egg and can’t be called vegan, as published, but the recipe no longer does`,
        wayOut: `if that was removed by mistake, put it back; if the dish is right as it is, issue ${EVENING} again, or delete corrections/${EVENING}-001.json`,
      },
    ]);
    rmSync(join(dir, `corrections/${EVENING}-001.json`));
    expect((await shown(dir)).view.since.texts).toEqual([]);
  });

  test('is not recorded of a diet that is lost only because a fact is missing: it comes back with the fact', async () => {
    const dir = await issuedKitchen();
    change(dir, [OWN, 'large tin\n  from: plant\n', 'large tin\n']);
    const { book, view } = await shown(dir);
    expect(view.since.texts.join()).toContain('vegan');
    expect(await recordCorrections(dir, book, TODAY)).toEqual([]);
  });

  test('that cannot be read leaves every dish of its page for the kitchen to answer', async () => {
    const dir = await issuedKitchen();
    await correct(dir);
    writeFileSync(join(dir, `corrections/${EVENING}-001.json`), '{');
    const { view, findings } = await shown(dir);
    const dishes = view.packages.flatMap(({ courses }) => courses.flatMap((each) => each.dishes));
    for (const { marks, needs } of dishes)
      expect([marks, needs.suits]).toEqual([[], expect.not.stringContaining('y')]);
    expect(findings.some(({ code }) => code === 'record-form')).toBe(true);
    expect(findings.filter(({ code }) => code === 'food-unknown').length).toBeGreaterThan(1);
  });
});

test('of a dish that cannot be read check says which pages ask for the kitchen, and why', async () => {
  const dir = await issuedKitchen();
  text(STEW_FILE, 'hold: hot', 'hold: hott')(dir);
  const { findings } = await shown(dir);
  expect(findings.filter(({ code }) => code === 'food-unknown')).toEqual([
    {
      code: 'food-unknown',
      severity: 'warning',
      place: { file: STEW_FILE, line: 2, column: 1 },
      what: expect.stringMatching(
        new RegExp(
          `^what is in “${STEW_NAME}” is unknown right now, so the page of ${EVENING} says “ask us”: .*hott.* \\(${STEW_FILE}:\\d+\\)$`,
        ),
      ),
      wayOut: 'fix that and build again; until then no guest is told that the dish suits them',
    },
  ]);
});

test('an error that a client must be told of is not silenced by a slip', async () => {
  const dir = await issuedKitchen();
  await correct(dir);
  const changed = async () =>
    (await shown(dir)).findings.filter(({ code }) => code === 'food-facts-changed').map(({ what }) => what);
  expect(await changed()).toEqual([expect.stringMatching(/which now contains egg/)]);
  gone(STEW_FILE)(dir);
  expect(await changed()).toEqual([expect.stringMatching(/which now contains egg/)]);
});
