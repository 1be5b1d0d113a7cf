import type { Day } from '../calendar/day.ts';
import { Decimal } from '../money/decimal.ts';
import type { Instalment } from '../money/instalments.ts';
import { add, exactMoneyText, type Money, money, moneyText, negate, noMoney, sum } from '../money/money.ts';
import { scheduleFor } from '../money/schedule.ts';
import { addOnLines } from './add-on-lines.ts';
import type { Choice } from './choice.ts';
import { type Counts, countGuests, DEFAULT_COUNTS } from './counts.ts';
import { discounted } from './discount.ts';
import type { LineClass } from './line-class.ts';
import type { LineWhy } from './line-why.ts';
import { shortOfMinimum } from './meal-prices.ts';
import { menuLines } from './menu-lines.ts';
import { minimumSpendLine } from './minimum-spend.ts';
import { type PricedLine, pricedLine, sumLine } from './priced-line.ts';
import { type RateTax, taxedClasses, taxesOf } from './quote-tax.ts';
import { serviceChargeLine } from './service-charge.ts';
import { staffLines } from './staff-lines.ts';
import { supplementLines } from './supplement-lines.ts';
import type { PackageTerms, Terms } from './terms.ts';

/** What a choice costs under terms. Plain JSON; sums are text at the currency's minor unit. */
export interface Quote {
  readonly currency: string;
  readonly lines: readonly QuoteLine[];
  /** The lines before discount and service charge. */
  readonly subtotal: string;
  /** Negative, or nothing. */
  readonly discount: string;
  readonly serviceCharge: string;
  readonly taxes: readonly QuoteTax[];
  /** True where the taxes are within the lines and not on top of them. */
  readonly taxIncluded: boolean;
  /** All lines, and all taxes unless they are included. */
  readonly total: string;
  /** The total divided by the guests at the table, adults and children, half-up. For show. */
  readonly perGuest: string;
  readonly payments: readonly QuotePayment[];
  /** What the client should know about how the total came about. */
  readonly notes: readonly QuoteNote[];
}

/**
 * What a client should know about a total: it is billed for a menu's minimum, a service charge is no gratuity, no tax
 * is charged, or the prices hold it.
 */
export type QuoteNote = 'minimum guests' | 'service charge' | 'exempt' | 'tax included';

/** One line. `quantity` × `unitPrice` is `amount`, rounded half-up. */
export interface QuoteLine {
  readonly key: string;
  /** What it is named after: a menu, a dish, an add-on, a label of the terms; empty where its key says all. */
  readonly name: string;
  readonly class: LineClass | null;
  readonly quantity: string;
  readonly unitPrice: string;
  readonly amount: string;
  /** What of it tax is calculated on, after its share of the discount; nothing where it is not taxed. */
  readonly taxable: string;
  readonly why: LineWhy;
}

/** The tax at one rate. */
export interface QuoteTax {
  readonly rate: string;
  readonly base: string;
  readonly amount: string;
}

/** One payment; `due` is null where it is due on acceptance and nobody has accepted yet. */
export interface QuotePayment {
  readonly instalment: Instalment;
  readonly due: Day | null;
  readonly amount: string;
}

/**
 * Prices a choice: menu, supplements, add-ons, staff, delivery, minimum spend, discount, service charge, tax.
 * It also prices a choice that is not finished, so that a page can show a total while one chooses;
 * `checkChoice` says whether it may be accepted. Throws where the package is not in the terms.
 */
export function quote(terms: Terms, choice: Choice, acceptedOn: Day | null = null): Quote {
  const calculated = calculate(terms, choice);
  const { base, off, charge, taxable, net, rates, paid, lines, total } = calculated;
  const nothing = noMoney(terms.currency);
  return {
    currency: terms.currency,
    lines: lines.map((line) => {
      const taxed = !terms.exempt && rates.has(line.class);
      return quoteLine(line, taxed ? (net[taxable.indexOf(line)] ?? nothing) : nothing);
    }),
    subtotal: moneyText(amountOf(base, terms)),
    discount: moneyText(off.line?.amount ?? nothing),
    serviceCharge: moneyText(charge?.amount ?? nothing),
    taxes: paid.map(({ rate, base: taxed, tax }) => ({
      rate,
      base: moneyText(taxed),
      amount: moneyText(tax),
    })),
    taxIncluded: terms.place.taxIncluded,
    ...sumsOf(terms, total, choice),
    payments: scheduleFor(total, terms, { acceptedOn, eventDate: terms.eventDate }).map((row) => ({
      instalment: row.instalment,
      due: row.due,
      amount: moneyText(row.amount),
    })),
    notes: notesOn(terms, calculated.chosen, choice, charge !== null),
  };
}

