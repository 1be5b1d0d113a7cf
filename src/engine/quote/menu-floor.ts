import { Decimal, ZERO } from '../money/decimal.ts';
import { type Money, roundToMinor } from '../money/money.ts';
import { type Counts, GUEST_GROUPS, type GuestGroup, type Guests, weightOf } from './counts.ts';
import { mealPrices } from './meal-prices.ts';
import type { PackageTerms } from './terms.ts';
import { countedForTier, findTier } from './tiers.ts';

/** One group of a party: how many there are, what each is worth and how much room each takes in the count. */
interface Share {
  readonly people: number;
  readonly worth: Decimal;
  /** Scaled to a whole number. */
  readonly room: number;
}

/**
 * The most that any smaller party of the same guests would pay for the menu, at the minor unit: the sum a larger
 * party never goes under. For each tier up to the party's own it fills that tier with the guests who bring most
 * for the room they take in the count, and at least to where the tier begins (`floorTiers`); as many of them as come, a
 * fraction of the last where guests count as fractions. Letting in a fraction is what makes the floor rise with every guest
 * added, whoever they are. A party under the minimum counts as billed at the minimum.
 */
export function menuFloor(chosen: PackageTerms, guests: Guests, currency: string): Money {
  const minimumCounts = chosen.minimumCounts ?? chosen.tierCounts;
  const scale = commonScale(chosen.tierCounts);
  const groups = GUEST_GROUPS.filter((group) => guests[group] > 0);
  const first = chosen.tiers.indexOf(findTier(chosen.tiers, chosen.minimumGuests));
  const own = chosen.tiers.indexOf(findTier(chosen.tiers, countedForTier(chosen, guests)));
  let most = ZERO;
  for (let index = first; index <= own; index += 1) {
    const tier = chosen.tiers[index];
    if (!tier) continue;
    const next = chosen.tiers[index + 1];
    // Counts are rounded down to find a tier, so it holds everything short of the next one's first guest.
    const room = next ? next.from * scale - 1 : null;
    // The tier of the minimum holds smaller parties too; any other has only those that reach it, at whatever price.
    const least = index === first || chosen.floorTiers !== 'reached' ? 0 : tier.from * scale;
    const prices = mealPrices(chosen, tier, currency);
    const paying = groups.map((group): Share => {
      const worth = group === 'staff' ? ZERO : prices[group].amount;
      return { people: guests[group], worth, room: scaledWeight(chosen.tierCounts, group, scale) };
    });
    most = Decimal.max(most, fill(paying, least, room));
    if (chosen.minimumGuests === 0) continue;
    // Under the minimum each guest also takes the place of a part of an adult who would have been billed.
    const replacing = paying.map((share, at) => {
      const weight = weightOf(minimumCounts, groups[at] ?? 'staff');
      const saved = prices.adults.amount.times(Number(weight.over)).div(Number(weight.under));
      return { ...share, worth: share.worth.minus(saved) };
    });
    most = Decimal.max(
      most,
      fill(replacing, least, room).plus(prices.adults.amount.times(chosen.minimumGuests)),
    );
  }
  return roundToMinor({ amount: most, currency });
}

/**
 * The most worth that fits: best worth for its room first, then as much of the next as there is room for. Guests who
 * bring nothing come in only to reach the least, those first who cost least for the room they take.
 */
function fill(shares: readonly Share[], least: number, room: number | null): Decimal {
  const best = [...shares].sort((a, b) => b.worth.times(a.room).comparedTo(a.worth.times(b.room)));
  let filled = 0;
  let total = ZERO;
  const takeIn = ({ people, worth, room: each }: Share, most: number | null) => {
    if (most === null || filled + each * people <= most) {
      total = total.plus(worth.times(people));
      filled += each * people;
    } else {
      total = total.plus(worth.times(most - filled).div(each));
      filled = most;
    }
  };
  for (const share of best) if (share.worth.gt(0)) takeIn(share, room);
  for (const share of best) if (!share.worth.gt(0) && share.room > 0 && filled < least) takeIn(share, least);
  return total;
}

/** A whole number that turns every weight of a list into a whole number. */
function commonScale(counts: Counts): number {
  const unders = GUEST_GROUPS.map((group) => Number(weightOf(counts, group).under));
  return [...new Set(unders)].reduce((product, under) => product * under, 1);
}

function scaledWeight(counts: Counts, group: GuestGroup, scale: number): number {
  const weight = weightOf(counts, group);
  return (Number(weight.over) * scale) / Number(weight.under);
}
