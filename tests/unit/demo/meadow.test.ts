import { beforeAll, describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';

const ID = 'osier-meadow-cookout';
const today = '2027-04-26' as Day;

async function planIn(book: Book): Promise<PrepPlanDocument> {
  const planned = await plannedEvent(book, ID, today);
  if (!planned.ok || !planned.value.plan.ok) throw new Error('the cookout has a plan');
  return planned.value.plan.value;
}

/** The Book with as many cooks more as one for each 30 guests come to: three instead of two. */
function withThreeCooks(book: Book): Book {
  const offers = (book.offers.get(ID) ?? []).map((offer) => ({
    ...offer,
    terms: {
      ...offer.terms,
      staff: offer.terms.staff.map((role) => (role.role === 'cook' ? { ...role, per: 30 } : role)),
    },
  }));
  return { ...book, offers: new Map([...book.offers, [ID, offers as never]]) };
}

describe('the cookout in a meadow that has nothing', () => {
  let book: Book;
  let plan: PrepPlanDocument;
  beforeAll(async () => {
    const read = await readBook('content');
    if (!read.book) throw new Error('the demo kitchen has a Book');
    book = read.book;
    plan = await planIn(book);
  });

  test('is told the one thing that does not fit, and what it is told works', async () => {
    expect(plan.findings).toMatchInlineSnapshot(`
      [
        {
          "about": "Zucchini and mushroom skewers",
          "wayOut": "what works: one more cook on site",
          "what": "is done at 11:40 and first served at 12:30: it stands 50 min, but holds its quality for 30 min",
        },
      ]
    `);
    expect((await planIn(withThreeCooks(book))).findings).toEqual([]);
  });

  test('takes along what the meadow lacks', () => {
    const line = (item: RegExp) => plan.packOut.filter((each) => item.test(each.item));
    const kit = [
      'Hand-washing stations',
      'Water for washing',
      'Water for cleaning',
      'Canopies',
      'Drinking water',
    ];
    for (const item of kit) expect(line(new RegExp(`^${item}`)), item).toHaveLength(1);
    expect(line(/^Plain water/)[0]?.note).toBe('filled at home: the place has no water');
    // Coffee is brewed there, so its water goes along as well.
    expect(plan.labels.find(({ dish }) => dish === 'Water')).toMatchObject({
      goesInto: 'Coffee off the burner',
    });
    expect(line(/^Two-ring gas burner$/)[0]?.count).toBe(1);
    // Nothing that it brings needs a socket.
    expect(plan).not.toHaveProperty('power');
    expect(line(/\bcords\b/i)).toEqual([]);
  });

  test('weighs its water and its ice with the rest', () => {
    // 15 gal of kit water at 8.3454 lb, 41.7 lb of plain water, 126.3 lb of ice and more: well over a quarter of a ton in all.
    const pounds = Number.parseInt(plan.van?.weight ?? '', 10);
    expect(plan.van).toMatchObject({ runs: 1, payload: '2200 lb' });
    expect(pounds).toBeGreaterThan(1400);
    expect(plan.van?.unweighed).toEqual(['Bottle openers on a string', 'kit']);
  });

  test('feeds its crew cold, in containers of their own', () => {
    const crew = plan.labels.filter(({ guests }) => guests.startsWith('CREW MEAL'));
    expect(crew.map(({ dish, hold }) => [dish, hold])).toEqual([
      ['Leek and aged cheese tart (crew)', 'cold'],
      ['Green lentils with pickled onion (crew)', 'cold'],
    ]);
    expect(plan.dishes.some(({ recipe }) => recipe === 'leek-and-cheese-tart')).toBe(false);
  });
});
