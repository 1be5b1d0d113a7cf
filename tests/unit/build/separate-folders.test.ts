import { mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { refuseOverlap } from '../../../src/build/separate-folders.ts';

let dir: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'salver-apart-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

const overlap = (content: string, out: string) =>
  refuseOverlap(join(dir, content), join(dir, out), join(dir, 'public'));

describe('content and output', () => {
  test.each([
    ['kitchen', 'kitchen', 'contains the content'],
    ['dist/kitchen', 'dist', 'contains the content'],
    ['kitchen', 'kitchen/dist', 'is inside the folder of the content'],
    ['kitchen', 'kitchen/not/yet/there', 'is inside the folder of the content'],
    ['kitchen', 'public/site', 'is inside the folder of the files served as they are'],
    ['kitchen', '.', 'contains the content'],
  ])('in %s and %s are refused', async (content, out, told) => {
    mkdirSync(join(dir, content), { recursive: true });
    await expect(overlap(content, out)).rejects.toThrow(told);
  });

  test('are told apart by where they are, not by what links call them', async () => {
    mkdirSync(join(dir, 'kitchen'));
    symlinkSync(join(dir, 'kitchen'), join(dir, 'elsewhere'));
    await expect(overlap('kitchen', 'elsewhere/dist')).rejects.toThrow('is inside the folder of the content');
  });

  test('may lie side by side, and have names that begin alike', async () => {
    await overlap('kitchen', 'kitchen-dist');
    await overlap('kitchen', '..dist');
    await overlap('content', 'dist');
  });
});
