import type { PackRule, PackStage, Recipe } from '../../../engine/food/recipe.ts';
import type { Container } from '../../../engine/kitchen/container.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/** The stages in the order in which food goes through them. */
export const PACK_STAGES: readonly PackStage[] = ['chill', 'carry', 'serve'];

const SO_MUCH_EACH = /^(.+) per (\S+)$/;

/** Containers by stage: `full-pan-2` fills it by its capacity, `24 pieces per half-sheet` says how much goes in. */
export function linkPackRules(
  reading: Reading,
  text: RecipeText['pack'],
  containers: ReadonlyMap<string, Container>,
): Recipe['pack'] {
  const rules: Partial<Record<PackStage, PackRule>> = {};
  for (const stage of PACK_STAGES) {
    const words = text?.[stage];
    if (words === undefined) continue;
    const [, amount, named = words] = SO_MUCH_EACH.exec(words) ?? [];
    const path = ['pack', stage];
    const container = lookUp(reading, 'container', named.trim(), containers, path);
    const each = amount === undefined ? undefined : reading.understand(path, amount, parseQuantity);
    if (container) rules[stage] = { container: container.id, each };
  }
  return rules;
}
