import type { Day } from '../../../engine/calendar/day.ts';
import { type DayBatch, dayBatches } from '../../../engine/plan/days/day-batches.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import { statement } from '../../../engine/text/statement.ts';
import type { PlanRecipe } from '../../../exports/form/food.ts';
import { type CardSetting, planRecipe } from '../../../exports/plan/recipe.ts';
import { batchesText } from '../../../exports/words/batches-text.ts';
import type { DayRecipe } from './view.ts';

/** The card of every recipe that a day works on, the amounts those of all events that it is cooked for together. */
export function dayRecipes(plans: readonly EventPlan[], date: Day, setting: CardSetting): DayRecipe[] {
  const batches = dayBatches(plans, date);
  const known = new Map<string, number>();
  return batches.map((batch) => {
    const { id } = batch.recipe;
    const before = known.get(id) ?? 0;
    known.set(id, before + 1);
    const here = (part: string) => batches.some(({ recipe }) => recipe.id === part);
    return {
      events: batch.events.map(({ plan: { input } }) => ({ id: input.id, occasion: input.occasion })),
      fewer: fewerText(batch, setting),
      card: cardOf(batch, before === 0 ? id : `${id}.${before + 1}`, here, setting),
    };
  });
}

/** A card under an id of its own on the page; a part that has no card there is named without a link. */
function cardOf(
  batch: DayBatch,
  id: string,
  here: (part: string) => boolean,
  setting: CardSetting,
): PlanRecipe {
  const several = batch.events.length > 1;
  const usedBy = batch.events.flatMap(({ plan, planned }) =>
    planned.usedBy.map(({ by, need }) => ({ by: `${by} (${plan.input.occasion})`, need })),
  );
  const plans = batch.events.map(({ plan }) => plan);
  const served = {
    dishes: plans.flatMap(({ dishes }) => dishes),
    crewMeals: plans.flatMap(({ crewMeals }) => crewMeals),
    beside: plans.flatMap(({ beside }) => beside),
  };
  const card = planRecipe({ ...batch, usedBy }, served, setting);
  const whys = several
    ? batch.events.flatMap(({ plan, planned }) =>
        planned.why.map((why) =>
          setting.inWords(statement('why.on-its-own', { event: plan.input.occasion, why })),
        ),
      )
    : [];
  return {
    ...card,
    id,
    lines: card.lines.map((line) =>
      line.kind === 'recipe' && !here(line.id) ? { ...line, kind: 'ingredient' as const } : line,
    ),
    why: [...card.why, ...whys],
  };
}

function fewerText({ events, batches, separate }: DayBatch, { say, system }: CardSetting): string {
  if (events.length < 2 || !batches.lt(separate)) return '';
  return say('day.fewer', {
    batches: batchesText(batches, system),
    separate: batchesText(separate, system),
  });
}
