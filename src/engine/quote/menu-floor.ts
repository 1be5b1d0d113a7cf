import { Decimal, ZERO } from '../money/decimal.ts';
import { type Money, money, roundToMinor } from '../money/money.ts';
import { type Counts, GUEST_GROUPS, type Guests, weightOf } from './counts.ts';
import { mealPrices } from './meal-prices.ts';
import type { PackageTerms } from './terms.ts';
import { countedForTier, findTier } from './tiers.ts';

/** One group of a party: how many there are, what each is worth and how much room each takes, both scaled. */
interface Share {
  readonly people: number;
  readonly worth: Decimal;
  readonly room: bigint;
}

/**
 * The most that any smaller party of the same guests would pay for the menu, at the minor unit: the sum a larger
 * party never goes under. For each tier up to the party's own it fills that tier with the guests who bring most
 * for the room they take in the count; as many of them as come, a fraction of the last where guests count as
 * fractions. Letting in a fraction is what makes the floor rise with every guest added, whoever they are. A party
 * under the minimum counts as billed at the minimum.
 */
export function menuFloor(chosen: PackageTerms, guests: Guests, currency: string): Money {
  const scale = commonScale(chosen.tierCounts, chosen.minimumCounts ?? chosen.tierCounts);
  const first = chosen.tiers.indexOf(findTier(chosen.tiers, chosen.minimumGuests));
  const own = chosen.tiers.indexOf(findTier(chosen.tiers, countedForTier(chosen, guests)));
  let most = ZERO;
  for (let index = first; index <= own; index += 1) {
    const tier = chosen.tiers[index];
    if (!tier) continue;
    const next = chosen.tiers[index + 1];
    // Counts are rounded down to find a tier, so it holds everything short of the next one's first guest.
    const room = index === own || !next ? null : BigInt(next.from) * scale - 1n;
    const prices = mealPrices(chosen, tier, currency);
    const worths = {
      adults: prices.adults.amount,
      children: prices.children.amount,
      vendors: prices.vendors.amount,
      staff: ZERO,
    };
    const shares = (pull: Decimal) =>
      GUEST_GROUPS.map((group): Share => {
        const missed = pull.times(String(scaled(chosen.minimumCounts ?? chosen.tierCounts, group, scale)));
        return {
          people: guests[group],
          worth: worths[group].times(String(scale)).minus(missed),
          room: scaled(chosen.tierCounts, group, scale),
        };
      });
    const atMinimum = prices.adults.amount.times(chosen.minimumGuests).times(String(scale));
    most = Decimal.max(most, fill(shares(ZERO), room));
    if (chosen.minimumGuests > 0) {
      most = Decimal.max(most, fill(shares(prices.adults.amount), room).plus(atMinimum));
    }
  }
  return roundToMinor(money(most.div(String(scale)), currency));
}

/** The most worth that fits: best worth for its room first, then as much of the next as there is room for. */
function fill(shares: readonly Share[], room: bigint | null): Decimal {
  const wanted = shares.filter((share) => share.people > 0 && share.worth.gt(0));
  wanted.sort((a, b) => b.worth.times(String(a.room)).comparedTo(a.worth.times(String(b.room))));
  let left = room;
  let total = ZERO;
  for (const { people, worth, room: each } of wanted) {
    const whole = each * BigInt(people);
    if (left === null || whole <= left) {
      total = total.plus(worth.times(people));
      if (left !== null) left -= whole;
    } else {
      total = total.plus(worth.times(String(left)).div(String(each)));
      left = 0n;
    }
  }
  return total;
}

/** A whole number that turns every weight of both lists into a whole number. */
function commonScale(...lists: readonly Counts[]): bigint {
  const unders = lists.flatMap((counts) => GUEST_GROUPS.map((group) => weightOf(counts, group).under));
  return [...new Set(unders)].reduce((product, under) => product * under, 1n);
}

function scaled(counts: Counts, group: (typeof GUEST_GROUPS)[number], scale: bigint): bigint {
  const weight = weightOf(counts, group);
  return (weight.over * scale) / weight.under;
}
