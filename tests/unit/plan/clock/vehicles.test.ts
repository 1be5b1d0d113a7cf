import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

// Half an hour on the road, 1 h set-up, 2 h service, 75 min clearing, 30 min each for loading and unloading: the lunch at
// 12:30 loads at 10:30, leaves at 11:00, is cleared at 15:45, back at 16:15 and unloaded at 16:45.
const lunch = planned('lunch', [bake('pie')]);
const at = (serveAt: string, of = bake('tart'), facts: object = {}) =>
  planned('supper', [of], { serveAt, ...facts });
const lacks = (plans: Parameters<typeof clock>[0], vans?: number) =>
  clock(plans, vans === undefined ? {} : { vans }).findings.filter(({ kind }) => kind === 'vehicles');

describe('vehicles', () => {
  test('are not counted where none are stated, and one for each event is enough', () => {
    expect(lacks([lunch, at('18:00')])).toEqual([]);
    expect(lacks([lunch, at('18:00')], 2)).toEqual([]);
  });

  test('are enough for events one after the other', () => {
    // The supper at 19:00 loads at 17:00.
    expect(lacks([lunch, at('19:00')], 1)).toEqual([]);
  });

  test('are too few where one is still out while the next is loaded, and one more is the way out', () => {
    // The supper at 18:00 loads from 16:00: three quarters of an hour before the van is empty again.
    expect(lacks([lunch, at('18:00')], 1)).toEqual([
      {
        kind: 'vehicles',
        date: '2027-05-15',
        from: 960,
        until: 1005,
        name: undefined,
        asked: 2,
        has: 1,
        occasions: ['lunch', 'supper'],
        ways: [{ kind: 'vehicle', more: 1, name: undefined }],
      },
    ]);
  });

  test('do for two events if they drive home in between and come again to clear', () => {
    // 10:30 to 12:30 there and back for the lunch, 12:30 to 14:30 for the supper at 14:30, again at 15:15 and at 17:15.
    expect(lacks([lunch, at('14:30')], 1)).toMatchObject([
      {
        ways: [
          { kind: 'comes back', occasions: ['lunch', 'supper'] },
          { kind: 'vehicle', more: 1 },
        ],
      },
    ]);
  });

  test('do if cold food is driven out before the other’s is loaded, which hot food would not stand', () => {
    // For the supper at 16:00: loaded 8:30, gone 9:00, empty at home by 10:30; cleared 19:15, fetched from 18:45.
    const salad = hot('salad', [step('on the day', 'Toss', { station: 'cold', handsOn: minutes(20) })], {
      hold: 'cold',
    });
    expect(lacks([lunch, at('16:00', salad)], 1)).toMatchObject([
      {
        ways: [
          { kind: 'leave early', occasion: 'supper', at: 540 },
          { kind: 'vehicle', more: 1 },
        ],
      },
    ]);
    expect(lacks([lunch, at('16:00')], 1)).toMatchObject([{ ways: [{ kind: 'vehicle', more: 1 }] }]);
  });

  test('of one kind are too few where two events ask for it, though another is free', () => {
    const van = { id: 'van', name: 'Van', count: 1 };
    const fleet = new Map([van, { id: 'truck', name: 'Box truck', count: 1 }].map((each) => [each.id, each]));
    const asks = (vehicle: typeof van | undefined) =>
      clock(
        [
          planned('lunch', [bake('pie')], { vehicle: van }),
          at('18:00', bake('tart'), { ...(vehicle && { vehicle }) }),
        ],
        {
          fleet,
        },
      ).findings.filter(({ kind }) => kind === 'vehicles');
    expect(asks(van)).toEqual([
      {
        kind: 'vehicles',
        date: '2027-05-15',
        name: 'Van',
        from: 960,
        until: 1005,
        asked: 2,
        has: 1,
        occasions: ['lunch', 'supper'],
        ways: [
          { kind: 'another vehicle', occasion: 'lunch' },
          { kind: 'vehicle', more: 1, name: 'Van' },
        ],
      },
    ]);
    // The supper takes whichever is free, or asks for the other.
    expect(asks(undefined)).toEqual([]);
    expect(asks(fleet.get('truck'))).toEqual([]);
  });

  test('of a kind that both ask for are enough where one is back as the other is loaded', () => {
    // The van of the lunch is unloaded at 16:45; for the supper at 18:45 loading begins at 16:45 at the latest.
    const van = { id: 'van', name: 'Van', count: 1 };
    const fleet = new Map([['van', van]]);
    const day = clock(
      [planned('lunch', [bake('pie')], { vehicle: van }), at('18:45', bake('tart'), { vehicle: van })],
      {
        fleet,
      },
    );
    expect(day.findings.filter(({ kind }) => kind === 'vehicles')).toEqual([]);
    const supper = day.served.find(({ plan }) => plan.input.id === 'supper')!;
    expect(day.time(supper.load.begins)).toBe('16:45');
  });

  test('are out until the end of the date where it is not stated how long is served, and not at all where nobody drives', () => {
    const open = planned('lunch', [bake('pie')], {
      away: { travel: minutes(30), setUp: minutes(60), service: undefined },
    });
    expect(lacks([open, at('23:00')], 1)).toHaveLength(1);
    const here = at('14:30', bake('tart'), {
      away: { travel: minutes(0), setUp: minutes(60), service: minutes(60) },
    });
    expect(lacks([lunch, here], 1)).toEqual([]);
  });

  test('are loaded before they are empty only where nothing else would do, and that is told', () => {
    // Two vans are out for two lunches until 16:45. Two suppers at 19:00 load at one door, the first from 16:30.
    const lunches = [lunch, planned('brunch', [bake('flan')])];
    const late = planned('late', [bake('quiche')], { serveAt: '19:00' });
    const { kept, findings } = clock([...lunches, at('19:00'), late], { vans: 2 });
    expect(kept).toMatchObject({ vehicles: false, hours: true, resources: true });
    expect(findings.filter(({ kind }) => kind === 'vehicles')).toMatchObject([
      { until: 1005, asked: 3, has: 2 },
    ]);
    const later = planned('late', [bake('quiche')], { serveAt: '19:15' });
    expect(clock([...lunches, at('19:15'), later], { vans: 2 }).kept.vehicles).toBe(true);
  });
});
