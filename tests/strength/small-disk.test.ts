import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import {
  acceptanceOf,
  acceptedKitchen,
  fileWith,
  issuedKitchen,
  offerIn,
} from '../commands/accepted-kitchen.ts';
import { copyOf } from '../commands/kitchen-copy.ts';

const main = fileURLToPath(new URL('../../src/commands/main.ts', import.meta.url));

/** A disk of its own is mounted in a name space that ends with the process; not every machine allows that. */
const mountable =
  spawnSync('unshare', ['-rm', 'sh', '-c', 'd=$(mktemp -d) && mount -t tmpfs -o size=64k tmpfs "$d"'])
    .status === 0;

/** How the disk is made unfit once the content is on it. */
const UNFIT = {
  full: 'dd if=/dev/zero of=filler bs=1k 2>/dev/null || true',
  'all but full': 'dd if=/dev/zero of=filler bs=1k 2>/dev/null || true; truncate -s -4k filler',
  'only to be read': 'mount -o remount,ro .',
} as const;

/** Room for some of a build's files, not for all. */
const HALF_WAY = 'dd if=/dev/zero of=filler bs=1k 2>/dev/null || true; truncate -s -60k filler';

/** A build is there, and its kitchen has another name by now, so that each page is to be made again. */
const BUILT_BEFORE =
  '"$@" >/dev/null 2>&1; sed -i "s/^name: .*/name: Tidewrack Kitchen and Stores/" content/kitchen.yaml';

interface OnDisk {
  readonly code: number;
  readonly said: string;
  readonly before: string;
  readonly after: string;
}

/** Runs Salver with its content, and a build's output, on a disk of so many MB that is then made unfit. */
async function onDisk(
  unfit: string,
  content: string,
  words: readonly string[],
  { size = 2, first = ':' } = {},
): Promise<OnDisk> {
  const dir = mkdtempSync(join(tmpdir(), 'salver-disk-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  const sums = "find . -type f ! -name '.*' ! -name filler | sort | xargs -r sha256sum";
  const script = [
    'set -e',
    `mount -t tmpfs -o size=${size}m tmpfs "$1"`,
    'cd "$1"',
    'cp -r "$2" content',
    // Paths count from the disk, not from where npm was called.
    'unset INIT_CWD',
    'shift 2',
    first,
    unfit,
    'echo "<before>"',
    sums,
    'echo "<said>"',
    '"$@" 2>&1 && code=0 || code=$?',
    'echo "<code>$code"',
    'echo "<after>"',
    sums,
  ].join('\n');
  const call = [process.execPath, main, ...words, '--content', join(dir, 'content')];
  const child = spawn('unshare', ['-rm', 'sh', '-c', script, 'sh', dir, content, ...call], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const out = await text(child.stdout);
  const [, before = '', said = '', code = '', after = ''] =
    /<before>\n([\s\S]*)<said>\n([\s\S]*)<code>(\d+)\n<after>\n([\s\S]*)$/.exec(out) ?? [];
  return { code: Number(code || Number.NaN), said, before, after };
}

const WRITINGS = [
  ['issue', async () => copyOf(), () => ['issue', 'lifeboat-evening', '--today', '2027-04-26']],
  [
    'accept',
    () => issuedKitchen(),
    (dir: string) => [
      'accept',
      fileWith(JSON.stringify(acceptanceOf(offerIn(dir)))),
      '--today',
      '2027-04-28',
    ],
  ],
  [
    'guarantee',
    () => acceptedKitchen(),
    () => ['guarantee', 'lifeboat-evening', '--adults', '36', '--today', '2027-05-02'],
  ],
] as const;

const SENTENCE =
  /^Salver stopped at [^\n]+: (the disk is full|no folder can be made or changed there)[^\n]*\. [^\n]+\.$/;

describe.runIf(mountable).each(Object.keys(UNFIT) as (keyof typeof UNFIT)[])(
  'on a disk that is %s',
  (unfit) => {
    test.each(WRITINGS)(
      '%s ends in one clear sentence, and the content stays as it was',
      async (name, start, words) => {
        const content = await start();
        const { code, said, before, after } = await onDisk(UNFIT[unfit], content, words(content));
        expect(before).toContain('kitchen.yaml');
        // What is small enough for the last room is written whole.
        if (unfit === 'all but full' && name !== 'issue') expect(code).toBe(0);
        else {
          expect(said.trimEnd()).toMatch(SENTENCE);
          expect(code, said).toBe(1);
          expect(after).toBe(before);
        }
      },
    );

    test('build ends in one clear sentence, and no output is begun', async () => {
      const content = await acceptedKitchen();
      const words = ['build', '--no-pdf', '--out', 'dist', '--today', '2027-05-02'];
      const { code, said, before, after } = await onDisk(UNFIT[unfit], content, words);
      expect(said.trimEnd().split('\n').at(-1)).toMatch(SENTENCE);
      expect(code).toBe(1);
      expect(after).toBe(before);
    });
  },
);

test.runIf(mountable)(
  'a build that fills the disk half-way says so, and the last output stays as it was',
  async () => {
    const content = await acceptedKitchen();
    const words = ['build', '--no-pdf', '--out', 'dist', '--today', '2027-05-02'];
    const { code, said, before, after } = await onDisk(HALF_WAY, content, words, {
      size: 8,
      first: BUILT_BEFORE,
    });
    expect(before).toContain('dist/private/kitchen/index.html');
    expect(said.trimEnd().split('\n').at(-1)).toMatch(SENTENCE);
    expect(code).toBe(1);
    expect(after).toBe(before);
  },
);
