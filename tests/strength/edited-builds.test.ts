import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { recordFile, timesFile } from '../../src/build/own-files.ts';
import { type Seeded, seeded } from '../bench/seeded.ts';
import { copyOf, pictureOf } from '../commands/kitchen-copy.ts';
import { salver } from '../commands/run.ts';
import { LONG } from './long.ts';
import { mutant } from './spoil.ts';

const DEMO = fileURLToPath(new URL('../../content', import.meta.url));
const TODAY = '2027-04-26';

/** The texts that a caterer edits; what Salver wrote itself is left alone here, and changed by its own commands. */
function edited(dir: string): string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ya?ml|mdx?|csv)$/.test(entry.name))
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)))
    .sort();
}

/** One thing that happens to a kitchen's folder between two builds, in words for whoever reads a failure. */
type Edit = (dir: string, whole: ReadonlyMap<string, Buffer>, random: Seeded) => Promise<string> | string;

const figure: Edit = (dir, _, random) => {
  const file = random.of(edited(dir));
  const text = readFileSync(join(dir, file), 'utf8');
  const figures = [...text.matchAll(/\b[1-9]\d{0,2}\b/g)];
  if (figures.length === 0) return `${file} has no figure`;
  const { 0: was, index } = random.of(figures);
  const is = String(Number(was) + 1 + random.below(3));
  writeFileSync(join(dir, file), text.slice(0, index) + is + text.slice(index + was.length));
  return `${file}: ${was} at ${index} is ${is}`;
};

const allergen: Edit = (dir, _, random) => {
  const file = random.of(edited(dir).filter((each) => each.startsWith('ingredients')));
  const text = readFileSync(join(dir, file), 'utf8');
  const lists = [...text.matchAll(/^( +)(contains|may contain): .*$/gm)];
  if (lists.length === 0) return `${file} states no allergen`;
  const { 0: was, index, 1: indent, 2: field } = random.of(lists);
  const is = `${indent}${field}: ${random.of(['milk', 'egg', 'almond', 'celery', 'no such thing', 'sesame'])}`;
  writeFileSync(join(dir, file), text.slice(0, index) + is + text.slice(index + was.length));
  return `${file}: ${was.trim()} is ${is.trim()}`;
};

const spoilt: Edit = (dir, _, random) => {
  const files = Object.fromEntries(edited(dir).map((file) => [file, readFileSync(join(dir, file))]));
  const { file, way, bytes } = mutant(files, random);
  if (bytes.length > 1_000_000) return 'too large a fault for many builds';
  writeFileSync(join(dir, file), bytes);
  return `${file}: ${way}`;
};

const gone: Edit = (dir, _, random) => {
  const file = random.of(edited(dir).filter((each) => each !== 'kitchen.yaml'));
  rmSync(join(dir, file));
  return `${file} is gone`;
};

const restored: Edit = (dir, whole, random) => {
  const altered = [...whole].filter(
    ([file, bytes]) => !existsSync(join(dir, file)) || !readFileSync(join(dir, file)).equals(bytes),
  );
  if (altered.length === 0) return 'nothing to restore';
  const some = random.below(3) === 0 ? altered : [random.of(altered)];
  for (const [file, bytes] of some) writeFileSync(join(dir, file), bytes);
  return `${some.map(([file]) => file).join(', ')} as at first`;
};

const command: Edit = async (dir, _, random) => {
  const events = readdirSync(join(dir, 'events'));
  const event = random.of(events);
  const words = random.of([
    ['guarantee', event, '--adults', String(60 + random.below(60))],
    ['payment', event, `${10 + random.below(500)}.00`],
    ['told', event],
    ['issue', random.of(readdirSync(join(dir, 'proposals'))).replace(/\.md$/, '')],
    ['postpone', event, '--to', '2027-10-02'],
    ['cancel', event],
  ]);
  const { code } = await salver([...words, '--content', dir, '--today', TODAY]);
  return `${words.join(' ')} ended with ${code}`;
};

const EDITS: readonly Edit[] = [
  figure,
  figure,
  figure,
  allergen,
  spoilt,
  gone,
  restored,
  restored,
  restored,
  command,
  command,
];

/** All that was published, by its place; the build's own record says which build made it, and when, and is not looked at. */
function published(out: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(pictureOf(out))
      .filter(([path]) => ![recordFile, timesFile].includes(basename(path)))
      .map(([path, digest]) => [relative(out, path), digest]),
  );
}

const ROUNDS = LONG ? 240 : 3;

test(
  'after any edit a build into the last output equals one into an empty folder, the kitchen’s side included',
  async () => {
    const dir = copyOf(DEMO);
    const whole = new Map(edited(dir).map((file) => [file, readFileSync(join(dir, file))]));
    const outputs = mkdtempSync(join(tmpdir(), 'salver-edited-'));
    onTestFinished(() => rmSync(outputs, { recursive: true, force: true }));
    const kept = join(outputs, 'kept');
    const build = async (out: string) =>
      (await salver(['build', '--no-pdf', '--content', dir, '--out', out, '--today', TODAY])).code;
    expect(await build(kept)).toBe(0);
    const random = seeded(LONG ? Number(process.env.SALVER_SEED ?? 11) : 5);
    const story: string[] = [];
    let changed = 0;
    for (let round = 0; round < ROUNDS; round += 1) {
      for (let edits = 1 + random.below(2); edits > 0; edits -= 1)
        story.push(`${round}: ${await random.of(EDITS)(dir, whole, random)}`);
      const before = published(kept);
      const fresh = join(outputs, `fresh-${round}`);
      const codes = [await build(kept), await build(fresh)];
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
