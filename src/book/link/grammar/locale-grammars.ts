import { isCurrency } from '../../../engine/money/currency.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';

/** A language tag (BCP 47) with its country, in canonical form: `en-US`. */
export function parseLocale(text: string): Parsed<string> {
  try {
    const locale = new Intl.Locale(text.trim());
    if (locale.region !== undefined) return parsed(locale.toString());
  } catch {
    // Said below.
  }
  return notParsed(`“${text.slice(0, 40)}” is not a language with a country`, 'write it as en-US or de-DE');
}

/** An ISO 4217 code of a currency in use. */
export function parseCurrency(text: string): Parsed<string> {
  const code = text.trim().toUpperCase();
  return isCurrency(code)
    ? parsed(code)
    : notParsed(`“${text.slice(0, 40)}” is not a currency`, 'write its ISO 4217 code, such as USD or EUR');
}

/** An IANA time zone. */
export function parseTimeZone(text: string): Parsed<string> {
  try {
    new Intl.DateTimeFormat('en', { timeZone: text.trim() });
    if (/^[A-Za-z]/.test(text.trim())) return parsed(text.trim());
  } catch {
    // Said below.
  }
  return notParsed(
    `“${text.slice(0, 60)}” is not a time zone`,
    'write it as America/New_York or Europe/Dublin',
  );
}

/** A colour as # and six hexadecimal digits, in lower case. */
export function parseAccent(text: string): Parsed<string> {
  return /^#[0-9a-f]{6}$/i.test(text.trim())
    ? parsed(text.trim().toLowerCase())
    : notParsed(`“${text.slice(0, 40)}” is not a color`, 'write it in quotes as "#7a4a2b"');
}

/** The address of the public site, http or https, without a slash at its end. */
export function parseSite(text: string): Parsed<string> {
  const address = URL.canParse(text.trim()) ? new URL(text.trim()) : undefined;
  const plain = address && address.search === '' && address.hash === '' && address.username === '';
  return plain && /^https?:$/.test(address.protocol)
    ? parsed(address.href.replace(/\/$/, ''))
    : notParsed(
        `“${text.slice(0, 60)}” is not the address of a website`,
        'write it as https://quillwater.example',
      );
}

/** Whether a country cooks in cups and prints on Letter. */
export function usesUsHabits(locale: string): boolean {
  return new Intl.Locale(locale).region === 'US';
}
