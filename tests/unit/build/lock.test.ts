import { spawnSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { withLock } from '../../../src/build/lock.ts';

let folder: string;
let file: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'salver-'));
  file = join(folder, 'lock');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const refusal = 'taken';

describe('a lock', () => {
  test('lets one at a time do its work, in any order of asking', async () => {
    let inside = 0;
    let most = 0;
    const work = async () => {
      inside += 1;
      most = Math.max(most, inside);
      await new Promise((done) => setTimeout(done, 20));
      inside -= 1;
    };
    await Promise.all([1, 2, 3].map(() => withLock(file, { wait: 10_000, refusal }, work)));
    expect(most).toBe(1);
    expect(await readdir(folder)).toEqual([]);
  });

  test('says its sentence when it stays taken by a living process', async () => {
    await writeFile(file, String(process.ppid));
    await expect(withLock(file, { wait: 150, refusal }, async () => 1)).rejects.toThrow(refusal);
    expect(await readFile(file, 'utf8')).toBe(String(process.ppid));
  });

  test('is taken over when its owner has gone', async () => {
    const { pid } = spawnSync(process.execPath, ['-e', '']);
    await writeFile(file, String(pid));
    expect(await withLock(file, { wait: 2_000, refusal }, async () => 'done')).toBe('done');
  });

  test('is taken over when it bears the number of this process from before a restart', async () => {
    await writeFile(file, String(process.pid));
    expect(await withLock(file, { wait: 2_000, refusal }, async () => 'done')).toBe('done');
  });

  test('is given back when the work fails', async () => {
    const failing = withLock(file, { wait: 0, refusal }, () => Promise.reject(new Error('burnt')));
    await expect(failing).rejects.toThrow('burnt');
    expect(await readdir(folder)).toEqual([]);
  });
});
