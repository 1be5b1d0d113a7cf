import { ingredientsByWeight } from '../engine/food/label-order.ts';
import type { AllergenLaw } from '../engine/kitchen/kitchen.ts';
import type { MeasureSystem } from '../engine/measure/units.ts';
import { isSealed } from '../engine/plan/apart-containers.ts';
import type { EventDish } from '../engine/plan/event-input.ts';
import type { EventPlan, PlannedContainer, PlannedDish } from '../engine/plan/event-plan.ts';
import { dateMark } from '../engine/safety/date-mark.ts';
import { amountText } from './amount-text.ts';
import { dateText } from './date-text.ts';
import { allergenNames } from './plan-dish.ts';
import type { PlanLabel } from './prep-plan-document.ts';

/** One label for each container that leaves the kitchen, `1 of 3`; a dish packed in nothing gets one all the same. */
export function planLabels(
  plan: EventPlan,
  system: MeasureSystem,
  laws: readonly AllergenLaw[],
  locale: string,
): PlanLabel[] {
  return plan.dishes.flatMap((planned) => {
    const label = dishLabel(plan, planned, laws, locale);
    const carried = carriedIn(planned);
    if (!carried)
      return [
        {
          ...label,
          container: '',
          of: '1 of 1',
          amount: amountText(planned.need, system, 'at-least').printed,
        },
      ];
    return Array.from({ length: carried.count }, (_, index) => {
      const holds = index + 1 === carried.count ? carried.last : carried.each;
      return {
        ...label,
        container: carried.containerName,
        of: `${index + 1} of ${carried.count}`,
        amount: amountText(holds, system, 'line').printed,
      };
    });
  });
}

/** The containers a dish travels in: those to carry, else those it is served from. */
export function carriedIn(planned: PlannedDish): PlannedContainer | undefined {
  const at = (stage: string) => planned.containers.find((each) => each.stage === stage);
  return at('carry') ?? at('serve') ?? at('chill');
}

function dishLabel(
  plan: EventPlan,
  { dish, contains, mayContain, unsaid }: PlannedDish,
  laws: readonly AllergenLaw[],
  locale: string,
) {
  const { madeOn, useBy } = dateMark(dish.recipe, plan.input.date, plan.foodSafety.limits['date mark'].days);
  const ingredients = ingredientsByWeight(dish.recipe).map(({ ingredient: { name, parts } }) =>
    parts === undefined ? name : `${name} (${parts})`,
  );
  return {
    dish: dish.name,
    job: `${plan.input.occasion}, ${plan.input.client}`,
    date: dateText(plan.input.date, locale),
    ingredients: ingredients.join(', '),
    guests: isSealed(dish.portions)
      ? `${guestsOfDish(dish)}. Name ____________ Table ____`
      : guestsOfDish(dish),
    contains: [
      ...allergenNames(contains, laws).map((name) => name.toUpperCase()),
      ...(unsaid.length === 0 ? [] : ['NOT ALL KNOWN']),
    ],
    mayContain: allergenNames(mayContain, laws),
    madeOn: dateText(madeOn, locale),
    useBy: dateText(useBy, locale),
    hold: dish.recipe.hold,
    finish: dish.recipe.finish ?? '',
  };
}

/** For whom a dish is: who needs it made apart, or for whom it is held back; empty where it is for everybody. */
export function guestsOfDish({ portions, others }: EventDish): string {
  if (!portions || portions.needs.length === 0) return '';
  const who = portions.needs.map(({ need, guests }) => `${guests} × ${need}`).join(', ');
  if (portions.apart) return `${isSealed(portions) ? 'Sealed' : 'Made apart'} for ${who}`;
  return others?.n === 0n ? `Held back for ${who}` : '';
}
