import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { recordFile } from '../../src/build/own-files.ts';
import { seeded } from '../bench/seeded.ts';
import {
  acceptanceOf,
  acceptedKitchen,
  fileWith,
  issuedKitchen,
  offerIn,
} from '../commands/accepted-kitchen.ts';
import { change, copyOf, pictureOf } from '../commands/kitchen-copy.ts';
import { type Ran, run, salver } from '../commands/run.ts';
import { LONG } from './long.ts';

const preload = pathToFileURL(fileURLToPath(new URL('die-after.ts', import.meta.url))).href;

/** Runs Salver and ends it after so many changes on the file system; with 0 it runs through and counts them. */
async function dying(
  words: readonly string[],
  after: number,
  settings: NodeJS.ProcessEnv = {},
): Promise<Ran & { steps: number }> {
  const env = { NODE_OPTIONS: `--import=${preload}`, DIE_AFTER: String(after), DIE_LOUD: '', ...settings };
  const ran = await salver(words, { env });
  return { ...ran, steps: Number(/steps (\d+)\s*$/.exec(ran.err)?.[1] ?? Number.NaN) };
}

/** A folder that goes with the test. */
function passingFolder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'salver-steps-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  return dir;
}

/** What a folder holds as far as anybody looks: a name that begins with a dot is in the making, but for a build's record. */
function seen(dir: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(pictureOf(dir)).flatMap(([path, digest]) =>
      (/[\\/]\.[^\\/]+$/.test(path) && basename(path) !== recordFile) || digest === 'a folder'
        ? []
        : [[path.slice(dir.length), digest]],
    ),
  );
}

interface Writing {
  readonly name: string;
  readonly start: () => Promise<string>;
  /** What is typed after the name, the folder's own flag left out. */
  readonly words: (dir: string) => string[];
}

const WRITINGS: readonly Writing[] = [
  {
    name: 'issue',
    start: async () => copyOf(),
    words: () => ['lifeboat-evening', '--today', '2027-04-26'],
  },
  {
    name: 'accept',
    start: () => issuedKitchen(),
    words: (dir) => [fileWith(JSON.stringify(acceptanceOf(offerIn(dir)))), '--today', '2027-04-28'],
  },
  {
    name: 'guarantee',
    start: () => acceptedKitchen(),
    words: () => ['lifeboat-evening', '--adults', '36', '--today', '2027-05-02'],
  },
];

describe.each(WRITINGS)('$name stopped half-way', ({ name, start, words }) => {
  const call = (dir: string) => [name, ...words(dir), '--content', dir];

  test('leaves the content as it was or as it was to be after every step, and can be run again', async () => {
    const whole = await start();
    const was = seen(whole);
    const finished = copyOf(whole);
    const kept = passingFolder();
    const { code, steps } = await dying(call(finished), 0, { KEEP_IN: kept, KEEP_OF: finished });
    expect(code).toBe(0);
    expect(steps).toBeGreaterThanOrEqual(6);
    const willBe = seen(finished);
    expect(willBe).not.toEqual(was);
    // What each step left was kept on the way. A death is tried half-way, and after every step in the long run: they
    // leave the same.
    const deaths = LONG ? Array.from({ length: steps }, (_, index) => index + 1) : [Math.ceil(steps / 2)];
    for (const after of deaths) {
      const dir = copyOf(whole);
      expect((await dying(call(dir), after)).code, `step ${after}`).toBeNull();
      expect(seen(dir), `step ${after}`).toEqual(seen(join(kept, `${after}`)));
    }
    const ends = new Set<string>();
    for (let after = 1; after <= steps; after += 1) {
      const dir = join(kept, `${after}`);
      const now = JSON.stringify(seen(dir));
      expect([JSON.stringify(was), JSON.stringify(willBe)], `step ${after}`).toContain(now);
      ends.add(now);
      expect((await run(dir, 'check', '--today', '2027-05-02')).code, `step ${after}`).toBe(0);
      const again = await run(dir, name, ...words(dir));
      // What was written before it stopped is not written twice: the second run says so in a sentence.
      if (again.code !== 0) expect(again.err, `step ${after}`).toMatch(/^Can’t do that: .+ — .+\.\n$/);
      if (now === JSON.stringify(willBe)) expect(again.code, `step ${after}`).toBe(1);
      expect(seen(dir), `step ${after}`).toEqual(willBe);
    }
    expect(ends.size).toBe(2);
  });

  test('and at any moment', async () => {
    const whole = await start();
    const finished = copyOf(whole);
    const began = performance.now();
    await salver(call(finished));
    const took = performance.now() - began;
    const states = [seen(whole), seen(finished)].map((each) => JSON.stringify(each));
    const random = seeded(3);
    for (let turn = 0; turn < (LONG ? 60 : 2); turn += 1) {
      const dir = copyOf(whole);
      await salver(call(dir), { killAfter: random.below(Math.ceil(took)) });
      expect(states).toContain(JSON.stringify(seen(dir)));
    }
  });

  test('run twice at once it is done once, and whoever comes second is told so', async () => {
    const dir = await start();
    const words = call(dir);
    const both = await Promise.all([salver(words), salver(words)]);
    expect(both.map(({ code }) => code).sort()).toEqual([0, 1]);
    expect(both.find(({ code }) => code === 1)?.err).toMatch(/^Can’t do that: .+ — .+\.\n$/);
  });
});

