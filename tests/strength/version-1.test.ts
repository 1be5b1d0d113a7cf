import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import type { Finding } from '../../src/book/findings/finding.ts';
import { readRecord, recordText } from '../../src/build/build-record.ts';
import { readBook } from '../../src/check/read-book.ts';
import { sentOut } from '../../src/commands/call/kept-plan.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { moneyText } from '../../src/engine/money/money.ts';
import { plainAmount } from '../../src/engine/plan/figure-text.ts';
import { invoice } from '../../src/exports/invoice.ts';
import { takeAcceptance } from '../../src/offers/answers/accept.ts';
import { waitingIn } from '../../src/offers/answers/inbox.ts';
import { offerProblem } from '../../src/offers/check-offer.ts';
import { currentEvent } from '../../src/offers/event/current-event.ts';
import { inWords } from '../in-words.ts';
import { wholeSite } from '../unit/views/whole-site.ts';

// The files of version 1 as they were once written, byte for byte. A later Salver has to read them as they are: where
// a test here fails, the code is wrong, and never the files.
const fixture = fileURLToPath(new URL('../fixtures/version-1/', import.meta.url));
const content = join(fixture, 'content');
const TODAY = '2027-05-04' as Day;

const FACTS = [
  'accepted',
  'confirmed',
  'guest list',
  'guarantee',
  'substitution',
  'payment',
  'postponed',
  'confirmed',
  'served',
  'leftovers',
];

function jsonFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.json'))
    .sort();
}

async function read(folder = content): Promise<{ book: Book; findings: Finding[] }> {
  const { book, findings } = await readBook(folder, offerProblem);
  if (!book) throw new Error('the kitchen could not be read');
  return { book, findings };
}

describe('the files of version 1', () => {
  test('are the bytes that were written then', () => {
    const hash = createHash('sha256');
    for (const name of jsonFiles(fixture)) hash.update(name).update(readFileSync(join(fixture, name)));
    expect(hash.digest('hex')).toBe('f2624ab62a630c854084673f3c02398324c17912c26f4fc510498eec65c3262c');
  });

  test('are read without an error, and mean what they meant', async () => {
    const { book, findings } = await read();
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    const totals = [...book.offers.values()].flat().map((offer) => [offer.proposal, offer.samples[0]?.total]);
    expect(Object.fromEntries(totals)).toEqual({
      'harbour-watch': '711.75',
      'lifeboat-evening': '711.75',
      'net-loft': '711.75',
    });
    expect(book.events.get('harbour-watch')?.facts.map(({ kind }) => kind)).toEqual(FACTS);
    expect(book.events.get('net-loft')?.facts.map(({ kind }) => kind)).toEqual(['accepted', 'cancelled']);
    expect([...book.told.values()].flat()).toMatchObject([
      { proposal: 'lifeboat-evening', on: '2027-05-02' },
    ]);
  });

  test('an event stands where its facts left it: its day, its guests, its bill', async () => {
    const event = currentEvent((await read()).book, 'harbour-watch');
    if (!event.ok) throw new Error(event.what);
    const { status } = event.value;
    expect(status).toMatchObject({
      state: 'confirmed',
      date: '2027-05-29',
      billed: { guests: { adults: 37, children: 3, vendors: 1 } },
    });
    const bill = invoice(event.value);
    if (!bill.ok) throw new Error(bill.what);
    expect(bill.value).toMatchObject({ total: '1049.50', balance: '648.00' });
    expect(status.received.map(({ amount }) => moneyText(amount))).toEqual(['251.50', '150.00']);
  });

  test('answers that wait are read, and the acceptance among them is taken', async () => {
    const waiting = waitingIn(content);
    expect(waiting.map(({ answer }) => answer.ok && answer.value.kind)).toEqual([
      'acceptance',
      'count change',
      'guest list',
    ]);
    const taken = takeAcceptance((await read()).book, waiting[0]?.text ?? '', TODAY);
    expect(taken).toMatchObject({ ok: true, value: { acceptance: { name: 'Oda Keel', total: '711.75' } } });
  });

  test('a plan kept from its day says what went out', async () => {
    const sent = await sentOut(content, join(fixture, 'out'), (await read()).book, 'harbour-watch', TODAY);
    if (!sent.ok) throw new Error(sent.what);
    expect(sent.value.plan).toBe('kept');
    expect(sent.value.dishes.map(({ name, carried }) => [name, plainAmount(carried)])).toEqual([
      ['Smoked haddock chowder', '32 servings'],
      ['Butter bean and leek stew', '15 servings'],
      ['Apple and oat crumble', '72 pieces'],
    ]);
  });

  test('the record of a build is read', async () => {
    const { files } = await readRecord(join(fixture, 'out'));
    expect(Object.keys(files)).toContain('private/kitchen/events/harbour-watch/prep-plan.json');
  });
});

