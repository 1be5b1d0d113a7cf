import { expect, test } from 'vitest';
import { parseGrams } from '../../../src/engine/kitchen/parse-grams.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import type { PackedKit } from '../../../src/engine/plan/load/kit.ts';
import { kitGrams, unweighedKit } from '../../../src/engine/plan/load/supplies.ts';
import { must } from '../offers/second-kitchen.ts';

const kit = (name: string, count: string, weighs?: string) =>
  ({
    item: { name, ...(weighs && { grams: must(parseGrams(weighs)) }) },
    count: must(parseQuantity(count)),
  }) as PackedKit;

test('kit weighs what one states times how many, else what it is measured as', () => {
  // 3 × 50 lb; a pound is 453.59237 g by definition.
  expect(kitGrams(kit('Canopies', '3 each', '50 lb'))?.equals('68038.8555')).toBe(true);
  expect(kitGrams(kit('Sand', '20 lb'))?.equals('9071.8474')).toBe(true);
  expect(kitGrams(kit('Tongs', '6 each'))).toBeUndefined();
});

test('what nothing tells the weight of is named, in one word where no kit states any', () => {
  const tongs = kit('Tongs', '6 each');
  const bins = kit('Bins', '2 each');
  expect(unweighedKit([tongs, bins], 'kit')).toEqual(['kit']);
  expect(unweighedKit([tongs, kit('Canopies', '1 each', '50 lb'), bins], 'kit')).toEqual(['Tongs', 'Bins']);
  expect(unweighedKit([kit('Sand', '20 lb')], 'kit')).toEqual([]);
});
