import type { OpenPayment } from '../../engine/money/account.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { wordsIn } from '../../words/words-in.ts';
import { paymentLabel } from './payment-label.ts';

/**
 * What something open is part of, for a document: `Balance 7 days before the event`, `30 % on acceptance` with its figures in
 * data’s form; `to be paid back` where it is the client's.
 */
export function openPaymentLabel(
  { instalment }: Pick<OpenPayment, 'instalment'>,
  terms: Pick<Terms, 'currency' | 'locale'>,
): string {
  return instalment === null
    ? wordsIn(terms.locale)('bill.pay-back')
    : paymentLabel(scriptWordsIn(terms.locale), instalment, terms, (rate) => rate);
}
