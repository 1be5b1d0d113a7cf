import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { trimUnstated } from '../../../src/engine/food/trim.ts';
import { food, line } from '../plan/builders.ts';

const half = new Fraction('1/2');

test.each([
  ['potatoes, peeled', food('potato'), '1 lb', 'peeled', true],
  ['potatoes, peeled and diced', food('potato'), '1 lb', 'peeled and diced', true],
  ['potatoes, unpeeled', food('potato'), '1 lb', 'unpeeled', false],
  ['potatoes, diced', food('potato'), '1 lb', 'diced', false],
  ['potatoes without a word', food('potato'), '1 lb', null, false],
  ['potatoes as purchased', food('potato'), '1 lb', 'as purchased', false],
  ['whole potatoes, peeled', food('potato'), '8 each', 'peeled', false],
  ['potatoes with a yield', food('potato', { yield: half }), '1 lb', 'peeled', false],
  ['potatoes that lose nothing', food('potato', { yield: new Fraction(1) }), '1 lb', 'peeled', false],
  ['raw beef', food('beef', { from: ['beef'] }), '1 lb', null, true],
  ['raw fish among others', food('fish', { from: ['plant', 'fish'] }), '1 lb', 'diced', true],
  ['ground beef', food('beef', { from: ['beef'], soldAs: 'ground' }), '1 lb', null, false],
  ['a food of unknown origin', food('x', { from: undefined }), '1 lb', null, false],
] as const)('whether the trim of %s is missing', (_, of, amount, preparation, missing) => {
  expect(trimUnstated(of, line(of, amount, preparation))).toBe(missing);
});
