import type { Day } from '../../calendar/day.ts';
import type { IngredientUse } from '../../food/explode.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { PackChoice } from '../../purchase/choose-packs.ts';
import type { PricedPack } from '../../purchase/price-list.ts';
import { type Statement, several, statement } from '../../text/statement.ts';
import type { PlanFinding } from '../event-plan.ts';
import { unitsText } from '../figure-text.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';
import { gapText } from './gap-text.ts';

/** Preparations of a food whose loss nobody has stated, so that nothing is bought for it. */
export function missingYields(ingredient: Ingredient, uses: readonly IngredientUse[]): PlanFinding[] {
  const unsaid = uses.filter((use) => use.yield.basis === 'unsaid');
  return [...new Set(unsaid.map(({ line }) => line.preparation))].map((preparation) => ({
    about: ingredient.id,
    what: preparation
      ? statement('found.no-yield', { food: ingredient.name, preparation })
      : statement('found.no-yield-ready', { food: ingredient.name }),
    wayOut: preparation
      ? statement('found.no-yield.way', { food: ingredient.id, preparation })
      : statement('found.no-yield-ready.way', { food: ingredient.id }),
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
  const tell = (what: Statement, wayOut: Statement) => findings.push({ about: id, what, wayOut });
  if (packs.length === 0) {
    tell(
      statement('found.no-price', { food: name, day: { day } }),
      statement('found.no-price.way', { food: id }),
    );
  } else if (choice.lines.length === 0 && need.amount.n > 0n) {
    const units = [...new Set(choice.unreachable.map(({ contents }) => contents.unit))];
    tell(
      statement('found.no-conversion', {
        food: name,
        units: unitsText(need.unit),
        others: several('comma', units.map(unitsText)),
      }),
      statement('found.add-conversion', { food: id, from: units[0] ?? '', to: need.unit }),
    );
  }
  if (pinned && choice.pinnedMissing && packs.length > 0) {
    tell(
      statement('found.pinned-missing', { supplier: pinned.supplier, pack: pinned.pack, day: { day } }),
      statement('found.pinned-missing.way', { food: id, supplier: pinned.supplier }),
    );
  }
  if (choice.gap.gt(0)) {
    tell(
      statement('found.cheaper-mix', { sum: gapText(choice.gap, kitchen) }),
      statement('found.cheaper-mix.way', { food: id }),
    );
  }
  return findings;
}
