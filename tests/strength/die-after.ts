import { createRequire, syncBuiltinESMExports } from 'node:module';

// Loaded before Salver: ends the process, as a power cut would, after so many steps on the file system that change
// something; by the signal in `DIE_BY`, if that is said. `DIE_AFTER=0` only counts them and says on standard error how many there were.
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
let steps = 0;

function passed(name: string): void {
  steps += 1;
  if (steps === dieAfter) process.kill(process.pid, dieBy);
  if (dieAfter === 0 && process.env.DIE_LOUD) process.stderr.write(`step ${steps}: ${name}\n`);
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
