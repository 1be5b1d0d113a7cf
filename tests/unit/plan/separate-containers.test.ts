import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { NO_DRINKS } from '../../../src/engine/drinks/drink-counts.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { isSealed, separateContainers } from '../../../src/engine/plan/containers/separate-containers.ts';
import { rentalsFor } from '../../../src/engine/plan/containers/service-ware.ts';
import type { DishPortions } from '../../../src/engine/plan/event-input.ts';
import type { PlannedContainer } from '../../../src/engine/plan/event-plan.ts';
import { allInWords, inWords } from '../../in-words.ts';
import { must, q } from './builders.ts';

const apart = { recipe: 'tart', changes: [] };
const portions = (guests: string, ...needs: string[]): DishPortions => ({
  guests: new Fraction(guests),
  needs: needs.map((need) => ({ need, guests: 1 })),
  apart,
  why: [],
});
const pan = (count: number, stage: PlannedContainer['stage'] = 'carry'): PlannedContainer => ({
  stage,
  container: 'pan',
  containerName: 'Pan',
  count,
  lastFull: new Fraction(1),
  each: q('20 pieces'),
  last: q('20 pieces'),
  why: [],
});
const packed = (of: DishPortions, need: string, usual: readonly PlannedContainer[] = []) =>
  separateContainers(of, q(need), usual).map(
    ({ stage, count, containerName, each, last }) =>
      `${count} × ${inWords(containerName)} to ${stage}: ${exactText(each)}, ${exactText(last)}`,
  );

describe('portions made apart', () => {
  test('for an allergy are sealed, one container for each guest, whatever else is asked of them', () => {
    expect(packed(portions('3', 'milk'), '6 pieces')).toEqual([
      '3 × Sealed container to carry: 2 piece, 2 piece',
    ]);
    expect(packed(portions('5/2', 'vegan', 'almond'), '3 pieces')).toEqual([
      '3 × Sealed container to carry: 1 piece, 1 piece',
    ]);
    expect(packed(portions('40', 'vegan + milk'), '40 pieces', [pan(2)])).toEqual([
      '40 × Sealed container to carry: 1 piece, 1 piece',
    ]);
    // A need that nobody knows may be one.
    expect(packed(portions('1', 'kiwi'), '1 piece')).toEqual([
      '1 × Sealed container to carry: 1 piece, 1 piece',
    ]);
  });

  test('for a diet have a container of their own, or several of the kitchen’s where they fill more than one', () => {
    const own = ['1 × Own container to carry: 6 piece, 6 piece'];
    expect(packed(portions('3', 'vegan'), '6 pieces')).toEqual(own);
    expect(packed(portions('3', 'vegan'), '6 pieces', [pan(1), pan(3, 'chill')])).toEqual(own);
    expect(packed(portions('40', 'vegan', 'no gluten'), '40 pieces', [pan(2, 'chill'), pan(2)])).toEqual([
      '2 × Pan to chill: 20 piece, 20 piece',
      '2 × Pan to carry: 20 piece, 20 piece',
    ]);
  });

  test('are sealed where they are made apart for an allergy, and nothing else is', () => {
    expect(isSealed(portions('1', 'milk'))).toBe(true);
    expect(isSealed(portions('1', 'vegan', 'tree nuts'))).toBe(true);
    expect(isSealed(portions('1', 'vegan', 'no gluten'))).toBe(false);
    expect(isSealed({ ...portions('1', 'milk'), apart: undefined })).toBe(false);
    expect(isSealed(portions('1'))).toBe(false);
    expect(isSealed(undefined)).toBe(false);
  });

  test('say why they are packed so', () => {
    const why = (...args: Parameters<typeof portions>) =>
      allInWords(separateContainers(portions(...args), q('6 pieces'), [])[0]?.why);
    expect(why('3', 'milk')).toEqual([
      'one sealed container for each guest with an allergy, 2 pieces in each',
    ]);
    expect(why('3', 'vegan')).toEqual(['6 pieces in a separate container']);
  });
});

test('rented pieces go with their styles, for the guests they count, with spares, up to whole ones', () => {
  const rental = (id: string, facts: object) => [
    id,
    {
      id,
      name: id,
      amount: must(parsePerGuest('1 per guest')),
      styles: [],
      spare: new Fraction(0n),
      ...facts,
    },
  ];
  const rentals = new Map([
    rental('plate', { spare: new Fraction('1/20') }),
    rental('glass', { styles: ['plated'] }),
    rental('knife', { styles: ['plated', 'buffet'], counts: { adults: '1', vendors: '1' } }),
    rental('urn', { amount: must(parsePerGuest('1 per 40 guests')) }),
  ] as never) as Parameters<typeof rentalsFor>[0]['rentals'];
  const guests = { adults: 80, children: 10, vendors: 4, staff: 2 };
  const counted = (style: 'plated' | 'buffet') =>
    rentalsFor({ rentals, counts: { adults: '1', children: '1/2' } }, style, guests, NO_DRINKS).map(
      ({ rental: { id }, count }) => `${count.amount.toFraction()} ${id}`,
    );
  // 85 and a twentieth: 89.25; 85 ÷ 40.
  expect(counted('buffet')).toEqual(['90 plate', '84 knife', '3 urn']);
  expect(counted('plated')).toEqual(['90 plate', '85 glass', '84 knife', '3 urn']);
});
