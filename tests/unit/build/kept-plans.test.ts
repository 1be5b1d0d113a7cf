import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { buildSite } from '../../../src/build/build-site.ts';
import { keepPlans } from '../../../src/build/kept-plans.ts';
import { readSite } from '../../../src/build/read-site.ts';
import type { Renderer } from '../../../src/build/renderer.ts';
import { sentOut } from '../../../src/commands/call/kept-plan.ts';
import { proposalView } from '../../../src/views/client/proposal-view-of.ts';
import { acceptedKitchen } from '../../commands/accepted-kitchen.ts';
import { change } from '../../commands/kitchen-copy.ts';
import { run } from '../../commands/run.ts';
import { day, EVENING } from '../offers/second-kitchen.ts';

const [BEFORE, ON, AFTER, LATER] = [
  day('2027-05-10'),
  day('2027-05-21'),
  day('2027-05-22'),
  day('2027-06-30'),
];
const EVENT = `private/kitchen/events/${EVENING}`;
const CHOWDER = 'recipes/haddock-chowder.mdx';

/** Pages and papers as the text of what they show: what a renderer makes of it is not in question here. */
const renderer: Renderer = {
  digest: 'app',
  assets: { neededBy: () => [], read: async () => undefined },
  render: async (_, view) => view,
  page: async (_, __, view) => ({ content: new TextEncoder().encode(view), assets: [], digest: view }),
  proposal: async (_, __, source) => {
    const text = JSON.stringify(proposalView(source));
    return { content: new TextEncoder().encode(text), assets: [], digest: text };
  },
};
const openPrinter = async () => ({
  print: async ({ html }: { html: string }) => new TextEncoder().encode(html),
  close: async () => undefined,
});

/** Builds on a day as the command does; `isReal` is false for who looks ahead. */
async function build(dir: string, out: string, today = ON, isReal = true) {
  const { shown, findings } = await readSite(dir, () => today);
  const { book, site } = shown!;
  await buildSite({
    site,
    renderer,
    printVersion: '',
    openPrinter: openPrinter as never,
    publicDir: join(dir, 'none'),
    out,
    say: () => undefined,
  });
  const made = (site.part?.plans?.() ?? []).map((make) => make());
  await keepPlans(dir, book, made, today, isReal);
  return { findings, filesOf: filesIn(out), bodies: shown!.bodies };
}

