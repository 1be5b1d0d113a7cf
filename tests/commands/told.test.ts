import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../src/check/findings-on.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { offerProblem } from '../../src/offers/check-offer.ts';
import type { ProposalView } from '../../src/views/client/proposal-view.ts';
import { clientSite } from '../../src/views/client/site.ts';
import { ISSUED, issuedKitchen } from './accepted-kitchen.ts';
import { change, pictureOf } from './kitchen-copy.ts';
import { run } from './run.ts';

const TOLD = '2027-04-27';
const LATER = '2027-04-28';
const EVENING = 'lifeboat-evening';

/** An issued offer whose haddock turns out to hold celery as well. */
async function correctedKitchen(): Promise<string> {
  const dir = await issuedKitchen();
  change(dir, [
    'ingredients/own.yaml',
    '  contains: fish (haddock)\n',
    '  contains: fish (haddock), mustard\n',
  ]);
  return dir;
}

async function factsFound(dir: string, day = LATER): Promise<string[]> {
  const { book, findings } = await readBook(dir, offerProblem);
  return [...findings, ...findingsOn(book!, day as Day)]
    .filter(({ code }) => code.startsWith('food-facts') || code.startsWith('record'))
    .map(({ code, severity, what }) => `${severity} ${code} ${what}`);
}

async function correctionsShown(dir: string, day = LATER): Promise<readonly string[]> {
  const { book } = await readBook(dir, offerProblem);
  const pages = clientSite(book!, day as Day).pages.map(({ view }) => view as ProposalView);
  return pages.flatMap(({ since }) => since.texts);
}

describe('told records that a client was told of a corrected allergen', () => {
  test('after which the error is a note, and the page keeps the correction with the day', async () => {
    const dir = await correctedKitchen();
    expect(await factsFound(dir)).toEqual([
      expect.stringMatching(
        /^error food-facts-changed .* now contains mustard; its client was told something else$/,
      ),
    ]);
    expect(await correctionsShown(dir, LATER)).toEqual([expect.stringMatching(/28 April 2027/)]);
    const { code, out, err } = await run(dir, 'told', EVENING, '--on', TOLD, '--today', LATER);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe('Recorded: Dunmarrow Lifeboat Crew was told on 2027-04-27 of Smoked haddock chowder.\n');
    expect(await factsFound(dir)).toEqual([
      expect.stringMatching(
        /^note food-facts-told .* now contains mustard; Dunmarrow Lifeboat Crew was told on 2027-04-27$/,
      ),
    ]);
    expect(await correctionsShown(dir, '2027-05-02')).toEqual([
      expect.stringMatching(/^Correction, .*27 April 2027: Smoked haddock chowder contains mustard\./),
    ]);
  });

  test('and what is found out later is an error again, until it is told as well', async () => {
    const dir = await correctedKitchen();
    await run(dir, 'told', EVENING, '--today', TOLD);
    const first = readFileSync(join(dir, `told/${EVENING}-001.json`));
    change(dir, ['ingredients/own.yaml', 'fish (haddock), mustard', 'fish (haddock), mustard, soy']);
    expect((await factsFound(dir)).map((each) => each.split(' ').slice(0, 2).join(' '))).toEqual([
      'error food-facts-changed',
      'note food-facts-told',
    ]);
    expect((await run(dir, 'told', EVENING, '--today', LATER)).code).toBe(0);
    expect((await factsFound(dir)).every((each) => each.startsWith('note '))).toBe(true);
    expect(JSON.parse(readFileSync(join(dir, `told/${EVENING}-002.json`), 'utf8'))).toMatchObject({
      version: 1,
      on: LATER,
      dishes: [{ recipe: 'haddock-chowder', contains: ['soy'] }],
    });
    expect(readFileSync(join(dir, `told/${EVENING}-001.json`)).equals(first)).toBe(true);
  });

  test('of that revision alone', async () => {
    const dir = await correctedKitchen();
    await run(dir, 'told', EVENING, '--today', TOLD);
    const file = join(dir, `told/${EVENING}-001.json`);
    writeFileSync(file, readFileSync(file, 'utf8').replace('"revision": 1', '"revision": 2'));
    expect(await factsFound(dir)).toEqual([expect.stringMatching(/^error food-facts-changed /)]);
  });
});

describe('told refuses, and writes nothing,', () => {
  test.each<[string, string[], RegExp]>([
    [
      'where nothing has changed',
      [EVENING, '--today', ISSUED],
      /no allergens or dishes of lifeboat-evening have changed/,
    ],
    ['what was never issued', ['no-such', '--today', ISSUED], /nothing was issued for “no-such”/],
    ['once the offer has lapsed', [EVENING, '--today', '2027-07-01'], /is no longer in use/],
  ])('%s', async (_, words, why) => {
    const dir = await issuedKitchen();
    const before = pictureOf(dir);
    const { code, err } = await run(dir, 'told', ...words);
    expect(code).toBe(1);
    expect(err).toMatch(why);
    expect(pictureOf(dir)).toEqual(before);
  });

  test('a second time, a day to come, and a day before the offer', async () => {
    const dir = await correctedKitchen();
    for (const [day, why] of [
      ['2027-05-05', /in the future/],
      ['2027-01-05', /before the offer was issued/],
    ] as const)
      expect((await run(dir, 'told', EVENING, '--on', day, '--today', LATER)).err).toMatch(why);
    await run(dir, 'told', EVENING, '--today', LATER);
    expect((await run(dir, 'told', EVENING, '--today', LATER)).err).toMatch(
      /already been told of everything/,
    );
  });
});

test('a record that cannot be read, or stands under another name, counts as not told', async () => {
  const dir = await correctedKitchen();
  await run(dir, 'told', EVENING, '--today', TOLD);
  const file = join(dir, `told/${EVENING}-001.json`);
  const text = readFileSync(file, 'utf8');
  writeFileSync(file, text.replace('"version": 1', '"version": 9'));
  expect((await factsFound(dir)).some((each) => each.startsWith('error food-facts-changed'))).toBe(true);
  writeFileSync(file, text);
  writeFileSync(join(dir, 'told/regatta-001.json'), text);
  expect((await factsFound(dir)).some((each) => each.startsWith('error record-name'))).toBe(true);
});
