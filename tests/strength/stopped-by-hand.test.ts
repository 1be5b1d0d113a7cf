import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { filesOf } from '../../src/files/digest.ts';
import { acceptedKitchen } from '../commands/accepted-kitchen.ts';
import { copyOf, pictureOf } from '../commands/kitchen-copy.ts';
import { type Ran, run, salver } from '../commands/run.ts';

const main = fileURLToPath(new URL('../../src/commands/main.ts', import.meta.url));
const preload = pathToFileURL(fileURLToPath(new URL('die-after.ts', import.meta.url))).href;

/** What whoever presses Ctrl-C, or a machine that shuts down, is told. */
const STOPPED = 'Stopped. No file is half-written; run the same command again.';
/** What the next build says of it, once. */
const AGAIN =
  'An earlier build was stopped before it finished. Nothing unfinished was published; this build starts over.';
/** Each with the code it ends with, and with the steps of a command after which it comes: between them, the first four. */
const SIGNALS = [
  ['SIGINT', 130, [1, 3]],
  ['SIGTERM', 143, [2, 4]],
] as const;

/** Runs Salver and sends the signal as soon as it has said the words on standard error. */
async function stoppedAt(signal: NodeJS.Signals, said: string, words: readonly string[]): Promise<Ran> {
  const child = spawn(process.execPath, [main, ...words], { stdio: ['ignore', 'pipe', 'pipe'] });
  let err = '';
  child.stderr.setEncoding('utf8').on('data', (part: string) => {
    if (!err.includes(said) && (err + part).includes(said)) child.kill(signal);
    err += part;
  });
  const ended = new Promise<number | null>((done, fail) => child.on('error', fail).on('close', done));
  const [out, code] = await Promise.all([text(child.stdout), ended]);
  return { code, out, err };
}

describe.each(SIGNALS)('at %s', (signal, exitCode, steps) => {
  test('a build that prints says what to do next, publishes nothing, and the next one is whole', async () => {
    const root = mkdtempSync(join(tmpdir(), 'salver-stopped-'));
    onTestFinished(() => rmSync(root, { recursive: true, force: true }));
    const content = await acceptedKitchen();
    const out = join(root, 'dist');
    const flags = ['--out', out, '--today', '2027-04-28'];
    const words = ['build', '--content', content, ...flags];
    const { code, err } = await stoppedAt(signal, 'Printing 2 of', words);
    expect({ code, last: err.trimEnd().split('\n').at(-1) }).toEqual({ code: exitCode, last: STOPPED });
    expect(existsSync(out)).toBe(false);
    // Which signal it was, the next build cannot tell: after one of them its papers are looked at too.
    const papers = signal === 'SIGINT';
    const next = papers ? flags : [...flags, '--no-pdf'];
    const again = await run(content, 'build', ...next);
    expect({ code: again.code, first: again.err.split('\n')[0] }).toEqual({ code: 0, first: AGAIN });
    expect((await run(content, 'build', ...next)).err).not.toContain(AGAIN);
    expect((await filesOf(out)).some((file) => file.endsWith('proposal.pdf'))).toBe(papers);
  });

  test.each([
    ['issue', async () => copyOf(), ['lifeboat-evening', '--today', '2027-04-26']],
    ['guarantee', acceptedKitchen, ['lifeboat-evening', '--adults', '36', '--today', '2027-05-02']],
  ] as const)('%s stopped while it writes leaves whole files and says so', async (name, start, words) => {
    const whole = await start();
    const shown = (dir: string) =>
      Object.entries(pictureOf(dir))
        .map(([path, digest]) => [path.slice(dir.length), digest] as const)
        .filter(([path, digest]) => digest !== 'a folder' && !/[\\/]\.[^\\/]+$/.test(path));
    const finished = copyOf(whole);
    expect((await run(finished, name, ...words)).code).toBe(0);
    const states = [shown(whole), shown(finished)];
    const told = new Set<number | null>();
    for (const after of steps) {
      const dir = copyOf(whole);
      const env = { NODE_OPTIONS: `--import=${preload}`, DIE_AFTER: String(after), DIE_BY: signal };
      const { code, err } = await salver([name, ...words, '--content', dir], { env });
      told.add(code);
      if (code === exitCode) expect(err).toBe(`${STOPPED}\n`);
      else expect(code, err).toBe(0);
      expect(states).toContainEqual(shown(dir));
    }
    expect([...told]).toContain(exitCode);
  });
});
