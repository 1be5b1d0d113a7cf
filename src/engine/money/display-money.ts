import { exactMoneyText, type Money } from './money.ts';
import { symbolIn } from './symbols.ts';

/*
 * How a locale writes sums. Our own short table, because the formatting built into browsers and Node follows
 * their separate editions of locale data, and both must show the same text.
 */
interface Form {
  readonly decimal: string;
  readonly thousands: string;
  readonly symbolFirst: boolean;
  /** The least number of digits before the point that are grouped into thousands. */
  readonly groupedFrom: number;
}

const POINT: Form = { decimal: '.', thousands: ',', symbolFirst: true, groupedFrom: 4 };
const COMMA: Form = { decimal: ',', thousands: '.', symbolFirst: false, groupedFrom: 4 };
const FORMS: ReadonlyMap<string, Form> = new Map(
  Object.entries({
    en: POINT,
    de: COMMA,
    it: COMMA,
    es: { ...COMMA, groupedFrom: 5 },
    nl: { ...COMMA, symbolFirst: true },
    fr: { ...COMMA, thousands: '\u202f' },
    'de-CH': { ...POINT, thousands: '’' },
  }),
);

/**
 * A sum as people of a locale read it: `$1,234.50` (en-US), `£1,234.50` (en-GB), `1.234,50 €` (de-DE),
 * `1 234,50 €` (fr-FR). All decimals of an unrounded amount are shown, at least those of the minor unit. A
 * locale that is not in the table is written as English is, a currency without symbol by its code.
 */
export function displayMoney(m: Money, locale: string): string {
  const form = formOf(locale);
  const text = exactMoneyText(m);
  const negative = text.startsWith('-');
  const [whole = '0', decimals] = text.replace('-', '').split('.');
  const grouped = whole.length < form.groupedFrom ? whole : whole.replace(/\B(?=(\d{3})+$)/g, form.thousands);
  const digits = decimals === undefined ? grouped : `${grouped}${form.decimal}${decimals}`;
  const symbol = symbolIn(locale, m.currency) ?? m.currency;
  // A code, or a symbol after the number, is separated from it by a space that does not break.
  const gap = form === POINT && symbol !== m.currency ? '' : '\u00a0';
  const sum = form.symbolFirst ? `${symbol}${gap}${digits}` : `${digits}${gap}${symbol}`;
  return negative ? `−${sum}` : sum;
}

/** What stands before the decimals of every number that people of a locale read: sums and amounts alike. */
export function decimalMark(locale: string): string {
  return formOf(locale).decimal;
}

function formOf(locale: string): Form {
  return FORMS.get(locale) ?? FORMS.get(locale.split('-')[0] ?? '') ?? POINT;
}
