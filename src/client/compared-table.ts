import type { ComparedRow } from '../views/client/proposal-choice-rows.ts';
import { changeText } from './changed-text.ts';
import { elementIn } from './element-in.ts';

/**
 * Brings the table of two sides to these rows. Rows are distinguished by key: while the keys stay, as they do when only
 * a count moves, nothing but texts changes.
 */
export function fillComparedTable(body: HTMLTableSectionElement, rows: readonly ComparedRow[]): void {
  const present = new Map([...body.rows].map((row) => [row.dataset.key ?? '', row]));
  const wanted = rows.map((row) => present.get(row.key) ?? emptyRow(row));
  const same = wanted.length === body.rows.length && wanted.every((row, index) => body.rows[index] === row);
  if (!same) body.replaceChildren(...wanted);
  for (const [index, row] of rows.entries()) {
    const element = wanted[index];
    if (element) fillRow(element, row);
  }
}

function fillRow(element: HTMLTableRowElement, row: ComparedRow): void {
  changeText(elementIn(element, '[data-cell="label"]', HTMLElement), row.label);
  for (const [index, letter] of ['a', 'b'].entries()) {
    const cell = row.cells[index];
    changeText(elementIn(element, `[data-cell="${letter}"]`, HTMLElement), cell?.amount ?? '');
    changeText(elementIn(element, `[data-detail="${letter}"]`, HTMLElement), cell?.detail ?? '');
  }
  changeText(elementIn(element, '[data-cell="difference"]', HTMLElement), row.difference);
}

function emptyRow(row: ComparedRow): HTMLTableRowElement {
  const element = document.createElement('tr');
  element.dataset.key = row.key;
  element.className = `compared-${row.kind}`;
  const head = document.createElement('th');
  head.scope = 'row';
  head.dataset.cell = 'label';
  const cells = ['a', 'b'].map((letter) => {
    const cell = document.createElement('td');
    cell.className = 'figure';
    const amount = document.createElement('span');
    amount.dataset.cell = letter;
    const detail = document.createElement('span');
    detail.className = 'detail';
    detail.dataset.detail = letter;
    cell.append(amount, detail);
    return cell;
  });
  const difference = document.createElement('td');
  difference.className = 'figure difference';
  difference.dataset.cell = 'difference';
  element.append(head, ...cells, difference);
  return element;
}
