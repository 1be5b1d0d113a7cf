import type { Allergen } from '../../engine/food/allergen.ts';
import { type AllergenColumn, columnsFor, stated } from '../../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import type { DishTerms, Terms } from '../../engine/quote/terms.ts';
import { ALLERGEN_WORDS } from '../allergen-words.ts';
import type { AllergenCellView, AllergenGroupView, AllergenTableView } from './proposal-view.ts';

const NOTES = [
  `“${ALLERGEN_WORDS.contains}”: it is an ingredient. “${ALLERGEN_WORDS['may contain']}”: a supplier warns of traces. “${ALLERGEN_WORDS['not known']}”: nobody has said yet. An empty field means that neither is said of the ingredients; since our kitchen is shared, it is no promise that no trace is carried over.`,
];

/** The dishes of all menus and add-ons by allergen; the terms say each dish as it stands. */
export function allergenTable(
  terms: Pick<Terms, 'packages' | 'addOns'>,
  laws: readonly AllergenLaw[],
): AllergenTableView {
  const packages = terms.packages.map(({ name, courses }) => ({
    name,
    dishes: courses.flatMap((each) => each.dishes),
  }));
  const addOns = terms.addOns.map(({ name, dishes = [] }) => ({ name, dishes }));
  const columns = columnsFor(
    laws,
    [...packages, ...addOns].flatMap(({ dishes }) => dishes),
  );
  const rowsOf = ({ name, dishes }: Menu): Group => ({
    name,
    rows: dishes.map((dish) => row(dish, columns)),
  });
  const hasRows = ({ rows }: Group) => rows.length > 0;
  const [menus, extras] = [packages.map(rowsOf), addOns.map(rowsOf)];
  return {
    allergens: columns.map(({ name }) => name),
    menus: [...menus, ...extras].filter(hasRows),
    once: [...eachOnce(menus), ...inOne(extras.filter(hasRows))].filter(hasRows),
    notes: NOTES,
  };
}

interface Menu {
  readonly name: string;
  readonly dishes: readonly DishTerms[];
}

type Group = AllergenGroupView;
type Row = Group['rows'][number];

/**
 * The dishes of several menus by themselves, then what each menu has alone. A dish that is served in other amounts
 * with another menu, or not with each, says with which it comes how.
 */
function eachOnce(menus: readonly Group[]): Group[] {
  const servings = menus.flatMap(({ name, rows }) => rows.map((each) => ({ menu: name, row: each })));
  const alike = Map.groupBy(servings, ({ row: { dish, cells } }) => JSON.stringify([dish, cells]));
  const shared = [...alike.values()].filter((each) => new Set(each.map(({ menu }) => menu)).size > 1);
  const isShared = new Set(shared.flat().map((each) => each.row));
  return [
    {
      name: menus.length === 2 ? 'In both menus' : 'In more than one menu',
      rows: shared.flatMap((each) =>
        each.slice(0, 1).map((first) => ({ ...first.row, perGuest: amounts(each, menus.length) })),
      ),
    },
    ...menus.map(({ name, rows }) => ({ name, rows: rows.filter((each) => !isShared.has(each)) })),
  ];
}

function amounts(servings: readonly { readonly menu: string; readonly row: Row }[], menus: number): string {
  const ways = Map.groupBy(servings, ({ row: { perGuest } }) => perGuest);
  if (ways.size === 1 && servings.length === menus) return servings[0]?.row.perGuest ?? '';
  return [...ways]
    .map(([amount, each]) => `${amount} (${each.map(({ menu }) => menu).join(', ')})`)
    .join(', ');
}

/** Add-ons are of a dish or two each: several are one list, in which each dish names its own. */
function inOne(addOns: readonly Group[]): readonly Group[] {
  if (addOns.length < 2) return addOns;
  const rows = addOns.flatMap(({ name, rows: own }) =>
    own.map((each) => ({ ...each, perGuest: `${each.perGuest} (${name})` })),
  );
  return [{ name: 'Add-ons', rows }];
}

function row(dish: DishTerms, columns: readonly AllergenColumn[]): Row {
  const [contained, warned] = [stated(dish.contains), stated(dish.mayContain)];
  return {
    dish: dish.name,
    perGuest: dish.perGuest,
    cells: columns.map((column) => cellOf(dish, contained, warned, column)),
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