describe('a file of a later version', () => {
  const kinds = jsonFiles(content).map((file) => [file]);

  test.each(kinds)('%s is told as one, with its place, and left as it is', async (file) => {
    const dir = mkdtempSync(join(tmpdir(), 'salver-later-'));
    onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
    cpSync(content, dir, { recursive: true });
    const text = readFileSync(join(dir, file), 'utf8').replace('"version": 1', '"version": 2');
    writeFileSync(join(dir, file), text);
    const { findings } = await read(dir);
    const told = findings.filter(({ place }) => place.file.endsWith(file));
    expect(told).toMatchObject([
      {
        place: { line: 2 },
        what: 'the file is version 2, but this Salver reads version 1',
        wayOut: 'use the newer Salver that wrote it; this one leaves the file unchanged',
      },
    ]);
    expect(readFileSync(join(dir, file), 'utf8')).toBe(text);
  });

  test('an acceptance of one is refused in the same words', async () => {
    const [waiting] = waitingIn(content);
    const later = waiting?.text.replace('"version": 1', '"version": 2') ?? '';
    const taken = takeAcceptance((await read()).book, later, TODAY);
    expect(taken.ok ? 'taken' : inWords(taken.what)).toBe(
      'the file is version 2, but this Salver reads version 1',
    );
  });
});

describe('every JSON file that is written', () => {
  test('says its version', async () => {
    const { book } = await read();
    const site = await wholeSite(book, null, '2027-05-20' as Day);
    const files = site.files.filter(({ file }) => file.endsWith('.json'));
    const names = files.map(({ file }) => file.slice(file.lastIndexOf('/') + 1));
    expect([...new Set(names)].sort()).toEqual([
      'invoice.json',
      'offer.json',
      'prep-plan.json',
      'prep-plan.schema.json',
      'standing.json',
    ]);
    for (const { file, content: text } of files) {
      // A JSON Schema has no place for a version of its own: it says that of the files it is for.
      const where = file.endsWith('.schema.json') ? 'properties.version.const' : 'version';
      expect(JSON.parse(String(text)), file).toHaveProperty(where, 1);
    }
    for (const file of jsonFiles(content))
      expect(JSON.parse(readFileSync(join(content, file), 'utf8')), file).toHaveProperty('version', 1);
    expect(JSON.parse(recordText(new Map()))).toHaveProperty('version', 1);
  });

  test('is written by one of these, whose files are all in the tests above or beside their own', () => {
    expect(sourcesThat(/\b(?:writeOnce|recordText)\(|\bwrite\w*\([^;]*JSON\.stringify/, filesOnly)).toEqual([
      'build/build-record.ts',
      'build/output.ts',
      'build/sound-offers.ts',
      'commands/accept.ts',
      'commands/issue.ts',
      'commands/told.ts',
      'offers/answers/inbox.ts',
      'offers/corrections/record-corrections.ts',
      'offers/event/record-fact.ts',
      'offers/write-once.ts',
      'views/client/site.ts',
      'views/kitchen/event-pages.ts',
      'views/kitchen/site.ts',
    ]);
  });

  test('is none beyond those: all else that puts bytes on a disk writes no JSON', () => {
    const puts = /\b(?:writeFile|appendFile)(?:Sync)?\(|\bcreateWriteStream\(/;
    expect(sourcesThat(puts, (code) => code)).toEqual([
      // What compiling said, when it failed.
      'build/compile-app.ts',
      // The last plan of a coming event, in the form of the record it becomes.
      'build/kept-plans.ts',
      // A process's number.
      'build/lock.ts',
      // Bodies, as Markdown.
      'build/mirror-bodies.ts',
      // Small forms of photos, for the next build.
      'build/photo-file.ts',
      // The output's files and its record, which are in the tests above.
      'build/publish.ts',
      'build/sound-offers.ts',
      // Content that a person writes, added to or changed in a place or two.
      'commands/fill.ts',
      'files/replace-text.ts',
      // A mail.
      'mail/write-draft.ts',
      'offers/event/record-fact.ts',
      'offers/write-once.ts',
    ]);
  });
});

/** The files of the source in which a pattern is found, by their paths in it. */
function sourcesThat(pattern: RegExp, of: (code: string) => string): string[] {
  const src = fileURLToPath(new URL('../../src/', import.meta.url));
  return readdirSync(src, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts') && pattern.test(of(readFileSync(join(src, file), 'utf8'))))
    .sort();
}

/** Without what goes to standard output, as `--json` asks. */
function filesOnly(code: string): string {
  return code.replace(/\bcall\.write\([^;]*;/g, '');
}
