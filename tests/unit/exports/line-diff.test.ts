import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { lineDiff } from '../../../src/exports/line-diff.ts';

const lines = (...changed: [number, string][]) =>
  [1, 2, 3, 4, 5, 6, 7, 8, 9]
    .map((number) => `${changed.find(([at]) => at === number)?.[1] ?? `line ${number}`}\n`)
    .join('');

// git apply is the independent reader of the form.
test.each([
  ['in the middle', lines([5, 'five'])],
  ['at the beginning', lines([1, 'one'])],
  ['at the end', lines([9, 'nine'])],
  ['over several lines', lines([3, 'three'], [6, 'six'])],
])('git makes the same change of it, %s', (_, after) => {
  const dir = mkdtempSync(join(tmpdir(), 'salver-diff-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  writeFileSync(join(dir, 'text'), lines());
  const diff = lineDiff('text', lines(), after);
  execFileSync('git', ['apply', '-p0', '-'], {
    cwd: dir,
    input: `${diff}\n`,
    env: { ...process.env, GIT_DIR: '' },
  });
  expect(readFileSync(join(dir, 'text'), 'utf8')).toBe(after);
});

test('no change is no diff', () => {
  expect(lineDiff('text', lines(), lines())).toBe('');
});
