import { atTable } from '../../engine/quote/counts.ts';
import { perGuestCounts, quote, quoteSums } from '../../engine/quote/quote.ts';
import { choiceAtCount, comparisonCounts } from '../../engine/quote/scaled-choice.ts';
import { groupsText } from '../../exports/words/counted-text.ts';
import type { Offer } from '../../schema/offer.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
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
  const say = wordsIn(terms.locale);
  const script = scriptWordsIn(terms.locale);
  const notes = [
    say('page.totals.note', { counted: groupsText(script, perGuestCounts(terms)) }),
    children > 0 ? say('page.totals.children', { n: children }) : '',
    vendors > 0 ? say('page.totals.vendors', { n: vendors }) : '',
  ];
  return {
    counts: counts.map((count) => script('guests', { n: count })),
    rows: priced.map(({ name, sums }) => ({
      package: name,
      totals: sums.map((each) => shown(each.total, terms)),
      perGuest: sums.map((each) => say('page.totals.each', { sum: shown(each.perGuest, terms) })),
    })),
    own,
    lines: {
      caption: guestsText(script, proposed),
      rows: quoteRows(
        script,
        terms,
        priced.flatMap((each) => each.own),
      ),
    },
    note: notes.filter((text) => text !== '').join(' '),
  };
}
