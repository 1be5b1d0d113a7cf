import { expect, test } from 'vitest';
import { isReplaced } from '../../../src/client/newer-revision.ts';

const asked: unknown[] = [];
const site = (body: string, status = 200) =>
  (async (...call: unknown[]) => {
    asked.push(call[0]);
    return new Response(body, { status });
  }) as typeof fetch;

test('a page knows that a newer revision has replaced it by the digest beside it, and only by that', async () => {
  expect(await isReplaced('ab', site('{"digest":"cd"}'))).toBe(true);
  expect(await isReplaced('ab', site('{"digest":"ab"}'))).toBe(false);
  expect(asked).toEqual(['offer.json', 'offer.json']);
});

test('a page stays as it is while nobody can tell', async () => {
  const lost = (async () => {
    throw new TypeError('no connection');
  }) as typeof fetch;
  const answers = [site('{"digest":"cd"}', 404), site('<html>'), site('null'), site('{"digest":7}'), lost];
  for (const each of answers) expect(await isReplaced('ab', each)).toBe(false);
});
