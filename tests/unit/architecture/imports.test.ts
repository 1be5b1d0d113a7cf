import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const source = fileURLToPath(new URL('../../../src', import.meta.url));

/**
 * Which folders each may import from, besides itself, in the order in which they stand on each other: each only on those
 * above it. Packages are told apart below.
 */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  files: [],
  engine: [],
  words: ['engine'],
  solver: ['engine'],
  schema: ['engine'],
  book: ['engine', 'schema'],
  offers: ['words', 'files', 'engine', 'schema', 'book'],
  exports: ['words', 'engine', 'schema', 'book', 'offers'],
  check: ['engine', 'schema', 'book', 'offers', 'exports'],
  views: ['words', 'files', 'engine', 'solver', 'schema', 'book', 'offers', 'check', 'exports'],
  styles: [],
  client: ['words', 'engine', 'schema', 'offers', 'exports', 'views'],
  components: ['words', 'styles', 'views', 'exports', 'client'],
  layouts: ['views', 'components', 'styles'],
  pages: ['views', 'exports', 'components', 'layouts', 'styles'],
  print: ['files'],
  build: ['words', 'files', 'engine', 'book', 'offers', 'check', 'views', 'print'],
  serve: ['words', 'engine', 'schema', 'book', 'offers', 'exports', 'check'],
  mail: ['words', 'engine', 'book', 'offers', 'exports'],
  commands: [
    'words',
    'files',
    'engine',
    'schema',
    'book',
    'offers',
    'check',
    'exports',
    'views',
    'print',
    'build',
    'serve',
    'mail',
  ],
};

interface Import {
  readonly file: string;
  /** Loaded only when it is needed: `import()`. */
  readonly lazy: boolean;
  readonly from: string;
}

function importsOf(): Import[] {
  const files = readdirSync(source, {
    recursive: true,
    encoding: 'utf8',
  }).filter((file) => /\.(ts|astro)$/.test(file));
  return files.flatMap((file) => {
    const text = readFileSync(join(source, file), 'utf8');
    const found = text.matchAll(
      /^\s*(?:import|export)\b[^'"`;]*?from\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)|^import\s*['"]([^'"]+)['"]/gm,
    );
    return [...found].map((match) => ({
      file: file.replaceAll('\\', '/'),
      lazy: match[2] !== undefined,
      from: (match[1] ?? match[2] ?? match[3]) as string,
    }));
  });
}

const imports = importsOf();

function target({ file, from }: Import): string | undefined {
  return from.startsWith('.') ? normalize(join(dirname(file), from)).replaceAll('\\', '/') : undefined;
}

describe('imports run one way', () => {
  it('finds the imports of the engine at all', () => {
    expect(imports.filter(({ file }) => file.startsWith('engine/')).length).toBeGreaterThan(100);
  });

  it('lets no folder import from one that it does not stand on', () => {
    const wrong = imports.flatMap((each) => {
      const to = target(each);
      const folder = each.file.split('/')[0] ?? '';
      const allowed = MAY_IMPORT[folder];
      if (to === undefined || allowed === undefined) return [];
      const other = to.split('/')[0] ?? '';
      const fine = other === folder || allowed.includes(other) || other.includes('.');
      return fine ? [] : [`${each.file} imports ${to}`];
    });
    expect(wrong).toEqual([]);
  });

  it('names every folder, and has each stand on folders above it alone, so that no two stand on each other', () => {
    const folders = Object.keys(MAY_IMPORT);
    const wrong = folders.flatMap((folder, at) =>
      (MAY_IMPORT[folder] ?? []).filter((below) => folders.indexOf(below) >= at || !folders.includes(below)),
    );
    expect(wrong).toEqual([]);
    const unnamed = readdirSync(source, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && entry.name !== 'store-room' && !folders.includes(entry.name))
      .map(({ name }) => name);
    expect(unnamed).toEqual([]);
  });

  it('keeps the engine to decimal.js, fraction.js and itself', () => {
    const packages = new Set(
      imports
        .filter(({ file, from }) => file.startsWith('engine/') && !from.startsWith('.'))
        .map(({ from }) => from),
    );
    expect([...packages].sort()).toEqual(['decimal.js', 'fraction.js']);
  });

  it('keeps fraction.js out of money and quote, which the browser loads', () => {
    const heavy = imports.filter(
      ({ file, from }) => /^engine\/(money|quote)\//.test(file) && from === 'fraction.js',
    );
    expect(heavy).toEqual([]);
  });

  it('lets only pages, components, layouts and the build know Astro', () => {
    const knowing = imports.filter(
      ({ file, from }) =>
        /^astro(:|\/|$)/.test(from) &&
        !/^(pages|components|layouts|build)\/|^(content\.config|middleware|env\.d)\.ts$/.test(file),
    );
    expect(knowing).toEqual([]);
  });

  it('has no ring of files', () => {
    const edges = imports.flatMap((each) => {
      const to = target(each);
      return to && !each.lazy ? [[each.file, to] as const] : [];
    });
    expect(ringsOf(edges)).toEqual([]);
  });

  it('has no ring of rooms: of the folders inside a folder, no two stand on each other', () => {
    const edges = imports.flatMap((each) => {
      const to = target(each);
      return to ? roomsBetween(dirname(each.file).split('/'), dirname(to).split('/')) : [];
    });
    expect(edges.length).toBeGreaterThan(100);
    expect(ringsOf(edges)).toEqual([]);
  });
});

/** The two folders with the same parent that an import from one file to another leads between, if there are two. */
function roomsBetween(from: readonly string[], to: readonly string[]): [string, string][] {
  const fork = from.findIndex((name, at) => name !== to[at]);
  const parts = [from, to].map((path) => path.slice(0, fork + 1).join('/'));
  return fork === -1 || to[fork] === undefined ? [] : [[parts[0] as string, parts[1] as string]];
}

/** `a → b → a` for each ring that a walk along the edges comes upon. */
function ringsOf(edges: readonly (readonly [string, string])[]): string[] {
  const next = Map.groupBy(edges, ([from]) => from);
  const rings = new Set<string>();
  const done = new Set<string>();
  const visit = (at: string, trail: string[]): void => {
    if (trail.includes(at)) rings.add([...trail.slice(trail.indexOf(at)), at].join(' → '));
    if (done.has(at) || trail.includes(at)) return;
    for (const [, to] of next.get(at) ?? []) visit(to, [...trail, at]);
    done.add(at);
  };
  for (const at of next.keys()) visit(at, []);
  return [...rings];
}
