import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { projectDir } from '../../src/build/project-dir.ts';
import { filesOf } from '../../src/files/digest.ts';

const CONFIG = `import { defineConfig } from 'astro/config';
export default defineConfig({ compressHTML: false, devToolbar: { enabled: false } });
`;

const PAGE = `---
import { readFileSync } from 'node:fs';
export function getStaticPaths() {
  const pages = JSON.parse(readFileSync(process.env.BENCH_PAGES, 'utf8'));
  return pages.map(({ path, html }) => ({ params: { path }, props: { html } }));
}
const { html } = Astro.props;
---
<Fragment set:html={html} />
`;

/** A bare Astro site whose build puts out HTML that is finished already: what a build cannot do without. */
export interface ControlSite {
  /** The words that build it, for a Node of its own. */
  readonly words: readonly string[];
  readonly env: NodeJS.ProcessEnv;
  readonly dir: string;
}

/** Makes the control from the pages of a finished output. It lies in the project, where its imports resolve. */
export async function controlSite(name: string, out: string): Promise<ControlSite> {
  const dir = join(projectDir, '.salver', 'bench', name);
  await rm(dir, { recursive: true, force: true });
  await mkdir(join(dir, 'src', 'pages'), { recursive: true });
  const pages = [];
  for (const file of await filesOf(out)) {
    if (!file.endsWith('/index.html')) continue;
    pages.push({ path: file.slice(0, -'/index.html'.length), html: await readFile(join(out, file), 'utf8') });
  }
  const pagesFile = join(dir, 'pages.json');
  await writeFile(pagesFile, JSON.stringify(pages));
  await writeFile(join(dir, 'astro.config.mjs'), CONFIG);
  await writeFile(join(dir, 'src', 'pages', '[...path].astro'), PAGE);
  return {
    dir,
    words: [astroScript(), 'build', '--root', dir],
    env: { BENCH_PAGES: pagesFile, NODE_ENV: 'production' },
  };
}

/** Astro's own command, as a script for Node. */
export function astroScript(): string {
  const astro = createRequire(import.meta.url).resolve('astro/package.json');
  return join(dirname(astro), 'bin', 'astro.mjs');
}
