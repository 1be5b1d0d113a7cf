import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

// Days worked with pencil and paper, back from the truck.

describe('a kitchen day of five dishes with one oven', () => {
  // The truck loads at 10:30; what is not hot is packed by 10:15. One pair of hands a bench, one oven.
  const cold = (id: string, handsOn: number) =>
    hot(id, [step('on the day', 'Toss', { station: 'cold', handsOn: minutes(handsOn) })], { hold: 'cold' });
  const soup = hot('soup', [
    step('on the day', 'Sweat', { handsOn: minutes(20), unattended: minutes(40), useWithin: minutes(10) }),
    step('on the day', 'Blend', { handsOn: minutes(15) }),
  ]);
  const five = [
    bake('pie'),
    bake('tart', { stands: minutes(240) }),
    soup,
    cold('salad', 30),
    cold('slaw', 25),
  ];

  test('has each bench busy to the last minute and the longer stay in the oven first', () => {
    const { shown, findings } = clock([planned('lunch', five)]);
    // Pie out at 10:30, in at 9:30, its hands at the oven from 9:20; the tart out at 9:30, in at 8:30, hands from 8:20.
    // The pie stands 2 h 30 min at most and so comes last. Filled on the cold bench: the pie by 9:20, the tart by 8:20.
    expect(shown).toEqual(
      expect.arrayContaining([
        'pie 2 9:20–10:30',
        'tart 2 8:20–9:30',
        'soup 2 10:15–10:30',
        'soup 1 9:15–10:15',
      ]),
    );
    // Cold bench, back from 10:15: 30 + 25 min of salad and slaw down to 9:20, the pie 9:00 to 9:20, the tart 8:00 to 8:20.
    expect(shown).toEqual(expect.arrayContaining(['pie 1 9:00–9:20', 'tart 1 8:00–8:20']));
    const salads = shown.filter((each) => /^(salad|slaw) /.test(each)).map((each) => each.split(' ')[2]);
    expect([
      ['9:20–9:45', '9:45–10:15'],
      ['9:20–9:50', '9:50–10:15'],
    ]).toContainEqual(salads.sort());
    expect(findings).toEqual([]);
  });
});

describe('a plated supper of three courses', () => {
  const course = (id: string, steps: ReturnType<typeof step>[]) => hot(id, steps);
  const plate = (handsOn: number) =>
    step('at serving', 'Plate', { station: 'cold', handsOn: minutes(handsOn) });
  const names = ['First', 'Main', 'Sweet'];
  const plan = planned(
    'supper',
    [course('beets', [plate(30)]), course('hake', [plate(40)]), course('pears', [plate(20)])],
    { style: 'plated', placeCooks: 1, serveAt: '19:00' },
  );
  const dishes = plan.dishes.map((each, index) => ({
    ...each,
    dish: { ...each.dish, course: names[index]! },
  }));
  const supper = { ...plan, dishes, input: { ...plan.input, dishes: dishes.map((each) => each.dish) } };

  test('has every plate ready for its own course and none earlier than one cook makes it', () => {
    // First plates at 19:00, 19:30 and 20:00. Back from 20:00: pears 19:40, the hake 18:50 to 19:30, the beets before it.
    const { shown, findings } = clock([supper]);
    expect(shown).toEqual(['beets 1 18:20–18:50', 'hake 1 18:50–19:30', 'pears 1 19:40–20:00']);
    expect(findings).toEqual([]);
  });

  test('has the beets on the table as they are plated where a second cook takes the hake', () => {
    const two = { ...supper, input: { ...supper.input, placeCooks: 2 } };
    expect(clock([two]).shown).toEqual(['beets 1 18:30–19:00', 'hake 1 18:50–19:30', 'pears 1 19:40–20:00']);
  });
});

describe('a grill at a park', () => {
  test('feeds the first guests at once and the rest in a second wave', () => {
    const skewers = hot('skewers', [
      step('at serving', 'Grill', {
        station: 'stove',
        handsOn: minutes(40),
        unattended: minutes(6),
        waves: true,
      }),
    ]);
    const bread = hot('bread', [step('at serving', 'Warm', { station: 'stove', handsOn: minutes(10) })]);
    // Two waves of 20 min and 6 on the fire: off by 12:30 and, half of two hours later, by 13:30. One cook: the bread is
    // warm at 12:30 too, from 12:20; so the skewers are on the fire without hands from 12:20, off at 12:26, four minutes early.
    const { shown } = clock([planned('park', [skewers, bread], { placeCooks: 1 })]);
    expect(shown).toEqual(
      expect.arrayContaining(['skewers 1 13:04–13:30', 'bread 1 12:20–12:30', 'skewers 1 12:00–12:26']),
    );
  });
});

