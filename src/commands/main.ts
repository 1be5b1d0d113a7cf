import { enableCompileCache } from 'node:module';
import { projectDir } from '../build/project-dir.ts';
import type { Call } from './call/command.ts';
import { readCall } from './call/read-call.ts';
import { stoppedSentence } from './call/stopped-sentence.ts';
import { catalogue } from './catalogue.ts';
import { manual, overview, unknownCommand } from './help.ts';

/** Finds the command, reads its flags and runs it; the exit code is the answer. */
async function main(words: string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === '--help' || name === '-h') {
    write(await overview());
    return 0;
  }
  if (name === undefined) {
    complain(await overview());
    return 2;
  }
  const load = Object.hasOwn(catalogue, name) ? catalogue[name] : undefined;
  if (!load) {
    complain(unknownCommand(name));
    return 2;
  }
  const { command } = await load();
  // npm runs scripts in the project's folder and keeps the caller's own in INIT_CWD.
  const { INIT_CWD: callerDir = process.cwd() } = process.env;
  const read = readCall(rest, command, { projectDir, callerDir });
  if ('sentence' in read) {
    complain(read.sentence);
    return 2;
  }
  const { help, ...call } = read;
  if (help) {
    write(manual(name, command, call.json));
    return 0;
  }
  return command.run({ ...call, write, complain } satisfies Call);
}

function write(text: string): void {
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
}

function complain(text: string): void {
  process.stderr.write(text.endsWith('\n') ? text : `${text}\n`);
}

/** One sentence for what no command foresaw. The stack is for those who ask for it. */
function sayUnexpected(error: unknown): void {
  complain(stoppedSentence(error));
  const { SALVER_DEBUG } = process.env;
  if (SALVER_DEBUG === '1' && error instanceof Error) complain(error.stack ?? '');
}

const words = process.argv.slice(2);

// Half of what a short command takes is reading its own code; Node keeps it compiled in the folder for passing files.
enableCompileCache();

// A reader that closes the pipe early (`| head`) has had what it wanted.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

// Whatever is written comes into place by one link or rename, so that stopping at any moment leaves it whole.
for (const [signal, code] of [
  ['SIGINT', 130],
  ['SIGTERM', 143],
] as const)
  process.once(signal, () => {
    // `serve` waits for the same signal to close in good order, and `dev` for the program it started.
    if (process.listenerCount(signal) > 0 || words[0] === 'dev') return;
    complain('Stopped. No file is half-written; run the same command again.');
    process.exit(code);
  });

try {
  process.exitCode = await main(words);
} catch (error) {
  sayUnexpected(error);
  process.exitCode = 1;
}
