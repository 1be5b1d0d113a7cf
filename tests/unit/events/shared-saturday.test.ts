import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { DayView } from '../../../src/views/kitchen/day/view.ts';
import { wholeSite } from '../views/whole-site.ts';
import { bookOf, changed, done, supperKitchen } from './supper-kitchen.ts';

const LUNCH = 'quarry-lunch';
const BRAISING = '2027-05-13';

/** The supper's kitchen with an oven and a cold room, the stew in pans of ten, and a stew that is braised in them. */
const KITCHEN = {
  ...changed(
    'kitchen.yaml',
    'containers:\n  tray: { name: Tray, holds: 20 pieces }\n',
    `containers:
  tray: { name: Tray, holds: 20 pieces }
  stew-pan: { name: Stew pan, holds: 10 servings }
equipment:
  oven: { name: Oven, count: 1, holds: 2 stew-pan, station: stove }
  cold-room: { name: Cold room, holds: 8 stew-pan }
`,
  ),
  ...changed(
    'recipes/lamb-stew.mdx',
    'hands-on: 30 min per batch }\nhold: hot\n',
    'hands-on: 30 min per batch, unattended: 2 h }\nhold: hot\npack: { chill: stew-pan, carry: stew-pan }\n',
  ),
  [`proposals/${LUNCH}.md`]: `---
link: qk4vxr2hq7tz3cwnb6ylpaj5gf
client: Odo Marsh
occasion: Lunch
date: 2027-05-15
serve at: 12:30
place: hill-town
valid until: 2027-05-01
guests: { adults: 40 }
needs: { milk: 1 }
packages: supper
choices:
  supper:
    Main: { lamb-stew: 22, pea-pot: 18 }
---
Dear Odo,
`,
};

/** The supper of 84 and a lunch of 40 on the same Saturday, both confirmed. */
async function saturday(): Promise<string> {
  const dir = await supperKitchen(KITCHEN);
  await done(dir, '2027-03-01', 'issue', LUNCH);
  const odo = ['--name', 'Odo Marsh', '--email', 'o@marsh.example'];
  await done(dir, '2027-04-01', 'accept', '--signed', LUNCH, ...odo);
  await done(dir, '2027-04-02', 'confirm', LUNCH);
  return dir;
}

/** The pages of days, by their date. */
async function daysOf(dir: string, today = '2027-05-02'): Promise<Map<string, DayView>> {
  const { pages } = await wholeSite(await bookOf(dir), null, today as Day);
  const views = pages.flatMap(({ view }) => (view.kind === 'day' ? [view] : []));
  return new Map(views.map((view) => [view.date, view]));
}

/** What a day's page says of what is reckoned over its events. */
function reckoned(day: DayView | undefined) {
  const order = day?.shopping;
  return {
    events: day?.events.map(({ id }) => id),
    tasks: day?.stations.flatMap(({ name, tasks }) =>
      tasks.map((task) => [
        `${name}: ${task.recipeName}`,
        ...task.amounts.map(({ event, makes }) => `${makes} for ${event}`),
      ]),
    ),
    cards: day?.recipes.map(({ card, fewer }) => [
      `${card.makes.printed} of ${card.name}`,
      ...card.lines.map(({ amount, name }) => `${amount.printed} ${name}`),
      ...card.usedBy.map(({ by, need }) => `${need.printed} for ${by}`),
      fewer,
    ]),
    loads: day?.loads.map(
      ({ equipment, containers, loads, minutes }) =>
        `${equipment}: ${containers} in ${loads} loads, ${minutes} min`,
    ),
    cold: [...(day?.cold.kinds.map(({ text, share }) => `${text}, ${share}`) ?? []), day?.cold.full],
    tooFull: day?.findings.map(({ about, what }) => `${about}: ${what}`),
    bought: order?.rounds.flatMap(({ lines }) =>
      lines.map(({ need, packs }) => [need, ...packs].join(' | ')),
    ),
    sums: order && [order.total, order.separate, order.saves],
    alerts: day?.alerts.map(({ event, alerts }) => [event, ...alerts.map(({ about }) => about)]),
  };
}

