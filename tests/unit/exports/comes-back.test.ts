import { expect, test } from 'vitest';
import { comesBack } from '../../../src/exports/plan/comes-back.ts';

test('food, carriers and kit are counted back in, neither people nor what is used up', () => {
  const groups = ['food', 'carriers', 'service ware', 'equipment', 'kit', 'add-ons'] as const;
  expect(groups.filter((group) => !comesBack({ group }))).toEqual([]);
  expect(comesBack({ group: 'staff' })).toBe(false);
  expect(groups.filter((group) => comesBack({ group, usedUp: true }))).toEqual([]);
});
