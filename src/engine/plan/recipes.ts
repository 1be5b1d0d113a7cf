import type { ExplodedRecipe } from '../food/explode.ts';
import type { MeasureSystem } from '../measure/units.ts';
import { several, statement } from '../text/statement.ts';
import type { PlannedRecipe, Why } from './event-plan.ts';
import { batchesSaid, comesTo, oneOrMany, plainAmount, signedBatches } from './figure-text.ts';

/** A recipe of the explosion with the why of its batches: the needs summed, divided by a batch, rounded once. */
export function plannedRecipe(exploded: ExplodedRecipe, measures: MeasureSystem): PlannedRecipe {
  const { recipe, usedBy, need, batches, makes, lines } = exploded;
  return { recipe, usedBy, need, batches, makes, lines, why: whyOf(exploded, measures) };
}

function whyOf(
  { recipe, usedBy, need, exactBatches, batches, makes }: ExplodedRecipe,
  measures: MeasureSystem,
): Why {
  const [batch] = recipe.makes;
  const uses = usedBy.map((use) => statement('why.use', { amount: plainAmount(use.need), for: use.by }));
  const [only, ...others] = uses;
  const rounded = !batches.equals(exactBatches);
  return [
    only && others.length === 0
      ? only
      : statement('why.uses', { uses: several('plus', uses), result: comesTo(need) }),
    statement('why.batches-needed', {
      amount: plainAmount(need),
      batch: plainAmount(batch),
      result: signedBatches(exactBatches, measures),
      n: oneOrMany(exactBatches, measures),
    }),
    ...(rounded
      ? [
          statement('why.batches-rounded', { to: recipe.batches, batches: batchesSaid(batches, measures) }),
          statement('why.batches-make', {
            batches: batchesSaid(batches, measures),
            batch: plainAmount(batch),
            result: comesTo(makes),
          }),
        ]
      : []),
  ];
}
