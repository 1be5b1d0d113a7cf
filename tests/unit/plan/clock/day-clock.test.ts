import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import type { ClockFinding } from '../../../../src/engine/plan/clock/clock-finding.ts';
import type { SoldRole } from '../../../../src/engine/plan/event-input.ts';
import { FOOD_CODE_2022 } from '../../../../src/engine/safety/limits.ts';
import { day, step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

const kinds = (findings: readonly ClockFinding[]) => findings.map(({ kind }) => kind);

describe('a date on one clock', () => {
  test('hot food is done when loading begins, and begins no earlier than that asks', () => {
    // Served 12:30, there 11:30, leaves 11:00, loads 10:30: bake 10 + 60 min from 9:20, fill 20 min from 9:00.
    const { shown, findings } = clock([planned('lunch', [bake('pie')])]);
    expect(shown).toEqual(['pie 1 9:00–9:20', 'pie 2 9:20–10:30']);
    expect(findings).toEqual([]);
  });

  test('cold food is done a quarter of an hour before packing ends', () => {
    const salad = hot('salad', [step('on the day', 'Toss', { station: 'cold', handsOn: minutes(20) })], {
      hold: 'cold',
    });
    expect(clock([planned('lunch', [salad])]).shown).toEqual(['salad 1 9:55–10:15']);
  });

  test('what is cooked and leaves cold is cold when it is packed, so it is cooked earlier by as long as it cools', () => {
    // Packed by 10:15, 2 h to be cold, so off the stove at 8:15; the day’s limit of the Food Code is 6 h.
    const pot = hot(
      'pot',
      [step('on the day', 'Boil', { handsOn: minutes(20), cookTo: { amount: 165, scale: 'F' } as never })],
      { hold: 'cold', chill: minutes(120), pack: { chill: { container: 'pan', each: undefined } } },
    );
    const { shown, steps, time } = clock([planned('lunch', [pot])]);
    expect(shown).toEqual(['pot 1 7:55–8:15']);
    expect(time(steps[0]!.coldBy!)).toBe('10:15');
  });

  test('and at 70 °F in a third of that, or in the first stage that its recipe states (Food Code 3-501.14(A))', () => {
    const boil = step('on the day', 'Boil', {
      handsOn: minutes(20),
      cookTo: { amount: 165, scale: 'F' } as never,
    });
    const pack = { chill: { container: 'pan', each: undefined } };
    const cooledBy = (chill: object) => {
      const pot = hot('pot', [boil], { hold: 'cold', pack, ...chill });
      const { steps, time } = clock([planned('lunch', [pot])]);
      const { at, temperature } = steps[0]!.cooledTo!;
      expect(temperature).toEqual(FOOD_CODE_2022.limits.cooling.stages[0].temperature);
      return time(at);
    };
    // Cold at 10:15: off the stove at 8:15, 4:15 and 4:15.
    expect(cooledBy({ chill: minutes(120) })).toBe('8:55');
    expect(cooledBy({ chill: minutes(360) })).toBe('6:15');
    expect(cooledBy({ chill: minutes(360), chillFirst: minutes(90) })).toBe('5:45');
  });

  test('two dishes share the one oven, the one that goes in first for the sake of the other', () => {
    const keeps = { stands: minutes(240) };
    const { shown, findings } = clock([planned('lunch', [bake('pie', keeps), bake('tart', keeps)])]);
    const into = shown.filter((each) => each.includes(' 2 ')).sort();
    // One is in from 9:30 to 10:30; the other must be out by 9:30, its ten minutes of hands before it.
    expect(into.map((each) => each.split('–')[1]).sort()).toEqual(['10:30', '9:30']);
    expect(findings).toEqual([]);
  });

  test('two dishes worked by hand on the one grill follow each other, also where two could stand at it', () => {
    const grill = {
      id: 'grill',
      name: 'Grill',
      count: 1,
      holds: [{ container: 'pan', count: 4 }],
      station: 'stove',
    };
    const sear = (id: string) =>
      hot(id, [step('on the day', 'Sear', { station: 'stove', handsOn: minutes(30) })]);
    const ends = (equipment: (typeof grill)[]) =>
      clock([planned('lunch', [sear('leeks'), sear('lamb')])], { places: { stove: 2 }, equipment })
        .shown.map((each) => each.split('–')[1])
        .sort();
    expect(ends([])).toEqual(['10:30', '10:30']);
    expect(ends([grill])).toEqual(['10:00', '10:30']);
    expect(ends([{ ...grill, count: 2 }])).toEqual(['10:30', '10:30']);
  });

  test('with a second oven both are in at once, as far as one pair of hands at the ovens fills them', () => {
    const { shown } = clock([planned('lunch', [bake('pie'), bake('tart')])], { ovens: 2 });
    const into = shown.filter((each) => each.includes(' 2 '));
    expect(into.map((each) => each.split('–')[1]).sort()).toEqual(['10:20', '10:30']);
  });

  test('two events on a date use the oven one after the other, and each is done for its own truck', () => {
    const { shown, served, time } = clock([
      planned('lunch', [bake('pie')]),
      planned('supper', [bake('tart')], { serveAt: '13:00' }),
    ]);
    // The supper loads at 11:00, so its tart is in from 10:00; the pie is out by 10:00 and not at 10:30.
    expect(shown).toEqual(['pie 1 8:30–8:50', 'pie 2 8:50–10:00', 'tart 1 9:30–9:50', 'tart 2 9:50–11:00']);
    expect(served.map(({ load }) => time(load.begins))).toEqual(['10:30', '11:00']);
  });

  test('two trucks at one door load one after the other', () => {
    const { served, time } = clock([planned('lunch', [bake('pie')]), planned('brunch', [bake('tart')])]);
    expect(served.map(({ load }) => time(load.begins)).sort()).toEqual(['10:00', '10:30']);
  });

  test('work that cannot begin before the crew comes is told, with what works', () => {
    const keeps = { stands: minutes(240) };
    const plans = [planned('lunch', [bake('pie', keeps), bake('tart', keeps)])];
    const { findings, kept } = clock(plans, { crew: { from: '8:15' } });
    // With one oven the first dish begins at 7:55; with two, at 8:50.
    expect(kept.hours).toBe(false);
    expect(kinds(findings)).toEqual(['before crew']);
    const [early] = findings as Extract<ClockFinding, { kind: 'before crew' }>[];
    expect(early!.ways).toContainEqual({ kind: 'equipment', name: 'Oven' });
    expect(early!.ways).toContainEqual({ kind: 'come', at: early!.at });
  });

  test('cooks of the event’s own come at their hour', () => {
    const cooks = { people: 2, each: minutes(540), from: '5:00' };
    const plans = [planned('breakfast', [bake('pie')], { serveAt: '9:00', cooks })];
    expect(clock(plans, { crew: { from: '7:00' } }).findings).toEqual([]);
    expect(
      kinds(
        clock([planned('breakfast', [bake('pie')], { serveAt: '9:00' })], { crew: { from: '7:00' } })
          .findings,
      ),
    ).toEqual(['before crew']);
  });

  test('work for another day begins with the crew and keeps out of the way of what leaves today', () => {
    const later = planned(
      'later',
      [hot('stew', [step('the day before', 'Braise', { handsOn: minutes(60) })])],
      {
        date: day('2027-05-16'),
      },
    );
    const { shown } = clock([planned('lunch', [bake('pie')]), later], { crew: { people: 1 } });
    // One person: braise 6:00 to 7:00, fill and bake when the pie asks for it, pack from 9:30.
    expect(shown).toContain('stew 1 6:00–7:00');
    expect(shown).toContain('pie 2 9:20–10:30');
  });

  test('a dish that waits longer than it stands is told, with both hours', () => {
    const crisp = bake('crisp', { stands: minutes(60) });
    const { findings } = clock([planned('lunch', [crisp])]);
    // Loaded hot at 10:30, served 12:30: two hours against one.
    expect(findings).toMatchObject([
      { kind: 'waits', event: 'lunch', waiting: { from: 630, until: 750, stands: 60 } },
    ]);
  });

  describe('who works at the event', () => {
    // Loads 10:30, leaves 11:00, arrives 11:30, serves 12:30 to 14:30, clears 75 min: 15:45; 30 min back, 30 to unload:
    // 16:45, so 6 h 15 min.
    const of = (hours: number, facts: object = {}) => {
      const soldCrew: SoldRole[] = [
        { role: 'server', name: 'Servers', people: 3, each: minutes(60 * hours), ...facts },
        { role: 'captain', name: 'Captain', people: 1, each: minutes(375) },
      ];
      return clock([planned('lunch', [bake('pie')], { soldCrew })]).findings;
    };

    test('and is sold for less than loading to unloading is told, with all that is missing', () => {
      expect(of(4)).toMatchObject([
        {
          kind: 'sold short',
          roles: [{ sold: { role: 'server' }, from: 630, until: 1005, missing: 3 * 135 }],
        },
      ]);
      expect(of(6.25)).toEqual([]);
    });

    test('and reports to the place is there from the truck’s arrival until all is cleared', () => {
      const there = { reportsTo: 'place' };
      expect(of(4, there)).toMatchObject([
        { kind: 'sold short', roles: [{ from: 690, until: 945, missing: 3 * 15 }] },
      ]);
      expect(of(4.25, there)).toEqual([]);
    });
  });

  test('time that counts for a batch is shared where the bench has room', () => {
    const rolls = hot('rolls', [
      step('on the day', 'Shape', { station: 'cold', handsOn: minutes(60), handsOnPerBatch: true }),
    ]);
    // 16 × 8 fl oz = 1 gal is one batch: nothing to share. 32 guests are two.
    const two = planned('lunch', [rolls], { guests: { adults: 32, children: 0, vendors: 0, staff: 0 } });
    expect(clock([two]).shown).toEqual(['rolls 1 8:30–10:30']);
    expect(clock([two], { places: { cold: 2 } }).shown).toEqual(['rolls 1 9:30–10:30']);
  });

  test('without a crew that is stated nothing is too early, and prep is counted from its beginning', () => {
    const braise = hot('stew', [step('the day before', 'Braise', { handsOn: minutes(60) })]);
    const { steps, findings } = clock([planned('lunch', [braise])], { crew: null }, day('2027-05-14'));
    expect(steps.map(({ begins, clock: known }) => [begins, known])).toEqual([[0, false]]);
    expect(findings).toEqual([]);
  });
});

describe('the work at a place', () => {
  const there = (id: string, facts: object = {}) =>
    hot(id, [step('at serving', 'Sear', { station: 'stove', handsOn: minutes(40), ...facts })]);

  test('is done for the first plate of its course, and a later course later', () => {
    const courses = new Map([
      ['First', { after: minutes(0), lasts: minutes(30) }],
      ['Main', { after: minutes(45), lasts: minutes(30) }],
    ]);
    const plan = planned('supper', [there('soup'), there('fish')], { courseTimes: courses, style: 'plated' });
    const dishes = plan.dishes.map((each, index) => ({
      ...each,
      dish: { ...each.dish, course: index === 0 ? 'First' : 'Main' },
    }));
    const input = { ...plan.input, dishes: dishes.map((each) => each.dish) };
    expect(clock([{ ...plan, dishes, input }]).shown).toEqual(['soup 1 11:50–12:30', 'fish 1 12:35–13:15']);
  });

  test('that does not fit between arriving and serving is told, with the cooks who would make it fit', () => {
    const plans = (placeCooks: number) => [planned('supper', [there('soup'), there('fish')], { placeCooks })];
    // 80 min of work in the 60 between 11:30 and 12:30: one cook is 20 short, two do it.
    expect(clock(plans(1)).findings).toEqual([
      expect.objectContaining({ kind: 'place', minutes: 20, cooks: 1, moreCooks: 1 }),
    ]);
    expect(clock(plans(2)).findings).toEqual([]);
  });

  test('that cannot begin since what is brought for it is not hot yet is told too, by how much', () => {
    const field = {
      id: 'field',
      name: 'Field oven',
      count: 1,
      holds: [{ container: 'pan', count: 4 }],
      station: 'oven',
      travels: true,
      heats: minutes(20),
    };
    const baked = (unattended: number) =>
      planned('park', [
        hot('gratin', [
          step('at serving', 'Bake', {
            station: 'oven',
            handsOn: minutes(5),
            unattended: minutes(unattended),
          }),
        ]),
      ]);
    // There at 11:30, hot at 11:50: forty minutes in the oven end at 12:30, fifty ten minutes later.
    expect(clock([baked(40)], { equipment: [field] }).findings).toEqual([]);
    expect(clock([baked(50)], { equipment: [field] }).findings).toEqual([
      expect.objectContaining({ kind: 'place', minutes: 10 }),
    ]);
  });

  test('in waves, the first is there for the first guests and the others follow while they eat', () => {
    const { shown } = clock([planned('park', [there('skewers', { waves: true })])]);
    // Two waves of 20 min over two hours of service: the first by 12:30, the second by 13:30.
    expect(shown).toEqual(['skewers 1 12:10–12:30', 'skewers 1 13:10–13:30']);
  });
});
