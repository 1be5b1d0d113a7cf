import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import { parseBurns } from '../../../src/engine/kitchen/parse-burns.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import type { TimedStep } from '../../../src/engine/plan/clock/clock-step.ts';
import { broughtTo, fuelsFor } from '../../../src/engine/plan/load/brought.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import { event, must, q, step } from './builders.ts';

const grill: Equipment = {
  id: 'grill',
  name: 'Grill',
  count: 3,
  holds: [{ count: 2, container: 'tray' }],
  station: 'grill',
  travels: true,
  heats: minutes(30),
  burns: must(parseBurns('2 lb of charcoal per hour')),
  fuelIn: q('5 lb'),
};
const ring: Equipment = {
  id: 'ring',
  name: 'Ring',
  count: 2,
  holds: [],
  station: 'stove',
  travels: true,
  burns: must(parseBurns('8 oz of propane per hour')),
  fuelIn: q('20 lb'),
};

/** A step at the place, by minutes from midnight, on so many pieces. */
function work(gear: Equipment, begins: number, ends: number, uses?: number): TimedStep {
  const load =
    uses === undefined ? undefined : { equipment: gear, containers: null, loads: 1, uses, each: 0, why: [] };
  return {
    step: step('at serving', 'Cook', { station: gear.station ?? '' }),
    load,
    begins,
    ends,
  } as unknown as TimedStep;
}

function brought(gear: Equipment, steps: readonly TimedStep[], burners?: number) {
  const venueKit = burners === undefined ? undefined : ({ burners } as never);
  const served = { plan: { input: event([], { venueKit }) }, place: { steps } } as never;
  return broughtTo(served, new Map([[gear.id, gear]]));
}

describe('what is brought to cook on', () => {
  test('is as many as are in use at once, lit from heating to the end of the last use', () => {
    const [found] = brought(grill, [
      work(grill, 700, 720, 1),
      work(grill, 710, 760, 1),
      work(grill, 760, 790, 2),
    ]);
    expect([found?.count, found?.lit]).toEqual([2, { from: 670, until: 790 }]);
  });

  test('is nothing where no work is done on it, it does not travel, or the venue has enough', () => {
    expect(brought(grill, [])).toEqual([]);
    expect(brought({ ...grill, travels: false }, [work(grill, 700, 720, 1)])).toEqual([]);
    expect(brought(ring, [work(ring, 700, 720)], 2)).toEqual([]);
  });

  test('goes by the work at its own station, and where that is stated on it alone', () => {
    const other: Equipment = { ...grill, id: 'big-grill' };
    expect(brought(grill, [work(ring, 700, 720)])).toEqual([]);
    expect(brought(grill, [work(other, 700, 720, 2)])).toEqual([]);
    // Work on another, or on none that is stated, doesn't light it longer.
    const both = [work(other, 600, 620, 2), work(grill, 580, 590), work(grill, 700, 720, 1)];
    expect(brought(grill, both)).toEqual([{ equipment: grill, count: 1, lit: { from: 670, until: 720 } }]);
    const unstated = [work(other, 600, 620, 2), work(grill, 700, 720)];
    expect(brought(grill, unstated)).toEqual([
      { equipment: grill, count: 3, lit: { from: 670, until: 720 } },
    ]);
  });

  test('is all there is of what states no capacity, but what the venue has', () => {
    expect(brought(ring, [work(ring, 700, 720)]).map(({ count }) => count)).toEqual([2]);
    expect(brought(ring, [work(ring, 700, 720)], 1).map(({ count }) => count)).toEqual([1]);
  });
});

describe('fuel', () => {
  test('is pieces × hours × rate and a quarter more, in whole bags', () => {
    // 2 grills × 2 h × 2 lb = 8 lb; 10 lb with the spare, two bags.
    const lit = brought(grill, [work(grill, 700, 790, 2)]);
    expect(
      fuelsFor(lit).map(({ name, burned, taken, packed }) => [
        name,
        exactText(burned),
        exactText(taken),
        packed?.count,
      ]),
    ).toEqual([['charcoal', '8 lb', '10 lb', 2]]);
    // A minute more, and a third is begun.
    expect(fuelsFor(brought(grill, [work(grill, 700, 791, 2)]))[0]?.packed?.count).toBe(3);
  });

  test('is one cylinder for each piece at least, and summed where several burn the same', () => {
    const torch = { ...ring, id: 'torch', count: 1, burns: must(parseBurns('1 lb of Propane per hour')) };
    const both = [...brought(ring, [work(ring, 700, 760)]), ...brought(torch, [work(torch, 700, 760)])];
    const [fuel, ...none] = fuelsFor(both);
    expect([fuel && exactText(fuel.burned), fuel?.packed?.count, none]).toEqual(['32 oz', 3, []]);
  });

  test('tells how it came about, from pieces and hours to whole bags', () => {
    const [fuel] = fuelsFor(brought(grill, [work(grill, 700, 790, 2)]));
    expect(fuel?.why.map(statementsIn('en-US'))).toEqual([
      '2 × Grill, lit 2 h, 2 lb an hour each = 8 lb',
      '8 lb + 25 % extra = 10 lb',
      '10 lb ÷ 5 lb, rounded up, and at least one for each of 2 pieces: 2',
    ]);
  });

  test('has no cylinders where it is not stated what it comes in', () => {
    const { fuelIn: _, ...loose } = ring;
    expect(fuelsFor(brought(loose, [work(loose, 700, 760)]))[0]).toMatchObject({ packed: undefined });
  });

  test.each([
    '9 oz propane',
    'of propane per hour',
    '9 oz of propane',
    '0 lb of gas per hour',
    'much of gas per hour',
  ])('is not read from “%s”', (text) => {
    expect(parseBurns(text).ok).toBe(false);
  });
});
