import Fraction from 'fraction.js';
import { SERVICE_STYLES, type ServiceStyle } from '../../engine/course/service-style.ts';
import type { Rental } from '../../engine/kitchen/kitchen.ts';
import { parseShare } from '../../engine/measure/parse-share.ts';
import { parsePerGuest } from '../../engine/measure/per-guest.ts';
import { parseCounts } from '../../engine/quote/counts.ts';
import type { KitchenText } from '../../schema/kitchen.ts';
import { idInWords } from '../findings/words.ts';
import { suggestion } from '../ledger.ts';
import { moneyIn } from './plain-grammars.ts';
import type { Reading } from './reading.ts';

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
  const styles = (text.for ?? []).flatMap((word, index) => linkStyle(reading, word, index));
  const cost =
    text.cost === undefined ? undefined : reading.understand(['cost'], text.cost, moneyIn(currency));
  const counts =
    text.counts === undefined ? undefined : reading.understand(['counts'], text.counts, parseCounts);
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
  };
}

function linkStyle(reading: Reading, word: string, index: number): ServiceStyle[] {
  const known = SERVICE_STYLES.find((each) => each === word.toLowerCase());
  if (known !== undefined) return [known];
  const wayOut =
    suggestion(reading.ledger, word, SERVICE_STYLES) ?? `choose from ${SERVICE_STYLES.join(', ')}`;
  reading.say('unknown-word', ['for', index], `“${word}” is not a service style`, wayOut);
  return [];
}
