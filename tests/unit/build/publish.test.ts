import { fork } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { recordFile, timesFile } from '../../../src/build/own-files.ts';
import { type PublishStep, publish, refuseOutput } from '../../../src/build/publish.ts';
import { filesOf } from '../../../src/files/digest.ts';
import { editionRecord } from './edition.ts';

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
      return editionRecord(name);
    },
    onStep,
  );

async function seen(): Promise<Record<string, string>> {
  const files = (await filesOf(out)).filter((file) => file !== timesFile);
  return Object.fromEntries(
    await Promise.all(files.map(async (file) => [file, await readFile(join(out, file), 'utf8')] as const)),
  );
}
const whole = (name: string) => ({
  [recordFile]: editionRecord(name),
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
      throw new Error('a page could not be made');
    });
    await expect(failing).rejects.toThrow('a page could not be made');
    expect(await seen()).toEqual(whole('first'));
    expect(await readdir(folder)).toEqual(['dist']);
  });

  test('a kept file is the same file, not a copy', async () => {
    await edition('first');
    const before = await stat(join(out, 'public/a.txt'));
    await publish(out, async (scratch) => {
      scratch.keep('public/a.txt');
      return editionRecord('second', ['public/a.txt']);
    });
    expect((await stat(join(out, 'public/a.txt'))).ino).toBe(before.ino);
  });

  test('a folder with files of somebody else is refused and stays as it is', async () => {
    await mkdir(out);
    await writeFile(join(out, 'letter.txt'), 'mine');
    await expect(edition('first')).rejects.toThrow('has files that Salver did not write');
    expect(await seen()).toEqual({ 'letter.txt': 'mine' });
  });

  const put = async (path: string, text = 'mine') => {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  };

  test('a file that somebody put into the output is named and refused, before any work, and everything stays', async () => {
    await edition('first');
    await put('dist/public/CNAME');
    await put('dist/.git/objects/pack');
    await put('dist/.git/HEAD');
    const told =
      /has files that Salver did not write \(\.git\/, public\/CNAME\), and a build replaces that folder; move them elsewhere/;
    let began = false;
    const second = publish(out, async () => {
      began = true;
      return editionRecord('second');
    });
    await expect(second).rejects.toThrow(told);
    await expect(refuseOutput(out)).rejects.toThrow(told);
    expect(began).toBe(false);
    expect(await seen()).toEqual({
      ...whole('first'),
      '.git/HEAD': 'mine',
      '.git/objects/pack': 'mine',
      'public/CNAME': 'mine',
    });
    expect(await readdir(folder)).toEqual(['dist']);
  });

  test('one that comes while the new output is made is refused as well', async () => {
    await edition('first');
    const second = publish(out, async () => {
      await put('dist/public/late.txt');
      return editionRecord('second', []);
    });
    await expect(second).rejects.toThrow('(public/late.txt)');
    expect(await seen()).toEqual({ ...whole('first'), 'public/late.txt': 'mine' });
    expect(await readdir(folder)).toEqual(['dist']);
  });

  test('a folder that is none of ours is named by what lies at its top, and not walked through', async () => {
    await expect(refuseOutput('/')).rejects.toThrow(
      /^\/ has files that Salver did not write \(.+, .+, .+, \d+ more\)/,
    );
  });

  test('a link in the place of a folder of ours is somebody’s, and nothing behind it is touched', async () => {
    await edition('first');
    await put('elsewhere/deep/b.txt');
    await rm(join(out, 'private'), { recursive: true });
    await symlink(join(folder, 'elsewhere'), join(out, 'private'));
    await expect(edition('second')).rejects.toThrow('(private)');
    expect(await readFile(join(folder, 'elsewhere/deep/b.txt'), 'utf8')).toBe('mine');
  });

  test('what file managers leave behind, and empty folders, stop nothing', async () => {
    await edition('first');
    await put('dist/public/.DS_Store');
    await mkdir(join(out, 'empty/within'), { recursive: true });
    await edition('second');
    expect(await seen()).toEqual(whole('second'));
  });

  test.each(['.dist.next', '.dist.last'])(
    'a folder of somebody’s that is called %s is named and stays as it is',
    async (name) => {
      await edition('first');
      await put(`${name}/letter.txt`);
      await expect(edition('second')).rejects.toThrow(
        `${join(folder, name)} is Salver's working folder, but Salver did not write what is in it; move it elsewhere`,
      );
      expect(await readFile(join(folder, name, 'letter.txt'), 'utf8')).toBe('mine');
      expect(await seen()).toEqual(whole('first'));
    },
  );

  test('an old output left beside, with a file of somebody’s in it, is named and stays', async () => {
    await edition('first');
    await rename(out, join(folder, '.dist.last'));
    await put('.dist.last/public/letter.txt');
    await expect(edition('second')).rejects.toThrow(
      'has files that Salver did not write (public/letter.txt); move them elsewhere',
    );
    expect(await readFile(join(folder, '.dist.last/public/letter.txt'), 'utf8')).toBe('mine');
    await rm(join(folder, '.dist.last/public/letter.txt'));
    await edition('second');
    expect(await seen()).toEqual(whole('second'));
    expect(await readdir(folder)).toEqual(['dist']);
  });

  test.each([
    ['was lost', '{', 'can’t be read, and without it there is no telling which files'],
    ['is of a later version', '{ "version": 2, "files": {} }', 'was built by a newer version of Salver'],
  ])('an output whose record %s is left alone', async (_, record, told) => {
    await edition('first');
    await writeFile(join(out, recordFile), record);
    await expect(edition('second')).rejects.toThrow(told);
    expect(await seen()).toEqual({ ...whole('first'), [recordFile]: record });
  });

  test('a record that names files outside of the output removes none of them', async () => {
    await put('letter.txt');
    await put(`dist/${recordFile}`, editionRecord('first', ['../letter.txt', 'public/a.txt']));
    await put('dist/public/a.txt');
    await edition('second');
    expect(await readFile(join(folder, 'letter.txt'), 'utf8')).toBe('mine');
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
      return editionRecord('first');
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
