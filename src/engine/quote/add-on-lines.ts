import { displayMoney } from '../money/display-money.ts';
import { money } from '../money/money.ts';
import { addOnsOf, type Choice, entryOf } from './choice.ts';
import { countedWords } from './counted-words.ts';
import { countGuests, type Guests } from './counts.ts';
import { type PricedLine, pricedLine } from './priced-line.ts';
import { type Ratio, ratio, ratioText, wholeAbove } from './ratio.ts';
import type { AddOnTerms, PackageTerms, Terms } from './terms.ts';

/** The add-ons taken: per guest counted, per hour, per begun group of guests, or once. */
export function addOnLines(terms: Terms, chosen: PackageTerms, choice: Choice): PricedLine[] {
  return addOnsOf(terms, chosen).flatMap((addOn) => {
    const taken = entryOf(choice.addOns, addOn.id) ?? 0;
    if (taken <= 0) return [];
    const { quantity, words } = quantityOf(addOn, taken, choice.guests);
    if (quantity.over === 0n) return [];
    const unitPrice = money(addOn.price, terms.currency);
    const why = () => {
      const price = displayMoney(unitPrice, terms.locale);
      return words === '' ? `${price} in all` : `${words} × ${price}`;
    };
    const line = { key: `add-on:${addOn.id}`, label: addOn.name, class: addOn.class, unitPrice, why };
    return [pricedLine(line, quantity)];
  });
}

function quantityOf(addOn: AddOnTerms, taken: number, guests: Guests): { quantity: Ratio; words: string } {
  if (addOn.per === 'flat') return { quantity: { over: 1n, under: 1n }, words: '' };
  if (addOn.per === 'hour') {
    // Hours come in quarters, which a JSON number holds exactly.
    const quantity = ratio(BigInt(Math.round(taken * 4)), 4n);
    return { quantity, words: `${ratioText(quantity)} h` };
  }
  const counted = countGuests(guests, addOn.counts);
  if (addOn.per === 'guest') return { quantity: counted, words: countedWords(guests, addOn.counts) };
  const size = BigInt(addOn.guests ?? 1);
  const groups = wholeAbove({ over: counted.over, under: counted.under * size });
  const words = `${countedWords(guests, addOn.counts)}, 1 for ${size} = ${groups}`;
  return { quantity: { over: groups, under: 1n }, words };
}
