import { type DaysBefore, daysBeforeText, parseDaysBefore } from '../calendar/offset.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { type Decimal, ZERO } from './decimal.ts';
import { displayMoney } from './display-money.ts';
import { exactMoneyText, money } from './money.ts';
import { parseMoney } from './parse-money.ts';
import { parseRate, rateOf, rateText } from './rate.ts';

/** When an instalment falls due: on acceptance, or so many days before the event. */
export type InstalmentDue = 'accepted' | DaysBefore;

/** One instalment of a payment schedule, plain JSON: a share of the total, a fixed sum, or what is left. */
export type Instalment =
  | { readonly of: 'rate'; readonly rate: string; readonly due: InstalmentDue }
  | { readonly of: 'amount'; readonly amount: string; readonly due: InstalmentDue }
  | { readonly of: 'balance'; readonly due: InstalmentDue };

const EXAMPLES = 'write for example "30 % when accepted", "500.00 when accepted" or "balance 7 days before"';
const FORM =
  /^(.+?) (when accepted|on the day|(?:the day|(?:\d{1,3}|an?|one) (?:days?|weeks?)) (?:before|after))$/i;

/** Reads one instalment: `30 % when accepted`, `500.00 30 days before`, `balance on the day`. */
export function parseInstalment(text: string, currency: string): Parsed<Instalment> {
  const words = text.slice(0, 80).trim().replace(/\s+/g, ' ');
  const [, share = '', when = ''] = FORM.exec(words) ?? [];
  if (share === '') return notParsed(`"${words}" is not an installment`, EXAMPLES);
  const due =
    when.toLowerCase() === 'when accepted' ? parsed<InstalmentDue>('accepted') : parseDaysBefore(when);
  if (!due.ok) return notParsed(due.what, EXAMPLES);
  if (share.toLowerCase() === 'balance') return parsed({ of: 'balance', due: due.value });
  if (share.endsWith('%')) {
    const rate = parseRate(share);
    if (!rate.ok) return rate;
    if (rate.value.isZero() || rate.value.gt(1)) {
      return notParsed(
        `an installment can’t be ${share} of the total`,
        'use a percentage above 0 % and up to 100 %',
      );
    }
    return parsed({ of: 'rate', rate: rateText(rate.value), due: due.value });
  }
  const amount = parseMoney(share, currency);
  if (!amount.ok) return notParsed(amount.what, amount.wayOut);
  if (amount.value.amount.isZero()) return notParsed('an installment can’t be zero', EXAMPLES);
  return parsed({ of: 'amount', amount: exactMoneyText(amount.value), due: due.value });
}

/**
 * An instalment as content writes it, a sum with its currency: `$1,500.00 when accepted`. It names the payment in data and
 * for good; whoever reads of it reads `paymentLabel`.
 */
export function instalmentLabel(instalment: Instalment, currency: string, locale: string): string {
  const due = instalment.due === 'accepted' ? 'when accepted' : daysBeforeText(instalment.due);
  if (instalment.of === 'balance') return `balance ${due}`;
  const share =
    instalment.of === 'rate' ? instalment.rate : displayMoney(money(instalment.amount, currency), locale);
  return `${share} ${due}`;
}

/**
 * What is wrong with a schedule as a whole, a sentence each: shares over 100 %, two balances, or neither a balance
 * nor shares that make the whole.
 */
export function instalmentProblems(instalments: readonly Instalment[]): string[] {
  const problems: string[] = [];
  const shares = instalments.reduce(
    (total: Decimal, each) => (each.of === 'rate' ? total.plus(rateOf(each.rate)) : total),
    ZERO,
  );
  if (shares.gt(1)) {
    problems.push(
      `The installments add up to ${rateText(shares)} of the total. Bring them down to 100 % or less.`,
    );
  }
  const balances = instalments.filter((each) => each.of === 'balance').length;
  if (balances > 1) problems.push('There are two balances. Keep one; the balance is whatever is left.');
  const whole = shares.eq(1) && instalments.every((each) => each.of === 'rate');
  if (balances === 0 && instalments.length > 0 && !whole && shares.lte(1)) {
    problems.push('The installments may not add up to the total. Add one such as "balance 7 days before".');
  }
  return problems;
}
