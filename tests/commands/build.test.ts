import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { copyOf, pictureOf } from './kitchen-copy.ts';
import { salver } from './run.ts';

describe('build, before it reads anything', () => {
  test('refuses an output with somebody’s files by name, and one that holds the content', async () => {
    const dir = mkdtempSync(join(tmpdir(), 'salver-out-'));
    onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
    const content = copyOf();
    // Nothing of the content is looked at: broken as it is, the output is what is told.
    writeFileSync(join(content, 'kitchen.yaml'), 'name: [');
    writeFileSync(join(dir, 'letter.txt'), 'mine');
    const before = [pictureOf(dir), pictureOf(content)];
    expect(await salver(['build', '--no-pdf', '--content', content, '--out', dir])).toEqual({
      code: 1,
      out: '',
      err: `Can’t do that: ${dir} has files that Salver did not write (letter.txt) — give '--out' a new or empty folder.\n`,
    });
    const within = join(content, 'dist');
    const { code, err } = await salver(['build', '--no-pdf', '--content', content, '--out', within]);
    expect({ code, err }).toEqual({
      code: 1,
      err: `Can’t do that: the output ${within} is inside the folder of the content (${content}) — give '--out' another folder.\n`,
    });
    expect([pictureOf(dir), pictureOf(content)]).toEqual(before);
  });
});
