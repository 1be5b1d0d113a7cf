import { expect, test } from 'vitest';
import type { Call } from '../../../src/commands/call/command.ts';
import { command } from '../../../src/commands/check.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { changed, contentWith } from '../../findings/small-content.ts';

async function check(contentDir: string, given: Partial<Call> = {}) {
  const said: string[] = [];
  const complained: string[] = [];
  const code = await command.run({
    args: [],
    flags: {},
    contentDir,
    outDir: '/nowhere',
    today: '2027-04-26' as Day,
    json: false,
    write: (text) => said.push(text),
    complain: (text) => complained.push(text),
    ...given,
  });
  return { code, said: said.join(''), complained };
}

test('sound content is said to be so, with exit code 0', async () => {
  expect(await check(contentWith())).toEqual({ code: 0, said: 'Nothing found.\n', complained: [] });
});

test('a warning alone leaves the exit code at 0, an error makes it 1, and both are told in one run', async () => {
  const warned = changed('packages/supper.mdx', '50+: 29.50', '50+: 25.00');
  expect((await check(contentWith(warned))).code).toBe(0);
  const both = await check(
    contentWith({ ...warned, ...changed('recipes/cheese-plate.mdx', 'hold: cold', 'hold: cool') }),
  );
  expect(both.code).toBe(1);
  expect(both.said).toMatch(
    /supper\.mdx:4:29 warning price-drop .*\n.*cheese-plate\.mdx:9:7 error unknown-word .*\n1 error, 1 warning\.\n$/,
  );
});

test('programs get the same as JSON', async () => {
  const broken = contentWith(changed('recipes/lentil-soup.mdx', 'lentils: 4 lb', 'lentils: -4 lb'));
  const { code, said } = await check(broken, { json: true });
  expect(code).toBe(1);
  expect(JSON.parse(said)).toMatchObject({
    errors: 1,
    findings: [
      { file: 'recipes/lentil-soup.mdx', line: 5, column: 12, severity: 'error', code: 'not-understood' },
    ],
  });
});

test('a word that check does not take is a wrong call', async () => {
  const { code, said, complained } = await check(contentWith(), { args: ['recipes'] });
  expect({ code, said, complained }).toEqual({
    code: 2,
    said: '',
    complained: ["check takes no arguments, but got 'recipes'."],
  });
});
