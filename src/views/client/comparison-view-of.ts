import { countsWords } from '../../engine/quote/counted-words.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { perGuestCounts, quote, quoteSums } from '../../engine/quote/quote.ts';
import { choiceAtCount, comparisonCounts } from '../../engine/quote/scaled-choice.ts';
import { counted } from '../../engine/text/counted.ts';
import type { Offer } from '../../schema/offer.ts';
import { guestsText, shown } from '../quote-view-of.ts';
import { quoteRows } from './proposal-choice-rows.ts';
import type { ComparisonView } from './proposal-view.ts';

/**
 * Every package at five guest counts around the proposal's: total and total per guest, everything included; and line
 * by line at the proposal's own count.
 */
export function comparisonView(offer: Pick<Offer, 'terms' | 'samples' | 'proposed'>): ComparisonView {
  const { terms, proposed } = offer;
  const guests = atTable(proposed.guests);
  const counts = comparisonCounts(guests);
  const own = counts.indexOf(guests);
  const priced = terms.packages.map((chosen) => {
    const base = offer.samples.find(({ choice }) => choice.package === chosen.id)?.choice ?? proposed;
    const choices = counts.map((count) => choiceAtCount(chosen, base, count));
    return {
      name: chosen.name,
      sums: choices.map((choice) => quoteSums(terms, choice)),
      own: choices.slice(own, own + 1).map((choice) => quote(terms, choice)),
    };
  });
  const { children, vendors } = proposed.guests;
  const fixed = [
    children > 0 ? `${children} of them ${children === 1 ? 'a child' : 'children'}` : '',
    vendors > 0 ? `${counted(vendors, 'vendor meal')} besides` : '',
  ].filter((text) => text !== '');
  return {
    counts: counts.map((count) => counted(count, 'guest')),
    rows: priced.map(({ name, sums }) => ({
      package: name,
      totals: sums.map((each) => shown(each.total, terms)),
      perGuest: sums.map((each) => shown(each.perGuest, terms)),
    })),
    own,
    lines: {
      caption: guestsText(proposed),
      rows: quoteRows(
        terms,
        priced.flatMap((each) => each.own),
      ),
    },
    note: `Everything included: menu, add-ons in the quote, staff, delivery, service charge and tax, “each” for each of ${countsWords(perGuestCounts(terms))}${fixed.length ? `; ${fixed.join(', ')}` : ''}.`,
  };
}
