import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { recordFile, timesFile } from '../../src/build/own-files.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { seeded } from '../bench/seeded.ts';
import { acceptedKitchen } from '../commands/accepted-kitchen.ts';
import { copyOf, pictureOf } from '../commands/kitchen-copy.ts';
import { run, salver } from '../commands/run.ts';
import { DEMO, edited, editsOn, TODAY } from './edits.ts';
import { LONG } from './long.ts';

/** All that was published, by its place; the build's own record says which build made it, and when, and is not looked at. */
function published(out: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(pictureOf(out))
      .filter(([path]) => ![recordFile, timesFile].includes(basename(path)))
      .map(([path, digest]) => [relative(out, path), digest]),
  );
}

/**
 * The demo in the long run; else a small kitchen, of which a round takes a sixth: that the demo's pages and plans are
 * those of a fresh build `cache-keys.test.ts` asks in every run.
 */
const ROUNDS = LONG ? 240 : 4;
const DAY = LONG ? TODAY : '2027-05-02';

test(
  'after any edit a build into the last output equals one into an empty folder, the kitchen’s side included',
  async () => {
    const dir = LONG ? copyOf(DEMO) : await acceptedKitchen();
    const whole = new Map(edited(dir).map((file) => [file, readFileSync(join(dir, file))]));
    const outputs = mkdtempSync(join(tmpdir(), 'salver-edited-'));
    onTestFinished(() => rmSync(outputs, { recursive: true, force: true }));
    const kept = join(outputs, 'kept');
    const flags = (out: string) => ['--no-pdf', '--out', out, '--today', DAY];
    const build = async (out: string) => (await salver(['build', '--content', dir, ...flags(out)])).code;
    // What it is compared with takes nothing over, whichever process makes it; many would fill one.
    const buildAfresh = async (out: string) =>
      LONG ? build(out) : (await run(dir, 'build', ...flags(out)).catch(() => ({ code: 1 }))).code;
    expect(await build(kept)).toBe(0);
    const random = seeded(LONG ? Number(process.env.SALVER_SEED ?? 11) : 5);
    const ways = editsOn(DAY);
    const story: string[] = [];
    let changed = 0;
    for (let round = 0; round < ROUNDS; round += 1) {
      for (let edits = 1 + random.below(2); edits > 0; edits -= 1)
        story.push(`${round}: ${await random.of(ways)(dir, whole, random)}`);
      const before = published(kept);
      const fresh = join(outputs, `fresh-${round}`);
      const codes = [await build(kept), await buildAfresh(fresh)];
      const told = story.slice(-12).join('\n');
      expect(codes[0], told).toBe(codes[1]);
      // Where the kitchen itself cannot be read nothing is published: the last build stays, and a new folder is empty.
      if (!existsSync(fresh)) {
        expect(published(kept), told).toEqual(before);
        continue;
      }
      const now = published(kept);
      if (JSON.stringify(now) !== JSON.stringify(before)) changed += 1;
      expect(differing(now, published(fresh)), told).toEqual([]);
      rmSync(fresh, { recursive: true, force: true });
    }
    expect(changed, story.join('\n')).toBeGreaterThan(ROUNDS / 4);
  },
  ROUNDS * 60_000,
);

test('after another event comes to a full day a build into the last output moves what a build from nothing moves', async () => {
  const dir = copyOf(DEMO);
  // Two cooks from 8:00 have time for the supper, and for it and a wedding only if the slaw is made on Friday.
  const cooks = 'cooks: { people: 2, from: 8:00 am, hours: 14 hours }';
  for (const event of ['weir-crew-supper', 'farrowick-wedding']) {
    const file = join(dir, 'proposals', `${event}.md`);
    const text = readFileSync(file, 'utf8').replace(/^cooks: .*\n/m, '');
    writeFileSync(file, text.replace(/^lines: /m, `${cooks}\nlines: `));
  }
  const outputs = mkdtempSync(join(tmpdir(), 'salver-moved-'));
  onTestFinished(() => rmSync(outputs, { recursive: true, force: true }));
  const [kept, fresh] = ['kept', 'fresh'].map((name) => join(outputs, name)) as [string, string];
  const call = async (...words: string[]) =>
    (await salver([...words, '--content', dir, '--today', TODAY])).code;
  const slawDays = () => {
    const file = join(kept, 'private/kitchen/events/weir-crew-supper/prep-plan.json');
    const { days } = JSON.parse(readFileSync(file, 'utf8')) as PrepPlanDocument;
    return days
      .filter(({ tasks }) => tasks.some(({ recipe }) => recipe === 'cabbage-apple-slaw'))
      .map(({ date }) => date);
  };
  expect(await call('build', '--no-pdf', '--out', kept)).toBe(0);
  expect(slawDays()).toEqual(['2027-06-05']);
  expect(await call('postpone', 'farrowick-wedding', '--to', '2027-06-05')).toBe(0);
  expect(await call('build', '--no-pdf', '--out', kept)).toBe(0);
  expect(slawDays()).toEqual(['2027-06-04']);
  expect(await call('build', '--no-pdf', '--out', fresh)).toBe(0);
  expect(differing(published(kept), published(fresh))).toEqual([]);
});

/** Where two outputs differ, as a reader wants it: the places, not their digests. */
function differing(one: Readonly<Record<string, string>>, other: Readonly<Record<string, string>>): string[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)])]
    .filter((path) => one[path] !== other[path])
    .map(
      (path) =>
        `${path}: ${!(path in one) ? 'only in the new folder' : !(path in other) ? 'only in the last output' : 'not the same'}`,
    )
    .sort();
}
