import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readSite } from '../../../src/build/read-site.ts';
import { eventInputOf } from '../../../src/offers/event/input-of.ts';
import { plannedEvents } from '../../../src/views/kitchen/planned-event.ts';
import { day } from '../offers/second-kitchen.ts';
import { bookOf, changed, EVENT, supperKitchen } from './supper-kitchen.ts';

const COOKS = 'cooks: { people: 3, from: 5:00 am, hours: 9 hours }\n';
const STAFF = `staff:
  chef: { name: Chefs, price: 40.00 per hour, pay: 30.00 per hour, one per: { plated: 30 guests }, hours: 6 hours, cooks: yes }
  server: { name: Servers, price: 38.00 per hour, pay: 24.00 per hour, one per: { plated: 20 guests }, hours: 6 hours }
`;

const withStaff = (staff: string) => changed('kitchen.yaml', 'stations:', `${staff}stations:`);

async function inputOf(dir: string) {
  const input = eventInputOf(await bookOf(dir), EVENT);
  if (!input.ok) throw new Error(input.what);
  return input.value;
}

/** Edits a file of a kitchen whose event is accepted already. */
function edit(dir: string, file: string, from: string, to: string): void {
  const text = readFileSync(join(dir, file), 'utf8');
  expect(text).toContain(from);
  writeFileSync(join(dir, file), text.replace(from, to));
}

describe('what an event’s clock is told', () => {
  test('is nothing but the usual times of its courses where the kitchen states none of it', async () => {
    const { cooks, venueKit, placeCooks, courseTimes } = await inputOf(await supperKitchen());
    expect({ cooks, venueKit, placeCooks }).toEqual({});
    // Plated courses follow one another, half an hour each: common practice, no source.
    expect([...courseTimes!]).toEqual([
      ['First', { after: 0, lasts: 30 }],
      ['Main', { after: 30, lasts: 30 }],
    ]);
  });

  test('is what the proposal says now of its cooks and its venue, although neither was offered', async () => {
    const dir = await supperKitchen();
    edit(
      dir,
      `proposals/${EVENT}.md`,
      'packages:',
      `${COOKS}venue: { ovens: two, power: one 16 A circuit }\npackages:`,
    );
    const { cooks, venueKit } = await inputOf(dir);
    expect(cooks).toEqual({ people: 3, from: '05:00', each: 540 });
    expect(venueKit).toMatchObject({ ovens: 2, circuits: [{ count: 1, amperes: 16 }], water: undefined });
  });

  test('plans for the weather that the proposal states now, and for none where it states nothing', async () => {
    const dir = await supperKitchen();
    expect(await inputOf(dir)).not.toHaveProperty('weather');
    edit(dir, `proposals/${EVENT}.md`, 'packages:', 'weather: { high: 30 °C, rain: yes }\npackages:');
    const { weather } = await inputOf(dir);
    expect(weather).toMatchObject({ high: { scale: 'C' }, rain: true });
    expect(weather?.high?.degrees.toString()).toBe('30');
    expect(weather).not.toHaveProperty('wind');
    edit(dir, `proposals/${EVENT}.md`, '{ high: 30 °C, rain: yes }', '86 °F');
    expect((await inputOf(dir)).weather?.high?.degrees.toString()).toBe('86');
  });

  test('goes by the venue as it was offered where no proposal is left to say otherwise', async () => {
    const offered = changed(`proposals/${EVENT}.md`, 'packages:', 'venue: { ovens: none }\npackages:');
    const dir = await supperKitchen(offered);
    expect((await inputOf(dir)).venueKit?.ovens).toBe(0);
    edit(dir, `proposals/${EVENT}.md`, 'ovens: none', 'ovens: 1 household');
    expect((await inputOf(dir)).venueKit?.ovens).toBe(1);
    const book = await bookOf(dir);
    const without = eventInputOf({ ...book, proposals: new Map() }, EVENT);
    expect(without.ok && without.value.venueKit?.ovens).toBe(0);
  });

  test('counts those who cook at the place as the offer sells them, not those who only serve', async () => {
    // 84 guests: one chef for 30 begun, so 3; the five servers do not cook.
    expect((await inputOf(await supperKitchen(withStaff(STAFF)))).placeCooks).toBe(3);
    const silent = STAFF.replace(', cooks: yes', '');
    expect(await inputOf(await supperKitchen(withStaff(silent)))).not.toHaveProperty('placeCooks');
  });

  test('has the times of the package as it is now, those not stated following from there', async () => {
    const dir = await supperKitchen();
    edit(
      dir,
      'packages/supper.mdx',
      '  - name: First\n',
      '  - name: First\n    begins: 20 min after\n    lasts: 40 min\n',
    );
    expect([...(await inputOf(dir)).courseTimes!]).toEqual([
      ['First', { after: 20, lasts: 40 }],
      ['Main', { after: 60, lasts: 30 }],
    ]);
    const book = await bookOf(dir);
    const without = eventInputOf({ ...book, packages: new Map() }, EVENT);
    expect(without.ok && without.value).not.toHaveProperty('courseTimes');
  });
});

