import { spawn } from 'node:child_process';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { digestOf, digestOfFolder } from '../files/digest.ts';
import { withLock } from './lock.ts';
import { type MirroredBodies, markUsed } from './mirror-bodies.ts';

/** The site compiled by Astro, ready to be asked for pages. */
export interface CompiledApp {
  /** Holds `server/entry.mjs` and `client/`. */
  dir: string;
  /** Of everything the app was made from. */
  digest: string;
}

/** How many compiled apps stay for a return to an earlier state; one used within the hour stays in any case. */
const keptApps = 4;
const hour = 3_600_000;

/**
 * The compiled app for the present sources and bodies: the kept one where it exists, else a new one. It lies in
 * `.salver/app/<digest>` inside the project, since its imports of packages resolve upwards from there.
 * Fails with the compiler's own message.
 */
export async function compileApp(
  projectDir: string,
  bodies: MirroredBodies,
  say: (line: string) => void,
): Promise<CompiledApp> {
  const kept = await keptApp(projectDir, bodies);
  if (await markUsed(kept.dir)) return kept;

  const lock = join(projectDir, '.salver', 'compile.lock');
  const refusal =
    'another build has been compiling the pages for five minutes; try again when it has finished';
  return withLock(lock, { wait: 300_000, refusal }, async () => {
    for (let attempt = 1; attempt <= 3; attempt += 1) {
      const app = await keptApp(projectDir, bodies);
      if (await markUsed(app.dir)) return app;
      say('Compiling the pages …');
      // A source saved while Astro was reading would be kept under the digest of what it was before.
      const stillSame = async () => (await digestOfInputs(projectDir, bodies)) === app.digest;
      if (await compileInto(app, projectDir, bodies, stillSame)) {
        await prune(join(projectDir, '.salver', 'app'), app.digest);
        await prune(join(projectDir, '.salver', 'bodies'), bodies.digest);
        return app;
      }
    }
    throw new Error(
      'the sources kept changing while the pages were compiled; build again when the editing is done',
    );
  });
}

async function keptApp(projectDir: string, bodies: MirroredBodies): Promise<CompiledApp> {
  const digest = await digestOfInputs(projectDir, bodies);
  return { digest, dir: join(projectDir, '.salver', 'app', digest) };
}

/** Compiles aside and puts the app in place whole; false, and nothing kept, when the sources changed meanwhile. */
async function compileInto(
  { dir, digest }: CompiledApp,
  projectDir: string,
  bodies: MirroredBodies,
  stillSame: () => Promise<boolean>,
): Promise<boolean> {
  const scratch = `${dir}.${process.pid}`;
  // A store of its own for every compile: Astro clears a shared one only when its own settings change.
  const cache = join(projectDir, '.salver', 'astro', digest);
  try {
    await mkdir(dirname(dir), { recursive: true });
    await rm(scratch, { recursive: true, force: true });
    await rm(cache, { recursive: true, force: true });
    await runAstro(projectDir, scratch, { SALVER_BODIES: bodies.dir, SALVER_CACHE: cache });
    if (!(await stillSame())) return false;
    await rename(scratch, dir);
    return true;
  } finally {
    await rm(scratch, { recursive: true, force: true });
    await rm(cache, { recursive: true, force: true });
  }
}

/** Digest of all that the compiled app depends on: sources, configuration, exact packages, bodies, Node. */
export async function digestOfInputs(projectDir: string, bodies: MirroredBodies): Promise<string> {
  const files = ['astro.config.mjs', 'tsconfig.json', 'package-lock.json'];
  const texts = await Promise.all(
    files.map((file) => readFile(join(projectDir, file), 'utf8').catch(() => '')),
  );
  return digestOf(
    await digestOfFolder(join(projectDir, 'src')),
    ...texts,
    bodies.digest,
    process.version,
  ).slice(0, 16);
}

async function runAstro(projectDir: string, outDir: string, settings: Record<string, string>): Promise<void> {
  const astro = createRequire(import.meta.url).resolve('astro/package.json');
  const words = [join(dirname(astro), 'bin', 'astro.mjs'), 'build', '--root', projectDir, '--outDir', outDir];
  const child = spawn(process.execPath, words, {
    cwd: projectDir,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...machineSettings(),
      ...settings,
      NODE_ENV: 'production',
      NO_COLOR: '1',
      FORCE_COLOR: '0',
      ASTRO_TELEMETRY_DISABLED: '1',
      ASTRO_DEV_BACKGROUND: '0',
      ASTRO_PREVIEW_BACKGROUND: '0',
    },
  });
  // Whoever stops this process stops its compiler too.
  const stop = () => child.kill();
  process.once('exit', stop);
  let log = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      log += text;
    });
  }
  const code = await new Promise<number | null>((done, fail) =>
    child.on('error', fail).on('close', done),
  ).finally(() => process.off('exit', stop));
  if (code === 0) return;
  const logFile = join(projectDir, '.salver', 'compile.log');
  await writeFile(logFile, log);
  throw new Error(`the pages could not be compiled: ${firstComplaint(log)} (all of it in ${logFile})`);
}

/** What a program needs of its surroundings to run at all; anything more could shape the app past its digest. */
function machineSettings(): NodeJS.ProcessEnv {
  const names = ['PATH', 'HOME', 'TMPDIR', 'TEMP', 'TMP', 'SystemRoot', 'APPDATA', 'LOCALAPPDATA', 'LANG'];
  return Object.fromEntries(names.map((name) => [name, process.env[name]]));
}

/** The line of Astro's log that says what is wrong, without its time stamp. */
function firstComplaint(log: string): string {
  const lines = log
    .split('\n')
    .map((line) => line.replace(/^\d\d:\d\d:\d\d\s*/, '').trim())
    .filter((line) => line !== '');
  const at = lines.findIndex((line) => /\berror\b/i.test(line));
  // The bundler first says that it failed, and only then at what.
  const found = /build failed in/i.test(lines[at] ?? '') ? lines[at + 1] : lines[at];
  return found ?? lines.at(-1) ?? 'no reason given';
}

/** Removes what has not been used for long, but never what another process may be using now. */
async function prune(folder: string, current: string): Promise<void> {
  const entries = await Promise.all(
    (await readdir(folder)).map(async (name) => ({
      name,
      used: (await stat(join(folder, name)).catch(() => undefined))?.mtimeMs ?? 0,
    })),
  );
  const old = entries
    .filter(({ name }) => name !== current && name !== 'dev')
    .sort((a, b) => b.used - a.used)
    .slice(keptApps - 1)
    .filter(({ used }) => used < Date.now() - hour);
  for (const { name } of old) await rm(join(folder, name), { recursive: true, force: true });
}
