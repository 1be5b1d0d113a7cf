import type { ExplodedRecipe } from '../food/explode.ts';
import type { PlannedRecipe } from './event-plan.ts';
import { batchesText, comesTo, plainAmount, signedNumber } from './figure-text.ts';

/** A recipe of the explosion with the why of its batches: the needs summed, divided by a batch, rounded once. */
export function plannedRecipe(exploded: ExplodedRecipe): PlannedRecipe {
  const { recipe, usedBy, need, batches, makes, lines } = exploded;
  return { recipe, usedBy, need, batches, makes, lines, why: whyOf(exploded) };
}

function whyOf({ recipe, usedBy, need, exactBatches, batches, makes }: ExplodedRecipe): string[] {
  const [batch] = recipe.makes;
  const uses = usedBy.map((use) => `${plainAmount(use.need)} for ${use.by}`);
  const rounded = !batches.equals(exactBatches);
  return [
    uses.length === 1 ? (uses[0] as string) : `${uses.join(' + ')} ${comesTo(need)}`,
    `${plainAmount(need)} ÷ ${plainAmount(batch)} a batch ${signedNumber(exactBatches)} ${exactBatches.lte(1n) ? 'batch' : 'batches'}`,
    ...(rounded ? [`up to ${recipe.batches} batches: ${batchesText(batches)}`] : []),
    ...(rounded ? [`${batchesText(batches)} × ${plainAmount(batch)} ${comesTo(makes)}`] : []),
  ];
}
