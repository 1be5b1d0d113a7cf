import { expect, test } from 'vitest';
import { closedSince } from '../../../src/client/closed-since.ts';

const asked: unknown[] = [];
const site = (body: object | string | null, status = 200) =>
  (async (...call: unknown[]) => {
    asked.push(call[0]);
    return new Response(typeof body === 'string' ? body : JSON.stringify(body), { status });
  }) as typeof fetch;

test('a page knows by the file beside it that its offer was replaced, withdrawn or accepted', async () => {
  const says = (offer: string, state: string) => closedSince('ab', site({ version: 1, offer, state }));
  expect(await says('cd', 'offered')).toMatch(/^A newer revision has replaced this offer/);
  expect(await says('cd', 'withdrawn')).toMatch(/^A newer revision/);
  expect(await says('ab', 'withdrawn')).toMatch(/^This offer was withdrawn/);
  expect(await says('ab', 'accepted')).toMatch(/^This offer has been accepted/);
  expect(await says('ab', 'offered')).toBeUndefined();
  // The page judges the day itself, by the kitchen's clock.
  expect(await says('ab', 'expired')).toBeUndefined();
  expect(new Set(asked)).toEqual(new Set(['standing.json']));
});

test('a page stays as it is while nobody can tell', async () => {
  const lost = (async () => {
    throw new TypeError('no connection');
  }) as typeof fetch;
  const gone = { version: 1, offer: 'cd', state: 'withdrawn' };
  const answers = [
    site(gone, 404),
    site('<html>'),
    site(null),
    site({ ...gone, offer: 7 }),
    site({ ...gone, version: 2 }),
    site({}),
    lost,
  ];
  for (const each of answers) expect(await closedSince('ab', each)).toBeUndefined();
});
