import { spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { type Browser, findBrowser } from './find-browser.ts';

/** What installing needs from outside, so that a test can stand in for the machine. */
export interface Machine {
  find(): Browser | undefined;
  /** Runs a program to its end or for at most the given seconds; true when it succeeded. */
  run(program: string, words: string[], seconds: number): Promise<boolean>;
  /** Whether Debian's packages can be installed without asking anybody. */
  isRootOnDebian(): Promise<boolean>;
  say(line: string): void;
}

/** The sentence for a machine that has no browser and lets nobody fetch one. */
export const noBrowserToBeHad =
  'No Chromium could be brought here: install Chromium or Google Chrome with your system’s own means and run `npm run setup` again, or build without PDFs with `npm run build -- --no-pdf`.';

/**
 * Brings a Chromium where there is none: Playwright's download, else Debian's package. Says each step.
 * Returns undefined when nothing helped.
 */
export async function installBrowser(machine: Machine): Promise<Browser | undefined> {
  const { find, run, isRootOnDebian, say } = machine;
  const present = find();
  if (present) return present;

  say('No Chromium here yet. Trying the one that Playwright offers for download …');
  await run(process.execPath, [playwrightProgram(), 'install', 'chromium'], 300);
  const downloaded = find();
  if (downloaded) return downloaded;

  if (!(await isRootOnDebian())) {
    say('That download did not come through.');
    return undefined;
  }
  say('That download did not come through. Installing Debian’s package chromium …');
  if (await run('apt-get', ['-qq', 'update'], 300)) {
    await run('apt-get', ['-qq', 'install', '--yes', '--no-install-recommends', 'chromium'], 900);
  }
  return find();
}

/** The machine this runs on. Installers write to standard error, so that standard output stays the answer. */
export function thisMachine(say: (line: string) => void): Machine {
  return { find: findBrowser, run: runProgram, isRootOnDebian, say };
}

function runProgram(program: string, words: string[], seconds: number): Promise<boolean> {
  return new Promise((done) => {
    const child = spawn(program, words, {
      stdio: ['ignore', 2, 2],
      timeout: seconds * 1000,
      killSignal: 'SIGKILL',
      env: {
        ...process.env,
        DEBIAN_FRONTEND: 'noninteractive',
        // A host that cannot be reached should cost seconds, not minutes.
        PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: '10000',
      },
    });
    child.on('error', () => done(false));
    child.on('exit', (code) => done(code === 0));
  });
}

async function isRootOnDebian(): Promise<boolean> {
  if (process.getuid?.() !== 0) return false;
  const release = await readFile('/etc/os-release', 'utf8').catch(() => '');
  return /^ID=debian$/m.test(release);
}

function playwrightProgram(): string {
  return join(dirname(createRequire(import.meta.url).resolve('playwright/package.json')), 'cli.js');
}
