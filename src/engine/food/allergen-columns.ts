import {
  type Allergen,
  type AllergenGroup,
  allergenText,
  compareAllergens,
  parseAllergen,
} from './allergen.ts';
import type { AllergenLaw } from './allergen-law.ts';
import { lawColumns, lawCovers, outsideLaw } from './allergen-law.ts';

/** A column of a table of dishes by allergen: the allergens it takes in. */
export interface AllergenColumn {
  /** As the law calls it, or in plain words what no law names. */
  readonly name: string;
  readonly group: AllergenGroup;
  /** The one kind it is about; null where it is about all that the law asks for. */
  readonly kind: string | null;
  readonly kindNamed: boolean;
  readonly takes: (allergen: Allergen) => boolean;
}

/**
 * Every allergen that the laws name, whether or not a dish has it, and what else the dishes state. Allergens are given in the words
 * of content files.
 */
export function columnsFor(
  laws: readonly AllergenLaw[],
  dishes: readonly { readonly contains: readonly string[]; readonly mayContain: readonly string[] }[],
): AllergenColumn[] {
  const texts = new Set(dishes.flatMap(({ contains, mayContain }) => [...contains, ...mayContain]));
  const others = new Map(
    outsideLaw(stated([...texts]), laws).map((allergen) => [allergenText(allergen), allergen]),
  );
  return [
    ...lawColumns(laws).map((law) => ({
      name: law.name,
      group: law.group,
      // The law's wheat is all kinds of wheat, and so is a guest's.
      kind: law.name === 'wheat' ? 'wheat' : null,
      kindNamed: law.kindNamed,
      takes: (allergen: Allergen) => lawCovers(law, allergen),
    })),
    ...[...others]
      .toSorted(([, a], [, b]) => compareAllergens(a, b))
      .map(([name, { group, kind }]) => ({
        name,
        group,
        kind,
        kindNamed: false,
        takes: (allergen: Allergen) => allergenText(allergen) === name,
      })),
  ];
}

/** Allergens in the words of content files, as terms hold them. */
export function stated(texts: readonly string[]): Allergen[] {
  return texts.flatMap((text) => {
    const allergen = parseAllergen(text);
    return allergen.ok ? [allergen.value] : [];
  });
}
