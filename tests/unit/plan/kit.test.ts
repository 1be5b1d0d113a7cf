/* What goes along by rule, worked by hand. The counts are the tests' own; the usual kit's are common practice, no source. */
import { describe, expect, test } from 'vitest';
import type { KitBase, KitItem, KitVenue } from '../../../src/engine/kitchen/kit.ts';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import { parseBurns } from '../../../src/engine/kitchen/parse-burns.ts';
import { parseKitRule } from '../../../src/engine/kitchen/parse-kit-rule.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { parseTemperature } from '../../../src/engine/measure/temperature.ts';
import type { VenueKit } from '../../../src/engine/menu/venue-kit.ts';
import type { EventInput } from '../../../src/engine/plan/event-input.ts';
import { type KitSetting, kitFor } from '../../../src/engine/plan/load/kit.ts';
import { event, must } from './builders.ts';

/** An item by its rules, each a text and what its word names. */
function item(rules: readonly [string, KitBase][], facts: Partial<KitItem> = {}): KitItem {
  return {
    id: 'thing',
    name: 'Things',
    rules: rules.map(([text, base]) => {
      const { amount, per, written } = must(parseKitRule(text));
      return { amount, per, base, written };
    }),
    styles: [],
    venue: [],
    weather: [],
    ...facts,
  };
}

const VENUE: VenueKit = {
  ovens: 0,
  burners: 0,
  circuits: [],
  water: false,
  coldSpace: false,
  cover: false,
  stairs: true,
};

const CREW: EventInput['soldCrew'] = [
  { role: 'captain', name: 'Captain', people: 1, each: 300 as never },
  { role: 'server', name: 'Servers', people: 6, each: 300 as never },
  { role: 'cook', name: 'Cooks', people: 3, each: 300 as never },
];

const grill = { id: 'grill', name: 'Grill', burns: must(parseBurns('2 lb of charcoal per hour')) };
const fryer = { id: 'fryer', name: 'Fryer', amperes: 13 };
const brought = [
  { equipment: grill as Equipment, count: 2, lit: { from: 900, until: 1100 } },
  { equipment: fryer as Equipment, count: 3, lit: { from: 900, until: 1000 } },
];

function packed(
  kit: KitItem,
  input: Partial<EventInput> = {},
  { setting = {}, styles = 4 }: { setting?: Partial<KitSetting>; styles?: number } = {},
) {
  const plan = {
    input: event([], {
      guests: { adults: 84, children: 6, vendors: 4, staff: 9 },
      soldCrew: CREW,
      placeCooks: 3,
      lines: 2,
      ...input,
    }),
    dishes: Array.from({ length: styles }, (_, index) => ({
      dish: { portions: index === 0 ? { apart: { recipe: 'toast', changes: [] } } : undefined },
    })),
  };
  const served = { clock: { arrive: 990, cleared: 1335 } };
  const found = kitFor({ kit: new Map([[kit.id, kit]]), counts: { adults: '1', children: '1' } }, {
    plan,
    served,
    brought,
    tables: 12,
    ...setting,
  } as unknown as KitSetting);
  expect(found.length).toBeLessThan(2);
  return found[0];
}

const count = (...given: Parameters<typeof packed>) => {
  const found = packed(...given);
  return found && exactText(found.count);
};
const by = (text: string, kind: string) => item([[text, { kind } as KitBase]]);

describe('kit by rule', () => {
  test.each([
    // 90 adults and children ÷ 50 = 1.8; 9 of 10 sold people … 10 ÷ 4 = 2.5; from 16:30 until 22:15 are 5¾ h, ÷ 4.
    ['1 per 50 guests', 'guest', '2 each'],
    ['2 each per event', 'event', '2 each'],
    ['1 per 4 staff', 'staff', '3 each'],
    ['2 per cook', 'cook', '6 each'],
    ['4 per table', 'table', '48 each'],
    ['1 per line', 'line', '2 each'],
    ['1 per 4 hours', 'hour', '2 each'],
    ['1 per flame', 'flame', '2 each'],
    ['2 per plug', 'plug', '6 each'],
    // Of four dishes one is made separately from another.
    ['1 per 3 dishes', 'dish', '1 each'],
  ])('%s', (text, kind, comes) => {
    expect(count(by(text, kind))).toBe(comes);
  });

  test('of roles and of equipment that is brought', () => {
    const role = (id: string) => item([['1 per 4 people of it', { kind: 'role', role: id, name: id }]]);
    expect(count(role('server'))).toBe('2 each');
    expect(count(role('sommelier'))).toBeUndefined();
    const gear = (id: string) => item([['1 per it', { kind: 'equipment', equipment: id, name: id }]]);
    expect(count(gear('grill'))).toBe('2 each');
    expect(count(gear('smoker'))).toBeUndefined();
  });

  test('rules are summed exactly and rounded up once, by the unit they are written in', () => {
    // 1.8 + 2.5 = 4.3; each alone would be 2 + 3.
    const two = item([
      ['1 per 50 guests', { kind: 'guest' }],
      ['1 per 4 staff', { kind: 'staff' }],
    ]);
    expect(count(two)).toBe('5 each');
    // 10 ÷ 4 × 5 gal = 12½ gal.
    expect(count(by('5 gal per 4 staff', 'staff'))).toBe('13 gal');
  });

  test('guests are those it counts', () => {
    const counts = { adults: '1', vendors: '1' };
    expect(count({ ...by('1 per 11 guests', 'guest'), counts })).toBe('8 each');
    expect(count(by('1 per 11 guests', 'guest'))).toBe('9 each');
  });

  test('what nobody has stated is counted as one, and says so', () => {
    const hours = packed(by('3 per 2 hours', 'hour'), {}, { setting: { served: undefined } });
    // 3 ÷ 2 = 1½ for one hour.
    expect([hours && exactText(hours.count), hours?.parts[0]?.of]).toEqual(['2 each', undefined]);
    const tables = packed(by('4 per table', 'table'), {}, { setting: { tables: undefined } });
    expect([tables && exactText(tables.count), tables?.parts[0]?.of]).toEqual(['4 each', undefined]);
  });

  test('goes by the service style', () => {
    const buffet = { ...by('1 per event', 'event'), styles: ['buffet' as const] };
    expect(count(buffet)).toBe('1 each');
    expect(count(buffet, { style: 'plated' })).toBeUndefined();
  });
});

