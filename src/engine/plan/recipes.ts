import type { ExplodedRecipe } from '../food/explode.ts';
import { several, statement } from '../text/statement.ts';
import type { PlannedRecipe, Why } from './event-plan.ts';
import { batchesSaid, comesTo, oneOrMany, plainAmount, signedNumber } from './figure-text.ts';

/** A recipe of the explosion with the why of its batches: the needs summed, divided by a batch, rounded once. */
export function plannedRecipe(exploded: ExplodedRecipe): PlannedRecipe {
  const { recipe, usedBy, need, batches, makes, lines } = exploded;
  return { recipe, usedBy, need, batches, makes, lines, why: whyOf(exploded) };
}

function whyOf({ recipe, usedBy, need, exactBatches, batches, makes }: ExplodedRecipe): Why {
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
      result: signedNumber(exactBatches),
      n: oneOrMany(exactBatches),
    }),
    ...(rounded
      ? [
          statement('why.batches-rounded', { to: recipe.batches, batches: batchesSaid(batches) }),
          statement('why.batches-make', {
            batches: batchesSaid(batches),
            batch: plainAmount(batch),
            result: comesTo(makes),
          }),
        ]
      : []),
  ];
}
