import type { Day } from '../../calendar/day.ts';
import type { IngredientUse } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { PackChoice } from '../../purchase/choose-packs.ts';
import type { PricedPack } from '../../purchase/price-list.ts';
import type { PlanFinding } from '../event-plan.ts';
import { unitsText } from '../figure-text.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';
import { gapText } from './gap-text.ts';

/** Preparations of a food whose loss nobody has stated, so that nothing is bought for it. */
export function missingYields(ingredient: Ingredient, uses: readonly IngredientUse[]): PlanFinding[] {
  const unsaid = uses.filter((use) => use.yield.basis === 'unsaid');
  return [...new Set(unsaid.map(({ line }) => line.preparation))].map((preparation) => ({
    about: ingredient.id,
    what: `nothing extra is bought for what ${ingredient.name} loses when ${preparation ?? 'made ready'}: its yield is not stated`,
    wayOut: `add a default yield to ${ingredient.id}${preparation ? `, or one for “${preparation}”` : ''}`,
  }));
}

/** What the owner should know of the packs chosen for a food, or of why there are none. */
export function packFindings(
  ingredient: Ingredient,
  need: Quantity,
  packs: readonly PricedPack[],
  choice: PackChoice,
  day: Day,
  kitchen: BuyingKitchen,
): PlanFinding[] {
  const { id, name, pinned } = ingredient;
  const findings: PlanFinding[] = [];
  const tell = (what: string, wayOut: string) => findings.push({ about: id, what, wayOut });
  if (packs.length === 0) {
    tell(
      `no price list offers ${name} on ${day}`,
      `add a pack of ${id} with its price to prices/<supplier>.csv`,
    );
  } else if (choice.lines.length === 0 && need.amount.n > 0n) {
    const units = [...new Set(choice.unreachable.map(({ contents }) => contents.unit))]
      .map(unitsText)
      .join(', ');
    tell(
      `${name} is needed in ${unitsText(need.unit)} but sold in ${units}, and there is no conversion between them`,
      `add a conversion to ${id}, such as 1 ${choice.unreachable[0]?.contents.unit} = … ${need.unit}`,
    );
  }
  if (pinned && choice.pinnedMissing && packs.length > 0) {
    tell(
      `the pack to buy, ${pinned.supplier} ${pinned.pack}, is not on offer on ${day}; other packs were chosen`,
      `correct buy: at ${id}, or write that pack in prices/${pinned.supplier}.csv`,
    );
  }
  if (choice.gap.gt(0)) {
    tell(
      `there may be a cheaper mix of packs, by at most ${gapText(choice.gap, kitchen)}`,
      `pin a pack with buy: at ${id}, or leave it as it is`,
    );
  }
  return findings;
}
