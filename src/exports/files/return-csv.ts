import type { Say } from '../../words/words-in.ts';
import type { ReturnLine } from '../form/return-list.ts';
import { csvText } from './csv-text.ts';

const HEADER = [
  'csv.group',
  'csv.item',
  'csv.count',
  'csv.unit',
  'csv.hired-from',
  'csv.back-by',
  'csv.washed',
  'csv.back',
  'csv.broken',
  'csv.missing',
] as const;

/** The return list with columns to fill in: how many are back, broken, missing. */
export function returnCsv(lines: readonly ReturnLine[], say: Say): string {
  return csvText(
    HEADER.map((key) => say(key)),
    lines.map(({ group, item, count, unit, hiredFrom, by, washed }) => [
      group,
      item,
      count,
      unit,
      hiredFrom,
      by,
      washed && say('returns.washed-by', { washer: washed }),
      '',
      '',
      '',
    ]),
  );
}
