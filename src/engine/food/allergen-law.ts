import { type Allergen, type AllergenGroup, compareAllergens } from './allergen.ts';

/** Whose law names the allergens that are declared: of the United States, or of the European Union. */
export type AllergenLaw = 'us' | 'eu';

/** A group that a law wants declared. */
export interface LawEntry {
  readonly group: AllergenGroup;
  /** The name as the law uses it. */
  readonly name: string;
  /** True where the law wants the kind named as well: which nut, which fish. */
  readonly kindNamed: boolean;
  /** Kinds of the group that the law does not cover; a kind it has never heard of is covered, to be safe. */
  readonly except: readonly string[];
}

/**
 * Allergens to declare by law.
 *
 * - `us`: the nine major food allergens, 21 U.S.C. 321(qq) and 343(w) (Food Allergen Labeling and Consumer
 *   Protection Act of 2004; FASTER Act of 2021 added sesame from 1 January 2023), as in FDA Food Code 1-201.10.
 *   Of tree nuts, fish and crustacean shellfish the type or species is named. Wheat takes in the other
 *   species of wheat and their hybrids, not rye, barley or oats.
 * - `eu`: the fourteen groups of Regulation (EU) No 1169/2011, Annex II. Its nuts are eight, pine nut and
 *   chestnut not among them; its cereals and nuts are named by kind. Sulphites count above 10 mg/kg or 10 mg/l.
 */
export const ALLERGEN_LAWS: Readonly<Record<AllergenLaw, readonly LawEntry[]>> = {
  us: [
    entry('milk', 'milk'),
    entry('egg', 'egg'),
    kinds('fish', 'fish'),
    kinds('crustacean', 'crustacean shellfish'),
    kinds('tree nut', 'tree nuts'),
    kinds('cereal', 'wheat', ['rye', 'barley', 'oats']),
    entry('peanut', 'peanuts'),
    entry('soy', 'soybeans'),
    entry('sesame', 'sesame'),
  ],
  eu: [
    kinds('cereal', 'cereals containing gluten'),
    kinds('crustacean', 'crustaceans'),
    entry('egg', 'eggs'),
    kinds('fish', 'fish'),
    entry('peanut', 'peanuts'),
    entry('soy', 'soybeans'),
    entry('milk', 'milk'),
    kinds('tree nut', 'nuts', ['pine nut', 'chestnut']),
    entry('celery', 'celery'),
    entry('mustard', 'mustard'),
    entry('sesame', 'sesame seeds'),
    entry('sulphites', 'sulphur dioxide and sulphites'),
    entry('lupin', 'lupin'),
    kinds('mollusc', 'molluscs'),
  ],
};

/**
 * The names under which these laws want the allergens declared, kinds in brackets: `milk`,
 * `tree nuts (almond, pecan)`, `fish (anchovy)`. Barley is `cereals containing gluten (barley)` in the EU and
 * nothing in the US. Under both laws a group is named once, by the law that covers more of its kinds here, the
 * first of the laws on a tie. Order as in Annex II. What no law names is left out: see {@link outsideLaw}.
 */
export function declaredNames(allergens: readonly Allergen[], laws: readonly AllergenLaw[]): string[] {
  const names: string[] = [];
  const entries = laws.flatMap((law) => ALLERGEN_LAWS[law]);
  for (const group of byGroup(allergens)) {
    let rest = group;
    while (rest.length > 0) {
      const best = entries
        .map((law) => ({ law, covered: rest.filter((allergen) => lawCovers(law, allergen)) }))
        .reduce<{ law: LawEntry; covered: Allergen[] } | undefined>(
          (a, b) => (b.covered.length > (a?.covered.length ?? 0) ? b : a),
          undefined,
        );
      if (!best) break;
      names.push(nameWithKinds(best.law, best.covered));
      rest = rest.filter((allergen) => !best.covered.includes(allergen));
    }
  }
  return names;
}

/** The allergens stated by the foods that none of these laws asks to declare: celery in the US, pine nut in the EU. */
export function outsideLaw(allergens: readonly Allergen[], laws: readonly AllergenLaw[]): Allergen[] {
  const entries = laws.flatMap((law) => ALLERGEN_LAWS[law]);
  return allergens.filter((allergen) => !entries.some((law) => lawCovers(law, allergen)));
}

/**
 * The groups to declare under these laws, each once, in the order of the first law that names it: by the entry that
 * covers more of its kinds (of wheat and all gluten cereals the latter), that of the first law where both cover the same.
 */
export function lawColumns(laws: readonly AllergenLaw[]): LawEntry[] {
  const columns = new Map<AllergenGroup, LawEntry>();
  for (const entry of laws.flatMap((law) => ALLERGEN_LAWS[law])) {
    const known = columns.get(entry.group);
    if (!known || entry.except.length < known.except.length) columns.set(entry.group, entry);
  }
  return [...columns.values()];
}

function entry(group: AllergenGroup, name: string): LawEntry {
  return { group, name, kindNamed: false, except: [] };
}

function kinds(group: AllergenGroup, name: string, except: readonly string[] = []): LawEntry {
  return { group, name, kindNamed: true, except };
}

/** Whether a law's entry takes in an allergen. */
export function lawCovers(law: LawEntry, allergen: Allergen): boolean {
  return law.group === allergen.group && !law.except.includes(allergen.kind ?? '');
}

function byGroup(allergens: readonly Allergen[]): Allergen[][] {
  const groups = new Map<AllergenGroup, Allergen[]>();
  for (const allergen of [...allergens].sort(compareAllergens)) {
    const group = groups.get(allergen.group) ?? [];
    if (!group.some(({ kind }) => kind === allergen.kind)) group.push(allergen);
    groups.set(allergen.group, group);
  }
  return [...groups.values()];
}

function nameWithKinds(law: LawEntry, allergens: readonly Allergen[]): string {
  const named = allergens.flatMap(({ kind }) => (kind === null ? [] : [kind]));
  const says = named.filter((kind) => kind !== law.name);
  return law.kindNamed && says.length > 0 ? `${law.name} (${named.join(', ')})` : law.name;
}
