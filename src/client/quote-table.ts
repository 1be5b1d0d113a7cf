import type { QuoteView } from '../views/quote-view.ts';
import { elementIn } from './element-in.ts';
import { say } from './words.ts';

/** Writes a quote into a form's summary: its lines, total, notes and payments. */
export function fillQuote(form: HTMLFormElement, quote: QuoteView): void {
  elementIn(form, '[data-part="quote-caption"]', HTMLElement).textContent = quote.caption;
  elementIn(form, '[data-part="quote-lines"]', HTMLTableSectionElement).replaceChildren(
    ...quote.lines.map(({ label, quantity, unitPrice, amount, kind }) =>
      row(label, [quantity, unitPrice].filter(Boolean).join(' × '), amount, `line-${kind}`),
    ),
    row(say('total'), '', quote.total, 'total'),
    row(quote.perGuestLabel, '', quote.perGuest, 'per-guest'),
  );
  form
    .querySelector('[data-part="payment-lines"]')
    ?.replaceChildren(
      ...quote.payments.map(({ label, due, amount }) => row(label, due, amount, 'line-line')),
    );
  elementIn(form, '[data-part="quote-notes"]', HTMLElement).textContent = quote.notes.join(' ');
}

function row(label: string, detail: string, amount: string, kind: string): HTMLTableRowElement {
  const element = document.createElement('tr');
  element.className = kind;
  const head = document.createElement('th');
  head.scope = 'row';
  head.append(label);
  if (detail !== '') {
    const small = document.createElement('span');
    small.className = 'detail';
    small.textContent = detail;
    head.append(small);
  }
  const cell = document.createElement('td');
  cell.className = 'figure';
  cell.textContent = amount;
  element.append(head, cell);
  return element;
}
