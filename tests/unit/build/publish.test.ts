import { fork } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { filesOf } from '../../../src/build/digest.ts';
import { type PublishStep, publish } from '../../../src/build/publish.ts';

const steps: PublishStep[] = ['recovered', 'filled', 'old moved away', 'new moved in', 'old removed'];

let folder: string;
let out: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'salver-'));
  out = join(folder, 'dist');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

/** An output whose two files must always be of one edition. */
const edition = (name: string, onStep?: (step: PublishStep) => void) =>
  publish(
    out,
    async (scratch) => {
      scratch.write('public/a.txt', name);
      scratch.write('private/deep/b.txt', name);
      return name;
    },
    onStep,
  );

async function seen(): Promise<Record<string, string>> {
  const files = await filesOf(out);
  return Object.fromEntries(
    await Promise.all(files.map(async (file) => [file, await readFile(join(out, file), 'utf8')] as const)),
  );
}
const whole = (name: string) => ({
  '.salver-build.json': name,
  'private/deep/b.txt': name,
  'public/a.txt': name,
});

describe('publishing', () => {
  test('puts the whole output in place and leaves nothing beside it', async () => {
    await edition('first');
    await edition('second');
    expect(await seen()).toEqual(whole('second'));
    expect(await readdir(folder)).toEqual(['dist']);
  });

  test.each(steps)(
    'a process killed when it has %s leaves a whole output, and the next run goes on',
    async (step) => {
      await edition('first');
      const program = fileURLToPath(new URL('publish-and-die.ts', import.meta.url));
      const child = fork(program, [out, step], { stdio: 'ignore' });
      const signal = await new Promise((done) => child.on('exit', (_, by) => done(by)));
      expect(signal).toBe('SIGKILL');

      // Between the two renames the old edition lies beside; the next run, even one that fails, puts it back.
      const failing = publish(out, () => Promise.reject(new Error('nothing to show')));
      await expect(failing).rejects.toThrow('nothing to show');
      const isIn = steps.indexOf(step) >= steps.indexOf('new moved in');
      expect(await seen()).toEqual(whole(isIn ? 'second' : 'first'));
      expect(await readdir(folder)).toEqual(['dist']);

      await edition('third');
      expect(await seen()).toEqual(whole('third'));
    },
  );

  test('a run that fails leaves the last output untouched', async () => {
    await edition('first');
    const failing = publish(out, async (scratch) => {
      scratch.write('public/a.txt', 'half');
      throw new Error('a page did not come out');
    });
    await expect(failing).rejects.toThrow('a page did not come out');
    expect(await seen()).toEqual(whole('first'));
    expect(await readdir(folder)).toEqual(['dist']);
  });

  test('a kept file is the same file, not a copy', async () => {
    await edition('first');
    const before = await stat(join(out, 'public/a.txt'));
    await publish(out, async (scratch) => {
      scratch.keep('public/a.txt');
      return 'second';
    });
    expect((await stat(join(out, 'public/a.txt'))).ino).toBe(before.ino);
  });

  test('a folder with files of somebody else is refused and stays as it is', async () => {
    await mkdir(out);
    await writeFile(join(out, 'letter.txt'), 'mine');
    await expect(edition('first')).rejects.toThrow('holds files that Salver did not write');
    expect(await seen()).toEqual({ 'letter.txt': 'mine' });
  });

  test('a file where the folder should be is refused and stays', async () => {
    await writeFile(out, 'mine');
    await expect(edition('first')).rejects.toThrow(/is a file; give '--out' a folder/);
    expect(await readFile(out, 'utf8')).toBe('mine');
  });

  test('a second run at the same time is refused, and the first one finishes', async () => {
    let second: Promise<void> | undefined;
    await publish(out, async (scratch) => {
      second = edition('second');
      await expect(second).rejects.toThrow('another build is writing');
      scratch.write('public/a.txt', 'first');
      return 'first';
    });
    expect(await seen()).toMatchObject({ 'public/a.txt': 'first' });
  });

  test.each(['public/../../a', 'a.txt', 'private//a', '/public/a', 'public', 'public\\a'])(
    'nothing is ever written at %s',
    async (file) => {
      const climbing = publish(out, async (scratch) => {
        scratch.write(file, 'out of place');
        return '';
      });
      await expect(climbing).rejects.toThrow('is not a file under public/ or private/');
      expect(await readdir(folder)).toEqual([]);
    },
  );
});
