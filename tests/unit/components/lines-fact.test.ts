import { expect, test } from 'vitest';
import { linesFact } from '../../../src/components/kitchen/lines-fact.ts';

test('guests are served from lines, and plates of a plated menu are made on them', () => {
  expect(linesFact('buffet', 2)).toEqual(['Served from', '2 lines']);
  expect(linesFact('stations', 1)).toEqual(['Served from', '1 line']);
  expect(linesFact('plated', 2)).toEqual(['Plated on', '2 lines']);
  expect(linesFact('family style', 1)).toEqual(['Dished up on', '1 line']);
});
