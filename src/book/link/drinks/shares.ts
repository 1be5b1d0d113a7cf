import type Fraction from 'fraction.js';
import { type DrinkShare, drinkShares, type StatedShare } from '../../../engine/drinks/drink-shares.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import { percent } from '../../../engine/plan/figure-text.ts';
import type { Counts } from '../../../engine/quote/counts.ts';
import type { DrinksText } from '../../../schema/drinks.ts';
import type { Path } from '../../files/place-of.ts';
import type { Reading } from '../grammar/reading.ts';
import type { LinkedKind } from './kinds.ts';

/**
 * What each kind is of an adult's drinks and of a child's, the plain water last where there is any; undefined, with a
 * finding, where the shares do not add up or nobody could drink anything without alcohol.
 */
export function linkShares(
  reading: Reading,
  text: DrinksText,
  kinds: readonly LinkedKind[],
  counts: Counts,
): DrinkShare[] | undefined {
  if (!reading.sound) return undefined;
  const stated = kinds.map((kind) => linkShare(reading, kind, text));
  const { water } = text;
  const all = [...stated, ...(water ? [sharesOf(reading, ['drinks', 'water'], water, true, true)] : [])];
  if (kinds.length > 0 && kinds.every(({ drink }) => drink.alcohol) && !water) {
    reading.say(
      'alcohol-free-missing',
      ['drinks', 'kinds'],
      'every drink holds alcohol, or nobody has stated that it does not',
      'add a drink without alcohol, or for example “water: 20 %”',
      'key',
    );
  }
  if (!reading.sound) return undefined;
  const { shares, adults, children, childrenStated } = drinkShares(all.filter((each) => each !== undefined));
  const wrong = (sum: Fraction) => sum.n > 0n && !sum.equals(1n);
  const tell = (who: string, sum: Fraction) =>
    reading.say(
      'drink-shares',
      ['drinks', 'kinds'],
      `the shares of ${who} drinks add up to ${percent(sum)}`,
      'make them add up to 100 %, water included',
      'key',
    );
  if (counts.adults !== undefined && wrong(adults)) tell('the adults’', adults);
  if (counts.children !== undefined && childrenStated && wrong(children)) tell('the children’s', children);
  return reading.sound ? [...shares] : undefined;
}

function linkShare(reading: Reading, { recipe, drink }: LinkedKind, { kinds }: DrinksText) {
  const path = ['drinks', 'kinds', recipe.id];
  const text = kinds[recipe.id] as DrinksText['kinds'][string];
  const takers = text.for ?? 'everybody';
  if (drink.alcohol && (takers === 'children' || text.children !== undefined)) {
    reading.say(
      'alcohol-for-children',
      [...path, takers === 'children' ? 'for' : 'children'],
      `“${recipe.id}” is planned for children, but it holds alcohol or nobody has stated that it does not`,
      'plan it for adults alone, or state under “from” what its ingredients come from',
    );
  }
  return sharesOf(reading, path, text, takers !== 'children', takers !== 'adults' && !drink.alcohol);
}

function sharesOf(
  reading: Reading,
  path: Path,
  text: { readonly share: string; readonly children?: string | undefined },
  forAdults: boolean,
  forChildren: boolean,
): StatedShare | undefined {
  const share = reading.understand([...path, 'share'], text.share, parseShare);
  const children =
    text.children === undefined
      ? undefined
      : reading.understand([...path, 'children'], text.children, parseShare);
  return share && { share, ...(children && { children }), forAdults, forChildren };
}
