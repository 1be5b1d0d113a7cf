import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Carrier } from '../../../src/engine/kitchen/carrier.ts';
import { parseGrams } from '../../../src/engine/kitchen/parse-grams.ts';
import { parseBoxSize } from '../../../src/engine/kitchen/parse-size.ts';
import type { Vehicle } from '../../../src/engine/menu/vehicle.ts';
import type { EventLoad, WeighedCarrier } from '../../../src/engine/plan/load/event-load.ts';
import { type AlsoCarried, vanLoad } from '../../../src/engine/plan/load/van-load.ts';
import { event, must, q } from './builders.ts';

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

  test('stand with what is needed first at the doors, and raw food first into its zone, so that it is lowest', () => {
    expect(fitted(loaded(Array(7).fill('1'), [5]))?.zones).toEqual({
      cab: [5, 7, 6],
      middle: [4, 3, 2],
      doors: [1],
    });
  });
});
