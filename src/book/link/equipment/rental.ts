import Fraction from 'fraction.js';
import type { Rental } from '../../../engine/kitchen/kitchen.ts';
import { parseGrams } from '../../../engine/kitchen/parse-grams.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import { parsePerGuest } from '../../../engine/measure/per-guest.ts';
import { parseCounts } from '../../../engine/quote/counts.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { idInWords } from '../../findings/words.ts';
import { moneyIn } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkReturn } from './return-facts.ts';
import { linkStyles } from './styles.ts';

/** `per drink` or `per 2 drinks` at the end of an amount, which reads like one per guest. */
const PER_DRINK = / (per (?:\S+ )?)drinks?$/i;

/** Something packed per guest or per drink. */
export function linkRental(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['rentals']>[string],
  currency: string,
): Rental | undefined {
  const perDrink = PER_DRINK.test(text.amount);
  const amount = reading.understand(['amount'], text.amount.replace(PER_DRINK, ' $1guest'), parsePerGuest);
  const spare =
    text.spare === undefined ? new Fraction(0n) : reading.understand(['spare'], text.spare, parseShare);
  const styles = linkStyles(reading, text.for);
  const cost =
    text.cost === undefined ? undefined : reading.understand(['cost'], text.cost, moneyIn(currency));
  const counts =
    text.counts === undefined ? undefined : reading.understand(['counts'], text.counts, parseCounts);
  const grams =
    text.weighs === undefined ? undefined : reading.understand(['weighs'], text.weighs, parseGrams);
  const name = text.name ?? idInWords(id);
  if (!amount || !spare || (text.counts !== undefined && !counts)) return undefined;
  return {
    id,
    name,
    amount,
    ...(perDrink && { perDrink }),
    spare,
    styles,
    ...(counts && { counts }),
    ...(cost !== undefined && { cost }),
    ...(grams && { grams }),
    ...linkReturn(reading, text, currency),
  };
}
