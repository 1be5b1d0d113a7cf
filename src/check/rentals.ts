import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { countsWords } from '../engine/quote/counted-words.ts';
import { counted } from '../engine/text/counted.ts';

/**
 * Rentals that do not state whom they count, where some proposal promises vendor meals that the kitchen's own `counts`
 * leave out: a vendor's plate is then not packed, and nobody decided so. What is packed per drink follows the drinks, whoever takes them.
 */
export function checkRentals(book: Book): Finding[] {
  const { counts, rentals } = book.kitchen;
  const [fed] = [...book.proposals.values()].filter(({ guests }) => guests.vendors > 0);
  if (!fed || counts.vendors !== undefined) return [];
  return [...rentals.values()]
    .filter((rental) => rental.counts === undefined && !rental.perDrink)
    .map(({ id, name }) => {
      const meals = counted(fed.guests.vendors, 'vendor meal');
      const what = `“${name}” is packed for ${countsWords(counts)}, but ${fed.id} promises ${meals} too`;
      const wayOut =
        'write “counts: adults, children, vendors” if vendors get it, else “counts: adults, children”';
      return findingAt(book, 'vendors-not-counted', `rental/${id}`, [], what, wayOut);
    });
}
