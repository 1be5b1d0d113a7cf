import type { RecipeLine } from '../../../engine/food/recipe.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';

/** Parts carried beside a recipe's food; one that no line calls for as a recipe is a finding. */
export function linkRecipeBeside(
  reading: Reading,
  written: readonly string[],
  lines: readonly RecipeLine[],
): string[] {
  const parts = lines.flatMap(({ item }) => (item.kind === 'recipe' ? [item.recipe.id] : []));
  return written.filter((id, index) => {
    if (parts.includes(id)) return true;
    const wayOut =
      suggestion(reading.ledger, id, parts) ?? 'write the id of a recipe that one of its lines uses';
    reading.say('unknown-id', ['served with', index], `no line of this recipe uses a recipe “${id}”`, wayOut);
    return false;
  });
}
