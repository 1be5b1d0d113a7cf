import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Carrier } from '../../../src/engine/kitchen/carrier.ts';
import { parseGrams } from '../../../src/engine/kitchen/parse-grams.ts';
import { parseBoxSize } from '../../../src/engine/kitchen/parse-size.ts';
import type { Vehicle } from '../../../src/engine/menu/vehicle.ts';
import type { EventLoad, WeighedCarrier } from '../../../src/engine/plan/load/event-load.ts';
import { type AlsoCarried, vanLoad } from '../../../src/engine/plan/load/van-load.ts';
import { event, food, line, must, q, recipe } from './builders.ts';

const lb = (text: string) => must(parseGrams(`${text} lb`));
const box: Carrier = {
  id: 'box',
  name: 'Box',
  count: 20,
  for: ['hot'],
  holds: [],
  size: must(parseBoxSize('24 × 18 × 20 in')),
};
const van: Vehicle = {
  id: 'van',
  name: 'Van',
  count: 1,
  payloadGrams: lb('1000'),
  space: must(parseBoxSize('96 × 48 × 60 in')),
};
const NOTHING: AlsoCarried = { rentals: [], brought: [], fuels: [], supplies: new Fraction(0n), kit: [] };

/** Carriers that weigh so many pounds each; raw ones are named by their number. */
function loaded(weights: readonly (string | undefined)[], raw: readonly number[] = []): EventLoad {
  const carriers = weights.map(
    (weight, index) =>
      ({
        number: index + 1,
        carrier: box,
        raw: raw.includes(index + 1),
        foods: [],
        foodGrams: new Fraction(0n),
        unweighed: weight === undefined ? ['Stew'] : [],
        grams: weight === undefined ? undefined : lb(weight),
      }) as unknown as WeighedCarrier,
  );
  return { foods: [], loading: { carriers } } as unknown as EventLoad;
}

function fitted(load: EventLoad, also = NOTHING, fleet: readonly Vehicle[] = [van], vehicle?: Vehicle) {
  const vehicles = new Map(fleet.map((each) => [each.id, each]));
  const plan = { input: event([], vehicle && { vehicle }) } as never;
  return vanLoad(plan, load, also, { vehicles, containers: new Map() });
}

