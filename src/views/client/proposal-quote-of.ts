import type { Choice } from '../../engine/quote/choice.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { textAsRead } from '../../exports/words/text-as-read.ts';
import { guestsText, quoteView, shown } from '../quote-view-of.ts';
import type { BilledNow } from './billed-now.ts';
import type { ProposalPage } from './proposal-page.ts';
import type { PaymentView, ProposalQuoteView } from './proposal-quote.ts';

/**
 * The quote of a proposal's page: of the choice proposed, and of an accepted event what is billed now, with what was
 * agreed where that differs, and each payment with what is paid of it. A cancelled event asks for no payments: its
 * terms of cancellation say what is owed, so that no total of it is called current.
 */
export function proposalQuote(
  { billed, accepted, event, content }: Pick<ProposalPage, 'billed' | 'accepted' | 'event' | 'content'>,
  terms: Terms,
): ProposalQuoteView {
  const agreed = accepted?.choice ?? content.proposed;
  const view = quoteView(terms, billed?.choice ?? agreed, accepted?.on ?? null);
  if (!billed) {
    return {
      ...view,
      head: 'Your quote',
      agreed: null,
      payments: view.payments.map((each) => ({ ...each, paid: '', open: '' })),
      paymentSums: [],
    };
  }
  const changed = isChanged(billed, agreed);
  const off = event?.state === 'cancelled';
  const as = `As agreed: ${guestsText(agreed)}`;
  return {
    ...view,
    head: changed && !off ? 'Your current total' : 'Your quote',
    agreed: changed ? { label: as, amount: shown(billed.agreedTotal, terms) } : null,
    notes: [...(billed.why === '' ? [] : [billed.why]), ...view.notes],
    payments: (off ? [] : billed.instalments).map(({ label, due, asked, paid, open }) => ({
      label: textAsRead(label, terms.locale),
      due: due === null ? 'once the new day is known' : dateText(due, terms.locale),
      amount: shown(asked, terms),
      paid: shown(paid, terms),
      open: shown(open, terms),
    })),
    paymentSums: off ? [] : paymentSums(billed, terms),
  };
}

function isChanged({ choice, total, agreedTotal }: BilledNow, agreed: Choice): boolean {
  return total !== agreedTotal || guestsText(choice) !== guestsText(agreed);
}

function paymentSums({ total, received, open, credit }: BilledNow, terms: Terms): PaymentView[] {
  const sum = (text: string) => shown(text, terms);
  const all = { label: 'Total', due: '', amount: sum(total), paid: sum(received), open: sum(open) };
  const back = { label: 'To be paid back', due: '', amount: '', paid: '', open: sum(credit) };
  return /[1-9]/.test(credit) ? [all, back] : [all];
}
