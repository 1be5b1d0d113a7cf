import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { PATIENCE } from '../patience.ts';
import { everyKind } from './every-kind.ts';
import { LONG } from './long.ts';

const script = fileURLToPath(new URL('read-mutants.ts', import.meta.url));

/** No single file may keep a reading for longer, nor all of them make the process larger. */
const LONGEST_SECONDS = 10;
const LARGEST_MB = 1500;

test('whatever is done to a content file, reading ends in findings with a place or in a Book, soon and small', async () => {
  const content = await everyKind();
  const { said, silentAfter } = await watched(
    LONG ? [content, '0', '10000', 'sizes of all'] : [content, '0', '400', 'sizes'],
  );
  const wrong = said.filter((line) => line.startsWith('wrong '));
  expect(wrong).toEqual([]);
  expect(silentAfter, `no end to: ${said.at(-1)}`).toBeUndefined();
  expect(said.filter((line) => line.startsWith('try ')).length).toBeGreaterThan(400);
  const peak = Number(/^peak (\d+)$/.exec(said.at(-1) ?? '')?.[1]);
  expect(peak).toBeLessThan(LARGEST_MB);
});

/** Runs the script in a process of its own, and ends it where it says nothing for too long. */
async function watched(
  words: readonly string[],
): Promise<{ said: string[]; silentAfter: string | undefined }> {
  const child = spawn(process.execPath, [script, ...words], { stdio: ['ignore', 'pipe', 'inherit'] });
  let text = '';
  let silentAfter: string | undefined;
  let watch: NodeJS.Timeout | undefined;
  const again = () => {
    clearTimeout(watch);
    watch = setTimeout(
      () => {
        silentAfter = text.trimEnd().split('\n').at(-1);
        child.kill('SIGKILL');
      },
      LONGEST_SECONDS * 1000 * PATIENCE,
    );
  };
  again();
  child.stdout.setEncoding('utf8').on('data', (part: string) => {
    text += part;
    again();
  });
  await new Promise((done, fail) => child.on('error', fail).on('close', done));
  clearTimeout(watch);
  return { said: text.trimEnd().split('\n'), silentAfter };
}
