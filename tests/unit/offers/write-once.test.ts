import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeOnce } from '../../../src/offers/write-once.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'salver-write-'));
});
afterEach(() => rm(folder, { recursive: true }));

describe('a record is published once', () => {
  it('writes the whole file and leaves nothing beside it', async () => {
    const file = join(folder, 'events', 'quay', '001-accepted.json');
    expect(await writeOnce(file, { kind: 'accepted' })).toBe(true);
    expect(JSON.parse(await readFile(file, 'utf8'))).toEqual({ kind: 'accepted' });
    expect(await readdir(join(folder, 'events', 'quay'))).toEqual(['001-accepted.json']);
  });

  it('refuses the second of two writers and keeps what the first wrote', async () => {
    const file = join(folder, 'offer.json');
    expect(await writeOnce(file, { by: 'first' })).toBe(true);
    expect(await writeOnce(file, { by: 'second' })).toBe(false);
    expect(JSON.parse(await readFile(file, 'utf8'))).toEqual({ by: 'first' });
    expect(await readdir(folder)).toEqual(['offer.json']);
  });

  it('lets exactly one of twenty simultaneous writers through', async () => {
    const file = join(folder, 'offer.json');
    const tries = await Promise.all(Array.from({ length: 20 }, (_, writer) => writeOnce(file, { writer })));
    expect(tries.filter(Boolean)).toHaveLength(1);
    expect(JSON.parse(await readFile(file, 'utf8'))).toEqual({ writer: tries.indexOf(true) });
  });
});
