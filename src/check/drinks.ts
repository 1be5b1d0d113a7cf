import type { Book } from '../book/book.ts';
import type { Path } from '../book/files/place-of.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { nearest } from '../book/findings/nearest.ts';
import type { ItemKey } from '../book/item.ts';
import type { Dish, Drinks } from '../engine/menu/package.ts';

/** Foods and rentals that drinks name and the kitchen does not have. One that is held back has a finding of its own. */
export function checkDrinks(book: Book): Finding[] {
  const { kitchen, packages } = book;
  const { ice, water } = kitchen.drinks ?? {};
  const foods = Object.entries({ ice, water }).flatMap(([field, id]) =>
    unknownId(book, 'ingredient', id, book.ingredients, 'kitchen/kitchen', ['drinks', field]),
  );
  const menus = [...packages.values()].flatMap(({ id, courses, drinks }) =>
    unknownWare(
      book,
      `package/${id}`,
      courses.flatMap(({ dishes }) => dishes),
      drinks,
    ),
  );
  const addOns = [...kitchen.addOns.values()].flatMap(({ id, dishes, drinks }) =>
    unknownWare(book, `add-on/${id}`, dishes, drinks),
  );
  return [...foods, ...menus, ...addOns];
}

function unknownWare(
  book: Book,
  item: ItemKey,
  dishes: readonly Dish[],
  drinks: Drinks | undefined,
): Finding[] {
  const perDrink = new Map([...book.kitchen.rentals].filter(([, { perDrink }]) => perDrink));
  const named = [
    ...dishes.map(({ recipe, drink }) => ({ at: ['kinds', recipe.id], id: drink?.servedIn })),
    { at: ['water'], id: drinks?.water?.servedIn },
  ];
  return named.flatMap(({ at, id }) =>
    unknownId(book, 'rental', id, perDrink, item, ['drinks', ...at, 'in']),
  );
}

function unknownId(
  book: Book,
  kind: 'ingredient' | 'rental',
  id: string | undefined,
  known: ReadonlyMap<string, unknown>,
  item: ItemKey,
  path: Path,
): Finding[] {
  if (id === undefined || known.has(id) || book.held.has(`${kind}/${id}`)) return [];
  const near = nearest(id, [...known.keys()]);
  const what = kind === 'rental' ? `no rental per drink is called “${id}”` : `no ${kind} is called “${id}”`;
  const wayOut = near
    ? `did you mean ${near}?`
    : kind === 'rental'
      ? `add it under “rentals” with an amount such as “1 each per drink”`
      : 'add it to the ingredients, or leave this out';
  return [findingAt(book, 'unknown-id', item, path, what, wayOut)];
}
