import type Fraction from 'fraction.js';
import { mixedNumberText } from '../../engine/measure/mixed-number.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';

/**
 * Batches as a cook reads them: in quarters where they come out so, `1½`, and to two decimals where no measure is marked,
 * `1.94`; in a metric kitchen always in decimals, `0.5`. Half up.
 */
export function batchesText(batches: Fraction, system: MeasureSystem): string {
  return system === 'us' && batches.mul(4n).d === 1n ? mixedNumberText(batches) : decimalText(batches);
}

/** To two decimals; below a tenth to two figures: `0.075`. */
function decimalText(batches: Fraction): string {
  let places = 2;
  for (let small = batches.mul(10n); small.n !== 0n && small.lt(1n); small = small.mul(10n)) places += 1;
  return batches.round(places).toString(places);
}
