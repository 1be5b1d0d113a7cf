import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { scaleOf } from '../engine/measure/temperature.ts';
import { dishesOf } from '../engine/menu/dishes-of.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import { timeAway } from '../engine/menu/time-away.ts';
import { timeOut } from '../engine/safety/time-without-control.ts';
import { statementsIn } from '../exports/words/statement-text.ts';

/** Dishes of proposals that would stand neither hot nor cold for longer than the food code allows. */
export function checkTimeOut(book: Book): Finding[] {
  return [...book.proposals.values()].flatMap((proposal) => tooLongIn(book, proposal));
}

/** Each dish once, by the first menu it stands too long in. Of one said to keep for days, its recipe is told. */
function tooLongIn(book: Book, proposal: Proposal): Finding[] {
  const { foodSafety, measures, locale } = book.kitchen;
  const inWords = statementsIn(locale);
  const found = new Map<string, Finding>();
  for (const [index, menu] of proposal.packages.entries()) {
    const away = timeAway(proposal, menu.hours);
    for (const { recipe } of dishesOf(menu)) {
      const stands = timeOut(recipe, away, foodSafety, scaleOf(measures), `“${recipe.id}”`);
      if (!stands?.tooLong || found.has(recipe.id) || recipe.keepsDays !== undefined) continue;
      const at = ['packages', index];
      found.set(
        recipe.id,
        findingAt(
          book,
          'room-too-long',
          `proposal/${proposal.id}`,
          at,
          inWords(stands.what),
          inWords(stands.wayOut),
        ),
      );
    }
  }
  return [...found.values()];
}
