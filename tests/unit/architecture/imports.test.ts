import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const source = fileURLToPath(new URL('../../../src', import.meta.url));

/** Which folders each may import from, besides itself; packages are told apart below. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  schema: ['engine'],
  book: ['engine', 'schema', 'offers'],
  offers: ['engine', 'schema', 'book'],
  solver: ['engine'],
  exports: ['engine', 'schema', 'book', 'offers'],
  views: ['engine', 'solver', 'schema', 'book', 'offers', 'exports', 'build'],
  print: ['build'],
  build: ['engine', 'book', 'offers', 'views', 'print'],
  client: ['engine', 'schema', 'offers', 'exports', 'views'],
  components: ['styles', 'views', 'exports', 'client'],
  layouts: ['views', 'build', 'components', 'styles'],
  pages: ['views', 'exports', 'components', 'layouts', 'styles'],
  serve: ['engine', 'schema', 'book', 'offers'],
  mail: ['engine', 'book', 'offers', 'exports'],
  commands: ['engine', 'schema', 'book', 'offers', 'exports', 'views', 'build', 'print', 'serve', 'mail'],
};

/** Where `book` calls `offers`: an offer’s digest and sample totals are checked, and its food compared with today’s. */
const OFFER_CHECK = /^book\/check-(?:offers?|unknown-food)\.ts$/;

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
      const viaCheck = folder === 'book' && other === 'offers' && !OFFER_CHECK.test(each.file);
      return fine && !viaCheck ? [] : [`${each.file} imports ${to}`];
    });
    expect(wrong).toEqual([]);
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

  it('has no ring', () => {
    const edges = new Map<string, string[]>();
    for (const each of imports) {
      const to = target(each);
      if (to && !each.lazy) edges.set(each.file, [...(edges.get(each.file) ?? []), to]);
    }
    const rings: string[] = [];
    const done = new Set<string>();
    const visit = (file: string, trail: string[]): void => {
      if (trail.includes(file)) rings.push([...trail.slice(trail.indexOf(file)), file].join(' → '));
      if (done.has(file) || trail.includes(file)) return;
      for (const next of edges.get(file) ?? []) visit(next, [...trail, file]);
      done.add(file);
    };
    for (const file of edges.keys()) visit(file, []);
    expect(rings).toEqual([]);
  });
});
