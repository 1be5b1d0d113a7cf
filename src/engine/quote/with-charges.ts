import { add, exactMoneyText, type Money, money, moneyText, negate, noMoney, sum } from '../money/money.ts';
import { rateOf } from '../money/rate.ts';
import { taxOn } from '../money/tax.ts';
import type { LineClass } from './line-class.ts';
import { pricedLine } from './priced-line.ts';
import type { Quote, QuoteLine, QuoteTax } from './quote.ts';
import { taxedClasses } from './quote-tax.ts';
import type { Terms } from './terms.ts';

/** What a client is charged after an event, so many at a price: plates that broke. */
export interface Charge {
  readonly name: string;
  readonly class: LineClass;
  readonly count: number;
  /** For each, money text. */
  readonly each: string;
}

/** What is billed: a quote's lines and taxes with what is charged besides, and what it all comes to. */
export type Billed = Pick<Quote, 'lines' | 'taxes' | 'taxIncluded' | 'total'>;

/**
 * A quote with charges at its end, each taxed as its class is at the place. No discount is taken off them, no service charge is
 * put on them, and they count toward no minimum. Where tax is rounded once for the invoice, it is worked out again on the
 * whole base of its rate; what an exempt client is let off of prices that include tax is rounded charge by charge.
 */
export function withCharges(priced: Quote, terms: Terms, charges: readonly Charge[]): Billed {
  const { lines, taxes, taxIncluded, total } = priced;
  if (charges.length === 0) return { lines, taxes, taxIncluded, total };
  const rates = taxedClasses(terms);
  const charged = charges.map((charge, index) => chargeLine(charge, index, terms));
  const amounts = charged.map(({ amount }) => money(amount, terms.currency));
  const rateFor = (line: QuoteLine) => rates.get(line.class);
  const taxed = terms.exempt
    ? []
    : [...new Set([...taxes.map(({ rate }) => rate), ...charged.flatMap((line) => rateFor(line) ?? [])])].map(
        (rate) =>
          withTax(
            taxes.find((each) => each.rate === rate),
            rate,
            amounts.filter((_, index) => rateFor(charged[index]!) === rate),
            terms,
          ),
      );
  const letOff = exemptLines(charged, amounts, terms, rateFor);
  const onTop = (some: readonly QuoteTax[]) =>
    taxIncluded
      ? noMoney(terms.currency)
      : sum(
          some.map(({ amount }) => money(amount, terms.currency)),
          terms.currency,
        );
  const more = sum(
    [...amounts, ...letOff.map(({ amount }) => money(amount, terms.currency))],
    terms.currency,
  );
  const before = add(money(total, terms.currency), negate(onTop(taxes)));
  return {
    lines: [
      ...lines,
      ...charged.map((line) => ({
        ...line,
        taxable: !terms.exempt && rateFor(line) ? line.amount : moneyText(noMoney(terms.currency)),
      })),
      ...letOff,
    ],
    taxes: taxed,
    taxIncluded,
    total: moneyText(sum([before, more, onTop(taxed)], terms.currency)),
  };
}

function chargeLine({ name, class: of, count, each }: Charge, index: number, terms: Terms): QuoteLine {
  const unitPrice = money(each, terms.currency);
  const line = {
    key: `charge:${index + 1}`,
    name,
    class: of,
    unitPrice,
    why: () => ({ of: 'charge' as const }),
  };
  const { quantity, amount, key } = pricedLine(line, { over: BigInt(count), under: 1n });
  return {
    key,
    name,
    class: of,
    quantity,
    unitPrice: exactMoneyText(unitPrice),
    amount: moneyText(amount),
    taxable: moneyText(noMoney(terms.currency)),
    why: { of: 'charge' },
  };
}

/** The tax at a rate once charges are in its base. */
function withTax(
  before: QuoteTax | undefined,
  rate: string,
  charged: readonly Money[],
  { currency, taxBy, place }: Terms,
): QuoteTax {
  const base = money(before?.base ?? '0', currency);
  const tax = (amounts: readonly Money[]) => taxOn(amounts, rateOf(rate), currency, taxBy, place.taxIncluded);
  const amount =
    taxBy === 'line' ? add(money(before?.amount ?? '0', currency), tax(charged)) : tax([base, ...charged]);
  return { rate, base: moneyText(sum([base, ...charged], currency)), amount: moneyText(amount) };
}

/** The tax within charges that an exempt client does not pay; none where prices come without tax. */
function exemptLines(
  charged: readonly QuoteLine[],
  amounts: readonly Money[],
  { exempt, place, currency, taxBy }: Terms,
  rateFor: (line: QuoteLine) => string | undefined,
): QuoteLine[] {
  if (!exempt || !place.taxIncluded) return [];
  const within = charged.flatMap((line, index) => {
    const rate = rateFor(line);
    return rate === undefined ? [] : [taxOn([amounts[index]!], rateOf(rate), currency, taxBy, true)];
  });
  const off = negate(sum(within, currency));
  if (off.amount.isZero()) return [];
  const amount = moneyText(off);
  const zero = moneyText(noMoney(currency));
  return [
    {
      key: 'tax-exempt',
      name: '',
      class: null,
      quantity: '1',
      unitPrice: amount,
      amount,
      taxable: zero,
      why: { of: 'exemption' },
    },
  ];
}
