import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { goesInAt, iceFor, leakOf, stillAt } from '../../../src/engine/plan/load/carrier-heat.ts';

const f = (text: string | number) => new Fraction(text);
const celsius = (fahrenheit: number) => f(fahrenheit).sub(32n).mul(5n).div(9n);
const POUND = f('453.59237');

/** 60 lb of water from 165 to 152 °F in 4 hours at 70 °F. */
const TRIAL = {
  grams: POUND.mul(60n),
  from: celsius(165),
  to: celsius(152),
  hours: f(4),
  around: celsius(70),
};

describe('what passes a carrier’s walls', () => {
  test('follows from its trial, within a hundredth of what Newton’s law of cooling gives', () => {
    // By hand: 60 lb × 13 °F ÷ (4 h × 88½ °F) = 2.2034 lb of water for a degree in an hour.
    expect(leakOf({ trial: TRIAL }).div(POUND).valueOf()).toBeCloseTo(780 / 354, 10);
    const newton = (60 * Math.log((165 - 70) / (152 - 70))) / 4;
    expect(leakOf({ trial: TRIAL }).div(POUND).valueOf() / newton).toBeCloseTo(1, 2);
  });

  test('is 1 watt for a degree where no trial is stated', () => {
    expect(leakOf({}).mul('4.186').div(3600n).toString()).toBe('1');
  });
});

describe('ice for a carrier', () => {
  test('melts by the heat that comes in and the heat of the food, with a quarter to spare', () => {
    // In British units, on their own: 1 W/K is 1.89563 BTU per hour and °F, ice takes 143.6 BTU a pound (ASHRAE's 144 is
    // rounded up; both from memory). 30 °C is 54 °F above ice, for 5 hours; 20 kg of food loses 3.6 °F at 0.8 BTU a pound.
    const walls = 1.89563 * 54 * 5;
    const food = (20_000 / 453.59237) * 0.8 * 3.6;
    const pounds = ((walls + food) / 143.6) * 1.25;
    const ice = iceFor({}, { grams: f(20_000), hours: f(5), outside: f(30) });
    expect(ice.div(POUND).valueOf() / pounds).toBeCloseTo(1, 3);
    // And by hand in grams: (860.01 × 30 × 5 + 20 000 × 0.8 × 2) ÷ 79.79 × 1.25 = 2 522.
    expect(Math.round(ice.valueOf())).toBe(2522);
  });

  test('is none where it is no warmer outside than ice', () => {
    expect(iceFor({}, { grams: f(20_000), hours: f(5), outside: f(0) }).n).toBe(0n);
    expect(iceFor({}, { grams: f(20_000), hours: f(5), outside: f(-4) }).n).toBe(0n);
  });
});

describe('hot food in a carrier', () => {
  const box = { trial: TRIAL };

  test('is a little colder by calculation than by Newton’s law, and never warmer', () => {
    const ride = { grams: POUND.mul(30n), hours: f(3), outside: celsius(77), at: celsius(160) };
    const newton = 77 + (160 - 77) * Math.exp(-((780 / 354) * 3) / (30 * 0.8));
    const found = stillAt(box, ride).mul(9n).div(5n).add(32n).valueOf();
    expect(found).toBeLessThan(newton);
    expect(newton - found).toBeLessThan(0.5);
  });

  test('cools to what is around it where there is next to nothing of it', () => {
    const crumb = { grams: f(50), hours: f(8), outside: f(20) };
    expect(stillAt(box, { ...crumb, at: f(70) }).toString()).toBe('20');
    expect(goesInAt(box, { ...crumb, least: f(57) })).toBeUndefined();
  });

  test('is just warm enough if it goes in as hot as is asked; longer, less of it or a colder day ask for more', () => {
    const part = fc.integer({ min: 1, max: 40 }).map((n) => new Fraction(n, 4));
    fc.assert(
      fc.property(part, part, fc.integer({ min: -10, max: 40 }), (kilos, hours, degrees) => {
        const ride = { grams: kilos.mul(4000n), hours, outside: f(degrees) };
        const at = goesInAt(box, { ...ride, least: f(57) });
        if (!at) return;
        expect(stillAt(box, { ...ride, at }).equals(57n)).toBe(true);
        const harder = [
          { ...ride, hours: hours.add(1n) },
          { ...ride, grams: ride.grams.div(2n) },
          { ...ride, outside: f(degrees - 1) },
        ];
        for (const each of harder)
          expect(goesInAt(box, { ...each, least: f(57) })?.lt(at) ?? false).toBe(false);
      }),
    );
  });
});
