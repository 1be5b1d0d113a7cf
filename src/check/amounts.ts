import type { Book } from '../book/book.ts';
import type { Path } from '../book/files/place-of.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { ItemKey } from '../book/item.ts';
import { beyondStomach } from '../engine/menu/beyond-stomach.ts';
import { plainAmount } from '../engine/plan/figure-text.ts';
import { dishesAt } from './dishes-at.ts';

/** Amounts for one guest, in packages and add-ons, that nobody eats or drinks. */
export function checkAmounts(book: Book): Finding[] {
  const packages = [...book.packages.values()].flatMap((each) =>
    each.courses.flatMap(({ dishes }, course) =>
      dishes.flatMap((dish) => tooMuch(book, `package/${each.id}`, dishesAt(each, course), dish)),
    ),
  );
  const addOns = [...book.kitchen.addOns.values()].flatMap(({ id, dishes }) =>
    dishes.flatMap((dish) => tooMuch(book, `add-on/${id}`, ['dishes'], dish)),
  );
  return [...packages, ...addOns];
}

function tooMuch(
  book: Book,
  item: ItemKey,
  path: Path,
  dish: Parameters<typeof beyondStomach>[0],
): Finding[] {
  const beyond = beyondStomach(dish);
  if (!beyond) return [];
  const { id } = dish.recipe;
  const what = `one guest gets ${plainAmount(beyond.each)} of ${id}, but ${plainAmount(beyond.most)} is already more than anyone takes`;
  const wayOut = 'check the amount, its unit and how many guests it is for';
  return [findingAt(book, 'amount-beyond-sense', item, [...path, id], what, wayOut)];
}
