import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { addRatios, type Ratio, ratio, ratioText } from './ratio.ts';

/** The groups of people an event feeds. Vendors are paid for by the client, staff by the caterer. */
export const GUEST_GROUPS = ['adults', 'children', 'vendors', 'staff'] as const;

/** One of the groups of people an event feeds. */
export type GuestGroup = (typeof GUEST_GROUPS)[number];

/** How many people of each group: whole numbers from 0 to 100,000. */
export type Guests = Readonly<Record<GuestGroup, number>>;

/**
 * Which groups a price, tier, minimum or dish counts, each with its weight as exact text: `1`, `1/2`, `0.5`.
 * A group that is not named is not counted.
 */
export type Counts = Readonly<Partial<Record<GuestGroup, string>>>;

/** What is counted where nothing is stated: everybody at the table, a child as one. */
export const DEFAULT_COUNTS: Counts = { adults: '1', children: '1' };

const WAY_OUT = 'write for example "adults, children at 1/2, vendors"';
const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
};

/**
 * Reads which guests count: `adults, children at 1/2, vendors`. A weight is above 0 and at most 2, written
 * as a whole number, a fraction or a decimal; none said is 1.
 */
export function parseCounts(text: string): Parsed<Counts> {
  if (text.length > 120) return notParsed('the list of guests is too long', WAY_OUT);
  const counts: Partial<Record<GuestGroup, string>> = {};
  for (const part of text.split(',')) {
    const [word, weightText = '1', ...rest] = part
      .trim()
      .toLowerCase()
      .split(/\s+at\s+/);
    const group = GUEST_GROUPS.find((name) => name === word);
    if (!group || rest.length > 0) {
      return notParsed(`"${part.trim()}" is not adults, children, vendors or staff`, WAY_OUT);
    }
    if (counts[group] !== undefined) return notParsed(`${group} are counted twice`, `name ${group} once`);
    const weight = parseWeight(GLYPHS[weightText] ?? weightText);
    if (!weight) {
      return notParsed(
        `${group} can’t count as "${weightText}"`,
        'use a weight above 0 and up to 2, for example 1/2',
      );
    }
    counts[group] = ratioText(weight);
  }
  return parsed(counts);
}

/** The canonical text of what is counted; `parseCounts` reads it back. */
export function countsText(counts: Counts): string {
  return GUEST_GROUPS.flatMap((group) => {
    const weight = counts[group];
    if (weight === undefined) return [];
    return weight === '1' ? [group] : [`${group} at ${weight}`];
  }).join(', ');
}

/** The exact weight with which a group counts, 0 where it is not counted. Throws where the text is no weight. */
export function weightOf(counts: Counts, group: GuestGroup): Ratio {
  const text = counts[group];
  if (text === undefined) return { over: 0n, under: 1n };
  if (text === '1') return { over: 1n, under: 1n };
  const weight = parseWeight(text);
  if (!weight) throw new RangeError(`${group} can’t count as "${text}"`);
  return weight;
}

/** The exact number of guests counted: each group's people times its weight, summed, never rounded. */
export function countGuests(guests: Guests, counts: Counts): Ratio {
  let total: Ratio = { over: 0n, under: 1n };
  for (const group of GUEST_GROUPS) {
    const weight = weightOf(counts, group);
    if (weight.over === 0n) continue;
    total = addRatios(total, { over: weight.over * BigInt(guests[group]), under: weight.under });
  }
  return total;
}

/** Guests at the table: adults and children, a child as one. Guarantee, floor and capacity count these. */
export function atTable(guests: Pick<Guests, 'adults' | 'children'>): number {
  return guests.adults + guests.children;
}

/** How many people the counted groups have, each as one whatever its weight: who chooses a main, who is seated. */
export function peopleCounted(guests: Guests, counts: Counts): number {
  return GUEST_GROUPS.reduce((sum, group) => sum + (counts[group] === undefined ? 0 : guests[group]), 0);
}

function parseWeight(text: string): Ratio | undefined {
  const match = /^(?:(\d) )?(\d{1,2})(?:\/(\d{1,2})|\.(\d{1,4}))?$/.exec(text);
  if (!match) return undefined;
  const [, whole, over = '0', under, decimals] = match;
  if (whole !== undefined && under === undefined) return undefined;
  const scale = decimals === undefined ? BigInt(under ?? '1') : 10n ** BigInt(decimals.length);
  if (scale === 0n) return undefined;
  const weight = ratio(BigInt(over + (decimals ?? '')) + BigInt(whole ?? '0') * scale, scale);
  return weight.over === 0n || weight.over > 2n * weight.under ? undefined : weight;
}
