import type { Path, Source } from '../../files/place-of.ts';
import { CATALOGUE } from '../../findings/catalogue.ts';
import type { Finding } from '../../findings/finding.ts';

/** The entries of a mapping from ids to data, as a file holds them; none where there is no mapping. */
export function entriesAt(data: unknown, base: Path = []): [string, unknown][] {
  let at = data;
  for (const step of base) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return [];
    at = (at as Record<string | number, unknown>)[step];
  }
  return typeof at === 'object' && at !== null && !Array.isArray(at) ? Object.entries(at) : [];
}

/**
 * Which entry of a mapping each error found while reading the file lies in, by the lines the entries begin on.
 * The errors before the first entry, and of files without entries, come under the empty id.
 */
export function errorsByEntry(
  findings: readonly Finding[],
  source: Source,
  base: Path = [],
): ReadonlyMap<string, Finding> {
  const begins = entriesAt(source.data, base).map(([id]) => ({
    id,
    line: source.placeOf([...base, id], 'key').line,
  }));
  const found = new Map<string, Finding>();
  for (const each of findings) {
    if (CATALOGUE[each.code].severity !== 'error') continue;
    const id = begins.findLast(({ line }) => line <= each.place.line)?.id ?? '';
    if (!found.has(id)) found.set(id, each);
  }
  return found;
}

/**
 * Ids that stand at the beginnings of lines in a text that could not be read. Whatever they say is unknown, so
 * they are held back instead of being taken for missing.
 */
export function idsInUnreadable(text: string): string[] {
  return [...text.matchAll(/^["']?([a-z0-9]+(?:-[a-z0-9]+)*)["']?[ \t]*:/gm)].map((match) => match[1] ?? '');
}
