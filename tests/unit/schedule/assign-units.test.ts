import { describe, expect, test } from 'vitest';
import { assignUnits, type Stint } from '../../../src/engine/schedule/assign-units.ts';

const stint = (id: string, from: number, until: number, amount = 1, near: string[] = []): Stint => ({
  id,
  from,
  until,
  amount,
  near,
});

describe('units of a kind', () => {
  test('are taken by one at a time, and a further one only where all are busy', () => {
    const given = assignUnits([stint('a', 0, 10), stint('b', 5, 15), stint('c', 10, 20)], 0, 'first');
    expect([...given]).toEqual([
      ['a', [0]],
      ['b', [1]],
      ['c', [0]],
    ]);
  });

  test('stay with what they were at, then go to whoever has done least', () => {
    const given = assignUnits(
      [
        stint('soup 1', 0, 30, 1, ['soup', 'stove']),
        stint('tart 1', 0, 10, 1, ['tart', 'bench']),
        stint('tart 2', 40, 50, 1, ['tart', 'stove']),
        stint('soup 2', 50, 60, 1, ['soup', 'bench']),
        stint('rice', 70, 80, 1, ['rice', 'bench']),
        stint('bread', 90, 95, 1, ['bread', 'bakery']),
      ],
      2,
      'least busy',
    );
    // By beginning, then by end: tart 1 first. Soup has 30 + 10 minutes on the other; rice is at the bench as soup 2 was.
    expect(given.get('tart 1')).toEqual([0]);
    expect(given.get('soup 1')).toEqual([1]);
    expect(given.get('tart 2')).toEqual([0]);
    expect(given.get('soup 2')).toEqual([1]);
    expect(given.get('rice')).toEqual([1]);
    expect(given.get('bread')).toEqual([0]);
  });

  test('come in as many as are taken at once, whatever order the stints are given in', () => {
    const all = [stint('b', 5, 15, 2), stint('a', 0, 10, 2), stint('c', 20, 30, 4)];
    const given = assignUnits(all, 3, 'first');
    expect(given.get('b')).toEqual([2, 3]);
    expect(given.get('c')).toEqual([0, 1, 2, 3]);
    expect(new Map(assignUnits(all.toReversed(), 3, 'first'))).toEqual(given);
  });

  test('that alone can do something are kept for it, and help out only where nobody else is free', () => {
    const only = [1];
    const given = assignUnits(
      [
        stint('stir', 0, 30),
        { ...stint('roll', 10, 20), only },
        stint('chop', 20, 40),
        stint('wash', 30, 35),
      ],
      2,
      'first',
    );
    expect(Object.fromEntries(given)).toEqual({ roll: [1], stir: [0], chop: [1], wash: [0] });
  });

  test('are not given for no time, or for none', () => {
    expect([...assignUnits([stint('a', 5, 5), stint('b', 0, 5, 0)], 1, 'first')]).toEqual([]);
  });
});
