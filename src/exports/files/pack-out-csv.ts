import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { csvText } from './csv-text.ts';

const HEADER = [
  'group',
  'item',
  'container',
  'count',
  'unit',
  'keep',
  'raw',
  'note',
  'out',
  'back',
  'checked by',
];

/** The pack-out list with columns to tick: out, back, who checked. Raw food stands at its end and says so. */
export function packOutCsv(plan: PrepPlanDocument): string {
  return csvText(
    HEADER,
    plan.packOut.map((line) => [
      line.group,
      line.item,
      line.container,
      line.count,
      line.unit,
      line.hold,
      line.raw ? `${line.raw.mark}: ${line.raw.next}` : '',
      line.note,
      '',
      '',
      '',
    ]),
  );
}
