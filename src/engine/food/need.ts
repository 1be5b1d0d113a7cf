import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { type Allergen, type AllergenGroup, parseAllergen } from './allergen.ts';
import type { AllergenFacts } from './allergens-of.ts';
import { DIETS, type Diet } from './diet.ts';
import type { DietClaim, Suits } from './diets-of.ts';

/** What a guest needs of the food: a diet kept, or an allergen kept away. */
export type Need =
  | { readonly kind: 'diet'; readonly diet: Diet }
  | { readonly kind: 'allergy'; readonly groups: readonly AllergenGroup[] }
  | { readonly kind: 'allergy to a kind'; readonly allergen: Allergen };

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
  cereals: ['cereal'],
};

/**
 * A guest's need as a proposal or a client writes it: a diet (`vegan`, `no gluten`) or an allergy (`tree nuts`,
 * `almond`, `fish (cod)`). Fails on words that name neither, since a need that is misread can hurt someone.
 */
export function parseNeed(text: string): Parsed<Need> {
  const word = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const diet = DIETS.find((known) => known === word);
  if (diet) return parsed({ kind: 'diet', diet });
  const groups = Object.hasOwn(GROUP_WORDS, word) ? GROUP_WORDS[word] : undefined;
  if (groups) return parsed({ kind: 'allergy', groups });
  const allergen = parseAllergen(word);
  if (allergen.ok) return parsed({ kind: 'allergy to a kind', allergen: allergen.value });
  return notParsed(
    `“${text}” is no diet or allergy Salver knows`,
    `write a diet (${DIETS.join(', ')}) or an allergen (tree nuts, milk, wheat, fish, shellfish …)`,
  );
}

/**
 * Whether a dish suits a guest's need. For an allergy a warning (`may contain`) rules it out like the allergen
 * itself, and anything unsaid leaves it unknown; unknown must never be served as yes.
 */
export function suitsNeed(
  need: Need,
  facts: Pick<AllergenFacts, 'contains' | 'mayContain' | 'unsaid'>,
  diets: readonly DietClaim[],
): Suits {
  if (need.kind === 'diet') return diets.find((claim) => claim.diet === need.diet)?.suits ?? 'unknown';
  const harms = ({ group, kind }: Allergen) => {
    if (need.kind === 'allergy') return need.groups.includes(group);
    if (group !== need.allergen.group) return false;
    // Spelt, khorasan and the like are kinds of wheat, whatever name a label gives them.
    return kind === need.allergen.kind || (isWheat(kind) && isWheat(need.allergen.kind));
  };
  if ([...facts.contains, ...facts.mayContain].some(({ allergen }) => harms(allergen))) return 'no';
  return facts.unsaid.length > 0 ? 'unknown' : 'yes';
}

function isWheat(kind: string | null): boolean {
  return kind === 'wheat' || kind === 'spelt' || kind === 'khorasan' || kind === 'triticale';
}
