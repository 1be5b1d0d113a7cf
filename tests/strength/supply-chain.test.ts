import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { LONG } from './long.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string) => JSON.parse(readFileSync(join(root, file), 'utf8')) as unknown;

interface Fetched {
  readonly license?: string;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
  readonly deprecated?: string;
}

/** All that `npm ci` fetches, whoever asks for it, by its place. */
const fetched = Object.entries(
  (read('package-lock.json') as { packages: Record<string, Fetched> }).packages,
).filter(([place]) => place !== '');

/** Licences (SPDX) that let whoever runs Salver do so, change it and pass it on, and ask for the notice at most. */
const PERMISSIVE = [
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'ISC',
  'MIT',
  'MIT OR Apache-2.0',
  'MIT-0',
  'OFL-1.1',
  'Python-2.0',
  'Unicode-DFS-2016',
];

/** Those that ask for more, of changes to themselves alone: nothing of them is changed or in what a site serves. */
const OF_THEIR_OWN = [
  /^node_modules\/@img\/sharp-/,
  /^node_modules\/lightningcss(?:-|$)/,
  /^node_modules\/(?:@axe-core\/playwright|axe-core|ical\.js)$/,
];

/** Data that asks to name its source where it is passed on; here a tool of the tests reads it, and nothing ships it. */
const DATA = /^node_modules\/caniuse-lite$/;

test('all that libraries bring with them may be used, changed and passed on', () => {
  expect(fetched.length).toBeGreaterThan(100);
  const others = fetched.filter(([, { license = '' }]) => !PERMISSIVE.includes(license));
  expect(
    others
      .filter(([place]) => !OF_THEIR_OWN.some((known) => known.test(place)) && !DATA.test(place))
      .map(([place, { license }]) => `${place}: ${license}`),
  ).toEqual([]);
  for (const [place, { license }] of others)
    expect(license, place).toMatch(DATA.test(place) ? /^CC-BY-4\.0$/ : /\b(?:MPL-2\.0|LGPL-3\.0)/);
});

test('all that is fetched is held to its digest, and nothing of it is given up by its makers', () => {
  expect(fetched.filter(([, { integrity }]) => !integrity?.startsWith('sha512-'))).toEqual([]);
  expect(fetched.filter(([, { deprecated }]) => deprecated !== undefined)).toEqual([]);
});

test('what would run while it is installed is named, and only the one Node may', () => {
  const { allowScripts } = read('package.json') as { allowScripts: Record<string, boolean> };
  const running = fetched
    .filter(([, { hasInstallScript }]) => hasInstallScript)
    .map(([place]) => place.replace(/^.*node_modules\//, ''));
  expect([...new Set(running)].sort()).toEqual(Object.keys(allowScripts).sort());
  expect(Object.keys(allowScripts).filter((name) => allowScripts[name])).toEqual(['node']);
});

test.runIf(LONG)('no fault is known of what is fetched, where the registry answers that', ({ skip }) => {
  const { stdout } = spawnSync('npm', ['audit', '--json'], { cwd: root, encoding: 'utf8' });
  const answer = JSON.parse(stdout) as { metadata?: { vulnerabilities: { total: number } } };
  if (!answer.metadata) skip('the registry does not answer');
  expect(answer.metadata?.vulnerabilities.total, stdout).toBe(0);
});
