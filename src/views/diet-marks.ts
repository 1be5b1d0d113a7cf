import { DIETS } from '../engine/food/diet.ts';
import type { DishTerms } from '../engine/quote/terms.ts';
import { onRequestText } from '../offers/corrections/statements.ts';
import type { WordKey } from '../words/catalogues.ts';
import type { Say } from '../words/words-in.ts';

/** From strict to less strict: each takes in the next. */
const BY_ANIMAL: readonly string[] = ['vegan', 'vegetarian', 'pescatarian'];

const LEGEND: readonly { readonly mark: string; readonly meaning: WordKey }[] = [
  { mark: 'vegan', meaning: 'dishes.mark.vegan' },
  { mark: 'vegetarian', meaning: 'dishes.mark.vegetarian' },
  { mark: 'pescatarian', meaning: 'dishes.mark.pescatarian' },
  { mark: 'no gluten', meaning: 'dishes.mark.no-gluten' },
];

const ON_REQUEST = 'on request';

/** The strictest of the animal-food marks that hold, since each takes in the next, and `no gluten`. */
export function marksOf(diets: readonly string[]): string[] {
  const strictest = BY_ANIMAL.find((mark) => diets.includes(mark));
  return [...(strictest ? [strictest] : []), ...(diets.includes('no gluten') ? ['no gluten'] : [])];
}

/** What a dish can be made for on request: the strictest of the animal-food marks, other diets, and allergens left out. */
export function requestMarks({ marks, onRequest = [] }: Pick<DishTerms, 'marks' | 'onRequest'>): string[] {
  const strictest = BY_ANIMAL.find((mark) => onRequest.includes(mark) || marks.includes(mark));
  const others = onRequest.filter((need) => !BY_ANIMAL.includes(need) && !impliedBy(need, onRequest));
  return [...onRequest.filter((need) => need === strictest), ...others].map((need) =>
    onRequestText(DIETS.some((diet) => need.includes(diet)) ? need : `no ${need}`),
  );
}

/** `vegan + no gluten` says nothing new where both stand there already. */
function impliedBy(need: string, others: readonly string[]): boolean {
  const parts = need.split('+').map((part) => part.trim());
  return parts.length > 1 && parts.every((part) => others.includes(part));
}

/**
 * What the marks mean, for those that stand on the page. Only where the kitchen has stated below what it tests is
 * `no gluten` said to be gluten-free.
 */
export function legendFor(
  say: Say,
  marks: Iterable<string>,
  glutenTested?: string,
): { readonly mark: string; readonly meaning: string }[] {
  const used = [...marks];
  const requested = used.filter((mark) => mark.endsWith(` ${ON_REQUEST}`));
  const meant = LEGEND.filter(({ mark }) =>
    used.some((each) => each === mark || each === onRequestText(mark)),
  );
  const legend = meant.map(({ mark, meaning }) => ({
    mark,
    meaning:
      mark === 'no gluten' && glutenTested !== undefined
        ? say('dishes.mark.gluten-free', { limit: glutenTested })
        : say(meaning),
  }));
  const onRequest = { mark: ON_REQUEST, meaning: say('dishes.mark.on-request') };
  return requested.length > 0 ? [...legend, onRequest] : legend;
}
