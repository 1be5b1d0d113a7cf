import type Fraction from 'fraction.js';
import type { LabelSheet } from '../../engine/kitchen/label-sheet.ts';
import type { LabelSheetView } from './view.ts';

/** Where a sheet's labels lie: the nudge moves all of them and leaves their size and distances. */
export function labelSheetView({ sheet, label, above, beside, between, nudge }: LabelSheet): LabelSheetView {
  return {
    sheetWidth: length(sheet.width),
    sheetHeight: length(sheet.height),
    labelWidth: length(label.width),
    labelHeight: length(label.height),
    above: length(above.add(nudge.down)),
    beside: length(beside.add(nudge.right)),
    between: length(between),
  };
}

/** Millimetres to a ten-thousandth, far below what any printer does. */
function length(millimetres: Fraction): string {
  return `${millimetres.round(4).toString()}mm`;
}
