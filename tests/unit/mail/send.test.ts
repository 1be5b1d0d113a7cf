import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { draftsFolder } from '../../../src/mail/write-draft.ts';
import { ACCEPTED, acceptedKitchen, issuedKitchen, offerIn } from '../../commands/accepted-kitchen.ts';
import { type Change, change, copyOf, pictureOf } from '../../commands/kitchen-copy.ts';
import { run, salver } from '../../commands/run.ts';
import { readMail } from './read-mail.ts';

const DEMO = resolve(import.meta.dirname, '../../../content');
const SITE: Change = ['kitchen.yaml', 'locale:', 'site: https://strand.example\nlocale:'];
const LINK = 'oyx6usbuof2ek2zoccd4j5hh5o';
const PDF = Buffer.from('%PDF-1.7\r\n\0\u00ff paper', 'latin1');

/** An output folder with the page of the evening built, and a place for the draft. */
function built(files: Readonly<Record<string, string | Buffer>>): { out: string; draft: string } {
  const out = mkdtempSync(join(tmpdir(), 'salver-sent-'));
  onTestFinished(() => rmSync(out, { recursive: true, force: true }));
  const folder = join(out, 'public/proposals', LINK);
  mkdirSync(folder, { recursive: true });
  for (const [file, content] of Object.entries(files)) writeFileSync(join(folder, file), content);
  return { out, draft: join(out, 'evening.eml') };
}

const page = (dir: string) => ({
  'index.html': '<!doctype html>',
  'offer.json': JSON.stringify(offerIn(dir)),
  'proposal.pdf': PDF,
});
const send = (
  dir: string,
  { out, draft }: { out: string; draft: string },
  today = ACCEPTED,
  ...more: string[]
) => run(dir, 'send', 'lifeboat-evening', '--out', out, '--draft', draft, '--today', today, ...more);

