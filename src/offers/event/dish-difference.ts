import { allergensOf } from '../../engine/food/allergens-of.ts';
import { dietsOf } from '../../engine/food/diets-of.ts';
import { type Need, parseNeed, suitsNeed } from '../../engine/food/need.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import type { DishTerms } from '../../engine/quote/terms.ts';
import { wordsIn } from '../../words/words-in.ts';
import { recipeFacts } from '../issue/dish-terms.ts';
import { notices } from '../issue/notices.ts';

/** What is known of the food of a dish before and after a substitution. */
export interface DishPair {
  /** As served so far; where its recipe can no longer be read, as it was offered. */
  readonly before: { readonly name: string; readonly recipe: Recipe | undefined } & Facts;
  readonly after: EventDish;
}

type Facts = Pick<DishTerms, 'marks' | 'contains' | 'mayContain'>;

/** How a dish differs after a substitution, in the words of content files. */
export interface DishDifference {
  readonly dish: string;
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Allergens it neither contains nor may contain any longer. */
  readonly without: readonly string[];
  readonly dietsLost: readonly string[];
  readonly dietsGained: readonly string[];
  /**
   * What the client must be told, a sentence or more: another dish than the one accepted, an allergen added, a diet
   * lost, raw animal food. Empty for nothing.
   */
  readonly tell: string;
}

/** The difference of one dish, what is to be told in the words of a locale. */
export function dishDifference(
  { before, after }: DishPair,
  replaced: boolean,
  locale: string,
): DishDifference {
  const say = wordsIn(locale);
  const spoken = { dish: after.name, before: before.name };
  const now = recipeFacts(after.recipe);
  const contains = now.contains.filter((each) => !before.contains.includes(each));
  const known = [...before.contains, ...before.mayContain];
  const mayContain = now.mayContain.filter((each) => !known.includes(each));
  const dietsLost = before.marks.filter((each) => !now.marks.includes(each));
  const raw = after.recipe.containsRaw && before.recipe?.containsRaw !== true;
  const parts = [
    replaced ? say('offer.told.instead', spoken) : '',
    contains.length > 0
      ? say(replaced ? 'offer.told.contains.instead' : 'offer.told.contains', {
          ...spoken,
          allergens: contains.join(', '),
        })
      : '',
    mayContain.length > 0
      ? say('offer.told.may-contain', { ...spoken, allergens: mayContain.join(', ') })
      : '',
    dietsLost.length > 0 ? say('offer.told.diets-lost', { ...spoken, diets: dietsLost.join(', ') }) : '',
    ...(raw ? notices([after], locale) : []),
  ];
  return {
    dish: after.name,
    contains,
    mayContain,
    without: known.filter((each) => !now.contains.includes(each) && !now.mayContain.includes(each)),
    dietsLost,
    dietsGained: now.marks.filter((each) => !before.marks.includes(each)),
    tell: parts.filter((text) => text !== '').join(' '),
  };
}

/** Guests’ needs that a dish met and no longer does: `9 × vegetarian: Leek tart no longer suits`. */
export function needsMissed({ before, after }: DishPair, needs: Readonly<Record<string, number>>): string[] {
  return Object.entries(needs).flatMap(([text, guests]) => {
    const need = parseNeed(text);
    if (!need.ok || guests === 0 || !before.recipe) return [];
    const suited = suits(need.value, before.recipe) === 'yes';
    return suited && suits(need.value, after.recipe) !== 'yes'
      ? [`${guests} × ${text}: ${after.name} no longer suits`]
      : [];
  });
}

function suits(need: Need, recipe: Recipe) {
  return suitsNeed(need, allergensOf(recipe), dietsOf(recipe));
}
