const SYMBOLS: Readonly<Record<string, string>> = {
  USD: '$',
  EUR: '€',
  GBP: '£',
  JPY: '¥',
  INR: '₹',
  KRW: '₩',
  ILS: '₪',
  VND: '₫',
  UAH: '₴',
  NGN: '₦',
  PHP: '₱',
  TRY: '₺',
  AUD: 'A$',
  CAD: 'CA$',
  NZD: 'NZ$',
  HKD: 'HK$',
  MXN: 'MX$',
  BRL: 'R$',
};

/** The currency's symbol where one is in common use and belongs to no other currency here, else undefined. */
export function symbolOf(currency: string): string | undefined {
  return Object.hasOwn(SYMBOLS, currency) ? SYMBOLS[currency] : undefined;
}

const HOME_DOLLARS: Readonly<Record<string, string>> = {
  AUD: 'AU',
  CAD: 'CA',
  NZD: 'NZ',
  HKD: 'HK',
  MXN: 'MX',
};

/** The symbol as people of a locale write it: a dollar of their own is plain `$`. */
export function symbolIn(locale: string, currency: string): string | undefined {
  const home = HOME_DOLLARS[currency];
  return home !== undefined && locale.endsWith(`-${home}`) ? '$' : symbolOf(currency);
}
