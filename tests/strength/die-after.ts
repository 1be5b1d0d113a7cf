import { createRequire, syncBuiltinESMExports } from 'node:module';

// Loaded before Salver: ends the process, as a power cut would, after so many steps on the file system that change
// something; by the signal in `DIE_BY`, if that is said. `DIE_AFTER=0` only counts them and says on standard error how many there were.
// With `KEEP_IN`, the folder `KEEP_OF` is copied there under the number of each step, or of those that `KEEP_AT` names:
// what a death after that step would leave, since nothing else writes.
const require = createRequire(import.meta.url);
const sync = require('node:fs') as Record<string, unknown>;
const promises = require('node:fs/promises') as Record<string, unknown>;
const dieAfter = Number(process.env.DIE_AFTER ?? '0');
const dieBy = (process.env.DIE_BY ?? 'SIGKILL') as NodeJS.Signals;
const CHANGING = [
  'mkdir',
  'writeFile',
  'link',
  'rename',
  'rm',
  'copyFile',
  'symlink',
  'unlink',
  'appendFile',
  'truncate',
];
const keepIn = process.env.KEEP_IN;
const keepOf = process.env.KEEP_OF ?? '';
const keepAt = process.env.KEEP_AT?.split(',').map(Number);
const copy = sync.cpSync as (from: string, to: string, options: object) => void;
let steps = 0;
let isKeeping = false;

function passed(name: string): void {
  if (isKeeping) return;
  steps += 1;
  if (keepIn && (keepAt?.includes(steps) ?? true)) keep(`${keepIn}/${steps}`);
  if (steps === dieAfter) process.kill(process.pid, dieBy);
  if (dieAfter === 0 && process.env.DIE_LOUD) process.stderr.write(`step ${steps}: ${name}\n`);
}

/** Copies by the functions that are counted, which is not counted. */
function keep(to: string): void {
  isKeeping = true;
  try {
    copy(keepOf, to, { recursive: true, preserveTimestamps: true });
  } finally {
    isKeeping = false;
  }
}

type Any = (...given: unknown[]) => unknown;

function watch(owner: Record<string, unknown>, name: string): void {
  const real = owner[name] as Any;
  owner[name] = async (...given: unknown[]) => {
    const answer = await real.apply(owner, given);
    passed(name);
    return answer;
  };
}

for (const name of CHANGING) watch(promises, name);
const open = promises.open as Any;
promises.open = async (...given: unknown[]) => {
  const handle = (await open(...given)) as Record<string, unknown>;
  if (given[1] !== undefined && given[1] !== 'r') {
    passed('open');
    for (const name of ['writeFile', 'write', 'sync', 'close']) {
      const real = handle[name] as Any;
      handle[name] = async (...more: unknown[]) => {
        const answer = await real.apply(handle, more);
        passed(`handle.${name}`);
        return answer;
      };
    }
  }
  return handle;
};
for (const name of CHANGING.map((each) => `${each}Sync`)) {
  const real = sync[name] as Any;
  sync[name] = (...given: unknown[]) => {
    const answer = real.apply(sync, given);
    passed(name);
    return answer;
  };
}
syncBuiltinESMExports();
process.on('exit', () => {
  if (dieAfter === 0) process.stderr.write(`steps ${steps}\n`);
});
