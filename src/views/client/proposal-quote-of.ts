import type { Choice } from '../../engine/quote/choice.ts';
import { quote } from '../../engine/quote/quote.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { withCharges } from '../../engine/quote/with-charges.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { lineLabel } from '../../exports/words/line-label.ts';
import { paymentLabel } from '../../exports/words/payment-label.ts';
import { type ScriptSay, scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { guestsText, lineView, quoteView, shown, taxLines } from '../quote-view-of.ts';
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
  const say = wordsIn(terms.locale);
  const script = scriptWordsIn(terms.locale);
  const view = quoteView(script, terms, billed?.choice ?? agreed, accepted?.on ?? null);
  if (!billed) {
    return {
      ...view,
      head: say('page.quote'),
      agreed: null,
      payments: view.payments.map((each) => ({ ...each, paid: '', open: '' })),
      paymentSums: [],
    };
  }
  const changed = isChanged(billed, agreed, script);
  const off = event?.state === 'cancelled';
  const as = say('page.quote.agreed', { guests: guestsText(script, agreed) });
  return {
    ...view,
    ...chargedLines(billed, terms, script),
    head: say(changed && !off ? 'page.quote.current' : 'page.quote'),
    agreed: changed ? { label: as, amount: shown(billed.agreedTotal, terms) } : null,
    notes: [...(billed.why === '' ? [] : [billed.why]), ...view.notes],
    payments: (off ? [] : billed.instalments).map(({ instalment, due, asked, paid, open }) => ({
      label: paymentLabel(script, instalment, terms),
      due: due === null ? say('page.payments.undated') : dateText(due, terms.locale),
      amount: shown(asked, terms),
      paid: shown(paid, terms),
      open: shown(open, terms),
    })),
    paymentSums: off ? [] : paymentSums(billed, terms, say),
  };
}

/** The lines and the total with what is charged after the event; nothing where nothing is. */
function chargedLines(
  { choice, charges = [] }: BilledNow,
  terms: Terms,
  say: ScriptSay,
): Partial<Pick<ProposalQuoteView, 'lines' | 'total'>> {
  if (charges.length === 0) return {};
  const priced = withCharges(quote(terms, choice), terms, charges);
  return {
    lines: [
      ...priced.lines.map((line) => lineView(say, { ...line, label: lineLabel(say, line) }, terms)),
      ...taxLines(say, priced, terms),
    ],
    total: shown(priced.total, terms),
  };
}

function isChanged({ choice, total, agreedTotal }: BilledNow, agreed: Choice, say: ScriptSay): boolean {
  return total !== agreedTotal || guestsText(say, choice) !== guestsText(say, agreed);
}

function paymentSums({ total, received, open, credit }: BilledNow, terms: Terms, say: Say): PaymentView[] {
  const sum = (text: string) => shown(text, terms);
  const all = {
    label: say('page.quote.total'),
    due: '',
    amount: sum(total),
    paid: sum(received),
    open: sum(open),
  };
  const back = { label: say('page.payments.refund'), due: '', amount: '', paid: '', open: sum(credit) };
  return /[1-9]/.test(credit) ? [all, back] : [all];
}
