import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import type { Path } from '../book/files/place-of.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { ItemKey } from '../book/item.ts';
import { addDays, type Day } from '../engine/calendar/day.ts';
import type { Package } from '../engine/menu/package.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import { Decimal } from '../engine/money/decimal.ts';
import { displayMoney } from '../engine/money/display-money.ts';
import { money, roundToMinor } from '../engine/money/money.ts';
import { packageCostPerHead } from '../engine/plan/money/package-cost.ts';
import { countedForTier, findTier, type PriceTier } from '../engine/quote/tiers.ts';
import { counted } from '../engine/text/counted.ts';

/**
 * Packages whose food alone costs more than they are sold for: at their first price step where it does even with the most guests it is for
 * (an open step: with its first), since few guests share whole batches; and at the count of a proposal still to
 * be answered. Food without a price is not counted, which makes the cost too low, never too high.
 */
export function packagesBelowCost(book: Book, today: Day): Finding[] {
  const steps = [...book.packages.values()].flatMap((chosen) => {
    const told = tiersOf(chosen).flatMap((tier) => {
      const guests = Math.max(tier.to ?? tier.from, chosen.minimumGuests, 1);
      return belowCost(book, chosen, tier, guests, today, `package/${chosen.id}`, ['price']);
    });
    return told.slice(0, 1);
  });
  const open = [...book.proposals.values()].filter(
    ({ id, date, withdrawn }) => date >= today && !withdrawn && !book.events.has(id) && !book.offers.has(id),
  );
  return [...steps, ...open.flatMap((proposal) => atProposedCount(book, proposal))];
}

function atProposedCount(book: Book, { id, date, guests, packages }: Proposal): Finding[] {
  const buying = addDays(date, -book.kitchen.buying);
  return packages.flatMap((chosen) => {
    const count = Math.max(countedForTier(chosen, guests), 1);
    const tiers = tiersOf(chosen);
    if (tiers.length === 0) return [];
    return belowCost(book, chosen, findTier(tiers, count), count, buying, `proposal/${id}`, ['packages']);
  });
}

function tiersOf({ price }: Package): readonly PriceTier[] {
  return price.kind === 'tiers' ? price.tiers : [];
}

function belowCost(
  book: Book,
  chosen: Package,
  { perHead }: PriceTier,
  guests: number,
  day: Day,
  item: ItemKey,
  path: Path,
): Finding[] {
  const { kitchen, prices } = book;
  const overage = kitchen.overage.get(chosen.style) ?? new Fraction(0n);
  const { amount } = packageCostPerHead(chosen, guests, overage, prices, day);
  if (amount.lte(new Decimal(perHead))) return [];
  const show = (sum: Decimal) =>
    displayMoney(roundToMinor(money(sum.toFixed(), kitchen.currency)), kitchen.locale);
  const what = `the food of ${chosen.id} costs ${show(amount)} per guest with ${counted(guests, 'guest')}, but it is sold for ${show(new Decimal(perHead))}`;
  const wayOut =
    'check the packs and prices of its most expensive dish and the amounts in its recipe, or raise the price';
  return [findingAt(book, 'package-below-cost', item, path, what, wayOut, 'key')];
}
