import { quote } from '../engine/quote/quote.ts';
import { choiceAtCount, comparisonCounts } from '../engine/quote/scaled-choice.ts';
import type { Offer } from '../schema/offer.ts';
import type { ComparisonView } from './proposal-view.ts';
import { shown } from './quote-view-of.ts';

/** Every package at five guest counts around the proposal's: total and total per guest, everything included. */
export function comparisonView(offer: Pick<Offer, 'terms' | 'samples' | 'proposed'>): ComparisonView {
  const { terms, proposed } = offer;
  const atTable = proposed.guests.adults + proposed.guests.children;
  const counts = comparisonCounts(atTable);
  const rows = terms.packages.map((chosen) => {
    const base = offer.samples.find(({ choice }) => choice.package === chosen.id)?.choice ?? proposed;
    const quotes = counts.map((count) => quote(terms, choiceAtCount(chosen, base, count)));
    return {
      package: chosen.name,
      totals: quotes.map((each) => shown(each.total, terms)),
      perGuest: quotes.map((each) => shown(each.perGuest, terms)),
    };
  });
  const { children, vendors } = proposed.guests;
  const fixed = [
    children > 0 ? `${children} of them children` : '',
    vendors > 0 ? `${vendors} vendor meals besides` : '',
  ].filter((text) => text !== '');
  return {
    counts: counts.map((count) => `${count} guests`),
    rows,
    own: counts.indexOf(atTable),
    note: `Everything included: menu, add-ons in the quote, staff, delivery, service charge and tax${fixed.length ? `; ${fixed.join(', ')}` : ''}.`,
  };
}
