import { Decimal } from '../money/decimal.ts';
import { counted } from '../text/counted.ts';
import { type Counts, countGuests, type Guests } from './counts.ts';
import { wholeBelow } from './ratio.ts';

/** The price per adult while the counted guests, rounded down, lie from `from` to `to`, both included. */
export interface PriceTier {
  readonly from: number;
  /** null: and any more. */
  readonly to: number | null;
  /** Money text; may be finer than the currency's minor unit. */
  readonly perHead: string;
}

/** The guest count that picks a package's tier: those counted, rounded down, and at least the minimum billed. */
export function countedForTier(
  chosen: { readonly tierCounts: Counts; readonly minimumGuests: number },
  guests: Guests,
): number {
  return Math.max(Number(wholeBelow(countGuests(guests, chosen.tierCounts))), chosen.minimumGuests);
}

/**
 * The tier that holds a count. A count under the first tier takes the first, one over the last takes the last,
 * so that a price can be shown while a count is being typed; `checkChoice` refuses what is over.
 * Throws where there are no tiers at all.
 */
export function findTier(tiers: readonly PriceTier[], count: number): PriceTier {
  const found = tiers.findLast((tier) => tier.from <= count) ?? tiers[0];
  if (!found) throw new RangeError('a package needs at least one price tier');
  return found;
}

/** Whether a later tier costs more than the one before it. */
export function hasRise(tiers: readonly PriceTier[]): boolean {
  return tiers.some(({ perHead }, index) => {
    const before = tiers[index - 1];
    return before !== undefined && new Decimal(perHead).gt(before.perHead);
  });
}

/**
 * What is wrong with a package's tiers, a sentence each: none at all, bounds that are no counts or run backwards,
 * overlaps, gaps, a tier after an open one, and a first tier that leaves guests under the minimum unpriced.
 */
export function tierProblems(tiers: readonly PriceTier[], minimumGuests: number): string[] {
  const first = tiers[0];
  if (!first)
    return ['There is no price tier. Write at least one: from how many guests, and the price per guest.'];
  const problems: string[] = [];
  const start = Math.max(1, minimumGuests);
  if (first.from > start) {
    problems.push(`The first tier starts at ${counted(first.from, 'guest')}; start it at ${start} or below.`);
  }
  for (const [index, tier] of tiers.entries()) {
    if (!isCount(tier.from) || (tier.to !== null && !isCount(tier.to))) {
      problems.push(`Tier ${index + 1} must run between whole guest counts from 1 to 100000.`);
    } else if (tier.to !== null && tier.to < tier.from) {
      problems.push(`The tier from ${tier.from} ends before it starts, at ${tier.to}. Swap the two.`);
    }
    const next = tiers[index + 1];
    if (!next) continue;
    if (tier.to === null) {
      problems.push(
        `The tier from ${tier.from} has no end, but another starts at ${next.from}. End it before that.`,
      );
    } else if (next.from <= tier.to) {
      problems.push(
        `The tiers overlap: ${counted(next.from, 'guest')} ${next.from === 1 ? 'is' : 'are'} priced twice. Start the later tier at ${tier.to + 1}.`,
      );
    } else if (next.from > tier.to + 1) {
      problems.push(
        `No tier prices ${counted(tier.to + 1, 'guest')}. Start the tier from ${next.from} there.`,
      );
    }
  }
  return problems;
}

function isCount(count: number): boolean {
  return Number.isInteger(count) && count >= 1 && count <= 100_000;
}
