import type { Allergen } from '../../engine/food/allergen.ts';
import { type AllergenColumn, columnsFor, stated } from '../../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import type { DishTerms, Terms } from '../../engine/quote/terms.ts';
import { allergenAsRead } from '../../exports/words/allergen-as-read.ts';
import { perGuestAsRead } from '../../exports/words/per-guest-as-read.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { AllergenCellView, AllergenGroupView, AllergenTableView } from './proposal-view.ts';

/** The dishes of all menus and add-ons by allergen; the terms say each dish as it stands. */
export function allergenTable(
  terms: Pick<Terms, 'packages' | 'addOns' | 'locale'>,
  laws: readonly AllergenLaw[],
): AllergenTableView {
  const say = wordsIn(terms.locale);
  const words = cellWords(say);
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
    rows: dishes.map((dish) => row(dish, columns, words, say)),
  });
  const hasRows = ({ rows }: Group) => rows.length > 0;
  const [menus, extras] = [packages.map(rowsOf), addOns.map(rowsOf)];
  return {
    allergens: columns.map(({ name }) => allergenAsRead(name, terms.locale)),
    menus: [...menus, ...extras].filter(hasRows),
    once: [...eachOnce(menus, say), ...inOne(extras.filter(hasRows), say)].filter(hasRows),
    warning: say('dishes.table.warning'),
    key: say('dishes.table.key', {
      contains: say('dishes.table.contains'),
      may: say('dishes.table.may'),
      unknown: say('dishes.table.unknown'),
    }),
  };
}

interface Menu {
  readonly name: string;
  readonly dishes: readonly DishTerms[];
}

type CellWords = Readonly<Record<AllergenCellView['says'], Pick<AllergenCellView, 'shown' | 'spoken'>>>;

/**
 * What a cell says in a narrow column, and words all the same; spoken in full. Never “yes”, which could be read as “may
 * be eaten”.
 */
function cellWords(say: Say): CellWords {
  return {
    contains: { shown: say('dishes.table.contains'), spoken: say('dishes.table.spoken.contains') },
    'may contain': { shown: say('dishes.table.may'), spoken: say('dishes.table.spoken.may') },
    'not known': { shown: say('dishes.table.unknown'), spoken: say('dishes.table.spoken.unknown') },
    '': { shown: '', spoken: '' },
  };
}

type Group = AllergenGroupView;
type Row = Group['rows'][number];

/**
 * The dishes of several menus by themselves, then what each menu has alone. A dish that is served in other amounts
 * with another menu, or not with each, says with which it comes how.
 */
function eachOnce(menus: readonly Group[], say: Say): Group[] {
  const servings = menus.flatMap(({ name, rows }) => rows.map((each) => ({ menu: name, row: each })));
  const alike = Map.groupBy(servings, ({ row: { dish, cells } }) => JSON.stringify([dish, cells]));
  const shared = [...alike.values()].filter((each) => new Set(each.map(({ menu }) => menu)).size > 1);
  const isShared = new Set(shared.flat().map((each) => each.row));
  return [
    {
      name: say(menus.length === 2 ? 'dishes.table.in-both' : 'dishes.table.in-several'),
      rows: shared.flatMap((each) =>
        each.slice(0, 1).map((first) => ({ ...first.row, perGuest: amounts(each, menus.length, say) })),
      ),
    },
    ...menus.map(({ name, rows }) => ({ name, rows: rows.filter((each) => !isShared.has(each)) })),
  ];
}

function amounts(
  servings: readonly { readonly menu: string; readonly row: Row }[],
  menus: number,
  say: Say,
): string {
  const ways = Map.groupBy(servings, ({ row: { perGuest } }) => perGuest);
  if (ways.size === 1 && servings.length === menus) return servings[0]?.row.perGuest ?? '';
  return [...ways]
    .map(([amount, each]) =>
      say('dishes.table.amount-in', { amount, where: each.map(({ menu }) => menu).join(', ') }),
    )
    .join(', ');
}

/** Add-ons are of a dish or two each: several are one list, in which each dish names its own. */
function inOne(addOns: readonly Group[], say: Say): readonly Group[] {
  if (addOns.length < 2) return addOns;
  const rows = addOns.flatMap(({ name, rows: own }) =>
    own.map((each) => ({
      ...each,
      perGuest: say('dishes.table.amount-in', { amount: each.perGuest, where: name }),
    })),
  );
  return [{ name: say('dishes.table.add-ons'), rows }];
}

function row(dish: DishTerms, columns: readonly AllergenColumn[], words: CellWords, say: Say): Row {
  const [contained, warned] = [stated(dish.contains), stated(dish.mayContain)];
  return {
    dish: dish.name,
    perGuest: perGuestAsRead(dish.perGuest, say),
    cells: columns.map((column) => {
      const cell = cellOf(dish, contained, warned, column);
      return { ...cell, ...words[cell.says] };
    }),
  };
}

function cellOf(
  { unsaid }: DishTerms,
  contained: readonly Allergen[],
  warned: readonly Allergen[],
  { takes, kindNamed, name }: AllergenColumn,
): Pick<AllergenCellView, 'says' | 'kinds'> {
  const kindsOf = (some: readonly Allergen[]) =>
    kindNamed ? some.flatMap(({ kind }) => (kind === null || kind === name ? [] : [kind])) : [];
  const has = contained.filter(takes);
  if (has.length > 0) return { says: 'contains', kinds: kindsOf(has) };
  const may = warned.filter(takes);
  if (may.length > 0) return { says: 'may contain', kinds: kindsOf(may) };
  return { says: unsaid ? 'not known' : '', kinds: [] };
}
