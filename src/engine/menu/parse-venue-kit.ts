import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { COUNT_WORDS, leadingCount } from '../text/leading-count.ts';
import type { VenueKit } from './venue-kit.ts';

/** The venue's facts that are understood, as a proposal writes their names. */
export const VENUE_FACTS = ['ovens', 'burners', 'power', 'water', 'cold space', 'cover', 'stairs'] as const;

export type VenueFact = (typeof VENUE_FACTS)[number];

/** What a venue's facts tell, and those of them that cannot be read. */
export interface ReadVenueKit {
  /** Left out where nothing of it is stated or can be read. */
  readonly kit?: VenueKit;
  readonly unclear: readonly { readonly fact: string; readonly what: string; readonly wayOut: string }[];
}

/** Reads a venue's facts; other facts, and words after the number, are for people alone. Never fails. */
export function readVenueKit(venue: ReadonlyMap<string, string>): ReadVenueKit {
  const unclear: { fact: string; what: string; wayOut: string }[] = [];
  const facts = new Map([...venue].map(([fact, text]) => [fact.trim().toLowerCase(), { fact, text }]));
  const read = <T>(name: VenueFact, grammar: (text: string) => Parsed<T>): T | undefined => {
    const found = facts.get(name);
    if (!found) return undefined;
    const value = grammar(found.text);
    if (value.ok) return value.value;
    const written = `${found.fact}: ${found.text.trim().slice(0, 60)}`;
    unclear.push({ fact: found.fact, what: `“${written}” ${value.what}`, wayOut: value.wayOut });
    return undefined;
  };
  const kit: VenueKit = {
    ovens: read('ovens', parsePieces),
    burners: read('burners', parsePieces),
    circuits: read('power', parseCircuits),
    water: read('water', parseYesNo),
    coldSpace: read('cold space', parseYesNo),
    cover: read('cover', parseYesNo),
    stairs: read('stairs', parseStairs),
  };
  return { ...(Object.values(kit).some((each) => each !== undefined) && { kit }), unclear };
}

const NONE = /^(none|no|0)\b/i;

/** Each of these says what is wrong in words that follow the fact. `none`, `2`, `two household ovens`, `2 convection`: how many there are. */
function parsePieces(text: string): Parsed<number> {
  const words = text.trim();
  if (NONE.test(words)) return parsed(0);
  const count = leadingCount(words);
  return count === undefined
    ? notParsed('does not tell how many there are', 'write a number first, such as “2 convection”, or “none”')
    : parsed(count);
}

/** `yes, one cold tap`, `no`, `none`. */
function parseYesNo(text: string): Parsed<boolean> {
  const words = text.trim();
  if (NONE.test(words)) return parsed(false);
  return /^yes\b/i.test(words)
    ? parsed(true)
    : notParsed('is neither a yes nor a no', 'begin with yes or no, such as “yes, one cold tap”');
}

/** `14 steps to the hall`, `yes`, `none, slipway with a gentle slope`: whatever is not none is some. */
function parseStairs(text: string): Parsed<boolean> {
  return parsed(!NONE.test(text.trim()));
}

/** `two 20 A`, `2 × 20 A`, `2 circuits of 20 A`, `16 A`; ` a` is an article and `7 a.m.` a time. */
const CIRCUITS = new RegExp(
  `(?:\\b(?<count>\\d{1,3}|${COUNT_WORDS.join('|')})(?=[\\sx×])\\s*(?:[x×]\\s*|circuits?\\s*(?:of|at|with|,)?\\s*)?)?(?<![\\d.])(?<amperes>\\d{1,4}(?:\\.\\d)?)(?<unit> ?amp(?:ere)?s?| ?a)\\b(?!\\.?m)`,
  'gi',
);

/** `two 20 A circuits beside the door`, `generator, 60 A`, `none`: circuits of one kind or several. */
function parseCircuits(text: string): Parsed<NonNullable<VenueKit['circuits']>> {
  const circuits = [...text.matchAll(CIRCUITS)]
    .filter(({ groups }) => groups?.unit !== ' a')
    .map(({ groups }) => ({
      count: leadingCount(groups?.count ?? '1') ?? 1,
      amperes: Number(groups?.amperes),
    }));
  if (circuits.length === 0 && NONE.test(text.trim())) return parsed([]);
  return circuits.length > 0 && circuits.every(({ count, amperes }) => count > 0 && amperes > 0)
    ? parsed(circuits)
    : notParsed(
        'does not tell the circuits in amperes',
        'write how many and of how much, such as “two 20 A circuits”, or “none”',
      );
}
