import type { Say } from '../../words/words-in.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { rawMarkText } from '../words/raw-mark-text.ts';
import { csvText } from './csv-text.ts';

const HEADER = [
  'csv.group',
  'csv.item',
  'csv.container',
  'csv.count',
  'csv.unit',
  'csv.keep',
  'csv.raw',
  'csv.note',
  'csv.out',
  'csv.back',
  'csv.checked-by',
  'csv.carriers',
] as const;

/** The pack-out list with columns to tick: out, back, who checked. Raw food stands at its end and says so. */
export function packOutCsv(plan: PrepPlanDocument, say: Say): string {
  return csvText(
    HEADER.map((key) => say(key)),
    plan.packOut.map((line) => [
      line.group,
      line.item,
      line.container,
      line.count,
      line.unit,
      line.hold && say('lists.hold', { how: line.hold }),
      line.raw ? say('csv.raw-note', { mark: rawMarkText(line.raw.mark, say), next: line.raw.next }) : '',
      [line.throwAwayBy ? say('labels.throw-away', { time: line.throwAwayBy }) : '', line.note]
        .filter((text) => text !== '')
        .join('. '),
      '',
      line.usedUp ? say('lists.used-up') : '',
      '',
      line.carriers?.join(', ') ?? '',
    ]),
  );
}
