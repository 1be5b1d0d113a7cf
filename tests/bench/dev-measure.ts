import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { projectDir } from '../../src/build/project-dir.ts';
import { astroScript } from './control-site.ts';
import { LARGE_TODAY } from './large-kitchen.ts';
import { atMost, type Measure } from './measure.ts';
import { median } from './timed.ts';

/** From saving a proposal to its page showing it in development, against a bare Astro page of the same size. */
export async function devMeasure(
  content: string,
  proposal: string,
  link: string,
  rounds: number,
): Promise<Measure> {
  const file = join(content, 'proposals', `${proposal}.md`);
  const text = await readFile(file, 'utf8');
  const path = `/proposals/${link}/`;
  const ours = await served(
    [join(projectDir, 'src/commands/main.ts'), 'dev', '--content', content, '--today', LARGE_TODAY],
    projectDir,
    path,
  );
  const html = await (await fetch(ours.url)).text();
  const bareDir = join(projectDir, '.salver', 'bench', 'bare-dev');
  const page = join(bareDir, 'src', 'pages', 'index.astro');
  await rm(bareDir, { recursive: true, force: true });
  await mkdir(join(bareDir, 'src', 'pages'), { recursive: true });
  await writeFile(join(bareDir, 'astro.config.mjs'), 'export default { devToolbar: { enabled: false } };\n');
  const bareText = (mark: string) =>
    `---\nconst html = ${JSON.stringify(`${html}${mark}`)};\n---\n<Fragment set:html={html} />\n`;
  await writeFile(page, bareText(''));
  const bare = await served([astroScript(), 'dev', '--root', bareDir], bareDir, '/');
  const times = { ours: [] as number[], bare: [] as number[] };
  try {
    for (let round = 0; round <= rounds; round += 1) {
      const mark = `mark${round}x`;
      const bareTook = await untilShown(page, bareText(mark), bare.url, mark);
      const took = await untilShown(
        file,
        text.replace('With warm wishes', `${mark}, with warm wishes`),
        ours.url,
        mark,
      );
      if (round === 0) continue;
      times.ours.push(took);
      times.bare.push(bareTook);
    }
  } finally {
    await writeFile(file, text);
    ours.stop();
    bare.stop();
  }
  const [middle, control] = [median(times.ours), median(times.bare)];
  return atMost(
    'from an edit to the page in development, to bare Astro',
    middle / control,
    2,
    `${middle.toFixed(0)} ms to ${control.toFixed(0)} ms`,
  );
}

async function untilShown(file: string, text: string, url: string, mark: string): Promise<number> {
  const began = performance.now();
  await writeFile(file, text);
  for (;;) {
    if ((await (await fetch(url)).text()).includes(mark)) return performance.now() - began;
    if (performance.now() - began > 30_000) throw new Error(`${url} never showed the edit`);
    await new Promise((done) => setTimeout(done, 5));
  }
}

async function served(words: string[], cwd: string, path: string): Promise<{ url: string; stop(): void }> {
  const port = await freePort();
  const child: ChildProcess = spawn(process.execPath, [...words, '--port', String(port)], {
    cwd,
    stdio: 'ignore',
    detached: true,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ASTRO_DEV_BACKGROUND: '0' },
  });
  const stop = () => {
    // Salver's own command starts Astro as a program of its own, which goes with its group.
    if (child.pid) process.kill(-child.pid);
  };
  for (let attempt = 0; attempt < 600; attempt += 1) {
    for (const host of ['localhost', '127.0.0.1', '[::1]']) {
      const url = `http://${host}:${port}${path}`;
      const answer = await fetch(url).catch(() => undefined);
      if (answer?.ok) return { url, stop };
    }
    await new Promise((done) => setTimeout(done, 100));
  }
  stop();
  throw new Error(`nothing answered at port ${port}`);
}

function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const server = createServer();
    server.on('error', fail).listen(0, () => {
      const address = server.address();
      server.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
