import { type Counts, GUEST_GROUPS, type GuestGroup } from './counts.ts';

/** What each group is called where it is counted. */
const GROUP_WORDS: Readonly<Record<GuestGroup, string>> = {
  adults: 'adults',
  children: 'children',
  vendors: 'vendor meals',
  staff: 'crew',
};

/** Whom a rule counts, in findings; what a client reads is worded in `exports/words/counted-text.ts`: `adults and children`, `adults, children at 1/2 and vendor meals`; `nobody` for none. */
export function countsWords(counts: Counts): string {
  const groups = GUEST_GROUPS.flatMap((group) => {
    const weight = counts[group];
    if (weight === undefined) return [];
    return weight === '1' ? [GROUP_WORDS[group]] : [`${GROUP_WORDS[group]} at ${weight}`];
  });
  return groups.length === 0 ? 'nobody' : listWords(groups);
}

/** `food, drink and service charge`; `nothing` for none. */
function listWords(words: readonly string[]): string {
  const last = words.at(-1);
  if (last === undefined) return 'nothing';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
