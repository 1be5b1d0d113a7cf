import { ONE, over, plus, type Ratio, ratio, ratioFrom, times } from './ratio.ts';

/** So much of a unit, as a content file or a plan writes it. */
export interface Amount {
  readonly size: Ratio;
  readonly unit: string;
}

/** `1 can = 104 oz`: as much of one as of the other. */
export type Equal = readonly [Amount, Amount];

/*
 * Sizes in grams and millilitres. From the definitions: 1 lb = 453.59237 g (NIST Handbook 44, Appendix C), 1 oz a
 * sixteenth of it; 1 gal = 231 in³ and 1 in = 2.54 cm, so 1 gal = 3785.411784 ml; 1 fl oz = 1/128 gal, 1 tbsp half
 * and 1 tsp a sixth of that.
 */
const POUND = ratioFrom('453.59237');
const GALLON = ratioFrom('3785.411784');
const parts = (whole: Ratio, count: bigint) => over(whole, ratio(count, 1n));
const MASS: Record<string, Ratio> = { g: ONE, kg: ratio(1000n, 1n), lb: POUND, oz: parts(POUND, 16n) };
const VOLUME: Record<string, Ratio> = {
  ml: ONE,
  l: ratio(1000n, 1n),
  gal: GALLON,
  qt: parts(GALLON, 4n),
  pt: parts(GALLON, 8n),
  cup: parts(GALLON, 16n),
  'fl oz': parts(GALLON, 128n),
  tbsp: parts(GALLON, 256n),
  tsp: parts(GALLON, 768n),
};

/** True for what is counted and cannot be split. */
export const isCounted = (unit: string) => !(unit in MASS) && !(unit in VOLUME);

const WORDS: Record<string, string> = {
  cups: 'cup',
  loaves: 'loaf',
  leaves: 'leaf',
  halves: 'half',
  '': 'each',
  litre: 'l',
  litres: 'l',
};

function unitFrom(word: string): string {
  if (WORDS[word]) return WORDS[word];
  if (word in MASS || word in VOLUME || word === 'each') return word;
  if (/(ch|sh|x|ss)es$/.test(word)) return word.slice(0, -2);
  return word.replace(/s$/, '');
}

/** Reads `14 lb`, `1 lb 8 oz`, `¼ cup`, `40 slices`. */
export function amountFrom(text: string): Amount {
  const pieces = [...text.matchAll(/([\d./½⅓⅔¼¾⅛⅜⅝⅞]+(?: \d+\/\d+)?)\s*([^\d½⅓⅔¼¾⅛⅜⅝⅞]*)/g)];
  const read = pieces.map(([, number = '', word = '']) => ({
    size: ratioFrom(number),
    unit: unitFrom(word.trim()),
  }));
  const [first, ...more] = read;
  if (!first) throw new Error(`“${text}” is not an amount`);
  return more.reduce(
    (sum, each) => ({ unit: sum.unit, size: plus(sum.size, inUnit(each, sum.unit, []).size) }),
    first,
  );
}

/** Turns an amount into another unit by as few equalities as it takes; throws where none lead there. */
export function inUnit(amount: Amount, unit: string, equals: readonly Equal[]): Amount {
  const seen = new Set([amount.unit]);
  const queue: Amount[] = [amount];
  for (const known of queue) {
    const direct = sameKind(known, unit);
    if (direct) return direct;
    for (const [left, right] of equals) {
      for (const [from, to] of [
        [left, right],
        [right, left],
      ] as const) {
        const met = sameKind(known, from.unit);
        if (!met || seen.has(to.unit)) continue;
        seen.add(to.unit);
        queue.push({ unit: to.unit, size: times(over(met.size, from.size), to.size) });
      }
    }
  }
  throw new Error(`no way from ${amount.unit} to ${unit}`);
}

function sameKind({ size, unit }: Amount, wanted: string): Amount | undefined {
  if (unit === wanted) return { size, unit };
  for (const table of [MASS, VOLUME]) {
    const [own, other] = [table[unit], table[wanted]];
    if (own && other) return { unit: wanted, size: over(times(size, own), other) };
  }
  return undefined;
}
