import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { run } from '../commands/run.ts';

/*
 * The README and its page of output show what commands really print: each `console` block is run, in order, on a copy
 * of the demo kitchen on the demo's day. `SALVER_README=write npx vitest run … tests/readme` renews what they show;
 * read the difference.
 */
const PAGES = ['README.md', 'docs/what-commands-print.md'];
const TODAY = '2027-04-26';

interface Block {
  /** The commands, and what each printed as the page shows it. */
  readonly commands: readonly { readonly line: string; readonly shown: string }[];
  readonly text: string;
}

function blocksOf(page: string): Block[] {
  return [...page.matchAll(/```console\n([\s\S]*?)```/g)].map(([text, body = '']) => ({
    text,
    commands: body
      .split(/^\$ /m)
      .slice(1)
      .map((each) => {
        const [line = '', ...rest] = each.split('\n');
        return { line, shown: rest.join('\n').trimEnd() };
      }),
  }));
}

/** A new proposal's link is random, and with it its offer’s reference. */
function masked(text: string): string {
  return text.replace(/reference [0-9a-f]{4} [0-9a-f]{4} [0-9a-f]{4}/g, 'reference');
}

let content = '';
beforeAll(async () => {
  content = await mkdtemp(join(tmpdir(), 'salver-readme-'));
  await cp('content', content, { recursive: true });
  // As npm does for whoever stands in the kitchen's folder: files are named from there.
  vi.stubEnv('INIT_CWD', content);
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(content, { recursive: true });
});

async function outputOf(line: string): Promise<string> {
  const words = line.match(/"[^"]*"|\S+/g)?.map((word) => word.replace(/^"|"$/g, '')) ?? [];
  expect(words.slice(0, 5)).toEqual(['npm', 'run', '-s', 'salver', '--']);
  const [, , , , , name = '', ...rest] = words;
  const { out } = await run(content, name, ...rest, '--today', TODAY);
  return out.trimEnd();
}

describe('what a caterer reads first', () => {
  it.each(PAGES)('%s shows what its commands print', async (file) => {
    const page = await readFile(file, 'utf8');
    let renewed = page;
    const { SALVER_README } = process.env;
    for (const block of blocksOf(page)) {
      const lines: string[] = [];
      for (const { line, shown } of block.commands) {
        const printed = await outputOf(line);
        if (SALVER_README !== 'write') expect(masked(printed), line).toBe(masked(shown));
        lines.push(`$ ${line}`, ...(printed === '' ? [] : [printed]));
      }
      renewed = renewed.replace(block.text, () => `\`\`\`console\n${lines.join('\n')}\n\`\`\``);
    }
    if (SALVER_README === 'write') await writeFile(file, renewed);
    expect(blocksOf(page).length).toBeGreaterThan(1);
  });
});
