import {
  type Counts,
  countGuests,
  GUEST_GROUPS,
  type GuestGroup,
  type Guests,
} from '../../engine/quote/counts.ts';
import { ratioText } from '../../engine/quote/ratio.ts';
import type { ScriptKey, ScriptSay } from '../../words/script-words.ts';

const GROUPS: Readonly<Record<GuestGroup, ScriptKey>> = {
  adults: 'group.adults',
  children: 'group.children',
  vendors: 'group.vendors',
  staff: 'group.crew',
};

const PEOPLE: Readonly<Record<GuestGroup, ScriptKey>> = {
  adults: 'adults',
  children: 'children',
  vendors: 'vendors',
  staff: 'crew',
};

/** Whom a rule counts, as the client reads it: `adults and children`, `adults and children at 1/2`; `nobody` for none. */
export function groupsText(say: ScriptSay, counts: Counts): string {
  const groups = GUEST_GROUPS.flatMap((group) => {
    const weight = counts[group];
    if (weight === undefined) return [];
    const name = say(GROUPS[group]);
    return weight === '1' ? [name] : [say('group.at', { group: name, weight })];
  });
  return groups.length === 0 ? say('group.none') : listText(say, groups);
}

/** `food, drink and labor`; empty for none. */
export function listText(say: ScriptSay, items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : say('list.and', { some: items.slice(0, -1).join(', '), last });
}

/**
 * How many a rule counts and who they are: `96 adults and children`, `118 adults` where no child comes,
 * `87 guests, adults and children at 1/2`.
 */
export function countedText(say: ScriptSay, guests: Guests, counts: Counts): string {
  const some = GUEST_GROUPS.filter((group) => counts[group] !== undefined && guests[group] > 0);
  const [only] = some;
  if (only === undefined) return say('guests', { n: 0 });
  const groups = groupsText(say, Object.fromEntries(some.map((group) => [group, counts[group]])));
  const count = ratioText(countGuests(guests, counts));
  if (some.some((group) => counts[group] !== '1'))
    return say('guests.who', { n: Number(count), count, groups });
  return some.length === 1
    ? say(PEOPLE[only], { n: guests[only] })
    : say('guests.several', { count, groups });
}