describe('a load and its vehicle', () => {
  test('weigh what is known, with what is not named', () => {
    // Three boxes of 80 lb, 40 plates of 1½ lb, two cylinders of 20 lb: 240 + 60 + 40.
    const plates = { rental: { name: 'Plates', grams: lb('1½') }, count: q('40 each') } as never;
    const glasses = { rental: { name: 'Glasses' }, count: q('40 each') } as never;
    const gas = { name: 'propane', packed: { each: q('20 lb'), count: 2 } } as never;
    const found = fitted(loaded(['80', '80', '80', undefined]), {
      ...NOTHING,
      rentals: [plates, glasses],
      fuels: [gas],
      kit: ['Canopy'],
    });
    expect(found?.grams.equals(lb('340'))).toBe(true);
    expect(found?.unweighed).toEqual(['Box', 'Stew', 'Glasses', 'Canopy']);
    expect([found?.runs, found?.over]).toEqual([1, []]);
  });

  test('take the floor by stacks as high as the vehicle is', () => {
    // 60 in take three of 20 in; seven boxes are three stacks of 24 × 18 in on 96 × 48 in: 3 × 432 ÷ 4 608.
    expect(fitted(loaded(Array(7).fill('10')))?.floor?.equals(new Fraction(3 * 432, 4608))).toBe(true);
  });

  test('are too much for one run by weight, or by room for 85 of 100 parts of the floor', () => {
    const heavy = fitted(loaded(Array(12).fill('84')));
    expect([heavy?.over, heavy?.runs]).toEqual([['weight'], 2]);
    // 28 boxes are ten stacks, 15/16 of the floor; nine are 27/32, just under 85 %.
    expect(fitted(loaded(Array(28).fill('1')))?.over).toEqual(['space']);
    expect(fitted(loaded(Array(27).fill('1')))?.over).toEqual([]);
  });

  test('go by the vehicle that is named, else by the first that takes it all', () => {
    const truck = { ...van, id: 'truck', name: 'Truck', payloadGrams: lb('4000') };
    const load = loaded(Array(12).fill('84'));
    expect(fitted(load, NOTHING, [van, truck])?.vehicle.name).toBe('Truck');
    expect(fitted(load, NOTHING, [van, truck], van)).toMatchObject({ vehicle: { name: 'Van' }, runs: 2 });
    const { payloadGrams: _, space: __, ...bare } = van;
    expect(fitted(load, NOTHING, [bare])).toBeUndefined();
    expect(fitted({ ...load, loading: undefined })).toBeUndefined();
  });

  test('go in the fewest runs where no vehicle takes it all', () => {
    const cart = { ...van, id: 'cart', name: 'Cart', payloadGrams: lb('400') };
    const load = loaded(Array(12).fill('84'));
    expect(fitted(load, NOTHING, [cart, van])).toMatchObject({ vehicle: { name: 'Van' }, runs: 2 });
    expect(fitted(load, NOTHING, [van, cart])).toMatchObject({ vehicle: { name: 'Van' }, runs: 2 });
    expect(fitted(load, NOTHING, [])).toBeUndefined();
  });

  test('take no floor that is known where no carrier states its size', () => {
    const load = loaded(['10', '10']);
    const unsized = (load.loading?.carriers ?? []).map((each, index) =>
      index === 0 ? each : { ...each, carrier: { ...box, name: 'Crate', size: undefined } },
    );
    const with_ = (carriers: unknown) => ({ ...load, loading: { carriers } }) as unknown as EventLoad;
    // One box of two takes 24 × 18 in.
    expect(fitted(with_(unsized))?.floor?.equals(new Fraction(432, 4608))).toBe(true);
    expect(fitted(with_(unsized))?.unsized).toEqual(['Crate']);
    expect(fitted(with_(unsized.slice(1)))?.floor).toBeUndefined();
  });

  test('weigh food that is in no carrier too, with its containers, and what is in one only once', () => {
    const stew = recipe('stew', '10 lb', [line(food('beans'), '10 lb')]);
    const packed = (facts: object) => ({
      kind: 'dish',
      planned: { dish: { recipe: stew } },
      name: 'Stew',
      amount: q('10 lb'),
      ...facts,
    });
    const grams = (foods: readonly object[], carriers: readonly object[] = []) => {
      const load = { foods, loading: { carriers } } as unknown as EventLoad;
      const pan = { id: 'pan', name: 'Pan', holds: q('5 lb'), fill: new Fraction(1n) };
      const containers = new Map([
        ['pan', { ...pan, grams: lb('2') }],
        ['tub', { ...pan, name: 'Tub' }],
      ]);
      const plan = { input: event([]) } as never;
      return vanLoad(plan, load, NOTHING, { vehicles: new Map([['van', van]]), containers });
    };
    expect(grams([packed({})])?.grams.equals(lb('10'))).toBe(true);
    const inPans = packed({ container: { container: 'pan', count: 2 } });
    expect(grams([inPans])?.grams.equals(lb('14'))).toBe(true);
    const inTubs = packed({ container: { container: 'tub', count: 2 } });
    expect(grams([inTubs])?.unweighed).toEqual(['Tub']);
    const full = { number: 1, carrier: box, raw: false, foods: [{ food: inPans }], grams: lb('30') };
    expect(grams([inPans], [full])?.grams.equals(lb('30'))).toBe(true);
    const open = {
      ...full,
      grams: undefined,
      foodGrams: lb('10'),
      unweighed: [],
    };
    expect(grams([inPans], [open])?.grams.equals(lb('10'))).toBe(true);
  });

  test('stand with what is needed first at the doors, and raw food first into its zone, so that it is lowest', () => {
    expect(fitted(loaded(Array(7).fill('1'), [5]))?.zones).toEqual({
      cab: [5, 7, 6],
      middle: [4, 3, 2],
      doors: [1],
    });
  });
});
