import { csvText } from './csv-text.ts';
import type { PrepPlanDocument } from './prep-plan-document.ts';

const HEADER = ['group', 'item', 'container', 'count', 'unit', 'keep', 'note', 'out', 'back', 'checked by'];

/** The pack-out list with columns to tick: out, back, who checked. */
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
      line.note,
      '',
      '',
      '',
    ]),
  );
}
