import { type Allergen, allergenText, compareAllergens, parseAllergen } from '../engine/food/allergen.ts';
import { type LawEntry, lawColumns, lawCovers, outsideLaw } from '../engine/food/allergen-law.ts';
import type { AllergenLaw } from '../engine/kitchen/kitchen.ts';
import type { DishTerms, Terms } from '../engine/quote/terms.ts';
import { correctedDish, type DishCorrection } from '../offers/corrections.ts';
import type { AllergenCellView, AllergenTableView } from './proposal-view.ts';

/** A column: the allergens it takes in. */
interface Column {
  readonly name: string;
  readonly kindNamed: boolean;
  readonly takes: (allergen: Allergen) => boolean;
}

const NOTES = [
  '“yes”: it is an ingredient. “may”: a supplier warns of traces. “?”: nobody has said yet. An empty field means that neither is said of the ingredients; since our kitchen is shared, it is no promise that no trace is carried over.',
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
      rows: dishes.map((dish) => ({ dish: dish.name, cells: columns.map((column) => cellOf(dish, column)) })),
    })),
    notes: NOTES,
  };
}

/** Every allergen that the laws name, whether or not a dish has it, and what else the dishes state. */
function columnsFor(laws: readonly AllergenLaw[], dishes: readonly DishTerms[]): Column[] {
  const stated = dishes.flatMap(({ contains, mayContain }) => allergens([...contains, ...mayContain]));
  const others = new Map(outsideLaw(stated, laws).map((allergen) => [allergenText(allergen), allergen]));
  return [
    ...lawColumns(laws).map((law: LawEntry) => ({
      name: law.name,
      kindNamed: law.kindNamed,
      takes: (allergen: Allergen) => lawCovers(law, allergen),
    })),
    ...[...others]
      .toSorted(([, a], [, b]) => compareAllergens(a, b))
      .map(([name]) => ({
        name,
        kindNamed: false,
        takes: (allergen: Allergen) => allergenText(allergen) === name,
      })),
  ];
}

function cellOf(dish: DishTerms, { takes, kindNamed, name }: Column): AllergenCellView {
  const found = (texts: readonly string[]) => allergens(texts).filter(takes);
  const kindsOf = (some: readonly Allergen[]) =>
    kindNamed ? some.flatMap(({ kind }) => (kind === null || kind === name ? [] : [kind])) : [];
  const contained = found(dish.contains);
  if (contained.length > 0) return { says: 'contains', kinds: kindsOf(contained) };
  if (dish.unsaid) return { says: 'not known', kinds: [] };
  const warned = found(dish.mayContain);
  return warned.length > 0 ? { says: 'may contain', kinds: kindsOf(warned) } : { says: '', kinds: [] };
}

function allergens(texts: readonly string[]): Allergen[] {
  return texts.flatMap((text) => {
    const allergen = parseAllergen(text);
    return allergen.ok ? [allergen.value] : [];
  });
}
