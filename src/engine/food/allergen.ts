import { notParsed, type Parsed, parsed } from '../parsed.ts';

/**
 * The groups of substances that an allergen law names, in one list for both laws that Salver knows.
 * `allergen-law.ts` says which of them each law asks for and by which name.
 */
export type AllergenGroup =
  | 'milk'
  | 'egg'
  | 'fish'
  | 'crustacean'
  | 'mollusc'
  | 'tree nut'
  | 'cereal'
  | 'peanut'
  | 'soy'
  | 'sesame'
  | 'celery'
  | 'mustard'
  | 'lupin'
  | 'sulphites';

/** A substance that can harm an allergic guest: its group, and its kind where the law wants the kind named. */
export interface Allergen {
  readonly group: AllergenGroup;
  /** Which cereal, tree nut, fish, crustacean or mollusc; null for groups of one kind. */
  readonly kind: string | null;
}

const SINGLE: readonly AllergenGroup[] = [
  'milk',
  'egg',
  'peanut',
  'soy',
  'sesame',
  'celery',
  'mustard',
  'lupin',
  'sulphites',
];

/** Gluten cereals as Regulation (EU) No 1169/2011, Annex II no. 1 names them. */
export const CEREALS = ['wheat', 'spelt', 'khorasan', 'rye', 'barley', 'oats', 'triticale'] as const;

/** Annex II no. 8; pine nut and chestnut are named besides, since guests ask for them. */
export const TREE_NUTS = [
  'almond',
  'hazelnut',
  'walnut',
  'cashew',
  'pecan',
  'brazil nut',
  'pistachio',
  'macadamia',
  'pine nut',
  'chestnut',
] as const;

/** What each word that stands for itself means; one reading for each, since pages ask for the same few over and over. */
const PLAIN: ReadonlyMap<string, Parsed<Allergen>> = new Map(
  [
    ...SINGLE.map((group): Allergen => ({ group, kind: null })),
    ...CEREALS.map((kind): Allergen => ({ group: 'cereal', kind })),
    ...TREE_NUTS.map((kind): Allergen => ({ group: 'tree nut', kind })),
  ].map((allergen) => [allergen.kind ?? allergen.group, parsed(allergen)]),
);

const KIND_IN_BRACKETS = /^(fish|crustacean|mollusc|tree nut|cereal)\s*\(\s*([a-z][a-z -]{0,38}[a-z])\s*\)$/;

/**
 * One allergen as a content file writes it: `milk`, `wheat`, `almond`, `fish (anchovy)`.
 * Fish, crustaceans and molluscs must say their kind, since 21 U.S.C. 343(w) asks for the species.
 */
export function parseAllergen(text: string): Parsed<Allergen> {
  const asWritten = PLAIN.get(text);
  if (asWritten) return asWritten;
  const word = inOneSpelling(text.trim().toLowerCase().replace(/\s+/g, ' '));
  const plain = PLAIN.get(word);
  if (plain) return plain;
  const bracketed = KIND_IN_BRACKETS.exec(word);
  if (bracketed) return parsed({ group: bracketed[1] as AllergenGroup, kind: bracketed[2] as string });
  if (word === 'fish' || word === 'crustacean' || word === 'mollusc')
    return notParsed(
      `“${text}” does not name the kind of ${word}`,
      `write the kind in parentheses, such as ${word} (${EXAMPLE[word]})`,
    );
  return notParsed(
    `“${text}” is not an allergen that Salver knows`,
    `write one of ${[...SINGLE, ...CEREALS, ...TREE_NUTS].join(', ')}, or fish (…), crustacean (…), mollusc (…) with the kind`,
  );
}

/** As data spells it: Americans write sulfites and mollusk. */
function inOneSpelling(word: string): string {
  return word.replace(/^sulfites$/, 'sulphites').replace(/^mollusk\b/, 'mollusc');
}

const EXAMPLE = { fish: 'cod', crustacean: 'shrimp', mollusc: 'squid' } as const;

/** The allergen as a content file writes it; `parseAllergen` reads it back. */
export function allergenText(allergen: Allergen): string {
  if (allergen.kind === null) return allergen.group;
  return allergen.group === 'cereal' || allergen.group === 'tree nut'
    ? allergen.kind
    : `${allergen.group} (${allergen.kind})`;
}

const ORDER: readonly AllergenGroup[] = [
  'cereal',
  'crustacean',
  'egg',
  'fish',
  'peanut',
  'soy',
  'milk',
  'tree nut',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'mollusc',
];

/** The order in which lists show allergens: that of Regulation (EU) No 1169/2011, Annex II, then by kind. */
export function compareAllergens(a: Allergen, b: Allergen): number {
  const byGroup = ORDER.indexOf(a.group) - ORDER.indexOf(b.group);
  if (byGroup !== 0) return byGroup;
  const [kindA, kindB] = [a.kind ?? '', b.kind ?? ''];
  return kindA < kindB ? -1 : kindA > kindB ? 1 : 0;
}
