import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** What one run of a program took. */
export interface Timed {
  readonly seconds: number;
  /** The most memory that the process itself held, in megabytes; not that of programs which it started. */
  readonly peakMb: number;
  /** Of the processor, in all threads of the process. */
  readonly cpuSeconds: number;
  readonly out: string;
}

const reporter = fileURLToPath(new URL('report-usage.ts', import.meta.url));

/** Runs a script in a Node of its own and measures it, start-up included. Fails where it does not end well. */
export async function timedNode(words: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Timed> {
  const dir = mkdtempSync(join(tmpdir(), 'salver-bench-'));
  const usageFile = join(dir, 'usage');
  try {
    const began = performance.now();
    const child = spawn(process.execPath, ['--import', reporter, ...words], {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env, BENCH_USAGE_FILE: usageFile },
    });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    const code = await new Promise<number | null>((done, fail) => child.on('error', fail).on('close', done));
    const seconds = (performance.now() - began) / 1000;
    if (code !== 0) throw new Error(`${words.join(' ')} ended with ${code}: ${(err || out).slice(-2000)}`);
    const [kilobytes, microseconds] = JSON.parse(readFileSync(usageFile, 'utf8')) as [number, number];
    return { seconds, peakMb: kilobytes / 1024, cpuSeconds: microseconds / 1e6, out };
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}

/** The middle one of some figures, or the mean of the two in the middle. */
export function median(figures: readonly number[]): number {
  const sorted = figures.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** What a piece of work took in this process. */
export function milliseconds(work: () => unknown): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}

/** A time as the notes beside a ratio write it. */
export function ms(figure: number): string {
  return `${figure.toFixed(2)} ms`;
}
