import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { copyOf } from './kitchen-copy.ts';

/** Most systems bring `script`, which gives a program a terminal of its own; the questions are tested without it too. */
const hasScript = spawnSync('script', ['--version']).stdout?.includes('util-linux') === true;

/** Runs `new` in a terminal. Each answer is typed once its question stands there. */
async function typed(
  dir: string,
  id: string,
  dialogue: readonly (readonly [question: string, keys: string])[],
) {
  const main = fileURLToPath(new URL('../../src/commands/main.ts', import.meta.url));
  const call = [process.execPath, main, 'new', id, '--content', dir, '--today', '2027-04-26'];
  const child = spawn('script', ['-qec', call.map((word) => `'${word}'`).join(' '), '/dev/null'], {
    env: { ...process.env, TERM: 'dumb' },
  });
  const open = [...dialogue];
  let shown = '';
  let since = 0;
  child.stdout.on('data', (chunk: Buffer) => {
    shown += chunk.toString();
    const next = open[0];
    if (!next || !shown.slice(since).includes(next[0])) return;
    since = shown.length;
    open.shift();
    child.stdin.write(next[1]);
  });
  const code = await new Promise<number | null>((done) => child.on('close', done));
  return { code, shown };
}

describe.skipIf(!hasScript)('in a terminal', () => {
  test('new asks for what it must know, again where an answer will not do, and writes the proposal', async () => {
    const dir = copyOf();
    const { code, shown } = await typed(dir, 'harbour-wedding', [
      ['Client: ', 'Maeve Dorrity\r'],
      ['Client’s email: ', '\r'],
      ['Occasion: ', 'Harbour wedding\r'],
      ['Date (YYYY-MM-DD): ', '2027-06-31\r'],
      ['does not exist', '2027-07-03\r'],
      ['[18:00]: ', '\r'],
      ['[dunmarrow]: ', '\r'],
      ['[2027-05-17]: ', '\r'],
      ['Adults: ', '40\r'],
      ['[0]: ', '\r'],
      ['Packages', 'storm-supper\r'],
    ]);
    expect({
      code,
      end: shown.trimEnd().split('\n').at(-1)?.includes('Written: proposals/harbour-wedding.md.'),
    }).toEqual({ code: 0, end: true });
    const text = readFileSync(join(dir, 'proposals/harbour-wedding.md'), 'utf8');
    for (const line of [
      '  name: Maeve Dorrity',
      'date: 2027-07-03',
      'serve at: 18:00',
      '  adults: 40',
      'packages: storm-supper',
    ])
      expect(text.split('\n')).toContain(line);
  });

  test.each([
    ['Ctrl-D', '\u0004'],
    ['Ctrl-C', '\u0003'],
  ])('%s breaks off in one sentence and writes nothing', async (_, keys) => {
    const dir = copyOf();
    const { code, shown } = await typed(dir, 'broken-off', [
      ['Client: ', 'Maeve\r'],
      ['Client’s email: ', keys],
    ]);
    expect(code).toBe(1);
    expect(shown).toContain('Stopped; nothing was written.');
    expect(shown).not.toMatch(/\.ts:\d+|unsettled/i);
    expect(existsSync(join(dir, 'proposals/broken-off.md'))).toBe(false);
  });
});