describe('two events that share a Saturday', () => {
  test('are braised, baked, chilled and bought for as one, with what falls to each', async () => {
    const day = (await daysOf(await saturday())).get(BRAISING);
    expect(reckoned(day)).toEqual({
      events: ['pell-supper', LUNCH],
      tasks: [['Stove: Lamb stew', '90 servings for Supper and Lunch']],
      cards: [
        [
          // 63 and 22 servings are 85, which is 9 whole batches of 10; apart 7 and 3. 9 × 4 lb of lamb, trimmed.
          '90 servings of Lamb stew',
          '36 lb Lamb neck',
          '63 servings for Lamb stew (Supper)',
          '22 servings for Lamb stew (Lunch)',
          '9 × the recipe together; separately it would take 10',
        ],
      ],
      // 63 ÷ 10 and 22 ÷ 10 are 7 and 3 pans; two at a time, five loads of two hours.
      loads: ['Oven: 10 × Stew pan in 5 loads, 600 min'],
      // 10 of 8.
      cold: ['10 × Stew pan, 125% of the Cold room', '125% of the Cold room is taken up.'],
      tooFull: ['Cold room: it would need 125% of its capacity'],
      bought: [
        // 9 batches × 4 lb ÷ 80 %.
        '45 lb | 5 × 10 lb box, Hill Farm',
        // 84 and 40 fritters are 6.2 batches: 2 lb of beans and a quart of yogurt each. 21 and 18 pea pots: ½ lb each.
        '19 lb 8 oz | 1 × 25 lb sack, Hill Farm',
        '12 lb 6½ oz | 5 × 3 lb bag, Hill Farm',
        '1 gal 2 qt 1 cup | 2 × 1 gal, Hill Farm',
      ],
      // 5 × 80 + 30 + 5 × 6 + 2 × 16. Apart 4 × 80 + 30 + 3 × 6 + 2 × 16 = 400 and 2 × 80 + 30 + 2 × 6 + 16 = 218.
      sums: ['$492.00', '$618.00', '$126.00'],
      alerts: [
        ['Supper', '2 × allergy: milk', '4 × vegan'],
        ['Lunch', '1 × allergy: milk'],
      ],
    });
  });

  test('are cooked apart where hot food of one would wait for the other, at their own hours', async () => {
    const day = (await daysOf(await saturday())).get('2027-05-15');
    expect(reckoned(day).tasks).toEqual([
      ['Stove: Bean fritters', '40 pieces for Lunch'],
      ['Stove: Pea pot', '18 servings for Lunch'],
      ['Stove: Bean fritters', '84 pieces for Supper'],
      ['Stove: Pea pot', '21 servings for Supper'],
    ]);
    expect(day?.events.map(({ what }) => what)).toEqual([
      expect.stringContaining('served today at 6:00 PM'),
      expect.stringContaining('served today at 12:30 PM'),
    ]);
  });
});

describe('of two events that shared a Saturday', () => {
  /** What is left on the Saturday's days for the supper alone. */
  const ALONE = {
    events: ['pell-supper'],
    tasks: [['Stove: Lamb stew', '70 servings for Supper']],
    cards: [['70 servings of Lamb stew', '28 lb Lamb neck', '63 servings for Lamb stew (Supper)', '']],
    // 7 pans, two at a time; 7 of 8 in the cold.
    loads: ['Oven: 7 × Stew pan in 4 loads, 480 min'],
    cold: ['7 × Stew pan, 88% of the Cold room', '88% of the Cold room is taken up.'],
    tooFull: [],
    bought: undefined,
    sums: undefined,
    alerts: [['Supper', '2 × allergy: milk', '4 × vegan']],
  };

  test.each([
    ['cancelled', ['cancel', LUNCH, '--reason', 'The quarry is shut']],
    ['postponed without a new date', ['postpone', LUNCH]],
    ['moved', ['postpone', LUNCH, '--to', '2027-06-12']],
  ])('one that is %s leaves tasks, batches, loads, cold room, orders and alerts', async (_, words) => {
    const dir = await saturday();
    const [command = '', ...rest] = words;
    await done(dir, '2027-05-02', command, ...rest);
    const days = await daysOf(dir);
    const left = reckoned(days.get(BRAISING));
    expect({ ...left, sums: left.sums ?? undefined }).toEqual(ALONE);
    const others = [...days].filter(([date]) => date < '2027-06-01');
    expect(others.map(([date]) => date)).toEqual([BRAISING, '2027-05-14', '2027-05-15']);
    for (const [, day] of others) expect(JSON.stringify(day)).not.toMatch(/Lunch|quarry/i);
  });

  test('both moved are together on the new day, bought for at that day’s prices', async () => {
    const dir = await saturday();
    for (const event of ['pell-supper', LUNCH])
      await done(dir, '2027-05-02', 'postpone', event, '--to', '2027-06-12');
    const days = await daysOf(dir);
    expect([...days.keys()].sort()).toEqual(['2027-06-10', '2027-06-11', '2027-06-12']);
    const { events, loads, sums } = reckoned(days.get('2027-06-10'));
    expect(events).toEqual(['pell-supper', LUNCH]);
    expect(loads).toEqual(['Oven: 10 × Stew pan in 5 loads, 600 min']);
    // Lamb is 90.00 a box from June 1: 5 boxes are 50.00 more together, 6 are 60.00 more apart.
    expect(sums).toEqual(['$542.00', '$678.00', '$136.00']);
  });
});
