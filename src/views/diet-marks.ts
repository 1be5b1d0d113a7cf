import { DIETS, type Diet } from '../engine/food/diet.ts';
import type { DishTerms } from '../engine/quote/terms.ts';
import { allergenAsRead } from '../exports/words/allergen-as-read.ts';
import { needOnRequest } from '../offers/corrections/statements.ts';
import type { WordKey } from '../words/catalogues.ts';
import { type Say, wordsIn } from '../words/words-in.ts';

/** From strict to less strict: each takes in the next. */
const BY_ANIMAL: readonly string[] = ['vegan', 'vegetarian', 'pescatarian'];

const LEGEND = [
  ['vegan', 'dishes.mark.vegan'],
  ['vegetarian', 'dishes.mark.vegetarian'],
  ['pescatarian', 'dishes.mark.pescatarian'],
  ['no gluten', 'dishes.mark.no-gluten'],
] as const satisfies readonly (readonly [Diet, WordKey])[];

const DIET_WORDS: Readonly<Record<Diet, WordKey>> = {
  vegetarian: 'dishes.diet.vegetarian',
  vegan: 'dishes.diet.vegan',
  pescatarian: 'dishes.diet.pescatarian',
  'no gluten': 'dishes.diet.no-gluten',
  'no pork': 'dishes.diet.no-pork',
  'no alcohol': 'dishes.diet.no-alcohol',
};

/** A diet as the client reads it; what is none as it is. */
export function dietWords(diet: string, say: Say): string {
  const known = DIETS.find((each) => each === diet);
  return known ? say(DIET_WORDS[known]) : diet;
}

/** What a guest needs, part by part: a diet as it is, an allergen by the words given for it; `vegan + no tree nuts`. */
export function needWords(need: string, allergenWords: WordKey, locale: string): string {
  const say = wordsIn(locale);
  const parts = need.split('+').map((part) => part.trim());
  return parts
    .map((part) =>
      DIETS.some((diet) => diet === part)
        ? dietWords(part, say)
        : say(allergenWords, { allergen: allergenAsRead(part, locale) }),
    )
    .join(' + ');
}

/** A dietary mark, or what a dish can be made for, as the client reads it: `vegan`, `no tree nuts on request`. */
export function markWords(mark: string, locale: string): string {
  const need = needOnRequest(mark);
  return need === undefined ? dietWords(mark, wordsIn(locale)) : requestWords(need, locale);
}

/** What a dish can be made for: `vegan on request`, `no tree nuts on request`. */
export function requestWords(need: string, locale: string): string {
  return wordsIn(locale)('dishes.on-request', { need: needWords(need, 'dishes.no', locale) });
}

/** The strictest of the animal-food marks that hold, since each takes in the next, and `no gluten`. */
export function marksOf(diets: readonly string[]): string[] {
  const strictest = BY_ANIMAL.find((mark) => diets.includes(mark));
  return [...(strictest ? [strictest] : []), ...(diets.includes('no gluten') ? ['no gluten'] : [])];
}

/** Needs a dish can be made for on request: the strictest of the animal-food marks, other diets, and allergens left out. */
export function needsOnRequest({ marks, onRequest = [] }: Pick<DishTerms, 'marks' | 'onRequest'>): string[] {
  const strictest = BY_ANIMAL.find((mark) => onRequest.includes(mark) || marks.includes(mark));
  const others = onRequest.filter((need) => !BY_ANIMAL.includes(need) && !impliedBy(need, onRequest));
  return [...onRequest.filter((need) => need === strictest), ...others];
}

/** All marks of a dish as the client reads them: what holds for it, then what it can be made for. */
export function marksAsRead(dish: Pick<DishTerms, 'marks' | 'onRequest'>, locale: string): string[] {
  return [
    ...marksOf(dish.marks).map((mark) => markWords(mark, locale)),
    ...needsOnRequest(dish).map((need) => requestWords(need, locale)),
  ];
}

/** `vegan + no gluten` says nothing new where both stand there already. */
function impliedBy(need: string, others: readonly string[]): boolean {
  const parts = need.split('+').map((part) => part.trim());
  return parts.length > 1 && parts.every((part) => others.includes(part));
}

/**
 * What the marks mean, for those that stand on the page with these dishes. Only where the kitchen has stated below what it
 * tests is `no gluten` said to be gluten-free.
 */
export function legendFor(
  say: Say,
  dishes: readonly Pick<DishTerms, 'marks' | 'onRequest'>[],
  glutenTested?: string,
): { readonly mark: string; readonly meaning: string }[] {
  const marks = new Set(dishes.flatMap((dish) => marksOf(dish.marks)));
  const requested = new Set(dishes.flatMap(needsOnRequest));
  const legend = LEGEND.filter(([diet]) => marks.has(diet) || requested.has(diet)).map(([diet, meaning]) => ({
    mark: dietWords(diet, say),
    meaning:
      diet === 'no gluten' && glutenTested !== undefined
        ? say('dishes.mark.gluten-free', { limit: glutenTested })
        : say(meaning),
  }));
  const onRequest = { mark: say('dishes.request'), meaning: say('dishes.mark.on-request') };
  return requested.size > 0 ? [...legend, onRequest] : legend;
}
