import { money } from '../money/money.ts';
import { addOnsOf, type Choice, entryOf } from './choice.ts';
import { countGuests, type Guests } from './counts.ts';
import type { LineWhy } from './line-why.ts';
import { type PricedLine, pricedLine } from './priced-line.ts';
import { type Ratio, ratio, wholeAbove } from './ratio.ts';
import type { AddOnTerms, PackageTerms, Terms } from './terms.ts';

/** The add-ons taken: per guest counted, per hour, per begun group of guests, or once. */
export function addOnLines(terms: Terms, chosen: PackageTerms, choice: Choice): PricedLine[] {
  return addOnsOf(terms, chosen).flatMap((addOn) => {
    const taken = entryOf(choice.addOns, addOn.id) ?? 0;
    if (taken <= 0) return [];
    const unitPrice = money(addOn.price, terms.currency);
    const { quantity, why } = quantityOf(addOn, taken, choice.guests);
    if (quantity.over === 0n) return [];
    const line = { key: `add-on:${addOn.id}`, name: addOn.name, class: addOn.class, unitPrice, why };
    return [pricedLine(line, quantity)];
  });
}

function quantityOf(
  addOn: AddOnTerms,
  taken: number,
  guests: Guests,
): { quantity: Ratio; why: () => LineWhy } {
  const { per, counts } = addOn;
  if (per === 'flat') return { quantity: { over: 1n, under: 1n }, why: () => ({ of: 'flat price' }) };
  if (per === 'hour') {
    // Hours come in quarters, which a JSON number holds exactly.
    const quantity = ratio(BigInt(Math.round(taken * 4)), 4n);
    return { quantity, why: () => ({ of: 'hours' }) };
  }
  const counted = countGuests(guests, counts);
  if (per === 'guest') return { quantity: counted, why: () => ({ of: 'guests', guests, counts }) };
  const size = addOn.guests ?? 1;
  const groups = wholeAbove({ over: counted.over, under: counted.under * BigInt(size) });
  return {
    quantity: { over: groups, under: 1n },
    why: () => ({ of: 'groups', guests, counts, size }),
  };
}
