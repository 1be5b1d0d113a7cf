import type { AllergenGroup } from '../../engine/food/allergen.ts';
import { type AllergenColumn, stated } from '../../engine/food/allergen-columns.ts';
import { DIETS, type Diet } from '../../engine/food/diet.ts';
import { type Need, needParts, parseNeed } from '../../engine/food/need.ts';
import type { DishTerms } from '../../engine/quote/terms.ts';
import { allergenAsRead } from '../../exports/words/allergen-as-read.ts';
import { wordsIn } from '../../words/words-in.ts';
import { dietWords } from '../diet-marks.ts';
import type { DishNeedsView } from './proposal-view.ts';

/** Who keeps the first keeps the rest as well, by what each of them forbids. */
const TAKES_IN: Readonly<Partial<Record<Diet, readonly Diet[]>>> = {
  vegan: ['vegetarian', 'pescatarian', 'no pork'],
  vegetarian: ['pescatarian', 'no pork'],
};

/** What a guest can tick on the page: the diets, then every allergen of the table. */
export function needLabels(columns: readonly AllergenColumn[], locale: string): string[] {
  const say = wordsIn(locale);
  // Beside the diet of the same words: the allergy counts traces as well, and no swap that is made for the diet.
  const label = ({ group, kind, name }: AllergenColumn) =>
    group === 'cereal' && kind === null
      ? say('dishes.no-gluten-allergy')
      : say('dishes.no', { allergen: allergenAsRead(name, locale) });
  return [...DIETS.map((diet) => dietWords(diet, say)), ...columns.map(label)];
}

/**
 * What a dish is for each of those needs, by what was offered and corrected since: `y` suits, `n` does not or is not
 * said to, `u` nobody knows. And for what it can be made separately: for each way the numbers of all needs that are then
 * met for certain. A warning of traces counts like the allergen.
 */
export function dishNeeds(dish: DishTerms, columns: readonly AllergenColumn[]): DishNeedsView {
  const diets = DIETS.map((diet) => (dish.marks.includes(diet) ? 'y' : dish.unsaid ? 'u' : 'n'));
  const allergens = stated([...dish.contains, ...dish.mayContain]);
  const allergies = columns.map(({ takes }) => (allergens.some(takes) ? 'n' : dish.unsaid ? 'u' : 'y'));
  const made = (dish.onRequest ?? []).flatMap((text) => {
    const need = parseNeed(text);
    return need.ok ? [metBy(need.value, columns).join('+')] : [];
  });
  return { suits: [...diets, ...allergies].join(''), made: made.filter((each) => each !== '').join(' ') };
}

/**
 * The numbers of the needs that a dish meets for certain once it is made for one. What a cook swaps for `no gluten`
 * is not done for an allergy to wheat, unless the recipe says so.
 */
function metBy(need: Need, columns: readonly AllergenColumn[]): number[] {
  const parts = needParts(need);
  const diets = new Set(
    parts.flatMap((part) => (part.kind === 'diet' ? [part.diet, ...(TAKES_IN[part.diet] ?? [])] : [])),
  );
  const groups = new Set<AllergenGroup>(
    parts.flatMap((part) => (part.kind === 'allergy' ? part.groups : [])),
  );
  const isMet = ({ group, kind }: AllergenColumn) =>
    groups.has(group) ||
    parts.some(
      (part) =>
        part.kind === 'allergy to a kind' && part.allergen.group === group && part.allergen.kind === kind,
    );
  return [
    ...DIETS.flatMap((diet, index) => (diets.has(diet) ? [index] : [])),
    ...columns.flatMap((column, index) => (isMet(column) ? [DIETS.length + index] : [])),
  ];
}
