import { durationText, minutes } from '../engine/measure/duration.ts';
import { displayMoney } from '../engine/money/display-money.ts';
import { moneyText } from '../engine/money/money.ts';
import { checkChoice } from '../engine/quote/choice.ts';
import { quote as priceOf } from '../engine/quote/quote.ts';
import { clockOf } from '../exports/words/clock-text.ts';
import { soldShortText } from '../exports/words/hours-words.ts';
import { wordedLine } from '../exports/words/line-words.ts';
import { openPaymentLabel } from '../exports/words/open-payment-label.ts';
import { textAsRead } from '../exports/words/text-as-read.ts';
import { currentTerms } from '../offers/issue/current-terms.ts';
import {
  type HoursNotSold,
  hoursNotSold,
  hoursOfChoice,
  type KitchenPaid,
  kitchenPaid,
} from '../views/kitchen/hours-sold.ts';
import { quoteView } from '../views/quote-view-of.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { wordsIn } from '../words/words-in.ts';
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
    const missing = hoursNotSold(
      hoursOfChoice(open.book, id, terms, choice.value, open.today),
      open.book.kitchen,
    );
    const kitchen = kitchenPaid(open.book, id, open.today);
    if (call.json) {
      const priced = priceOf(terms, choice.value);
      const payments = priced.payments.map(({ instalment, ...payment }) => ({
        label: openPaymentLabel({ instalment }, terms),
        instalment,
        ...payment,
      }));
      const lines = priced.lines.map((line) => wordedLine(line, terms));
      call.write(
        JSON.stringify(
          {
            choice: choice.value,
            quote: { ...priced, lines, payments },
            ...unsold(missing),
            ...inKitchen(kitchen),
          },
          null,
          2,
        ),
      );
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
    if (missing) call.write(shortLine(missing, open.book.kitchen.locale));
    if (kitchen) call.write(kitchenLine(kitchen, open.book.kitchen.locale));
    return 0;
  },
};

/** Hours that the event takes and the quote does not have: for the caterer alone. */
function shortLine({ roles, cost }: HoursNotSold, locale: string): string {
  const say = wordsIn(locale);
  const what = soldShortText(roles, say, cost && displayMoney(cost, locale));
  return textAsRead(say('clock.quote-short', { what }), locale);
}

/** What the kitchen’s crew gives to the event as accepted: for the caterer alone too. */
function kitchenLine({ there, work, pay }: KitchenPaid, locale: string): string {
  const figures = { there: durationText(minutes(there)), work: durationText(minutes(work)) };
  const say = wordsIn(locale);
  return pay === null
    ? say('clock.quote-kitchen', figures)
    : say('clock.quote-kitchen-pay', { ...figures, pay: displayMoney(pay, locale) });
}

function inKitchen(kitchen: KitchenPaid | undefined) {
  if (!kitchen) return {};
  const { there, work, pay } = kitchen;
  return { kitchenHours: { thereMinutes: there, workMinutes: work, pay: pay && moneyText(pay) } };
}

function unsold(missing: HoursNotSold | undefined) {
  if (!missing) return {};
  const { roles, cost } = missing;
  return {
    hoursNotSold: {
      roles: roles.map(({ sold: { role, people, each }, from, until, missing: work }) => ({
        role,
        people,
        soldMinutes: each,
        neededMinutes: until - from,
        from: clockOf(from),
        until: clockOf(until),
        missingMinutes: work,
      })),
      pay: cost && moneyText(cost),
    },
  };
}
