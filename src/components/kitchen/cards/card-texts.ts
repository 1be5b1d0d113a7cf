import type { PlanRecipe, PlanStep } from '../../../exports/form/food.ts';
import { packStageWords } from '../../../exports/words/stage-words.ts';
import type { Say } from '../../../words/words-in.ts';

/** When and where a step is done, by whom and how long: `on the day · Ovens · 15 min hands-on`. */
export function stepFacts(step: PlanStep, say: Say): string {
  return [
    step.when,
    step.station,
    step.skill && say('day.skill', { skill: step.skill }),
    step.handsOn && say('day.hands-on', { time: step.handsOn }),
    step.unattended && say('day.unattended', { time: step.unattended }),
  ]
    .filter(Boolean)
    .join(' · ');
}

/** How what a recipe makes is held, how long it keeps, what it is packed in and how it is finished, each with its label. */
export function keepingFacts(recipe: PlanRecipe, say: Say): [label: string, value: string][] {
  const facts: [string, string][] = [
    [say('plan.hold'), say('lists.hold', { how: recipe.hold })],
    [say('plan.keeps'), recipe.keeps || say('plan.keeps-unknown')],
    [
      say('plan.packed-in'),
      (recipe.packed ?? [])
        .map(({ stage, what }) => say('plan.packed-to', { what, stage: packStageWords(stage, say) }))
        .join('; '),
    ],
    [say('plan.to-finish'), recipe.finish],
  ];
  return facts.filter(([, value]) => value !== '');
}

/** What a recipe is made for: `94 pieces for Smoked trout; 38 pieces for …`. */
export function madeForText({ usedBy }: PlanRecipe, say: Say): string {
  return usedBy.map(({ by, need }) => say('plan.need-for', { amount: need.printed, dish: by })).join('; ');
}

/** A line's food with how it is made ready. */
export function lineText({ name, preparation }: PlanRecipe['lines'][number]): string {
  return preparation === '' ? name : `${name}, ${preparation}`;
}
