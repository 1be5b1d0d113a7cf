import { describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { dayDeliveries } from '../../../src/views/kitchen/day/deliveries-of.ts';
import { dayPaper } from '../../../src/views/kitchen/day/paper-of.ts';
import type { DayShopping, DayTaskList } from '../../../src/views/kitchen/day/view.ts';
import { day } from '../plan/builders.ts';

const FRIDAY = day('2027-05-14');
const SATURDAY = '2027-05-15';
const IN_WORDS = new Map([
  ['2027-05-14', 'Friday, May 14, 2027'],
  [SATURDAY, 'Saturday, May 15, 2027'],
]);

type Check = Partial<PrepPlanDocument['safetySheet']['checks'][number]>;

/** An event of Saturday as far as its days' papers read it. */
function plan(
  occasion: string,
  given: {
    checks?: Check[];
    tasks?: [date: string, recipe: string][];
    recipes?: unknown[];
    packs?: unknown[];
  },
): PrepPlanDocument {
  const tasks = given.tasks ?? [['2027-05-14', 'stew']];
  return {
    event: {
      id: occasion.toLowerCase(),
      occasion,
      client: 'Thistle Brackenrow',
      date: SATURDAY,
      dateText: IN_WORDS.get(SATURDAY),
      serveAt: '18:00',
      place: '',
      venue: [{ label: 'name', value: 'Net loft' }],
      guests: { adults: 40, children: 1, vendors: 0, staff: 0 },
    },
    timeline: [{ part: 'leave', begins: '16:10' }],
    days: [...IN_WORDS].map(([date, dateText]) => ({
      date,
      dateText,
      pictures: [],
      tasks: tasks.filter(([on]) => on === date).map(([, recipe]) => ({ recipe })),
    })),
    recipes: given.recipes ?? [],
    orders: [{ supplier: 'quay', name: 'Quay Stores', deliverOn: '2027-05-14' }],
    shopping: given.packs ?? [],
    safetySheet: {
      edition: 'FDA Food Code 2022',
      defers: 'the local code decides',
      checks: (given.checks ?? []).map((check) => ({
        stage: 'cooling',
        date: '2027-05-14',
        when: IN_WORDS.get('2027-05-14'),
        recipe: 'stew',
        what: 'Stew',
        limit: '41 °F within 6 h',
        section: '3-501.14',
        blanks: ['started', 'after 2 h', 'time', 'initials'],
        ...check,
      })),
    },
  } as unknown as PrepPlanDocument;
}

const paperOf = (plans: PrepPlanDocument[], lists: DayTaskList[] = []) =>
  dayPaper(FRIDAY, plans, plans, [], lists, { shopping: null, events: new Set() }, 'en-US');

const delivery: Check = {
  stage: 'receiving',
  date: '',
  when: 'on delivery',
  recipe: '',
  what: 'Quay Stores: Butter; Cream',
  limit: '41 °F or below',
};
const butter = {
  name: 'Butter',
  packs: [{ supplier: 'quay', supplierName: 'Quay Stores', count: 3, pack: '1 lb' }],
};

describe('a day on paper', () => {
  test('logs what is the same for two events once, a row for each reading, and nothing that is measured elsewhere', () => {
    const away: Check[] = [
      { stage: 'transport', date: SATURDAY, when: IN_WORDS.get(SATURDAY) ?? '' },
      { stage: 'cooking', date: '2027-05-14', when: 'at serving', what: 'Fish' },
      delivery,
    ];
    const { log } = paperOf([plan('Supper', { checks: [{}, ...away] }), plan('Lunch', { checks: [{}] })]);
    expect(log.map(({ stage, what, event, readings }) => [stage, what, event, readings])).toEqual([
      ['cooling', 'Stew', 'Supper and Lunch', ['started', 'after 2 h']],
    ]);
  });

  test('says what tomorrow needs thawed, and what stands overnight', () => {
    const frozen: Check = { stage: 'thawing', date: '', when: 'before use', what: 'Peas; Stock cubes' };
    const soup = {
      id: 'soup',
      name: 'Pea soup',
      lines: [
        { name: 'Peas', amount: { printed: '4 lb' } },
        { name: 'Leeks', amount: { printed: '2 lb' } },
      ],
    };
    // What was begun on an earlier day has its peas already.
    const begun = {
      id: 'stew',
      name: 'Stew',
      lines: [{ name: 'Stock cubes', amount: { printed: '6 each' } }],
    };
    const supper = plan('Supper', {
      checks: [frozen],
      tasks: [
        ['2027-05-14', 'stew'],
        [SATURDAY, 'soup'],
        [SATURDAY, 'stew'],
      ],
      recipes: [soup, begun],
    });
    const task = (recipeName: string, ends: number) => ({
      recipeName,
      text: 'Prove in the cold.',
      hours: { begins: 1200, handsOff: 1210, ends, to: '6:00' },
    });
    const list = {
      name: 'Bakery',
      handsOn: '',
      tasks: [task('Rolls', 1800), task('Crackers', 1300)],
    } as unknown as DayTaskList;
    expect(paperOf([supper], [list]).tomorrow).toEqual([
      { what: 'Thaw: Peas', why: '4 lb for Pea soup' },
      { what: 'Rolls', why: 'Prove in the cold. Ready at 6:00.' },
    ]);
  });

  test('names each event with its guests and place, and its hours on its own day alone', () => {
    expect(paperOf([plan('Supper', {})]).events).toEqual([
      {
        occasion: 'Supper',
        client: 'Thistle Brackenrow',
        guests: '40 adults, 1 child',
        place: 'Net loft',
        leaves: '',
        serves: '',
        servedOn: 'Saturday, May 15, 2027',
      },
    ]);
  });
});

describe('deliveries', () => {
  test('are those of each event’s own order, with what the code asks of each food', () => {
    const supper = plan('Supper', { checks: [delivery], packs: [butter] });
    expect(dayDeliveries(FRIDAY, [supper], null, new Set())).toEqual([
      {
        supplier: 'Quay Stores',
        events: ['Supper'],
        lines: [{ name: 'Butter', packs: '3 × 1 lb', limit: '41 °F or below' }],
      },
    ]);
    expect(dayDeliveries(day(SATURDAY), [supper], null, new Set())).toEqual([]);
  });

  test('of one order for several events come once, and not by their own orders too', () => {
    const supper = plan('Supper', { checks: [delivery], packs: [butter] });
    const shopping = {
      events: ['Supper, Saturday', 'Lunch, Saturday'],
      rounds: [
        {
          orders: [{ name: 'Quay Stores', deliverOn: '2027-05-14' }],
          lines: [
            { name: 'Butter', packs: ['5 × 1 lb, Quay Stores'] },
            { name: 'Salt', packs: ['1 × 3 lb, Dry Goods'] },
          ],
        },
      ],
    } as unknown as DayShopping;
    expect(dayDeliveries(FRIDAY, [supper], shopping, new Set(['supper']))).toEqual([
      {
        supplier: 'Quay Stores',
        events: ['Supper, Saturday; Lunch, Saturday'],
        lines: [{ name: 'Butter', packs: '5 × 1 lb', limit: '41 °F or below' }],
      },
    ]);
  });
});
