import { spawn } from 'node:child_process';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { readCall } from '../../src/commands/call/read-call.ts';
import { catalogue } from '../../src/commands/catalogue.ts';

const projectDir = fileURLToPath(new URL('../..', import.meta.url));

/** What a call said and how it ended. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process, as the command line would, on a content folder. */
export async function run(content: string, name: string, ...words: string[]): Promise<Ran> {
  const { command } = await catalogue[name]!();
  const read = readCall(['--content', content, ...words], command, { projectDir, callerDir: projectDir });
  if ('sentence' in read) return { code: 2, out: '', err: `${read.sentence}\n` };
  let out = '';
  let err = '';
  const code = await command.run({
    ...read,
    write: (said) => {
      out += `${said.trimEnd()}\n`;
    },
    complain: (said) => {
      err += `${said.trimEnd()}\n`;
    },
  });
  return { code, out, err };
}

/** What `check` says of one file of a content folder, each finding in its own words. Nothing anywhere is an error. */
export async function findingsOf(content: string, file: string): Promise<string[]> {
  const { code, out } = await run(content, 'check', '--json', '--today', '2027-04-28');
  if (code !== 0) throw new Error(`check found errors: ${out}`);
  const { findings } = JSON.parse(out) as { findings: { file: string; what: string }[] };
  return findings.filter((each) => each.file === file).map(({ what }) => what);
}

/** Runs Salver in a process of its own: what a person types after `salver`, from a folder, with a text piped in; ended after so many milliseconds. */
export async function salver(
  words: readonly string[],
  {
    cwd = projectDir,
    stdin = '',
    env = {},
    killAfter,
  }: { cwd?: string; stdin?: string; env?: NodeJS.ProcessEnv; killAfter?: number } = {},
): Promise<Ran> {
  const main = fileURLToPath(new URL('../../src/commands/main.ts', import.meta.url));
  const { INIT_CWD: _, SALVER_DEBUG: __, ...rest } = process.env;
  const child = spawn(process.execPath, [main, ...words], { cwd, env: { ...rest, ...env } });
  child.stdin.on('error', () => {}).end(stdin);
  if (killAfter !== undefined) setTimeout(() => child.kill('SIGKILL'), killAfter);
  const ended = new Promise<number | null>((done, fail) => child.on('error', fail).on('close', done));
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), ended]);
  return { code, out, err };
}
