import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import type { PrintRule } from '../../engine/measure/printing-grid.ts';
import { exactText, type Quantity } from '../../engine/measure/quantity.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { AmountText } from '../form/text.ts';

/** A quantity for programs and for people; `at-least` where less than the exact amount would run short. */
export function amountText(q: Quantity, system: MeasureSystem, rule: PrintRule): AmountText {
  return { exact: exactText(q), printed: kitchenAmount(q, system, rule) };
}
