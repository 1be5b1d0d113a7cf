import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import { coldLoad } from '../../../src/engine/plan/days/cold-room.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from './builders.ts';

const made = (when: string) => ({ steps: [step(when, 'Make'), step('at serving', 'Dress')] });
const stock = recipe('stock', '1 gal', [line(food('bones'), '1 lb')], made('2 days before'));
const stew = recipe('stew', '1 gal', [line(stock, '1 qt')], {
  ...made('1 day before'),
  hold: 'hot',
  pack: { chill: 'pan', carry: 'tub' },
});
const slaw = recipe('slaw', '1 gal', [line(food('cabbage'), '1 lb')], {
  ...made('on the day'),
  pack: { carry: 'tub' },
});
const bread = recipe('bread', '1 gal', [line(food('flour'), '1 lb')], {
  ...made('1 day before'),
  hold: 'room',
});
const roast = recipe('roast', '1 gal', [line(food('lamb'), '1 lb')], {
  ...made('on the day'),
  hold: 'hot',
  pack: { carry: 'tub' },
});
const pans = kitchen([
  ['pan', '1 gal', '1'],
  ['tub', '2 gal', '1'],
]);

function plan(id: string, date: string) {
  const dishes = [stew, slaw, bread, roast].map((of) => dish(of, '8 fl oz per guest'));
  const guests = { adults: 48, children: 0, vendors: 0, staff: 0 };
  return planEvent(event(dishes, { id, guests, date: day(date) }), pans, prices());
}

const gear = (id: string, count: number, holds: Readonly<Record<string, number>>): Equipment => ({
  id,
  name: id,
  count,
  holds: Object.entries(holds).map(([container, each]) => ({ container, count: each })),
  station: undefined,
});
const coldRoom = (count: number, holds: Readonly<Record<string, number>>) =>
  new Map([['cold-room', gear('cold-room', count, holds)]]);

const on = (date: string, ...plans: ReturnType<typeof plan>[]) => {
  const { foods, kinds, share } = coldLoad(plans, day(date), coldRoom(1, { pan: 10 }));
  return {
    foods: foods.map(({ recipe: { id } }) => id),
    kinds: kinds.map((kind) => `${kind.count} ${kind.name} ${kind.share?.toFraction() ?? 'uncounted'}`),
    share: share?.toFraction(),
  };
};

describe('what stands in the cold on a day', () => {
  const saturday = plan('saturday', '2027-05-15');

  test('is a part until what it goes into is made, and a dish from when it is made until its event', () => {
    expect(on('2027-05-12', saturday).foods).toEqual([]);
    expect(on('2027-05-13', saturday).foods).toEqual(['stock']);
    expect(on('2027-05-14', saturday).foods).toEqual(['stock', 'stew']);
    // What is held hot or at room temperature and made on the day itself does not stand there.
    expect(on('2027-05-15', saturday).foods).toEqual(['stew', 'slaw']);
    expect(on('2027-05-16', saturday).foods).toEqual([]);
  });

  test('is counted by kind over all events, in what it was chilled in, against what the room holds', () => {
    // 48 × 8 fl oz = 3 gal: 3 pans each of the stew; 2 tubs of slaw, of which nobody has said how many it holds.
    expect(on('2027-05-15', saturday)).toMatchObject({
      kinds: ['3 pan 3/10', '2 tub uncounted'],
      share: '3/10',
    });
    const both = on('2027-05-15', saturday, plan('too', '2027-05-15'), plan('sunday', '2027-05-16'));
    expect(both).toMatchObject({ kinds: ['9 pan 9/10', '4 tub uncounted'], share: '9/10' });
  });

  test('has no share where the kitchen has named no room', () => {
    const { kinds, share } = coldLoad([saturday], day('2027-05-14'), new Map());
    expect([kinds[0]?.count, kinds[0]?.share, share]).toEqual([3, undefined, undefined]);
  });

  test('fills the room by the sum of its kinds', () => {
    const room = coldRoom(2, { pan: 3, tub: 1 });
    // 3 of 6 pans and 2 of 2 tubs.
    expect(coldLoad([saturday], day('2027-05-15'), room).share?.equals(new Fraction('3/2'))).toBe(true);
  });

  test('is not what waits on its own day in equipment that keeps it cold, which is counted by the minute', () => {
    const withKeeper = (holds: Readonly<Record<string, number>>) =>
      new Map([
        ...coldRoom(1, { pan: 10, tub: 10 }),
        ['reach-in', { ...gear('reach-in', 1, holds), keeps: 'cold' as const }],
      ]);
    const foods = (date: string, holds: Readonly<Record<string, number>>) =>
      coldLoad([saturday], day(date), withKeeper(holds)).foods.map(({ recipe: { id } }) => id);
    // The stew of the day before stays in the cold room; the slaw of the day goes into the reach-in, if that holds its tubs.
    expect(foods('2027-05-15', { tub: 4, pan: 4 })).toEqual(['stew']);
    expect(foods('2027-05-15', { pan: 4 })).toEqual(['stew', 'slaw']);
    expect(foods('2027-05-14', { tub: 4, pan: 4 })).toEqual(['stock', 'stew']);
  });

  test('holds a part until the last of all that it goes into is finished, from the last of its own steps', () => {
    const bones = recipe('bone-broth', '1 gal', [line(food('bones'), '1 lb')], {
      steps: [step('4 days before', 'Simmer'), step('3 days before', 'Skim')],
    });
    const sauce = recipe(
      'sauce',
      '1 gal',
      [line(food('leek'), '1 lb'), line(bones, '1 qt')],
      made('on the day'),
    );
    const soup = recipe('soup', '1 gal', [line(bones, '1 qt')], made('2 days before'));
    const eaten = planEvent(
      event([dish(sauce, '8 fl oz per guest'), dish(soup, '8 fl oz per guest')], {
        guests: { adults: 16, children: 0, vendors: 0, staff: 0 },
      }),
      pans,
      prices(),
    );
    expect(on('2027-05-11', eaten).foods).toEqual([]);
    expect(on('2027-05-12', eaten).foods).toEqual(['bone-broth']);
    // The soup is done on the 13th, the sauce only on the day itself.
    expect(on('2027-05-14', eaten).foods).toEqual(['bone-broth', 'soup']);
    expect(on('2027-05-15', eaten).foods).toEqual(['bone-broth', 'sauce', 'soup']);
  });

  test('holds a part until the event where it is also served by itself', () => {
    const both = planEvent(
      event([dish(stew, '8 fl oz per guest'), dish(stock, '8 fl oz per guest')], {
        guests: { adults: 16, children: 0, vendors: 0, staff: 0 },
      }),
      pans,
      prices(),
    );
    expect(on('2027-05-15', both).foods).toEqual(['stock', 'stew']);
  });

  test('leaves out what is kept frozen, and takes food without steps as made on the day', () => {
    const ice = recipe('ice', '1 gal', [line(food('cream'), '1 qt')], {
      ...made('2 days before'),
      hold: 'frozen',
    });
    const melon = recipe('melon', '1 gal', [line(food('melon'), '1 lb')]);
    const sweet = planEvent(
      event([dish(ice, '4 fl oz per guest'), dish(melon, '4 fl oz per guest')], {
        guests: { adults: 16, children: 0, vendors: 0, staff: 0 },
      }),
      pans,
      prices(),
    );
    expect(on('2027-05-14', sweet).foods).toEqual([]);
    expect(on('2027-05-15', sweet).foods).toEqual(['melon']);
  });
});
