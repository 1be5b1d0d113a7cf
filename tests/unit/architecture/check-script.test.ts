import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';

const script = fileURLToPath(new URL('../../../.ci/check', import.meta.url));

/** Runs the script with tools that only tell their name and what they were asked, and end with the code given. */
function checked(codes: Readonly<Record<string, number>>): { ran: string[]; code: number | null } {
  const tools = mkdtempSync(join(tmpdir(), 'salver-check-'));
  onTestFinished(() => rmSync(tools, { recursive: true, force: true }));
  for (const tool of ['biome', 'tsc', 'node']) {
    const cases = Object.entries(codes).map(([words, code]) => `*"${words}"*) exit ${code};;`);
    writeFileSync(
      join(tools, tool),
      `#!/bin/sh\necho "${tool} $*"\ncase "${tool} $*" in ${cases.join(' ')} esac\n`,
    );
    chmodSync(join(tools, tool), 0o755);
  }
  const { stdout, status } = spawnSync('sh', [script], {
    env: { PATH: `${tools}:/usr/bin:/bin` },
    encoding: 'utf8',
  });
  return { ran: stdout.trim().split('\n'), code: status };
}

const ALL = [
  /^biome check /,
  /^node .*astro\.mjs sync$/,
  /^tsc --noEmit$/,
  /^node .*astro\.mjs check --noSync$/,
].map((words) => expect.stringMatching(words));

test('every tool has its say in one run, whatever those before it found', () => {
  expect(checked({})).toEqual({ ran: ALL, code: 0 });
  expect(checked({ biome: 1, tsc: 2, 'astro.mjs check': 1 }).ran).toEqual(ALL);
});

test('it ends with the code of the first that complained', () => {
  expect(checked({ tsc: 2, 'astro.mjs check': 1 }).code).toBe(2);
  expect(checked({ biome: 1, tsc: 2 }).code).toBe(1);
  expect(checked({ 'astro.mjs check': 3 }).code).toBe(3);
  expect(checked({ 'astro.mjs sync': 4 }).code).toBe(4);
});
