import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const read = (file: string) => readFileSync(join(root, file), 'utf8');
const { dependencies, devDependencies, scripts } = JSON.parse(read('package.json')) as Record<
  'dependencies' | 'devDependencies' | 'scripts',
  Record<string, string>
>;

/** The rows of the table of libraries: names, licence, what for. */
const rows = read('docs/libraries.md')
  .split('# Libraries')[1]!
  .split('\n## ')[0]!
  .split('\n')
  .filter((line) => line.startsWith('|') && !/^\|(?: library|-)/.test(line))
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
const named = new Map(
  rows.flatMap(([names = '', licence = '', why = '']) =>
    names.split(', ').map((name) => [name, { licence, why }] as const),
  ),
);

/** Everything that could import or run a library. */
const sources = globSync(
  ['src/**/*.{ts,mts,mjs,astro,css}', 'tests/**/*.ts', 'astro.config.mjs', 'tsconfig.json', 'biome.json'],
  { cwd: root },
)
  .filter((file) => !/node_modules|[\\/]\.(?:salver|astro)[\\/]/.test(file))
  .map(read);

/** Whether a source imports a library, or loads a file of it. */
function imports(text: string, name: string): boolean {
  return new RegExp(
    `(?:from |import |import\\(|resolve\\(|require\\(|url\\()['"]?${name}(?:/[^'"]*)?['")]`,
  ).test(text);
}

test('every library is named for developers with its licence and why it is there, and nothing else is', () => {
  const all = Object.keys({ ...dependencies, ...devDependencies });
  expect([...named.keys()].sort()).toEqual(all.sort());
  for (const name of all) {
    const { license } = JSON.parse(read(`node_modules/${name}/package.json`)) as { license: string };
    expect(named.get(name)?.licence, name).toBe(license);
    expect(named.get(name)?.why.length, name).toBeGreaterThan(5);
  }
});

test('no library is there that nothing uses', () => {
  // Run as programs, or read by a program by its name alone.
  const programs: Record<string, string | RegExp> = {
    '@biomejs/biome': /\bbiome\b/,
    '@astrojs/check': /\bastro check\b/,
    '@types/node': /"node"/,
    node: /\bnode\b/,
    typescript: /\btsc\b/,
    vitest: /\bvitest\b/,
  };
  const commands = [...Object.values(scripts), read('.ci/check'), read('tsconfig.json')].join('\n');
  const unused = Object.keys({ ...dependencies, ...devDependencies }).filter((name) => {
    const program = programs[name];
    if (program && new RegExp(program).test(commands)) return false;
    return !sources.some((text) => imports(text, name));
  });
  expect(unused).toEqual([]);
});

test('what runs in a kitchen is no tool for tests, and a tool for tests is nothing that runs there', () => {
  const shipped = globSync('src/**/*.{ts,astro,css}', { cwd: root }).map(read);
  const uses = (name: string) => shipped.some((text) => imports(text, name));
  expect(Object.keys(devDependencies).filter(uses)).toEqual([]);
  const build = ['@astrojs/mdx', '@astrojs/markdown-satteri'];
  expect(Object.keys(dependencies).filter((name) => !uses(name) && !build.includes(name))).toEqual([]);
});

test('every version is fixed', () => {
  for (const version of Object.values({ ...dependencies, ...devDependencies }))
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
});
