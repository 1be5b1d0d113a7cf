import { expect, test } from 'vitest';
import { parseInstalment } from '../../../src/engine/money/instalments.ts';
import { paymentLabel } from '../../../src/exports/words/payment-label.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';

const label = (text: string) => {
  const read = parseInstalment(text, 'USD');
  if (!read.ok) throw new Error(read.what);
  return paymentLabel(scriptWordsIn('en-US'), read.value, { currency: 'USD', locale: 'en-US' });
};

test.each([
  ['30 % when accepted', '30% on acceptance'],
  ['$1500 when accepted', '$1,500.00 on acceptance'],
  ['40 % the day before', '40%, 1 day before the event'],
  ['balance 7 days before', 'Balance, 7 days before the event'],
  ['balance on the day', 'Balance, on the day of the event'],
  ['balance 3 days after', 'Balance, 3 days after the event'],
])('a payment written as “%s” is to its client “%s”', (written, read) => {
  expect(label(written)).toBe(read);
});
