import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { LEFT_OUT } from '../../../src/build/lean-decimal.ts';

const entry = fileURLToPath(new URL('../../../src/client/main.ts', import.meta.url));
const source = dirname(dirname(entry));

/** Every file that the page's script is made of, and the packages it needs; imports of types alone leave no trace. */
function scriptParts(): { files: string[]; packages: string[] } {
  const files = new Set<string>();
  const packages = new Set<string>();
  const queue = [entry];
  for (let file = queue.pop(); file !== undefined; file = queue.pop()) {
    if (files.has(file)) continue;
    files.add(file);
    const found = readFileSync(file, 'utf8').matchAll(/^import (?!type)[^'"]*['"]([^'"]+)['"]/gm);
    for (const [, from = ''] of found) {
      if (from.startsWith('.')) queue.push(join(dirname(file), from));
      else packages.add(from);
    }
  }
  return { files: [...files].map((file) => file.slice(source.length + 1)), packages: [...packages].sort() };
}

describe('the script of a client’s page', () => {
  const { files, packages } = scriptParts();

  it('is made of the engine’s quote and the offers’ own acceptance', () => {
    expect(files).toContain('engine/quote/quote.ts');
    expect(files).toContain('offers/answers/make-acceptance.ts');
  });

  it('needs four small packages, none that reads files or checks forms', () => {
    expect(packages).toEqual([
      '@noble/hashes/sha2.js',
      '@noble/hashes/utils.js',
      'canonicalize',
      'decimal.js',
    ]);
  });

  it('has nothing of the kitchen’s side: no content, no cost, no plan, no purchase', () => {
    const wrong = files.filter((file) =>
      /^(book|build|commands|print|store-room|schema)\/|^engine\/(plan|purchase|food|menu|kitchen)\//.test(
        file,
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('calls nothing that its decimals come without', () => {
    const calls = new RegExp(`(?<!Math)\\??\\.(?:${[...LEFT_OUT].join('|')})\\(`);
    const calling = files.filter((file) => calls.test(readFileSync(join(source, file), 'utf8')));
    expect(calls.test('rate.pow(2)')).toBe(true);
    expect(calling).toEqual([]);
  });
});
