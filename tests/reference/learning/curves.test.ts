import { expect, test } from 'vitest';
import { chanceAboveDeviation, logChanceAbove } from '../../../src/engine/learning/normal-curve.ts';
import { studentWithin } from '../../../src/engine/learning/student-curve.ts';

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, cumulative normal curve from 0 (written here from
// memory): area from 0 to 1.00, 1.96 and 3.00.
test.each([
  [1, 0.34134],
  [1.96, 0.475],
  [3, 0.49865],
])('the normal curve holds %f deviations from its middle to the area printed', (deviation, area) => {
  expect(0.5 - chanceAboveDeviation(deviation)).toBeCloseTo(area, 5);
  expect(chanceAboveDeviation(-deviation) - 0.5).toBeCloseTo(area, 5);
});

// The same handbook, 1.3.6.7.2, upper critical values of Student's t (written here from memory): columns 0.95 and 0.975.
test.each([
  [0.9, 1, 6.314],
  [0.9, 4, 2.132],
  [0.95, 9, 2.262],
  [0.95, 30, 2.042],
  [0.9, 5, 2.015],
])('Student’s t within %f at %i degrees of freedom is %f', (chance, freedom, t) => {
  expect(studentWithin(chance, freedom)).toBeCloseTo(t, 3);
});

test('the tail goes on where its own chance is too small a number', () => {
  for (const deviation of [2, 6, 11.999])
    expect(logChanceAbove(deviation)).toBeCloseTo(Math.log(chanceAboveDeviation(deviation)), 9);
  expect(logChanceAbove(12.0001)).toBeCloseTo(logChanceAbove(11.9999), 2);
  expect(logChanceAbove(60)).toBeCloseTo(-1800 - Math.log(60) - Math.log(2 * Math.PI) / 2, 2);
});
