import { money } from '../money/money.ts';
import { countGuests, type Guests } from './counts.ts';
import type { LineWhy } from './line-why.ts';
import { type PricedLine, pricedLine } from './priced-line.ts';
import { decimalRatio, timesWhole, wholeAbove } from './ratio.ts';
import type { PackageTerms, StaffTerms, Terms } from './terms.ts';

/** How many people of a role serve so many guests: the ratio, up to whole people, and at least the minimum. */
export function peopleFor(role: StaffTerms, guests: Guests): number {
  const counted = countGuests(guests, role.counts);
  const due = wholeAbove({ over: counted.over * BigInt(role.one), under: counted.under * BigInt(role.per) });
  return Math.max(Number(due), role.atLeast);
}

/** The people who serve, by role: whole people × hours × the price of an hour. */
export function staffLines(terms: Terms, chosen: PackageTerms, guests: Guests): PricedLine[] {
  return terms.staff.flatMap((role) => {
    if (role.packages && !role.packages.includes(chosen.id)) return [];
    const people = peopleFor(role, guests);
    if (people === 0) return [];
    const hours = decimalRatio(role.hours);
    const unitPrice = money(role.rate, terms.currency);
    const { one, per, counts, atLeast } = role;
    const why = (): LineWhy => ({
      of: 'service',
      one,
      per,
      guests,
      counts,
      atLeast,
      people,
      hours: role.hours,
    });
    const line = { key: `staff:${role.role}`, name: role.name, class: 'labour' as const, unitPrice, why };
    return [pricedLine(line, timesWhole(hours, BigInt(people)))];
  });
}
