import { checkChoice } from '../engine/quote/choice.ts';
import { quote as priceOf } from '../engine/quote/quote.ts';
import { wordedLine } from '../exports/words/line-words.ts';
import { openPaymentLabel } from '../exports/words/open-payment-label.ts';
import { textAsRead } from '../exports/words/text-as-read.ts';
import { currentTerms } from '../offers/issue/current-terms.ts';
import { quoteView } from '../views/quote-view-of.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { CHOICE_OPTIONS, choiceFromFlags, misfit } from './call/choice-flags.ts';
import { type Command, wrongCall } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { refused } from './call/refused.ts';
import { columns } from './text/columns.ts';

/** Prices any package and count of a proposal, line by line. */
export const command: Command = {
  summary: 'price a package of a proposal for any number of guests',
  usage: 'PROPOSAL [--package ID] [--adults N] …',
  options: CHOICE_OPTIONS,
  async run(call) {
    const [id, ...more] = call.args;
    if (id === undefined || more.length > 0) return wrongCall(call, 'Name one proposal: quote PROPOSAL.');
    const open = await openBook(call);
    if (!open) return 1;
    const current = currentTerms(open.book, id);
    if (!current.ok) return refused(call, current);
    const { terms, offer, choices } = current.value;
    const choice = choiceFromFlags(terms, choices, call.flags);
    if (!choice.ok) return refused(call, choice);
    const [problem] = checkChoice(terms, choice.value);
    if (problem) return refused(call, misfit(problem, terms.locale));
    if (call.json) {
      const priced = priceOf(terms, choice.value);
      const payments = priced.payments.map(({ instalment, ...payment }) => ({
        label: openPaymentLabel({ instalment }, terms),
        instalment,
        ...payment,
      }));
      const lines = priced.lines.map((line) => wordedLine(line, terms));
      call.write(JSON.stringify({ choice: choice.value, quote: { ...priced, lines, payments } }, null, 2));
      return 0;
    }
    const view = quoteView(scriptWordsIn(terms.locale), terms, choice.value, null);
    call.write(offer ? `${view.caption} (offer, revision ${offer.revision})` : `${view.caption} (draft)`);
    call.write('');
    const lines = view.lines.map((line) => [
      line.label,
      textAsRead(line.quantity, terms.locale),
      line.unitPrice,
      line.amount,
    ]);
    call.write(
      columns(
        [...lines, ['Total', '', '', view.total], [view.perGuestLabel, '', '', view.perGuest]],
        [1, 2, 3],
      ),
    );
    call.write('');
    call.write(
      columns(
        view.payments.map((each) => [each.label, each.due, each.amount]),
        [2],
      ),
    );
    for (const note of view.notes) call.write(note);
    return 0;
  },
};
