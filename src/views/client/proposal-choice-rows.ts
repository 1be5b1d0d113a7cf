import { displayMoney } from '../../engine/money/display-money.ts';
import { type Money, money, negate, noMoney, subtract } from '../../engine/money/money.ts';
import { perGuestCounts, type Quote, type QuoteLine } from '../../engine/quote/quote.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { groupsText } from '../../exports/words/counted-text.ts';
import { lineLabel } from '../../exports/words/line-label.ts';
import { percentText } from '../../exports/words/percent-text.ts';
import type { ScriptKey, ScriptSay } from '../../words/script-words.ts';
import { lineQuantity } from '../quote-view-of.ts';

/** One line of two quotes side by side, as finished text. */
export interface ComparedRow {
  /** Names the row for good. */
  readonly key: string;
  readonly label: string;
  readonly cells: readonly [ComparedCell, ComparedCell];
  /** What the second side has more, signed; `same` where there is no difference. */
  readonly difference: string;
  readonly kind: 'line' | 'total';
}

/** A sum and how it came about; both may be empty. */
export interface ComparedCell {
  readonly amount: string;
  readonly detail: string;
}

/** What stands where a side has no such line. */
const NOTHING: ComparedCell = { amount: '–', detail: '' };

interface Figure {
  readonly key: string;
  readonly label: string;
  readonly amount: string;
  /** As the client reads it. */
  readonly cell: ComparedCell;
}

/** A quote never changes, so what is read from it is worked out once: while a slider moves, again and again. */
const figuresRead = new WeakMap<Quote, readonly Figure[]>();

/** What the menu's lines are called where two menus stand side by side. */
const MENU_LABELS: Readonly<Record<string, ScriptKey>> = {
  menu: 'row.adults',
  'menu-children': 'row.children',
  'menu-vendors': 'row.vendors',
  'menu-minimum': 'row.minimum',
  'menu-floor': 'row.floor',
};

/** The order of the rows, by the beginnings of their keys. */
const ORDER = [
  'menu-per-head',
  'menu',
  'menu-children',
  'menu-vendors',
  'menu-minimum',
  'menu-floor',
  'supplement',
  'add-on',
  'staff',
  'delivery',
  'minimum-spend',
  'discount',
  'service-charge',
  'tax-exempt',
  'tax',
  'total',
  'per-guest',
];

/**
 * Two quotes line by line. `known` are further rows by key and label, shown although neither quote has them now, so
 * that a table keeps its height while a guest count moves.
 */
export function comparedRows(
  say: ScriptSay,
  terms: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
  quotes: readonly [Quote, Quote],
  known: ReadonlyMap<string, string> = new Map(),
): ComparedRow[] {
  const [a, b] = [figuresOf(say, quotes[0], terms), figuresOf(say, quotes[1], terms)];
  const labels = new Map([...known, ...[...a, ...b].map(({ key, label }) => [key, label] as const)]);
  return [...labels]
    .sort(([one], [other]) => rank(one) - rank(other))
    .map(([key, label]) => {
      const isIt = (figure: Figure) => figure.key === key;
      const pair = [a.find(isIt), b.find(isIt)] as const;
      return {
        key,
        label,
        cells: [pair[0]?.cell ?? NOTHING, pair[1]?.cell ?? NOTHING],
        difference: differenceOf(say, pair, terms),
        kind: kindOf(key),
      };
    });
}

/** One line of any number of quotes side by side, as finished text. */
export interface QuoteRow {
  readonly label: string;
  readonly cells: readonly ComparedCell[];
  readonly kind: 'line' | 'total';
}

