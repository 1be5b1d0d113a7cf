import { parseExactText } from '../../engine/measure/quantity.ts';
import type { Say } from '../../words/words-in.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { csvText } from './csv-text.ts';

const HEADER = [
  'csv.ingredient',
  'csv.name',
  'csv.need',
  'csv.need-unit',
  'csv.need-in-words',
  'csv.in-stock',
  'csv.supplier',
  'csv.pack',
  'csv.item-number',
  'csv.packs',
  'csv.pack-price',
  'csv.cost',
  'csv.currency',
  'csv.left',
  'csv.left-worth',
  'csv.order-by',
] as const;

/** The shopping list, a row for each kind of pack; what no pack covers has a row without one. */
export function shoppingCsv(plan: PrepPlanDocument, say: Say): string {
  const rows = plan.shopping.flatMap((bought) => {
    const [amount, unit] = decimalOf(bought.need.exact);
    const need = [
      bought.ingredient,
      bought.name,
      amount,
      unit,
      bought.need.printed,
      bought.stock?.printed ?? '',
    ];
    if (bought.packs.length === 0) return [[...need, '', '', '', 0, '', '', '', '', '', '']];
    return bought.packs.map((each, index) => [
      ...need,
      each.supplierName,
      each.pack,
      each.itemNumber,
      each.count,
      each.price,
      each.cost,
      plan.event.currency,
      index === 0 ? (bought.left?.printed ?? '') : '',
      index === 0 ? (bought.leftWorth ?? '') : '',
      plan.orders.find(({ supplier }) => supplier === each.supplier)?.orderBy ?? '',
    ]);
  });
  return csvText(
    HEADER.map((key) => say(key)),
    rows,
  );
}

/** An exact amount as a spreadsheet takes it: up to thousandths, never below the need. A fraction would open as a date. */
function decimalOf(exact: string): [string, string] {
  const read = parseExactText(exact);
  if (!read.ok) throw new Error(`a plan holds an amount that is none: ${read.what}`);
  const { amount, unit } = read.value;
  const thousandths = amount.mul(1000n).ceil().n;
  const whole = thousandths / 1000n;
  const rest = String(thousandths % 1000n)
    .padStart(3, '0')
    .replace(/0+$/, '');
  return [rest === '' ? `${whole}` : `${whole}.${rest}`, unit];
}
