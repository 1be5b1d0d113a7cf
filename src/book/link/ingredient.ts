import type Fraction from 'fraction.js';
import { type Allergen, allergenText, parseAllergen } from '../../engine/food/allergen.ts';
import type { Ingredient } from '../../engine/food/ingredient.ts';
import { parseOrigin } from '../../engine/food/origin.ts';
import { parseKeeps } from '../../engine/kitchen/parse-keeps.ts';
import { parsePart } from '../../engine/kitchen/parse-part.ts';
import { type Conversion, parseConversion, slashReadings } from '../../engine/measure/conversions.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { IngredientText } from '../../schema/ingredient.ts';
import { idInWords } from '../findings/words.ts';
import type { Reading } from './grammar/reading.ts';
import { preparationWords } from './recipe/line-key.ts';

/** A bought food. Whether the pack it insists on exists is known only with the price lists. */
export function linkIngredient(reading: Reading, id: string, text: IngredientText): Ingredient {
  const yieldLeft =
    text.yield === undefined ? undefined : reading.understand(['yield'], text.yield, parsePart);
  const keepsDays =
    text.keeps === undefined ? undefined : reading.understand(['keeps'], text.keeps, parseKeeps);
  const buy = text.buy === undefined ? undefined : reading.understand(['buy'], text.buy, parsePinned);
  return {
    id,
    name: text.name ?? idInWords(id),
    from: text.from?.flatMap((word, index) => each(reading.understand(['from', index], word, parseOrigin))),
    contains: linkAllergens(reading, 'contains', text.contains),
    mayContain: linkAllergens(reading, 'may contain', text['may contain']) ?? [],
    ...(text['may contain'] === undefined ? {} : { warningsSaid: true as const }),
    conversions: (text.conversions ?? []).flatMap((words, index) =>
      each(linkConversion(reading, index, words)),
    ),
    yield: yieldLeft,
    yields: linkYields(reading, text.yields ?? {}),
    keepsDays,
    storage: text.storage,
    soldAs: text['sold as'],
    parts: text.parts,
    pinned: buy,
    source: text.source,
  };
}

function linkConversion(reading: Reading, index: number, words: string): Conversion | undefined {
  const conversion = reading.understand(['conversions', index], words, parseConversion);
  for (const { written, taken, amount, other } of conversion ? slashReadings(words) : []) {
    const what = `“${written}” is read as ${taken}`;
    const wayOut = `write ${amount} if that is right, or ${other} if you meant that`;
    reading.say('conversion-slash', ['conversions', index], what, wayOut);
  }
  return conversion;
}

function linkAllergens(
  reading: Reading,
  field: 'contains' | 'may contain',
  words: readonly string[] | undefined,
): Allergen[] | undefined {
  if (words === undefined) return undefined;
  if (words.length === 1 && words[0]?.toLowerCase() === 'none') return [];
  const found = new Map<string, Allergen>();
  for (const [index, word] of words.entries()) {
    const allergen = reading.understand([field, index], word, parseNamedAllergen);
    if (allergen) found.set(allergenText(allergen), allergen);
  }
  return [...found.values()];
}

/** `none` beside an allergen would leave open which of the two is meant. */
function parseNamedAllergen(word: string): Parsed<Allergen> {
  return word.toLowerCase() === 'none'
    ? notParsed('“none” is listed with an allergen', 'write none by itself, or the allergens without it')
    : parseAllergen(word);
}

function linkYields(
  reading: Reading,
  texts: Readonly<Record<string, string>>,
): ReadonlyMap<string, Fraction> {
  const yields = new Map<string, Fraction>();
  for (const [preparation, text] of Object.entries(texts)) {
    const left = reading.understand(['yields', preparation], text, parsePart);
    if (left) yields.set(preparationWords(preparation), left);
  }
  return yields;
}

function parsePinned(text: string): Parsed<{ supplier: string; pack: string }> {
  const [, supplier, pack] = /^([a-z0-9-]+) +(\S.*)$/.exec(text.trim()) ?? [];
  return supplier === undefined || pack === undefined
    ? notParsed(
        `“${text.slice(0, 60)}” does not name a supplier and a pack`,
        'write both as on the price list, such as green-quay 50 lb',
      )
    : parsed({ supplier, pack });
}

function each<T>(value: T | undefined): T[] {
  return value === undefined ? [] : [value];
}
