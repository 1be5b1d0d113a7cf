import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { minorUnits } from './currency.ts';
import { type Money, money } from './money.ts';
import { symbolOf } from './symbols.ts';

/** What a sum may be besides a plain price. */
export interface MoneyOptions {
  /** Up to six decimals, for a price of one unit that is multiplied before it is rounded. */
  readonly unitPrice?: boolean;
  /** A minus sign in front. */
  readonly negative?: boolean;
}

const NUMBER = /^(\d+)(?:\.(\d+))?$/;

/**
 * Reads a sum in a currency: `12.50`, `$12.50`, `12.50 USD`, `1250`. Decimals follow a point and are at most the
 * currency's minor unit. Thousands separators, decimal commas, exponents and more than 12 digits are refused.
 */
export function parseMoney(text: string, currency: string, options: MoneyOptions = {}): Parsed<Money> {
  const shown = `"${text.slice(0, 40)}"`;
  const example = `write an amount such as "${money('1250', currency).amount.toFixed(minorUnits(currency))}"`;
  if (text.length > 40) return notParsed('the amount is too long', example);
  const bare = withoutCurrency(text.trim(), currency);
  const negative = /^[-−]/.test(bare);
  const digits = negative ? bare.slice(1).trim() : bare;
  if (negative && !options.negative) return notParsed(`${shown} is negative`, 'write an amount of 0 or more');
  const match = NUMBER.exec(digits);
  if (!match?.[1]) return notParsed(`${shown} is not an amount in ${currency}`, wayOut(digits, example));
  const decimals = match[2] ?? '';
  if (match[1].length + decimals.length > 12) return notParsed(`${shown} has more than 12 digits`, example);
  const most = options.unitPrice ? 6 : minorUnits(currency);
  if (decimals.length > most) {
    const allowed = most === 0 ? 'no digits' : `at most ${most} digits`;
    return notParsed(
      `${shown} has too many decimals`,
      `${currency} takes ${allowed} after the decimal point here`,
    );
  }
  return parsed(money(negative ? `-${digits}` : digits, currency));
}

function withoutCurrency(text: string, currency: string): string {
  // At home a dollar is written with the plain sign, whichever dollar it is.
  const symbol = symbolOf(currency)?.replace(
    /^[A-Z]+\$$/,
    text.includes('$') && !/[A-Z]/.test(text) ? '$' : '$&',
  );
  const sign = /^[-−]/.exec(text)?.[0] ?? '';
  const rest = text.slice(sign.length);
  if (symbol && rest.startsWith(symbol)) return sign + rest.slice(symbol.length).trim();
  if (symbol && text.endsWith(symbol)) return text.slice(0, -symbol.length).trim();
  if (rest.startsWith(`${currency} `)) return sign + rest.slice(currency.length).trim();
  return text.endsWith(` ${currency}`) ? text.slice(0, -currency.length).trim() : text;
}

function wayOut(digits: string, example: string): string {
  if (/^\d{1,3}([,' \u00a0\u202f]\d{3})+(\.\d+)?$/.test(digits)) {
    return `leave out the thousands separators: write ${digits.replace(/[,' \u00a0\u202f]/g, '')}`;
  }
  if (/^\d+,\d+$/.test(digits)) return `use a decimal point: write ${digits.replace(',', '.')}`;
  if (/^\d[\d.]*e/i.test(digits)) return 'write all the digits out, without an exponent';
  return example;
}
