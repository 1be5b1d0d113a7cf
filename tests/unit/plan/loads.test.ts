import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { inUseFrom, loadAt, loadOf } from '../../../src/engine/plan/days/loads.ts';
import type { PlannedContainer } from '../../../src/engine/plan/event-plan.ts';
import { kitchen, q, recipe, step } from './builders.ts';

const ovens = (count: number, ...holds: [number, string][]): Equipment => ({
  id: 'oven',
  name: 'oven',
  count,
  holds: holds.map(([each, container]) => ({ count: each, container })),
  station: 'oven',
});

const pans = (stage: 'carry' | 'serve', container: string, count: number): PlannedContainer => ({
  stage,
  container,
  containerName: container,
  count,
  lastFull: new Fraction(1n),
  each: q('1 gal'),
  last: q('1 gal'),
  why: [],
});

const bake = step('on the day', 'Bake', { station: 'oven', unattended: minutes(40) });
const braise = recipe('braise', ['60 servings', '5 gal'], []);
const cooked = { recipe: braise, makes: q('120 servings'), batches: new Fraction(2n) };
const { containers } = kitchen([['full-pan-2', '240 fl oz', '9/10']]);

const load = (gear: Equipment, packed: readonly PlannedContainer[], of = bake) =>
  loadOf(of, cooked, packed, { equipment: new Map([['oven', gear]]), containers });

describe('loads of an oven', () => {
  test('are the pans that go in ÷ what all ovens hold, up to whole loads', () => {
    // 23 pans, 2 ovens × 5: 2 loads of 10 and one of 3.
    expect(load(ovens(2, [5, 'full-pan-2']), [pans('carry', 'full-pan-2', 23)])).toMatchObject({
      containers: { name: 'full-pan-2', count: 23 },
      loads: 3,
      uses: 2,
    });
    expect(load(ovens(2, [5, 'full-pan-2']), [pans('carry', 'full-pan-2', 10)])?.loads).toBe(1);
  });

  test('take no more ovens than they fill', () => {
    expect(load(ovens(2, [5, 'full-pan-2']), [pans('carry', 'full-pan-2', 4)])).toMatchObject({
      loads: 1,
      uses: 1,
    });
  });

  test('count what food is carried in before what it is served in, as far as the oven holds it', () => {
    const packed = [pans('serve', 'full-pan-2', 7), pans('carry', 'deep-pan', 3)];
    expect(load(ovens(1, [5, 'full-pan-2'], [2, 'deep-pan']), packed)).toMatchObject({
      containers: { name: 'deep-pan', count: 3 },
      loads: 2,
    });
    expect(load(ovens(1, [5, 'full-pan-2']), packed)?.containers).toEqual({ name: 'full-pan-2', count: 7 });
  });

  test('count food that is packed otherwise by its volume at the working fill', () => {
    // 120 servings are 10 gal = 1,280 fl oz; a pan takes 240 × 90 % = 216 fl oz: 5.93, so 6 pans, 2 loads of 5.
    expect(load(ovens(1, [5, 'full-pan-2']), [])).toMatchObject({ containers: { count: 6 }, loads: 2 });
  });

  test('say so where food cannot be counted, and there are none elsewhere, nor in a step that takes no time', () => {
    expect(load(ovens(1, [5, 'rack']), [])).toMatchObject({ containers: null, loads: 1, uses: 1 });
    expect(
      load(
        ovens(1, [5, 'full-pan-2']),
        [],
        step('on the day', 'Rest', { station: 'oven', handsOn: minutes(0) }),
      ),
    ).toBeUndefined();
    expect(
      load(ovens(1, [5, 'full-pan-2']), [], step('on the day', 'Simmer', { unattended: minutes(9) })),
    ).toBeUndefined();
  });
});

describe('equipment that is worked by hand', () => {
  const sear = step('on the day', 'Sear', { station: 'oven', handsOn: minutes(40) });
  const pansOf = (count: number) => [pans('carry', 'full-pan-2', count)];

  test('is in use during hands-on time, where the step has no other', () => {
    const found = load(ovens(2, [2, 'full-pan-2']), pansOf(7), sear);
    expect(found).toMatchObject({ loads: 2, uses: 2, byHand: true });
    expect(inUseFrom({ load: found, handsFor: 40 })).toBe(0);
  });

  test('is not where it is stated that hands are not at it, nor in the hands-on time of what looks after itself', () => {
    const both = { ...sear, unattended: minutes(30) };
    expect(load({ ...ovens(2, [2, 'full-pan-2']), byHand: false }, pansOf(7), sear)).toBeUndefined();
    const found = load(ovens(2, [2, 'full-pan-2']), pansOf(7), both);
    expect(found).not.toHaveProperty('byHand');
    expect(inUseFrom({ load: found, handsFor: 40 })).toBe(40);
    const grill = load({ ...ovens(2, [2, 'full-pan-2']), byHand: true }, pansOf(7), both);
    expect(inUseFrom({ load: grill, handsFor: 40 })).toBe(0);
  });

  test('is in use as far as there are hands to work at it', () => {
    const found = load(ovens(3, [2, 'full-pan-2']), pansOf(6), sear);
    expect([1, 2, 5].map((hands) => loadAt(found, hands)!.uses)).toEqual([1, 2, 3]);
    const baked = load(ovens(3, [2, 'full-pan-2']), pansOf(6));
    expect(loadAt(baked, 1)!.uses).toBe(3);
  });

  test('is counted in batches of the recipe where it holds those', () => {
    const mixer: Equipment = { id: 'mixer', name: 'Mixer', count: 1, holds: [], batches: 1, station: 'oven' };
    expect(load(mixer, [], sear)).toMatchObject({
      containers: { name: { key: 'why.load-batches', values: { n: 2 } }, count: 2 },
      loads: 2,
      uses: 1,
    });
  });
});
