import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { acceptedKitchen, issuedKitchen } from './accepted-kitchen.ts';
import { pictureOf } from './kitchen-copy.ts';
import { run } from './run.ts';

const confirm = (dir: string, ...words: string[]) =>
  run(dir, 'confirm', 'lifeboat-evening', '--today', '2027-05-03', ...words);
const received = (dir: string) =>
  JSON.parse(readFileSync(join(dir, 'events/lifeboat-evening/002-confirmed.json'), 'utf8')).received;

describe('confirm records the deposit', () => {
  test('that was due on acceptance, where no amount is said', async () => {
    const dir = await acceptedKitchen();
    const { code, out, err } = await confirm(dir);
    expect({ code, out, err }).toEqual({
      code: 0,
      out: 'Confirmed: lifeboat-evening; €177.94 received on 2027-05-03.\n',
      err: '',
    });
    expect(received(dir)).toEqual({ amount: '177.94', on: '2027-05-03' });
    expect((await run(dir, 'plan', 'lifeboat-evening', '--json')).out).toContain('"state": "confirmed"');
  });

  test('that was due on acceptance, wherever the kitchen lists it among the payments', async () => {
    const dir = await acceptedKitchen([
      'kitchen.yaml',
      '[25 % when accepted, balance on the day]',
      '[40 % 10 days before, 25 % when accepted, balance on the day]',
    ]);
    await confirm(dir);
    expect(received(dir).amount).toBe('177.94');
  });

  test('as it came in: amount, day and way', async () => {
    const dir = await acceptedKitchen();
    const words = ['--received', '200', '--on', '2027-04-30', '--method', 'transfer', '--json'];
    const { code, out } = await confirm(dir, ...words);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ kind: 'confirmed', on: '2027-05-03', warnings: [] });
    expect(received(dir)).toEqual({ amount: '200.00', on: '2027-04-30', method: 'transfer' });
  });

  test('and warns where the day has more guests than the kitchen serves', async () => {
    const dir = await acceptedKitchen(['kitchen.yaml', 'guests a day: 90', 'guests a day: 36']);
    const { code, out } = await confirm(dir);
    expect(code).toBe(0);
    expect(out.split('\n')[1]).toBe(
      'Warning: 2027-05-21 has 37 guests over all its events, but the kitchen’s limit is 36 a day.',
    );
    expect(readdirSync(join(dir, 'events/lifeboat-evening'))).toHaveLength(2);
  });
});

describe('confirm is refused, and nothing is written,', () => {
  test('a second time', async () => {
    const dir = await acceptedKitchen();
    await confirm(dir);
    const before = pictureOf(dir);
    const { code, out, err } = await confirm(dir, '--received', '10');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('lifeboat-evening is confirmed already');
    expect(pictureOf(dir)).toEqual(before);
  });

  test.each<[string[], number, string]>([
    [
      ['--on', '2027-04-27'],
      1,
      'money can’t have come in on Tuesday, 27 April 2027 — give a day from 2027-04-28 to 2027-05-03',
    ],
    [['--on', '2027-05-04'], 1, 'money can’t have come in on Tuesday, 4 May 2027'],
    [['--on', 'May'], 2, '--on: "May" is not a date'],
    [['--received', 'much'], 2, '--received: '],
    [['--received', '177.945'], 2, '--received: '],
    [['--method', 'x'.repeat(81)], 1, 'received.method can’t be recorded'],
  ])('with %j', async (words, exit, sentence) => {
    const dir = await acceptedKitchen();
    const before = pictureOf(dir);
    const { code, out, err } = await confirm(dir, ...words);
    expect({ code, out }).toEqual({ code: exit, out: '' });
    expect(err).toContain(sentence);
    expect(err.trimEnd()).not.toContain('\n');
    expect(pictureOf(dir)).toEqual(before);
  });

  test('where no deposit is due and none is named', async () => {
    const dir = await acceptedKitchen([
      'kitchen.yaml',
      '[25 % when accepted, balance on the day]',
      '[balance on the day]',
    ]);
    const { code, err } = await confirm(dir);
    expect({ code, err }).toMatchObject({ code: 1, err: expect.stringContaining('has no deposit due') });
  });

  test('for what nobody has accepted', async () => {
    const dir = await issuedKitchen();
    const before = pictureOf(dir);
    const { code, err } = await confirm(dir);
    expect({ code, err }).toMatchObject({
      code: 1,
      err: expect.stringContaining('there is no event lifeboat-evening'),
    });
    expect(pictureOf(dir)).toEqual(before);
  });
});
