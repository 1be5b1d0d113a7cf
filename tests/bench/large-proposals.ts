import { addDays, type Day } from '../../src/engine/calendar/day.ts';
import type { Seeded } from './seeded.ts';

/** What becomes of a proposal of the large kitchen. */
export type LargeFate = 'draft' | 'offered' | 'expired' | 'coming' | 'past';

/** One proposal: its text, what becomes of it, and when it is issued and answered. */
export interface LargeProposal {
  readonly id: string;
  readonly fate: LargeFate;
  readonly text: string;
  readonly issued: Day;
  readonly answered: Day;
}

/** How many of the events are still to come; a kitchen that keeps its years has most of them behind it. */
const COMING_SHARE = 4;

/**
 * Proposals over some years: all that become events, every twentieth of the others a shared draft, every fifth
 * offered now, the rest expired.
 */
export function largeProposals(
  random: Seeded,
  { proposals, events, today }: { proposals: number; events: number; today: Day },
  packages: readonly string[],
): LargeProposal[] {
  return Array.from({ length: proposals }, (_, index) => {
    const fate = fateOf(index, events);
    const open = fate === 'draft' || fate === 'offered';
    const date =
      fate === 'coming' || open
        ? addDays(today, 10 + random.below(60))
        : addDays(today, -30 - random.below(1200));
    // What is open has been issued lately; all else in good time before its day.
    const issued = open || fate === 'coming' ? addDays(today, -10) : addDays(date, -60);
    const answered = addDays(issued, 2);
    const validUntil = open ? addDays(today, 7) : addDays(issued, 20);
    const id = `client-${String(index + 1).padStart(4, '0')}`;
    const text = proposalText(random, { index, date, validUntil, packages, draft: fate === 'draft' });
    return { id, fate, text, issued, answered };
  });
}

function fateOf(index: number, events: number): LargeFate {
  if (index < events) return index % COMING_SHARE === 0 ? 'coming' : 'past';
  if (index % 20 === 0) return 'draft';
  return index % 5 === 0 ? 'offered' : 'expired';
}

function proposalText(
  random: Seeded,
  given: { index: number; date: Day; validUntil: Day; packages: readonly string[]; draft: boolean },
): string {
  const { index, date, validUntil, packages, draft } = given;
  const adults = 40 + random.below(120);
  return `---
link: ${random.link()}
${draft ? 'share: draft\n' : ''}client:
  name: Client number ${index + 1}
  email: client${index + 1}@client.example
occasion: ${random.of(['Wedding supper', 'Summer lunch', 'Name day', 'Workshop supper', 'Reunion'])}
date: ${date}
serve at: ${random.of(['12:30', '13:00', '18:00', '19:00'])}
place: low-town
venue:
  name: Hall number ${index + 1}
  address: ${1 + random.below(90)} Lower Street
travel: ${10 + random.below(50)} min
valid until: ${validUntil}
guests: { adults: ${adults}, children: ${random.below(12)}, vendors: ${random.below(5)}, staff: ${4 + random.below(4)} }
needs:
  vegetarian: ${1 + random.below(8)}
  no gluten: ${1 + random.below(4)}
packages: ${random.some(packages, 3).join(', ')}
add-ons: coffee, late-hour
lines: 2
hours: 4 hours
---
Dear client number ${index + 1},

Thank you for the afternoon. I have put three menus side by side, since you could not say yet how many will come; move the count and see where they part ways.

Please tell us of any allergy as soon as you know, and let us talk to the guest if you can.

With warm wishes,

the kitchen
`;
}
