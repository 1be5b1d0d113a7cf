import { compareDays, type Day, daysBetween } from '../../calendar/day.ts';
import { keepsFor } from '../../purchase/spoilage.ts';
import type { PurchaseNeed } from './needs.ts';

/**
 * Parts the needs of several events into rounds of buying, each delivered before its first use. A food is bought
 * together for as long as it keeps (`keepsFor`) from the day it is first needed; what is needed later waits for the
 * next round, so that nothing is bought that spoils before it is used up. What keeps without end is bought for all
 * events in the first round. Each round has its own deliveries, fees and minimum orders.
 */
export function buyingRounds(needs: readonly PurchaseNeed[]): PurchaseNeed[][] {
  const rounds: PurchaseNeed[][] = [];
  for (const same of Map.groupBy(needs, ({ ingredient }) => ingredient.id).values()) {
    let round = 0;
    let from: Day | undefined;
    for (const each of same.toSorted((a, b) => compareDays(a.neededOn, b.neededOn))) {
      const keepsDays = keepsFor(each.ingredient);
      from ??= each.neededOn;
      const spoilt = keepsDays !== undefined && daysBetween(from, each.lastUse) > keepsDays;
      if (spoilt && each.neededOn > from) {
        round += 1;
        from = each.neededOn;
      }
      const bought = rounds[round] ?? [];
      rounds[round] = [...bought, each];
    }
  }
  return rounds;
}
