import type { Hold } from '../../engine/food/recipe.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { scaleOf } from '../../engine/measure/temperature.ts';
import { type MadeAhead, madeAhead, takersOf } from '../../engine/plan/containers/made-ahead.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { rawAhead } from '../../engine/safety/raw-ahead.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanLabel } from '../form/sheets.ts';
import { amountText } from '../words/amount-text.ts';
import { dateText } from '../words/date-text.ts';
import { statementsIn } from '../words/statement-text.ts';
import { recipeContents, recipeDates } from './components.ts';
import { rawLast, rawText } from './raw.ts';

/**
 * One label for each container of a part that is made ahead and waits in the kitchen, `1 of 3`; one for a part whose
 * recipe names no container. What is raw comes last and says to what it is cooked by the recipes that take it.
 */
export function planPrepLabels(
  plan: EventPlan,
  kitchen: Pick<Kitchen, 'containers' | 'measures' | 'allergenLaws' | 'locale'>,
): PlanLabel[] {
  const foods = madeAhead(plan, kitchen.containers).map((food) => ({
    food,
    raw: rawAhead(food.recipe, (recipe) => takersOf(plan, recipe), plan.foodSafety),
  }));
  return rawLast(foods, ({ raw }) => raw).flatMap(({ food, raw }) => labelsOf(food, raw, plan, kitchen));
}

function labelsOf(
  { recipe, makes, takenBy, packed }: MadeAhead,
  raw: ReturnType<typeof rawAhead>,
  { input, foodSafety }: EventPlan,
  { measures, allergenLaws, locale }: Pick<Kitchen, 'measures' | 'allergenLaws' | 'locale'>,
): PlanLabel[] {
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  const count = packed?.count ?? 1;
  return Array.from({ length: count }, (_, index): PlanLabel => {
    const holds = packed ? (index + 1 === count ? packed.last : packed.each) : makes;
    return {
      dish: recipe.name,
      container: packed ? inWords(packed.containerName) : '',
      of: say('labels.of', { n: String(index + 1), all: String(count) }),
      job: `${input.occasion}, ${input.client}`,
      date: dateText(input.date, locale),
      amount: amountText(holds, measures, 'line').printed,
      goesInto: whatFor(takenBy).join('; '),
      guests: '',
      ...recipeContents(recipe, allergenLaws),
      ...recipeDates(recipe, input.date, foodSafety.limits['date mark'].days, locale),
      hold: waitsAs(recipe.hold),
      finish: '',
      ...(raw && { raw: rawText(raw, foodSafety, scaleOf(measures), say, inWords) }),
    };
  });
}

/** The names of the recipes that take it; what is made separately of one that is named itself is not named again. */
function whatFor(takenBy: MadeAhead['takenBy']): string[] {
  const names = [...new Set(takenBy.map(({ recipe }) => recipe.name))];
  return names.filter((name) => !names.some((whole) => name.startsWith(`${whole} (`)));
}

/** What is held hot once it is served waits cold from one day to another. */
function waitsAs(hold: Hold): Hold {
  return hold === 'hot' ? 'cold' : hold;
}