describe('build stopped half-way', () => {
  const flags = (out: string) => ['--no-pdf', '--out', out, '--today', '2027-04-28'];
  const built = (content: string, out: string) => ['build', ...flags(out), '--content', content];
  /** The same in this process, where nothing depends on which one it is. */
  const builtHere = async (content: string, out: string) => (await run(content, 'build', ...flags(out))).code;

  test('leaves the last output or the new one, whole, and the next run ends with the new one', async () => {
    const root = passingFolder();
    const content = await acceptedKitchen();
    const old = join(root, 'old', 'dist');
    expect(await builtHere(content, old)).toBe(0);
    change(content, ['kitchen.yaml', 'Tidewrack Kitchen', 'Tidewrack Kitchen and Stores']);
    const outIn = (folder: string) => {
      const out = join(root, folder, 'dist');
      cpSync(dirname(old), dirname(out), { recursive: true });
      return out;
    };
    // The plan kept on the event's day names the kitchen: it is written by the first build, among the event's facts.
    expect(await builtHere(content, outIn('first'))).toBe(0);
    const fresh = outIn('new');
    const { code, steps } = await dying(built(content, fresh), 0);
    expect(code).toBe(0);
    const [was, willBe] = [seen(old), seen(fresh)];
    expect(willBe).not.toEqual(was);
    // The last steps put the new output in place; those before fill it, each like the other.
    const last = Array.from({ length: 9 }, (_, index) => steps - index);
    const random = seeded(11);
    const stops = LONG
      ? Array.from({ length: steps }, (_, index) => index + 1)
      : [...last.slice(0, 6), ...[1, 2].map(() => 1 + random.below(steps))];
    const kept = join(root, 'kept');
    const watched = outIn('watched');
    const keeping = { KEEP_IN: kept, KEEP_OF: dirname(watched), KEEP_AT: stops.join() };
    expect((await dying(built(content, watched), 0, keeping)).steps).toBe(steps);
    // As above, deaths leave what the steps did.
    for (const after of LONG ? stops : stops.slice(2, 4)) {
      const out = outIn(`death-${after}`);
      expect((await dying(built(content, out), after)).code, `step ${after}`).toBeNull();
      expect(seen(dirname(out)), `step ${after}`).toEqual(seen(join(kept, `${after}`)));
    }
    for (const after of stops) {
      const out = join(kept, `${after}`, 'dist');
      const left = existsSync(out) ? out : join(dirname(out), `.${basename(out)}.last`);
      expect([JSON.stringify(was), JSON.stringify(willBe)], `step ${after}`).toContain(
        JSON.stringify(seen(left)),
      );
      expect(await builtHere(content, out), `step ${after}`).toBe(0);
      expect(seen(out), `step ${after}`).toEqual(willBe);
    }
  });

  test('twice at once into one folder, one of them is refused and the output is whole', async () => {
    const root = passingFolder();
    const content = copyOf();
    const [alone, out] = [join(root, 'alone', 'dist'), join(root, 'both', 'dist')];
    expect(await builtHere(content, alone)).toBe(0);
    const both = await Promise.all([salver(built(content, out)), salver(built(content, out))]);
    expect(both.some(({ code }) => code === 0)).toBe(true);
    for (const { code, err } of both)
      if (code !== 0) expect(err).toMatch(/another build is writing to .+; wait until it has finished/);
    expect(seen(out)).toEqual(seen(alone));
  });
});
