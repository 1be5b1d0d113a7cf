import type { Path, Source } from './files/place-of.ts';
import { writtenPath } from './files/written-path.ts';
import { readYaml, type YamlReader } from './files/yaml-source.ts';
import type { Finding, Place } from './findings/finding.ts';
import { nearest } from './findings/nearest.ts';
import { type ItemKey, type ItemKind, itemWords } from './item.ts';

/** What accumulates while a content folder is read: what was found, what is held back, and where each item stands. */
export interface Ledger {
  readonly findings: Finding[];
  /** Item → reason, as part of a sentence. */
  readonly held: Map<ItemKey, string>;
  /** The kinds of which some file could not be read at all, so that an unknown id may be in it. */
  readonly unreadable: Set<ItemKind>;
  readonly spots: Map<ItemKey, readonly Spot[]>;
  /** Reads YAML: again each time, or as it came out for the same text before. */
  readonly yaml: YamlReader;
}

/** Where an item's data stand: a file, and the way to them in it. */
export interface Spot {
  readonly source: Pick<Source, 'file' | 'data' | 'placeOf' | 'isReported'>;
  readonly base: Path;
}

/** An empty ledger. */
export function openLedger(yaml: YamlReader = readYaml): Ledger {
  return { findings: [], held: new Map(), unreadable: new Set(), spots: new Map(), yaml };
}

/** Enters into a ledger what a part of the reading has noted in its own. */
export function enter(ledger: Ledger, part: Ledger): void {
  ledger.findings.push(...part.findings);
  for (const [item, reason] of part.held) ledger.held.set(item, reason);
  for (const kind of part.unreadable) ledger.unreadable.add(kind);
  for (const [item, spots] of part.spots) ledger.spots.set(item, spots);
}

/** Where a key or value (default) of an item stands; undefined where no file tells of the item. */
export function placeIn(
  ledger: Ledger,
  item: ItemKey,
  path: Path = [],
  part: 'key' | 'value' = 'value',
): Place | undefined {
  const spots = ledger.spots.get(item);
  const spot = spots?.find((each) => holds(each, path)) ?? spots?.[0];
  return spot && placeAt(spot, path, part);
}

/** Where a key or value of a spot stands. */
export function placeAt({ source, base }: Spot, path: Path, part: 'key' | 'value' = 'value'): Place {
  return source.placeOf(writtenPath(source.data, [...base, ...path]), part);
}

/** Holds an item back. The first reason stays; what rests on the item is held back by whoever links it. */
export function hold(ledger: Ledger, item: ItemKey, reason: string): void {
  if (!ledger.held.has(item)) ledger.held.set(item, reason);
}

/** The reason for holding an item back that rests on another which is held back: the root's own reason. */
export function restsOn(ledger: Ledger, item: ItemKey): string {
  const reason = ledger.held.get(item) ?? 'a file can’t be read';
  const root = reason.startsWith(NEEDS) ? reason : `${NEEDS}${itemWords(item)}: ${reason}`;
  return root;
}

const NEEDS = 'it needs ';

/** How many unknown words are compared with all known ones; each comparison costs, and a broken book has thousands. */
const MOST_SUGGESTIONS = 500;
const suggestionsMade = new WeakMap<Ledger, number>();

/** The known id that an unknown one most likely meant, as a way out: `did you mean herb-dressing?`. */
export function suggestion(ledger: Ledger, word: string, known: Iterable<string>): string | undefined {
  const made = suggestionsMade.get(ledger) ?? 0;
  if (made >= MOST_SUGGESTIONS || word.length > 80) return undefined;
  suggestionsMade.set(ledger, made + 1);
  const near = nearest(word, [...known]);
  return near === undefined ? undefined : `did you mean ${near}?`;
}

function holds({ source, base }: Spot, path: Path): boolean {
  let at: unknown = source.data;
  for (const step of [...base, ...path.slice(0, 1)]) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return false;
    at = (at as Record<string | number, unknown>)[step];
  }
  return true;
}
