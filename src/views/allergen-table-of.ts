import type { Allergen } from '../engine/food/allergen.ts';
import { type AllergenColumn, columnsFor, stated } from '../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../engine/kitchen/kitchen.ts';
import type { DishTerms, Terms } from '../engine/quote/terms.ts';
import { correctedDish, type DishCorrection } from '../offers/corrections.ts';
import { ALLERGEN_WORDS } from './allergen-words.ts';
import type { AllergenCellView, AllergenTableView } from './proposal-view.ts';

const NOTES = [
  `“${ALLERGEN_WORDS.contains}”: it is an ingredient. “${ALLERGEN_WORDS['may contain']}”: a supplier warns of traces. “${ALLERGEN_WORDS['not known']}”: nobody has said yet. An empty field means that neither is said of the ingredients; since our kitchen is shared, it is no promise that no trace is carried over.`,
];

/** The dishes of all menus and add-ons by allergen, with what has been corrected since the offer was issued. */
export function allergenTable(
  terms: Pick<Terms, 'packages' | 'addOns'>,
  laws: readonly AllergenLaw[],
  corrections: readonly DishCorrection[],
): AllergenTableView {
  const menus = [
    ...terms.packages.map(({ name, courses }) => ({ name, dishes: courses.flatMap((each) => each.dishes) })),
    ...terms.addOns.map(({ name, dishes = [] }) => ({ name, dishes })),
  ]
    .filter(({ dishes }) => dishes.length > 0)
    .map(({ name, dishes }) => ({ name, dishes: dishes.map((dish) => correctedDish(dish, corrections)) }));
  const columns = columnsFor(
    laws,
    menus.flatMap(({ dishes }) => dishes),
  );
  return {
    allergens: columns.map(({ name }) => name),
    menus: menus.map(({ name, dishes }) => ({
      name,
      rows: dishes.map((dish) => {
        const [contained, warned] = [stated(dish.contains), stated(dish.mayContain)];
        return {
          dish: dish.name,
          perGuest: dish.perGuest,
          cells: columns.map((column) => cellOf(dish, contained, warned, column)),
        };
      }),
    })),
    notes: NOTES,
  };
}

function cellOf(
  { unsaid }: DishTerms,
  contained: readonly Allergen[],
  warned: readonly Allergen[],
  { takes, kindNamed, name }: AllergenColumn,
): AllergenCellView {
  const kindsOf = (some: readonly Allergen[]) =>
    kindNamed ? some.flatMap(({ kind }) => (kind === null || kind === name ? [] : [kind])) : [];
  const has = contained.filter(takes);
  if (has.length > 0) return { says: 'contains', kinds: kindsOf(has) };
  const may = warned.filter(takes);
  if (may.length > 0) return { says: 'may contain', kinds: kindsOf(may) };
  return { says: unsaid ? 'not known' : '', kinds: [] };
}