describe('an offer', () => {
  test('holds none of it: its digest is the same with and without', async () => {
    const digestIn = (dir: string): unknown => {
      const { digest } = JSON.parse(readFileSync(join(dir, 'offers', `${EVENT}-r1.json`), 'utf8'));
      expect(digest).toMatch(/^[0-9a-f]{64}$/);
      return digest;
    };
    const plain = digestIn(await supperKitchen(withStaff(STAFF.replace(', cooks: yes', ''))));
    const stated = await supperKitchen({
      'kitchen.yaml': (withStaff(STAFF)['kitchen.yaml'] ?? '').replace(
        'stations: { stove: Stove }',
        'stations: { stove: { name: Stove, places: 2 } }\nequipment: { ring: { station: stove, travels: yes, draws: 9 A } }',
      ),
      ...changed('packages/supper.mdx', '  - name: Main\n', '  - name: Main\n    begins: 45 min after\n'),
      ...changed(`proposals/${EVENT}.md`, 'packages:', `${COOKS}packages:`),
      ...changed('recipes/lamb-stew.mdx', 'hold: hot', 'hold: hot\nstands: 1 h\nchill: 4 h'),
      ...changed(
        'recipes/bean-fritters.mdx',
        'station: stove,',
        'station: stove, at: kitchen, rest: 5 min, uses: "white beans, herb yogurt",',
      ),
    });
    expect(digestIn(stated)).toBe(plain);
  });
});

describe('a number in braces', () => {
  test('is printed for the batches cooked, on the card, in the day’s tasks and on the label', async () => {
    const dir = await supperKitchen(
      changed('recipes/bean-fritters.mdx', '{ do: Fry.,', "{ do: 'Fry {12} at a time in {2 qt} of oil.',"),
    );
    edit(dir, 'recipes/bean-fritters.mdx', 'hold: hot', 'hold: hot\nfinish: Lay out {3} cloths.');
    const [planned] = await plannedEvents(await bookOf(dir), [EVENT], day('2027-05-03'));
    if (!planned?.plan.ok) throw new Error('no plan');
    const { recipes, days, labels, packOut } = planned.plan.value;
    // 84 pieces at 20 a batch are 4.2 batches: 50.4 and 12.6, up to whole ones, and 8.4 qt.
    const fritters = recipes.filter(({ id }) => id.startsWith('bean-fritters'));
    expect(
      fritters.map(({ batches, steps, finish }) => [batches, steps[0]!.text, finish]),
    ).toMatchInlineSnapshot(`
      [
        [
          "4.2",
          "Fry 51 at a time in 2 gal 1⅔ cups of oil.",
          "Lay out 13 cloths.",
        ],
      ]
    `);
    const tasks = days.flatMap((each) => each.tasks).filter(({ recipe }) => recipe === 'bean-fritters');
    expect(tasks.map(({ text }) => text)).toEqual([fritters[0]!.steps[0]!.text]);
    const label = labels.find(({ dish }) => dish === 'Bean fritters');
    expect(label?.finish).toBe(fritters[0]!.finish);
    expect(packOut.find(({ item }) => item === 'Bean fritters')?.note).toContain(fritters[0]!.finish);
  });
});

describe('what the last build has made of the kitchen’s side', () => {
  test('is made again after an edit of any of these fields', async () => {
    const dir = await supperKitchen({
      'kitchen.yaml': (withStaff(STAFF)['kitchen.yaml'] ?? '').replace(
        'stations: { stove: Stove }',
        'stations: { stove: { name: Stove, places: 2 } }\nequipment: { ring: { station: stove, count: 1 } }',
      ),
    });
    const keyNow = async () => {
      const { shown } = await readSite(dir, () => day('2027-05-03'));
      const key = shown?.site.part?.cacheKey;
      expect(key).toBeDefined();
      return key;
    };
    const edits: readonly (readonly [file: string, from: string, to: string])[] = [
      ['kitchen.yaml', 'places: 2', 'places: 3'],
      ['kitchen.yaml', 'equipment:', 'vehicles: { van: Van }\nequipment:'],
      [`proposals/${EVENT}.md`, 'packages:', 'vehicle: van\npackages:'],
      ['kitchen.yaml', 'count: 1', 'count: 1, travels: yes'],
      ['kitchen.yaml', 'travels: yes', 'travels: yes, draws: 9 A'],
      ['kitchen.yaml', 'draws: 9 A', 'draws: 9 A, heats in: 10 min'],
      ['kitchen.yaml', 'cooks: yes', 'cooks: no'],
      ['recipes/pea-pot.mdx', 'hold: hot', 'hold: hot\nstands: 1 h'],
      ['recipes/pea-pot.mdx', 'stands: 1 h', 'stands: 1 h\nchill: 2 h'],
      ['recipes/pea-pot.mdx', 'Simmer.,', "'Simmer {10} peas.',"],
      ['recipes/pea-pot.mdx', 'hands-on: 20 min', 'hands-on: 20 min, rest: 5 min'],
      ['recipes/pea-pot.mdx', 'rest: 5 min', 'rest: 5 min, uses: peas'],
      ['recipes/pea-pot.mdx', 'uses: peas', 'uses: peas, at: place'],
      ['recipes/pea-pot.mdx', 'at: place', 'at: place, waves: yes'],
      [
        'packages/supper.mdx',
        '  - name: Main\n',
        '  - name: Main\n    begins: 45 min after\n    lasts: 20 min\n',
      ],
      [`proposals/${EVENT}.md`, 'packages:', `${COOKS}venue: { ovens: 2 }\npackages:`],
      [`proposals/${EVENT}.md`, 'ovens: 2', 'ovens: none'],
    ];
    let before = await keyNow();
    for (const [file, from, to] of edits) {
      edit(dir, file, from, to);
      expect((await bookOf(dir)).held.size, to).toBe(0);
      const after = await keyNow();
      expect(after === before, `${file}: ${to}`).toBe(false);
      before = after;
    }
  });
});