/** What a quote comes to and nothing else of it: the same sums as {@link quote} gives, for tables of many. */
export function quoteSums(terms: Terms, choice: Choice): Pick<Quote, 'total' | 'perGuest'> {
  return sumsOf(terms, calculate(terms, choice).total, choice);
}

function sumsOf(terms: Terms, total: Money, choice: Choice): Pick<Quote, 'total' | 'perGuest'> {
  return { total: moneyText(total), perGuest: moneyText(perGuest(terms, total, choice)) };
}

function calculate(terms: Terms, choice: Choice) {
  const chosen = terms.packages.find((candidate) => candidate.id === choice.package);
  if (!chosen) throw new RangeError(`there is no package "${choice.package}" in these terms`);
  const base = baseLines(terms, chosen, choice);
  const off = discounted(terms, base);
  const charge = serviceChargeLine(terms, base, off.net);
  const taxable = charge ? [...base, charge] : base;
  const net = charge ? [...off.net, charge.amount] : off.net;
  const rates = taxedClasses(terms);
  const taxes = taxesOf(terms, rates, taxable, net);
  const exemption = exemptionLine(terms, taxes);
  const paid = terms.exempt ? [] : taxes;
  const lines = [...base, off.line, charge, exemption].filter((line) => line !== null);
  const onTop = terms.place.taxIncluded ? [] : paid.map((each) => each.tax);
  const total = sum([...lines.map((line) => line.amount), ...onTop], terms.currency);
  return { chosen, base, off, charge, taxable, net, rates, paid, lines, total };
}

function baseLines(terms: Terms, chosen: PackageTerms, choice: Choice): PricedLine[] {
  const lines = [
    ...menuLines(terms, chosen, choice.guests),
    ...supplementLines(terms, chosen, choice),
    ...addOnLines(terms, chosen, choice),
    ...staffLines(terms, chosen, choice.guests),
  ];
  if (terms.delivery) {
    const unitPrice = money(terms.delivery.price, terms.currency);
    const why = (): LineWhy => ({ of: 'delivery', place: terms.place.name });
    const line = { key: 'delivery', name: terms.delivery.label, class: 'delivery' as const, unitPrice, why };
    lines.push(pricedLine(line, { over: 1n, under: 1n }));
  }
  const topUp = minimumSpendLine(terms, chosen, lines);
  return topUp ? [...lines, topUp] : lines;
}

/** Prices that include tax are lowered by it for a client who pays none. */
function exemptionLine(terms: Terms, taxes: readonly RateTax[]): PricedLine | null {
  if (!terms.exempt || !terms.place.taxIncluded || taxes.length === 0) return null;
  const amount = negate(
    sum(
      taxes.map((each) => each.tax),
      terms.currency,
    ),
  );
  return sumLine({ key: 'tax-exempt', name: '', class: null, amount, why: () => ({ of: 'exemption' }) });
}

function perGuest(terms: Terms, total: Money, { guests }: Choice): Money {
  const { over, under } = countGuests(guests, perGuestCounts(terms));
  const counted = new Decimal(String(over)).div(String(under));
  return { amount: counted.isZero() ? total.amount : total.amount.div(counted), currency: total.currency };
}

/** Whom sums per guest divide by. */
export function perGuestCounts({ perGuest }: Pick<Terms, 'perGuest'>): Counts {
  return perGuest ?? DEFAULT_COUNTS;
}

function amountOf(lines: readonly PricedLine[], terms: Terms): Money {
  return lines.reduce((total, line) => add(total, line.amount), noMoney(terms.currency));
}

function quoteLine(line: PricedLine, taxable: Money): QuoteLine {
  return {
    key: line.key,
    name: line.name,
    class: line.class,
    quantity: line.quantity,
    unitPrice: exactMoneyText(line.unitPrice),
    amount: moneyText(line.amount),
    taxable: moneyText(taxable),
    why: line.why(),
  };
}

function notesOn(terms: Terms, chosen: PackageTerms, choice: Choice, charged: boolean): QuoteNote[] {
  const notes: QuoteNote[] = [];
  if (shortOfMinimum(chosen, choice.guests) > 0) notes.push('minimum guests');
  if (charged) notes.push('service charge');
  if (terms.exempt) notes.push('exempt');
  else if (terms.place.taxIncluded) notes.push('tax included');
  return notes;
}
