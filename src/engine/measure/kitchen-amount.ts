import { countText } from './count-amount.ts';
import { metricText } from './metric-amount.ts';
import type { PrintRule } from './printing-grid.ts';
import { exactText, type Quantity } from './quantity.ts';
import { definedFactor, type MeasureSystem, unitKind } from './units.ts';
import { usMassText } from './us-mass.ts';
import { usVolumeText } from './us-volume.ts';

/**
 * The amount as a kitchen measures it, in the measures of `system` whatever its unit: `1 gal 2 qt 1 cup`,
 * `29 lb 4 oz`, `1.25 kg`, `10 loaves`. A count keeps its word.
 *
 * Rule `line`, for a recipe's line: the nearest such amount within 2 % of the exact one, in finer steps
 * where the usual ones are further off, so that salt and leavening keep their ratio. Rule `at-least`, for
 * what is bought or portioned: never below the exact amount, and at most 2 % above it. An amount that the
 * measures hold exactly is printed exactly under both rules. `parseQuantity` reads every result but zero.
 *
 * Follows the carries of the USDA Recipes for Schools, which print no pints. Throws on a negative amount.
 */
export function kitchenAmount(q: Quantity, system: MeasureSystem, rule: PrintRule): string {
  if (q.amount.s < 0n)
    throw new Error(`${exactText(q)} is negative and cannot be printed as a kitchen amount`);
  if (q.amount.n === 0n) return `0 ${q.unit}`;
  const kind = unitKind(q.unit);
  if (kind === 'count') return countText(q.amount, q.unit, rule);
  const amount = q.amount.mul(definedFactor(q.unit, SMALL_UNIT[system][kind])!);
  if (system === 'metric') return metricText(amount, kind, rule);
  return kind === 'mass' ? usMassText(amount, rule) : usVolumeText(amount, rule);
}

/** The unit that each printer counts in. */
const SMALL_UNIT = { us: { mass: 'oz', volume: 'tsp' }, metric: { mass: 'g', volume: 'ml' } } as const;