describe('a course that takes one cook longer to plate than there is', () => {
  const plate = (id: string, handsOn: number) =>
    hot(id, [step('at serving', 'Plate', { station: 'cold', handsOn: minutes(handsOn) })]);
  const plan = planned('supper', [plate('beets', 45), plate('hake', 60)], {
    style: 'plated',
    placeCooks: 1,
    serveAt: '19:00',
  });
  const dishes = plan.dishes.map((each, index) => ({
    ...each,
    dish: { ...each.dish, course: ['First', 'Main'][index]! },
  }));
  const supper = { ...plan, dishes, input: { ...plan.input, dishes: dishes.map((each) => each.dish) } };

  test('is never plated after it should be on the table: it is begun too early, which is told with the way out', () => {
    // First plates at 19:00 and 19:30, the truck is there at 18:00. Back from 19:30: the hake from 18:30, the beets from 17:45.
    const { shown, findings } = clock([supper]);
    expect(shown).toEqual(['beets 1 17:45–18:30', 'hake 1 18:30–19:30']);
    expect(findings).toEqual([
      expect.objectContaining({ kind: 'place', minutes: 15, cooks: 1, moreCooks: 1 }),
    ]);
  });

  test('is plated in time by two', () => {
    const two = { ...supper, input: { ...supper.input, placeCooks: 2 } };
    const { shown, findings } = clock([two]);
    expect(shown).toEqual(['beets 1 18:15–19:00', 'hake 1 18:30–19:30']);
    expect(findings).toEqual([]);
  });
});

describe('fritters that could leave the fryer 85 minutes before they are loaded', () => {
  const onStove = (id: string, handsOn: number, stands: number) =>
    hot(id, [step('on the day', 'Cook', { station: 'stove', handsOn: minutes(handsOn) })], {
      stands: minutes(stands),
    });
  const fritters = onStove('fritters', 20, 125);

  test('are fried last where the sauce that takes the stove for 85 minutes may stand', () => {
    // Loaded at 10:30 and served at 12:30, so what stands 2 h 5 min is done no earlier than 10:25: the fritters from 10:10,
    // and the sauce, which stands 4 h, before them.
    const { shown, findings } = clock([planned('lunch', [fritters, onStove('sauce', 85, 240)])]);
    expect(shown).toEqual(['fritters 1 10:10–10:30', 'sauce 1 8:45–10:10']);
    expect(findings).toEqual([]);
  });

  test('still are where neither may: 20 minutes of waiting are fewer than 85, and are told', () => {
    const { shown, findings } = clock([planned('lunch', [fritters, onStove('sauce', 85, 125)])]);
    expect(shown).toEqual(['fritters 1 10:10–10:30', 'sauce 1 8:45–10:10']);
    // 10:10 to 12:30 is 2 h 20 min against 2 h 5 min.
    expect(findings).toMatchObject([
      { kind: 'waits', event: 'lunch', waiting: { from: 610, until: 750, stands: 125 } },
    ]);
  });
});

describe('a Saturday of two events that share the one oven', () => {
  test('bakes for the later truck while the earlier one loads, and for the earlier one before that', () => {
    // The lunch loads at 10:30 and leaves at 11:00, the tea loads at 12:00. Back from 12:00: cake in 11:00 to 12:00, hands at
    // the oven from 10:50, filled from 10:30. Back from 10:30: the pie in 9:30 to 10:30, hands from 9:20, filled from 9:00.
    // The tart stands 4 h, the pie 2 h 30 min: it is in before the pie, 8:30 to 9:30, hands from 8:20, filled from 8:00.
    const { shown, findings } = clock([
      planned('lunch', [bake('pie'), bake('tart', { stands: minutes(240) })]),
      planned('tea', [bake('cake')], { serveAt: '14:00' }),
    ]);
    expect(shown.toSorted()).toEqual([
      'cake 1 10:30–10:50',
      'cake 2 10:50–12:00',
      'pie 1 9:00–9:20',
      'pie 2 9:20–10:30',
      'tart 1 8:00–8:20',
      'tart 2 8:20–9:30',
    ]);
    expect(findings).toEqual([]);
  });
});
