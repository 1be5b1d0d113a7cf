import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { type Allergen, type AllergenGroup, CEREALS, parseAllergen, TREE_NUTS } from './allergen.ts';
import type { AllergenFacts } from './allergens-of.ts';
import { DIETS, type Diet } from './diet.ts';
import type { DietClaim, Suits } from './diets-of.ts';

/** One thing a guest needs of the food: a diet kept, or an allergen kept away. */
export type PlainNeed =
  | { readonly kind: 'diet'; readonly diet: Diet }
  | { readonly kind: 'allergy'; readonly groups: readonly AllergenGroup[] }
  | { readonly kind: 'allergy to a kind'; readonly allergen: Allergen };

/** What a guest needs of the food; several things at once where one guest needs them all. */
export type Need = PlainNeed | { readonly kind: 'all'; readonly of: readonly PlainNeed[] };

/** Groups as people name an allergy, one word or several for the same. Shellfish takes in both families. */
const GROUP_WORDS: Readonly<Record<string, readonly AllergenGroup[]>> = {
  milk: ['milk'],
  dairy: ['milk'],
  egg: ['egg'],
  eggs: ['egg'],
  fish: ['fish'],
  crustacean: ['crustacean'],
  crustaceans: ['crustacean'],
  'crustacean shellfish': ['crustacean'],
  mollusc: ['mollusc'],
  molluscs: ['mollusc'],
  mollusk: ['mollusc'],
  mollusks: ['mollusc'],
  shellfish: ['crustacean', 'mollusc'],
  'tree nut': ['tree nut'],
  'tree nuts': ['tree nut'],
  nuts: ['tree nut', 'peanut'],
  peanut: ['peanut'],
  peanuts: ['peanut'],
  soy: ['soy'],
  soybeans: ['soy'],
  sesame: ['sesame'],
  celery: ['celery'],
  mustard: ['mustard'],
  lupin: ['lupin'],
  sulphites: ['sulphites'],
  sulfites: ['sulphites'],
  cereals: ['cereal'],
};

/** The words that name a need, for telling what a mistyped one may have meant. */
export const NEED_WORDS: readonly string[] = [
  ...DIETS,
  ...Object.keys(GROUP_WORDS),
  ...CEREALS,
  ...TREE_NUTS,
];

/**
 * A guest's need as a proposal or a client writes it: a diet (`vegan`, `no gluten`), an allergy (`tree nuts`,
 * `almond`, `fish (cod)`), or what one guest needs together, joined by plus signs (`vegan + no gluten`). Fails on
 * words that name neither, since a need that is misread can hurt someone.
 */
export function parseNeed(text: string): Parsed<Need> {
  const parts: PlainNeed[] = [];
  for (const word of text.split('+')) {
    const part = parsePlainNeed(word);
    if (!part.ok) return part;
    parts.push(part.value);
  }
  const [first, ...more] = parts;
  return parsed(more.length === 0 ? (first as PlainNeed) : { kind: 'all', of: parts });
}

function parsePlainNeed(text: string): Parsed<PlainNeed> {
  const word = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const diet = DIETS.find((known) => known === word);
  if (diet) return parsed({ kind: 'diet', diet });
  const groups = Object.hasOwn(GROUP_WORDS, word) ? GROUP_WORDS[word] : undefined;
  if (groups) return parsed({ kind: 'allergy', groups });
  for (const each of [word, word.replace(/s$/, '')]) {
    const allergen = parseAllergen(each);
    if (allergen.ok) return parsed({ kind: 'allergy to a kind', allergen: allergen.value });
  }
  return notParsed(
    `“${text.trim()}” is not a diet or allergy that Salver knows`,
    `write a diet (${DIETS.join(', ')}) or an allergen (tree nuts, milk, wheat, fish, shellfish …)`,
  );
}

/** The single things that a need asks for. */
export function needParts(need: Need): readonly PlainNeed[] {
  return need.kind === 'all' ? need.of : [need];
}

/** Whether an allergy is part of a need, so that traces matter as well. */
export function isAllergy(need: Need): boolean {
  return needParts(need).some(({ kind }) => kind !== 'diet');
}

/**
 * Whether a dish suits a guest's need, all of it. For an allergy a warning (`may contain`) rules it out like the allergen
 * itself, and anything not stated leaves it unknown; unknown must never be served as yes.
 */
export function suitsNeed(
  need: Need,
  facts: Pick<AllergenFacts, 'contains' | 'mayContain' | 'unsaid'>,
  diets: readonly DietClaim[],
): Suits {
  if (need.kind === 'all') {
    const each = need.of.map((part) => suitsNeed(part, facts, diets));
    return each.includes('no') ? 'no' : each.includes('unknown') ? 'unknown' : 'yes';
  }
  if (need.kind === 'diet') return diets.find((claim) => claim.diet === need.diet)?.suits ?? 'unknown';
  const harms = ({ group, kind }: Allergen) => {
    if (need.kind === 'allergy') return need.groups.includes(group);
    return isKindOf({ group, kind }, need.allergen);
  };
  if ([...facts.contains, ...facts.mayContain].some(({ allergen }) => harms(allergen))) return 'no';
  return facts.unsaid.length > 0 ? 'unknown' : 'yes';
}

/** Spelt, khorasan and the like are kinds of wheat, whatever name a label gives them. */
function isKindOf(one: Allergen, other: Allergen): boolean {
  if (one.group !== other.group) return false;
  return one.kind === other.kind || (isWheat(one.kind) && isWheat(other.kind));
}

/**
 * Whether what a cook does for one need may help with another: the same diet, a stricter one of the same line
 * (what is done for vegans helps vegetarians), or an allergen that both are about. Whether it helps is for
 * `suitsNeed` to say of the food that comes out.
 */
export function mayHelp(doneFor: Need, need: Need): boolean {
  return needParts(doneFor).some((done) => needParts(need).some((part) => related(done, part)));
}

/** From strict to less strict: who keeps one keeps those after it. */
const BY_ANIMAL: readonly Diet[] = ['vegan', 'vegetarian', 'pescatarian'];

function related(done: PlainNeed, part: PlainNeed): boolean {
  if (done.kind === 'diet' || part.kind === 'diet') {
    if (done.kind !== 'diet' || part.kind !== 'diet') return false;
    const [strict, asked] = [BY_ANIMAL.indexOf(done.diet), BY_ANIMAL.indexOf(part.diet)];
    return done.diet === part.diet || (strict !== -1 && asked !== -1 && strict < asked);
  }
  if (done.kind === 'allergy') return groupsOf(part).some((group) => done.groups.includes(group));
  return part.kind === 'allergy to a kind'
    ? isKindOf(done.allergen, part.allergen)
    : part.groups.includes(done.allergen.group);
}

function groupsOf(part: Exclude<PlainNeed, { kind: 'diet' }>): readonly AllergenGroup[] {
  return part.kind === 'allergy' ? part.groups : [part.allergen.group];
}

function isWheat(kind: string | null): boolean {
  return kind === 'wheat' || kind === 'spelt' || kind === 'khorasan' || kind === 'triticale';
}