describe('kit by the venue and the weather', () => {
  const needed = (venue: KitVenue, venueKit?: Partial<VenueKit>) => {
    const found = packed(
      { ...by('1 per event', 'event'), venue: [venue] },
      {
        ...(venueKit && { venueKit: { ...VENUE, ...venueKit } }),
      },
    );
    return found?.assumed;
  };
  const CIRCUIT = { count: 1, amperes: 20 };

  test.each([
    ['water', { water: false }, { water: true }, { water: undefined }],
    ['power', { circuits: [] }, { circuits: [CIRCUIT] }, { circuits: undefined }],
    ['cover', { cover: false }, { cover: true }, { cover: undefined }],
    ['cold', { coldSpace: false }, { coldSpace: true }, { coldSpace: undefined }],
    ['stairs', { stairs: true }, { stairs: false }, { stairs: undefined }],
  ] as const)('no %s: it goes along unless it is stated that it need not', (venue, holds, not, unknown) => {
    expect(needed(venue, holds)).toEqual([]);
    expect(needed(venue, not)).toBeUndefined();
    expect(needed(venue, unknown)).toEqual([venue]);
    expect(needed(venue)).toEqual([venue]);
  });

  test('the weather has to be stated', () => {
    const kit = { ...by('1 per event', 'event'), weather: ['rain' as const, 'wind' as const] };
    expect(count(kit)).toBeUndefined();
    expect(count(kit, { weather: { rain: true } })).toBeUndefined();
    expect(count(kit, { weather: { rain: true, wind: false } })).toBeUndefined();
    expect(count(kit, { weather: { rain: true, wind: true } })).toBe('1 each');
  });

  test.each([
    ['79 °F', undefined],
    ['80 °F', '1 each'],
    // 26 °C are 78.8 °F, 27 °C are 80.6 °F.
    ['26 °C', undefined],
    ['27 °C', '1 each'],
  ])('%s is hot, or is not', (high, comes) => {
    const kit = { ...by('1 per event', 'event'), weather: ['heat' as const] };
    expect(count(kit, { weather: { high: must(parseTemperature(high)) } })).toBe(comes);
    expect(count(kit, { weather: { rain: true } })).toBeUndefined();
  });

  test('all that it depends on has to hold', () => {
    const walls = { ...by('1 per event', 'event'), venue: ['cover' as const], weather: ['rain' as const] };
    expect(count(walls, { venueKit: { ...VENUE, cover: true }, weather: { rain: true } })).toBeUndefined();
    expect(count(walls, { venueKit: VENUE, weather: { rain: true } })).toBe('1 each');
  });
});

describe('a rule', () => {
  test.each([
    ['1 per 50 guests', ['1 each', 50n, 'guest']],
    ['2 rolls per person', ['2 roll', 1n, 'guest']],
    ['5 gal per 10 crew', ['5 gal', 10n, 'staff']],
    ['1 per Gas field ovens', ['1 each', 1n, 'gas field oven']],
    ['1½ lb per 2 dishes', ['3/2 lb', 2n, 'dish']],
  ])('is read from “%s”', (text, [amount, per, word]) => {
    const rule = must(parseKitRule(text as string));
    expect([exactText(rule.amount), rule.per, rule.words[1]]).toEqual([amount, per, word]);
  });

  test.each([
    'two',
    '1 each',
    '1 per',
    'per guest',
    '0 per event',
    '1 per 0 guests',
    '1 per 50',
    '-1 per event',
  ])('is not read from “%s”', (text) => {
    expect(parseKitRule(text).ok).toBe(false);
  });
});
