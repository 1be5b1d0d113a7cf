import type { Parsed } from '../../../engine/parsed.ts';
import type { Path } from '../../files/place-of.ts';
import { CATALOGUE, type FindingCode } from '../../findings/catalogue.ts';
import { finding, type Place } from '../../findings/finding.ts';
import { type ItemKey, type ItemKind, kindWord } from '../../item.ts';
import { hold, type Ledger, placeAt, restsOn, type Spot, suggestion } from '../../ledger.ts';

/** One item while it is turned into engine values: paths count from the item, problems go to the ledger. */
export interface Reading {
  readonly item: ItemKey;
  readonly ledger: Ledger;
  /** False once an error was found in the item, or something it rests on is held back. */
  readonly sound: boolean;
  placeOf(path: Path, part?: 'key' | 'value'): Place;
  /** Whether reading the file has already told the author about this path. */
  isReported(path: Path): boolean;
  /** A finding at a path of the item. */
  say(code: FindingCode, path: Path, what: string, wayOut: string, part?: 'key' | 'value'): void;
  /** The value of a text by its grammar; undefined, with a finding, where the grammar refuses it. */
  understand<T>(
    path: Path,
    text: string,
    grammar: (text: string) => Parsed<T>,
    part?: 'key' | 'value',
  ): T | undefined;
  /** Holds this item back for an error that the author has been told already. */
  spoil(why: string): void;
  /** Holds this item back because one it rests on is, without a finding: the other has its own. */
  restOn(item: ItemKey): void;
}

/**
 * Reads one item. Where the work finds an error, or rests on something held back, the item is held back with the
 * reason and the answer is undefined.
 */
export function readItem<T>(
  ledger: Ledger,
  item: ItemKey,
  spot: Spot,
  work: (reading: Reading) => T | undefined,
): T | undefined {
  const known = ledger.spots.get(item) ?? [];
  ledger.spots.set(item, [spot, ...known]);
  const reading = startReading(ledger, item, spot);
  const value = work(reading);
  if (reading.sound) return value;
  hold(ledger, item, reading.reason());
  return undefined;
}

/**
 * The item of a kind that a text names. An unknown id is a finding with the nearest known one; an item that is
 * held back holds the reader back without a second finding.
 */
export function lookUp<T>(
  reading: Reading,
  kind: ItemKind,
  id: string,
  known: ReadonlyMap<string, T>,
  path: Path,
  part: 'key' | 'value' = 'value',
): T | undefined {
  const found = known.get(id);
  if (found !== undefined) return found;
  const { ledger } = reading;
  if (ledger.held.has(`${kind}/${id}`) || ledger.unreadable.has(kind)) reading.restOn(`${kind}/${id}`);
  else {
    const near = suggestion(ledger, id, known.keys());
    reading.say(
      'unknown-id',
      path,
      `no ${kindWord(kind)} is called “${id}”`,
      near ?? wayToKnow(kind, known),
      part,
    );
  }
  return undefined;
}

function wayToKnow(kind: ItemKind, known: ReadonlyMap<string, unknown>): string {
  const few = [...known.keys()].slice(0, 12);
  if (few.length === 0) return `there is no ${kindWord(kind)} yet; add one, or leave this out`;
  return known.size <= 12
    ? `write one of ${few.join(', ')}`
    : `check the spelling, or add this ${kindWord(kind)}`;
}

function startReading(ledger: Ledger, item: ItemKey, spot: Spot): Reading & { reason(): string } {
  let reason: string | undefined;
  const say: Reading['say'] = (code, path, what, wayOut, part) => {
    const place = placeAt(spot, path, part);
    ledger.findings.push(finding(code, place, what, wayOut));
    if (CATALOGUE[code].severity === 'error') reason ??= `${what} (${place.file}:${place.line})`;
  };
  return {
    item,
    ledger,
    get sound() {
      return reason === undefined;
    },
    placeOf: (path, part) => placeAt(spot, path, part),
    isReported: (path) => spot.source.isReported([...spot.base, ...path]),
    say,
    understand(path, text, grammar, part) {
      const read = grammar(text);
      if (read.ok) return read.value;
      say('not-understood', path, read.what, read.wayOut, part);
      return undefined;
    },
    spoil(why) {
      reason ??= why;
    },
    restOn(other) {
      reason ??= restsOn(ledger, other);
    },
    reason: () => reason ?? '',
  };
}
