import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { LARGE_TODAY, makeLargeKitchen } from '../bench/large-kitchen.ts';
import { writeSmallOutput } from '../unit/serve/running.ts';

const main = fileURLToPath(new URL('../../src/commands/main.ts', import.meta.url));

/** `serve` in a process of its own, over a large kitchen's offers. */
export interface ServedKitchen {
  readonly content: string;
  readonly port: number;
  readonly privatePort: number;
  /** Megabytes that the process holds now; undefined where the machine does not say. */
  memory(): number | undefined;
  /** All that it said on standard error. */
  complaints(): string;
  /** Asks it to stop; its exit code. */
  stop(): Promise<number | null>;
  /** Ends it in any case, and its files with it. */
  remove(): Promise<void>;
}

/** Starts it with some twenty open offers and with the limits that every kitchen has. */
export async function servedKitchen(): Promise<ServedKitchen> {
  const folder = await mkdtemp(join(tmpdir(), 'salver-served-'));
  const content = join(folder, 'content');
  await makeLargeKitchen(content, { proposals: 100, events: 0, recipes: 40, ingredients: 60, suppliers: 2 });
  const out = join(folder, 'dist');
  writeSmallOutput(out);
  const where = ['--content', content, '--out', out, '--port', '0', '--private-port', '0'];
  const child = spawn(process.execPath, [main, 'serve', ...where, '--today', LARGE_TODAY, '--json']);
  let complained = '';
  child.stderr.on('data', (part) => {
    complained += String(part);
  });
  const [first] = (await Promise.race([
    once(createInterface({ input: child.stdout }), 'line'),
    once(child, 'close').then(() => Promise.reject(new Error(complained))),
  ])) as [string];
  const said = JSON.parse(first) as { public: string; private: string };
  return {
    content,
    port: Number(new URL(said.public).port),
    privatePort: Number(new URL(said.private).port),
    memory() {
      try {
        const [, kilobytes] =
          /^VmRSS:\s+(\d+)/m.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8')) ?? [];
        return Number(kilobytes) / 1024;
      } catch {
        return undefined;
      }
    },
    complaints: () => complained,
    async stop() {
      child.kill('SIGTERM');
      const [code] = (await once(child, 'close')) as [number | null];
      return code;
    },
    async remove() {
      child.kill('SIGKILL');
      await rm(folder, { recursive: true, force: true });
    },
  };
}