/** Quotes line by line, a column each. */
export function quoteRows(
  say: ScriptSay,
  terms: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
  quotes: readonly Quote[],
): QuoteRow[] {
  const figures = quotes.map(
    (each) => new Map(figuresOf(say, each, terms).map((figure) => [figure.key, figure])),
  );
  const labels = new Map(quotes.flatMap((each) => rowLabels(say, each, terms)));
  return [...labels]
    .sort(([one], [other]) => rank(one) - rank(other))
    .map(([key, label]) => ({
      label,
      cells: figures.map((of) => of.get(key)?.cell ?? NOTHING),
      kind: kindOf(key),
    }));
}

/** The rows that a quote has, by key and label. */
export function rowLabels(
  say: ScriptSay,
  quote: Quote,
  terms: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
): [string, string][] {
  return figuresOf(say, quote, terms).map(({ key, label }) => [key, label]);
}

/** A difference with its sign, `+$12.00` or `−$12.00`; `same` for none. */
export function signedMoney(say: ScriptSay, difference: Money, locale: string): string {
  if (difference.amount.isZero()) return say('row.same');
  return difference.amount.isNegative()
    ? displayMoney(difference, locale)
    : `+${displayMoney(difference, locale)}`;
}

/** How much two sums differ, without a sign. */
export function apart(
  a: string,
  b: string,
  { currency, locale }: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
): string {
  const difference = subtract(money(b, currency), money(a, currency));
  return displayMoney(difference.amount.isNegative() ? negate(difference) : difference, locale);
}

function figuresOf(
  say: ScriptSay,
  quote: Quote,
  terms: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
): readonly Figure[] {
  const read = figuresRead.get(quote) ?? readFigures(say, quote, terms);
  figuresRead.set(quote, read);
  return read;
}

function readFigures(
  say: ScriptSay,
  quote: Quote,
  terms: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
): readonly Figure[] {
  const figure = (key: string, label: string, amount: string, detail = ''): Figure => ({
    key,
    label,
    amount,
    cell: { amount: displayMoney(money(amount, terms.currency), terms.locale), detail },
  });
  const menu = quote.lines.find(({ key }) => key === 'menu');
  return [
    ...(menu ? [figure('menu-per-head', say('row.menu-price'), menu.unitPrice)] : []),
    ...quote.lines.map((line) => {
      const label = Object.hasOwn(MENU_LABELS, line.key) ? MENU_LABELS[line.key] : undefined;
      return figure(
        line.key,
        label ? say(label) : lineLabel(say, line),
        line.amount,
        detailOf(say, line, terms),
      );
    }),
    ...quote.taxes.map(({ rate, amount }) =>
      figure(
        `tax:${rate}`,
        say(quote.taxIncluded ? 'row.tax-within' : 'row.tax', { rate: percentText(rate, terms.locale) }),
        amount,
      ),
    ),
    figure('total', say('total'), quote.total),
    figure(
      'per-guest',
      say('quote.per-guest', { guests: groupsText(say, perGuestCounts(terms)) }),
      quote.perGuest,
    ),
  ];
}

function detailOf(
  say: ScriptSay,
  line: QuoteLine,
  { currency, locale }: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
): string {
  const single = line.quantity === '1' && line.unitPrice === line.amount;
  return single
    ? ''
    : `${lineQuantity(say, line)} × ${displayMoney(money(line.unitPrice, currency), locale)}`;
}

function differenceOf(
  say: ScriptSay,
  [a, b]: readonly [Figure | undefined, Figure | undefined],
  { currency, locale }: Pick<Terms, 'currency' | 'locale' | 'perGuest'>,
): string {
  if (a?.amount === b?.amount) return say('row.same');
  const sum = (figure: Figure | undefined) => (figure ? money(figure.amount, currency) : noMoney(currency));
  return signedMoney(say, subtract(sum(b), sum(a)), locale);
}

function kindOf(key: string): QuoteRow['kind'] {
  return key === 'total' || key === 'per-guest' ? 'total' : 'line';
}

function rank(key: string): number {
  const whole = ORDER.indexOf(key);
  return whole === -1 ? ORDER.indexOf(key.split(':')[0] ?? '') : whole;
}
