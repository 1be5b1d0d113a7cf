import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Seeded } from '../bench/seeded.ts';
import { run } from '../commands/run.ts';
import { mutant } from './spoil.ts';

export const DEMO = fileURLToPath(new URL('../../content', import.meta.url));
export const TODAY = '2027-04-26';

/** The texts that a caterer edits; what Salver wrote itself is left alone here, and changed by its own commands. */
export function edited(dir: string): string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ya?ml|mdx?|csv)$/.test(entry.name))
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)))
    .sort();
}

/** One thing that happens to a kitchen's folder between two builds, in words for whoever reads a failure. */
export type Edit = (
  dir: string,
  whole: ReadonlyMap<string, Buffer>,
  random: Seeded,
) => Promise<string> | string;

/** Changes one figure of a file whose path is one of these. */
export const editOf =
  (paths: RegExp): Edit =>
  (dir, _, random) => {
    const file = random.of(edited(dir).filter((each) => paths.test(each)));
    const text = readFileSync(join(dir, file), 'utf8');
    const figures = [...text.matchAll(/\b[1-9]\d{0,2}\b/g)];
    if (figures.length === 0) return `${file} has no figure`;
    const { 0: was, index } = random.of(figures);
    const is = String(Number(was) + 1 + random.below(3));
    writeFileSync(join(dir, file), text.slice(0, index) + is + text.slice(index + was.length));
    return `${file}: ${was} at ${index} is ${is}`;
  };

const figure = editOf(/./);

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

export const restored: Edit = (dir, whole, random) => {
  const altered = [...whole].filter(
    ([file, bytes]) => !existsSync(join(dir, file)) || !readFileSync(join(dir, file)).equals(bytes),
  );
  if (altered.length === 0) return 'nothing to restore';
  const some = random.below(3) === 0 ? altered : [random.of(altered)];
  for (const [file, bytes] of some) writeFileSync(join(dir, file), bytes);
  return `${some.map(([file]) => file).join(', ')} as at first`;
};

const command =
  (today: string): Edit =>
  async (dir, _, random) => {
    const events = readdirSync(join(dir, 'events'));
    const event = random.of(events);
    const [name, ...words] = random.of([
      ['guarantee', event, '--adults', String(60 + random.below(60))],
      ['payment', event, `${10 + random.below(500)}.00`],
      ['told', event],
      ['broken', event, 'dinner-plate', String(1 + random.below(9))],
      ['issue', random.of(readdirSync(join(dir, 'proposals'))).replace(/\.md$/, '')],
      ['postpone', event, '--to', '2027-10-02'],
      ['cancel', event],
    ]);
    // What no command foresaw is an end with 1, as in a process of its own.
    const { code } = await run(dir, name, ...words, '--today', today).catch(() => ({ code: 1 }));
    return `${[name, ...words].join(' ')} ended with ${code}`;
  };

/** What happens to a folder on a day, the likelier ones more often. */
export const editsOn = (today: string): readonly Edit[] => [
  figure,
  figure,
  figure,
  allergen,
  spoilt,
  gone,
  restored,
  restored,
  restored,
  command(today),
  command(today),
];

export const EDITS = editsOn(TODAY);
