import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { findingsOn } from '../../../src/check/findings-on.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import { type Change, copyOf } from '../../commands/kitchen-copy.ts';

const DEMO = join(import.meta.dirname, '../../../content');
/** Before any of the proposals looked at became an event. */
const TODAY = '2027-04-26' as Day;

async function demoWith(...changes: readonly Change[]): Promise<Book> {
  const { book } = await readBook(copyOf(DEMO, changes));
  if (!book) throw new Error('the demo kitchen has a Book');
  return { ...book, events: new Map() };
}

/** Gaps in what a proposal's menus have for its guests: where, and the way out. */
function gapsOf(book: Book, proposal: string): string[] {
  return findingsOn(book, TODAY)
    .filter(({ code, place }) => code === 'need-not-fed' && place.file === `proposals/${proposal}.md`)
    .map(({ what, wayOut }) => `${what} — ${wayOut}`);
}

const NOTHING_LEFT_OUT: Change = [
  'recipes/beet-and-goat-cheese.mdx',
  'without:\n  fresh-goat-cheese: vegan, milk\n  hazelnut-crumb: tree nuts\n',
  '',
];

describe('the demo kitchen and its guests’ needs', () => {
  it('has had a gap, which is named with dishes that would fill it, and has filled it by what can be left out', async () => {
    const before = gapsOf(await demoWith(NOTHING_LEFT_OUT), 'farrowick-wedding');
    const first = before.filter((gap) => gap.includes('“First”'));
    expect(first.map((each) => each.split(' — ')[0]).sort()).toEqual([
      '“First” of quay-supper: nothing for 1 × allergy: tree nuts',
      '“First” of quay-supper: nothing for 2 × vegan',
    ]);
    for (const gap of first) expect(gap).toMatch(/— .*[a-z]+(-[a-z]+)+/);
    const after = gapsOf(await demoWith(), 'farrowick-wedding');
    expect(after.filter((gap) => gap.includes('“First”'))).toEqual([]);
  });

  it('feeds everybody who has stated a need, at the stations by what any of them has', async () => {
    const gapsIn = (book: Book) =>
      [...book.proposals.keys()].flatMap((id) =>
        gapsOf(book, id).map((gap) => `${id}: ${gap.split(' — ')[0]}`),
      );
    const book = await demoWith();
    expect(gapsIn(book)).toEqual([]);
    // Two stations have no main without meat or fish, and a third has; but no other has bread without gluten.
    const without = await demoWith([
      'packages/lantern-stations.mdx',
      '        instead of: yogurt-flatbreads\n        for: no gluten\n',
      '        role: side\n',
    ]);
    expect(gapsIn(without)).toEqual([
      'reading-room-opening: “The stations” of lantern-stations: no bread for 5 × no gluten',
    ]);
    expect(findingsOn(book, TODAY).filter(({ code }) => code === 'role-unknown')).toEqual([]);
  });

  it('can offer nothing with a sauce of which nobody has said what is in it, and is told which', async () => {
    const book = await demoWith([
      'ingredients/sauces-and-condiments.yaml',
      '  contains: fish (anchovy), barley\n',
      '',
    ]);
    const refused = [...book.proposals.values()].flatMap((proposal) => {
      const offer = nextOffer({ ...book, offers: new Map() }, proposal, '2027-01-18' as Day);
      return offer.ok ? [] : [offer.what];
    });
    expect(refused.length).toBeGreaterThan(0);
    expect(refused.join()).toMatch(/allergens are not stated for [a-z-]+ \(in .*Hake/);
  });
});