describe('sending a proposal', () => {
  test('prints its link and writes a draft with letter, link, validity and PDF, the same bytes twice', async () => {
    const dir = await issuedKitchen(SITE);
    const place = built(page(dir));
    const ran = await send(dir, place);
    expect(ran).toMatchObject({ code: 0, err: '' });
    const address = `https://strand.example/proposals/${LINK}/`;
    expect(ran.out.split('\n')[0]).toBe(address);
    const bytes = readFileSync(place.draft);
    const { headers, parts } = readMail(bytes);
    expect(Object.fromEntries(headers)).toMatchObject({
      to: 'Dunmarrow Lifeboat Crew <crew@lifeboat.example>',
      subject: 'Our proposal: Crew evening, Friday, 21 May 2027',
    });
    const letter = Buffer.from(parts[0]?.body ?? []).toString('utf8');
    expect(letter).toContain(`\r\n${address}\r\n`);
    expect(letter).toContain('until Monday, 10 May 2027');
    expect(Buffer.compare(Buffer.from(parts[1]?.body ?? []), PDF)).toBe(0);
    expect((await send(dir, place)).code).toBe(0);
    expect(Buffer.compare(readFileSync(place.draft), bytes)).toBe(0);
  });

  test('says so where there is no PDF, and attaches none', async () => {
    const dir = await issuedKitchen(SITE);
    const { 'proposal.pdf': _, ...without } = page(dir);
    const place = built(without);
    const ran = await send(dir, place, ACCEPTED, '--json');
    expect(ran.err).toMatch(/no PDF yet; run build/);
    expect(JSON.parse(ran.out)).toMatchObject({ pdf: false });
    expect(readMail(readFileSync(place.draft)).parts).toEqual([]);
  });

  test('brings a shared draft as a draft, and an accepted offer as what was agreed', async () => {
    const shared = copyOf(undefined, [
      SITE,
      ['proposals/lifeboat-evening.md', 'client:', 'share: draft\nclient:'],
    ]);
    const place = built({ 'index.html': '<!doctype html>' });
    expect((await send(shared, place)).code).toBe(0);
    expect(readFileSync(place.draft, 'utf8')).toContain('It is not an offer yet');

    const done = await acceptedKitchen(SITE);
    const other = built(page(done));
    expect((await send(done, other)).code).toBe(0);
    expect(readFileSync(other.draft, 'utf8')).toContain('Thank you for accepting');
  });

  test.each<[string, RegExp, () => Promise<string>, string?]>([
    ['the site is not said', /add `site: https:\/\/…`/, () => issuedKitchen()],
    ['nothing was issued', /not been issued/, async () => copyOf(undefined, [SITE])],
    [
      'it is withdrawn',
      /withdrawn/,
      async () => {
        const dir = await issuedKitchen(SITE);
        change(dir, ['proposals/lifeboat-evening.md', 'client:', 'withdrawn: yes\nclient:']);
        return dir;
      },
    ],
    ['it has expired', /was valid until Monday, 10 May 2027/, () => issuedKitchen(SITE), '2027-05-11'],
    [
      'the built page shows a replaced revision',
      /shows another revision — run build first/,
      async () => {
        const dir = await issuedKitchen(SITE);
        change(dir, ['proposals/lifeboat-evening.md', 'valid until: 2027-05-10', 'valid until: 2027-05-12']);
        expect((await run(dir, 'issue', 'lifeboat-evening', '--today', '2027-04-27')).code).toBe(0);
        return dir;
      },
    ],
  ])('is refused while %s', async (_why, sentence, kitchen, today = ACCEPTED) => {
    const place = built({});
    const dir = await kitchen();
    const files =
      today === ACCEPTED && sentence.source.includes('another') ? page(dir) : { 'index.html': '' };
    for (const [file, content] of Object.entries(files))
      writeFileSync(join(place.out, 'public/proposals', LINK, file), content);
    const ran = await send(dir, place, today);
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toMatch(sentence);
    expect(() => readFileSync(place.draft)).toThrow();
  });

  test('is refused before the page is built, and never writes over what is no draft', async () => {
    const dir = await issuedKitchen(SITE);
    expect((await send(dir, built({}))).err).toMatch(/has not been built — run build first/);
    const place = built(page(dir));
    writeFileSync(place.draft, 'my own notes');
    expect((await send(dir, place)).err).toMatch(/already exists and is not a draft/);
    expect(readFileSync(place.draft, 'utf8')).toBe('my own notes');
    expect((await send(dir, { ...place, draft: place.out })).err).toMatch(/is not a draft/);
    expect((await send(dir, { ...place, draft: join(place.out, 'no/such/x.eml') })).err).toMatch(/ENOENT/);
  });

  test('writes its draft beside the content by itself, where no repository takes it in', async () => {
    const dir = await issuedKitchen(SITE);
    const place = built(page(dir));
    const folder = await draftsFolder(place.out);
    expect(folder).toBe(join(place.out, 'drafts'));
    writeFileSync(join(folder, 'evening.eml'), 'X-Unsent: 1\r\n');
    const git = (...words: string[]) => execFileSync('git', words, { cwd: place.out, encoding: 'utf8' });
    git('init', '-q');
    expect(git('status', '--porcelain', '--untracked-files=all')).not.toContain('drafts');
    // An own rule stays.
    writeFileSync(join(folder, '.gitignore'), '*.eml\n');
    await draftsFolder(place.out);
    expect(readFileSync(join(folder, '.gitignore'), 'utf8')).toBe('*.eml\n');
    const help = (await salver(['send', '--help'])).out;
    expect(help).toContain('Salver’s drafts/<proposal>-r<revision>.eml');
  });

  test('is refused into the content, where the draft would be committed with it', async () => {
    const dir = await issuedKitchen(SITE);
    const place = { ...built(page(dir)), draft: join(dir, 'proposals/evening.eml') };
    const before = pictureOf(dir);
    const { code, err } = await send(dir, place);
    expect({ code, err }).toEqual({
      code: 1,
      err: `Can’t do that: ${place.draft} is inside the content folder, where a draft with the client’s address would be backed up and shared with it — leave out --draft, or put the file somewhere else.\n`,
    });
    expect(pictureOf(dir)).toEqual(before);
  });

  test('the demo’s content, which a caterer copies, ignores drafts and answers that wait', () => {
    const dir = copyOf(DEMO);
    const git = (...words: string[]) => execFileSync('git', words, { cwd: dir, encoding: 'utf8' });
    git('init', '-q');
    mkdirSync(join(dir, 'inbox'));
    for (const file of [
      'inbox/2027-04-26-answer.json',
      'evening.eml',
      'proposals/.1a2b.tmp',
      'kitchen-notes.yaml',
    ])
      writeFileSync(join(dir, file), '');
    const untracked = git('status', '--porcelain', '--untracked-files=all');
    expect(untracked).toContain('kitchen-notes.yaml');
    expect(untracked).not.toMatch(/inbox|\.eml|\.tmp/);
  });
});
