import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { acceptedFactOf } from './accepted-fact.ts';
import {
  ACCEPTED,
  acceptanceOf,
  acceptedKitchen,
  ISSUED,
  issuedKitchen,
  offerIn,
} from './accepted-kitchen.ts';
import { copyOf } from './kitchen-copy.ts';
import { type Ran, run, salver } from './run.ts';

const STACK = /\n\s+at |node:internal|\.ts:\d+/;

/** Everything that people may meet, each in a process of its own: where it says what and how it ends. */
describe('the command line', () => {
  test('takes an acceptance from standard input; paths are those of the caller, not of the process', async () => {
    const dir = await issuedKitchen();
    const words = ['accept', '-', '--content', 'here', '--today', ACCEPTED];
    const env = { INIT_CWD: `${dir}/there` };
    const stdin = JSON.stringify(acceptanceOf(offerIn(dir)));
    const away = await salver(words, { stdin, env });
    expect(away).toMatchObject({ code: 1, err: '' });
    expect(away.out).toContain('here/:1:1 error no-content-folder');
    const ran = await salver(['accept', '-', '--content', '.', '--today', ACCEPTED], {
      stdin,
      env: { INIT_CWD: dir },
    });
    expect(ran).toMatchObject({ code: 0, err: '' });
    expect(acceptedFactOf(dir).acceptance.name).toBe('Aine Trask');
  });

  test('reads an acceptance file from where the caller stands, and names written files from there', async () => {
    const dir = copyOf();
    const parent = join(dir, '..');
    const name = dir.slice(parent.length + 1);
    const env = { INIT_CWD: parent };
    const issued = await salver(['issue', 'lifeboat-evening', '--content', name, '--today', ISSUED], { env });
    expect(issued).toMatchObject({ code: 0, err: '' });
    expect(issued.out).toContain(`Written to ${name}/offers/lifeboat-evening-r1.json.`);
    writeFileSync(join(dir, 'from-mail.json'), JSON.stringify(acceptanceOf(offerIn(dir))));
    const taken = await salver(['accept', `${name}/from-mail.json`, '--content', name, '--today', ACCEPTED], {
      env,
    });
    expect(taken).toMatchObject({ code: 0, err: '' });
  });

  test('puts data on standard output, wrong calls on standard error, with exit codes 0, 1 and 2', async () => {
    const dir = await acceptedKitchen();
    const on = ['--content', dir];
    const calls: [string[], number, 'out' | 'err'][] = [
      [['plan', 'lifeboat-evening', '--json', ...on], 0, 'out'],
      [['plan', 'nothing', '--json', ...on], 1, 'out'],
      [['plan', ...on], 2, 'err'],
      [['plann', ...on], 2, 'err'],
      [['plan', '--jsn', ...on], 2, 'err'],
      [[], 2, 'err'],
      [['help', '--json'], 0, 'out'],
      [['help', 'accept', '--json'], 0, 'out'],
      [['plan', '--help', '--json'], 0, 'out'],
      [['new', 'harbour', ...on], 2, 'err'],
      [['check', '--content', join(dir, 'nowhere')], 1, 'out'],
    ];
    const ran: [string[], number, 'out' | 'err', Ran][] = [];
    for (const [words, code, stream] of calls) ran.push([words, code, stream, await salver(words)]);
    for (const [words, code, stream, { code: ended, out, err }] of ran) {
      const silent = stream === 'out' ? err : out;
      expect({ words, code: ended, silent }).toEqual({ words, code, silent: '' });
      expect(`${out}${err}`).not.toMatch(STACK);
      expect((stream === 'out' ? out : err).trim()).not.toBe('');
      if (words.includes('--json')) expect(() => JSON.parse(out)).not.toThrow();
    }
    expect(ran.find(([words]) => words[0] === 'plann')?.[3].err).toBe(
      "There is no command 'plann'; did you mean 'plan'?\n",
    );
  });

  test('reads no more of an answer than one can have, from a file or from standard input', async () => {
    const dir = copyOf();
    const long = 'name,table,need\n'.padEnd(1_100_000, 'x');
    const file = join(dir, 'long.csv');
    writeFileSync(file, long);
    const on = ['--content', dir, '--today', ISSUED];
    const calls = [
      ['guests', 'lifeboat-evening', '--from'],
      ['leftovers', 'lifeboat-evening', '--from'],
      ['guarantee', '--from'],
      ['accept'],
    ];
    for (const words of calls) {
      const [piped, read] = [
        await salver([...words, '-', ...on], { stdin: long }),
        // Which of the two it is, is told apart before anything is read; a process of its own has only the one.
        await run(dir, words[0]!, ...words.slice(1), file, '--today', ISSUED),
      ];
      expect([piped, read].map(({ code, out }) => [code, out])).toEqual([
        [2, ''],
        [2, ''],
      ]);
      expect(piped.err).toMatch(/^The input is over a megabyte, .*\n$/);
      expect(read.err).toMatch(/^The file \S+long\.csv is over a megabyte, .*\n$/);
    }
  });

  test('says in one sentence what nobody foresaw, and shows where only when asked', async () => {
    const dir = copyOf();
    // The folder of offers cannot be made where a file of that name stands.
    writeFileSync(join(dir, 'offers'), '');
    const words = ['issue', 'lifeboat-evening', '--content', dir, '--today', ISSUED];
    const [plain, asked] = await Promise.all([salver(words), salver(words, { env: { SALVER_DEBUG: '1' } })]);
    expect(plain).toMatchObject({ code: 1, out: '' });
    expect(plain.err).toMatch(/^Salver stopped: [^\n]+ Run again with SALVER_DEBUG=1 to see where\.\n$/);
    expect(asked.err).toMatch(STACK);
  });
});
