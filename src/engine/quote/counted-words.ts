import { counted } from '../text/counted.ts';
import { type Counts, countGuests, GUEST_GROUPS, type GuestGroup, type Guests } from './counts.ts';
import { ratioText } from './ratio.ts';

const ONE: Readonly<Record<GuestGroup, string>> = {
  adults: 'adult',
  children: 'child',
  vendors: 'vendor meal',
  staff: 'crew member',
};

/** What each group is called where it is counted. */
export const GROUP_WORDS: Readonly<Record<GuestGroup, string>> = {
  adults: 'adults',
  children: 'children',
  vendors: 'vendor meals',
  staff: 'crew',
};

/** Whom a rule counts, for the kitchen; what a client reads is worded in `views/counted-text.ts`: `adults and children`, `adults, children at 1/2 and vendor meals`; `nobody` for none. */
export function countsWords(counts: Counts): string {
  const groups = GUEST_GROUPS.flatMap((group) => {
    const weight = counts[group];
    if (weight === undefined) return [];
    return weight === '1' ? [GROUP_WORDS[group]] : [`${GROUP_WORDS[group]} at ${weight}`];
  });
  return groups.length === 0 ? 'nobody' : listWords(groups);
}

/** `food, drink and service charge`; `nothing` for none. */
export function listWords(words: readonly string[]): string {
  const last = words.at(-1);
  if (last === undefined) return 'nothing';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/**
 * How many a rule counts and who they are: `96 adults and children`, `118 adults` where no child comes,
 * `87 guests, adults and children at 1/2`.
 */
export function countedWords(guests: Guests, counts: Counts): string {
  const some = GUEST_GROUPS.filter((group) => counts[group] !== undefined && guests[group] > 0);
  const total = ratioText(countGuests(guests, counts));
  const [only] = some;
  if (only === undefined) return '0 guests';
  const own: Counts = Object.fromEntries(some.map((group) => [group, counts[group]]));
  if (some.some((group) => counts[group] !== '1')) return `${counted(total, 'guest')}, ${countsWords(own)}`;
  return some.length === 1 && guests[only] === 1 ? counted(1, ONE[only]) : `${total} ${countsWords(own)}`;
}