function filesIn(out: string): Record<string, string> {
  const files = readdirSync(out, { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
  return Object.fromEntries(
    files
      .map(({ parentPath, name }) => join(parentPath, name))
      .map((path): [string, string] => [relative(out, path), readFileSync(path, 'utf8')])
      .filter(([file]) => file.startsWith('p'))
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

function newOut(): string {
  const dir = mkdtempSync(join(tmpdir(), 'salver-kept-plans-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  return join(dir, 'out');
}

const recordsIn = (dir: string) =>
  readdirSync(join(dir, 'events', EVENING))
    .filter((name) => name.startsWith('plan-'))
    .sort();

const ofEvent = (files: Record<string, string>) =>
  Object.keys(files).filter((file) => file.startsWith(`${EVENT}/`) && !file.includes('/invoice/'));

/** An output that has grown from build to build equals one made into an empty folder now. */
async function expectAsFromNothing(
  dir: string,
  out: string,
  today: typeof ON,
): Promise<Record<string, string>> {
  const grown = (await build(dir, out, today)).filesOf;
  const fresh = (await build(dir, newOut(), today)).filesOf;
  expect(Object.keys(grown)).toEqual(Object.keys(fresh));
  for (const [file, text] of Object.entries(fresh)) expect(grown[file], file).toBe(text);
  return fresh;
}

describe('the plan that an event was cooked from', () => {
  test('is recorded on its day, and its pages are made from it in any folder, whatever has become of the recipes', async () => {
    const dir = await acceptedKitchen();
    const out = newOut();
    await build(dir, out, BEFORE);
    expect(recordsIn(dir)).toEqual([]);
    const onTheDay = (await build(dir, out)).filesOf;
    expect(recordsIn(dir)).toEqual([expect.stringMatching(/^plan-001-[0-9a-f]{12}\.json$/)]);

    change(
      dir,
      [CHOWDER, 'milk: 3 l', 'milk: 30 l'],
      ['kitchen.yaml', 'town: Dunmarrow Strand', 'town: Dunmarrow'],
    );
    unlinkSync(join(dir, 'recipes/strand-broth.mdx'));
    for (const today of [AFTER, LATER]) {
      const files = await expectAsFromNothing(dir, out, today);
      expect(ofEvent(files)).toEqual(ofEvent(onTheDay));
      for (const name of ['prep-plan.json', 'shopping.csv', 'allergens.csv', 'pack-out.csv', 'prep.ics'])
        expect(files[`${EVENT}/${name}`], name).toBe(onTheDay[`${EVENT}/${name}`]);
      expect(files[`${EVENT}/index.html`]).toContain('3 l');
      const days = Object.keys(onTheDay).filter((file) => file.startsWith('private/kitchen/days/'));
      expect(days.length).toBeGreaterThan(2);
      for (const file of days) expect(files[file], file).toBeDefined();
    }
    expect(recordsIn(dir)).toHaveLength(1);
  });

  test('brings the cook’s notes of its day along', async () => {
    const dir = await acceptedKitchen();
    const note = 'Taste before you salt. The fish has usually seen to it.';
    await build(dir, newOut());
    change(dir, [CHOWDER, note, 'Salt it well.']);
    const { bodies } = await build(dir, newOut(), AFTER);
    expect(JSON.stringify(bodies)).toContain(note);
  });

  test('is not recorded by who looks ahead, be it past the day, nor before the day', async () => {
    const dir = await acceptedKitchen();
    for (const today of [BEFORE, ON, AFTER]) await build(dir, newOut(), today, false);
    await build(dir, newOut(), BEFORE);
    expect(recordsIn(dir)).toEqual([]);
  });

  test('is never replaced: what changes on the day is a further record, and the last one is shown', async () => {
    const dir = await acceptedKitchen();
    await build(dir, newOut());
    const [first = ''] = recordsIn(dir);
    const bytes = readFileSync(join(dir, 'events', EVENING, first), 'utf8');
    await build(dir, newOut());
    expect(recordsIn(dir)).toEqual([first]);
    change(dir, [CHOWDER, 'milk: 3 l', 'milk: 4 l']);
    const { filesOf } = await build(dir, newOut());
    expect(recordsIn(dir)).toEqual([first, expect.stringMatching(/^plan-002-/)]);
    expect(readFileSync(join(dir, 'events', EVENING, first), 'utf8')).toBe(bytes);
    const after = (await build(dir, newOut(), AFTER)).filesOf;
    expect(after[`${EVENT}/prep-plan.json`]).toBe(filesOf[`${EVENT}/prep-plan.json`]);
  });

  test('is the last that was made before, where nothing was built on the day itself', async () => {
    const dir = await acceptedKitchen();
    const out = newOut();
    const before = (await build(dir, out, BEFORE)).filesOf;
    change(dir, [CHOWDER, 'hold: hot', 'hold: hott']);
    const files = await expectAsFromNothing(dir, out, AFTER);
    expect(files[`${EVENT}/prep-plan.json`]).toBe(before[`${EVENT}/prep-plan.json`]);
    expect(recordsIn(dir)).toHaveLength(1);
  });

  test('is recorded when the guests served are', async () => {
    const dir = await acceptedKitchen();
    await build(dir, newOut(), BEFORE, false);
    expect(await run(dir, 'served', EVENING, '--adults', '30', '--today', AFTER)).toMatchObject({
      code: 0,
      err: '',
    });
    expect(recordsIn(dir)).toHaveLength(1);
    const { filesOf, findings } = await build(dir, newOut(), LATER);
    expect(filesOf[`${EVENT}/prep-plan.json`]).toBeDefined();
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('says what went out when leftovers are recorded', async () => {
    const dir = await acceptedKitchen();
    await build(dir, newOut());
    unlinkSync(join(dir, CHOWDER));
    const { shown } = await readSite(dir, () => AFTER);
    const sent = await sentOut(dir, newOut(), shown!.book, EVENING, AFTER);
    expect(sent.ok && sent.value.plan).toBe('kept');
  });

  test('is one error and not used where somebody has altered it', async () => {
    const dir = await acceptedKitchen();
    await build(dir, newOut());
    const [name = ''] = recordsIn(dir);
    const file = join(dir, 'events', EVENING, name);
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll('Smoked haddock', 'Smoked eel'));
    const { findings, filesOf } = await build(dir, newOut(), AFTER, false);
    expect(findings.filter(({ code }) => code === 'record-form')).toEqual([
      {
        code: 'record-form',
        severity: 'error',
        place: { file: `events/${EVENING}/${name}`, line: 1, column: 1 },
        what: 'the saved plan is not as Salver wrote it',
        wayOut: 'restore the file from your history or backup',
      },
    ]);
    expect(filesOf[`${EVENT}/index.html`] ?? '').not.toContain('Smoked eel');
  });

  test('is of the day it was made for: an event that was moved after all has a new one', async () => {
    const dir = await acceptedKitchen();
    await build(dir, newOut());
    expect(await run(dir, 'postpone', EVENING, '--to', '2027-06-04', '--today', ON)).toMatchObject({
      code: 0,
    });
    const { filesOf } = await build(dir, newOut(), AFTER);
    expect(JSON.parse(filesOf[`${EVENT}/prep-plan.json`]!).event.date).toBe('2027-06-04');
  });
});

describe('one fact that cannot be read', () => {
  const spoilFact = (dir: string) => writeFileSync(join(dir, 'events', EVENING, '001-accepted.json'), '{');

  test('leaves the pages of an event that is over, in its folder and in a new one', async () => {
    const dir = await acceptedKitchen();
    const out = newOut();
    const onTheDay = (await build(dir, out)).filesOf;
    await build(dir, out, AFTER);
    spoilFact(dir);
    const fresh = (await build(dir, newOut(), LATER)).filesOf;
    expect(ofEvent(fresh)).toEqual(ofEvent(onTheDay));
    const grown = (await build(dir, out, LATER)).filesOf;
    // What is billed comes from the facts alone: it stays where it lies, and cannot be made anew.
    for (const file of Object.keys(onTheDay).filter((each) => each.startsWith(EVENT)))
      expect(grown[file], file).toBeDefined();
    for (const file of ofEvent(fresh)) expect(grown[file], file).toBe(fresh[file]);
  });

  test('leaves them also in a kitchen that has kept no plan yet, where they lie', async () => {
    const dir = await acceptedKitchen();
    const out = newOut();
    await build(dir, out, BEFORE, false);
    rmSync(join(dir, 'events', EVENING, '.last-plan.json'));
    const before = (await build(dir, out, AFTER, false)).filesOf;
    expect(ofEvent(before).length).toBeGreaterThan(5);
    spoilFact(dir);
    const after = (await build(dir, out, LATER, false)).filesOf;
    expect(ofEvent(after)).toEqual(ofEvent(before));
  });

  test('leaves the last plan of an event that is still to come, and says since when and why', async () => {
    const dir = await acceptedKitchen();
    const out = newOut();
    await build(dir, out, BEFORE);
    spoilFact(dir);
    const files = (await build(dir, out, day('2027-05-12'))).filesOf;
    expect(files[`${EVENT}/index.html`]).toMatch(
      /This plan was last made on Monday, 10 May 2027. Since then it could not be made again: the event lifeboat-evening can’t be used: the file is not JSON/,
    );
  });
});

describe('while a recipe of a coming event is broken', () => {
  test('its last good plan stays with what is broken and since when, and nothing is claimed of the dish', async () => {
    const dir = await acceptedKitchen();
    const out = newOut();
    const good = (await build(dir, out, BEFORE)).filesOf;
    change(dir, [CHOWDER, 'hold: hot', 'hold: hott']);
    const files = await expectAsFromNothing(dir, out, day('2027-05-12'));
    expect(ofEvent(files)).toEqual(ofEvent(good));
    const said =
      /last made on Monday, 10 May 2027\. Since then it could not be made again: the recipe haddock-chowder .*hott/;
    expect(files[`${EVENT}/index.html`]).toMatch(said);
    expect(files[`${EVENT}/prep-plan.pdf`]).toMatch(said);
    // A cook who has only the day's own sheets is told too.
    const days = Object.keys(files).filter((file) => file.endsWith('/day.pdf'));
    expect(days.length).toBeGreaterThan(0);
    for (const file of days) expect(files[file]).toMatch(/could not be made again since: .*hott/);
    expect(files['private/kitchen/index.html']).toContain('"planned":true');
    const table = files[`${EVENT}/allergens.csv`]!.split('\r\n').find((row) => row.includes('chowder'))!;
    expect(table).toContain('not known');
    expect(table).not.toMatch(/not an ingredient|yes/);
    expect(files[`${EVENT}/labels.pdf`]).toContain('NOT ALL KNOWN');
    expect(files[`${EVENT}/buffet-cards.pdf`]).toMatch(/we don’t know all its allergens: please ask us/);
    expect(good[`${EVENT}/buffet-cards.pdf`]).not.toMatch(/please ask us/);
    const { coverage } = JSON.parse(files[`${EVENT}/prep-plan.json`]!) as {
      coverage: { courses: { suits: string[] }[] }[];
    };
    expect(coverage.flatMap(({ courses }) => courses.flatMap(({ suits }) => suits)).join()).not.toContain(
      'chowder',
    );

    change(dir, [CHOWDER, 'hold: hott', 'hold: hot']);
    const again = await expectAsFromNothing(dir, out, day('2027-05-12'));
    expect(again[`${EVENT}/index.html`]).not.toContain('last made on');
  });

  test('nothing of the other pages is lost, and no record is made of a plan that was not cooked', async () => {
    const dir = await acceptedKitchen();
    await build(dir, newOut(), BEFORE);
    change(dir, [CHOWDER, 'hold: hot', 'hold: hott']);
    await build(dir, newOut(), day('2027-05-12'));
    expect(recordsIn(dir)).toEqual([]);
  });
});

test('a kitchen without kept plans shows its past events as before: by their invoices in a new folder', async () => {
  const dir = await acceptedKitchen();
  const { filesOf, findings } = await build(dir, newOut(), AFTER);
  expect(Object.keys(filesOf).filter((file) => file.startsWith(EVENT))).toEqual(
    ['index.html', 'invoice.json', 'invoice.pdf'].map((name) => `${EVENT}/invoice/${name}`),
  );
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(existsSync(join(dir, 'events', EVENING, '.last-plan.json'))).toBe(false);
  expect(recordsIn(dir)).toEqual([]);
});
