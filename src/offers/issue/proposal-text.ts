import { randomBytes } from 'node:crypto';
import { stringify } from 'yaml';

/** What `new` must know to begin a proposal. All as a content file writes it. */
export interface ProposalStart {
  readonly client: string;
  readonly email: string;
  readonly occasion: string;
  readonly date: string;
  readonly serveAt: string;
  readonly place: string;
  readonly validUntil: string;
  readonly adults: string;
  readonly children: string;
  readonly packages: string;
}

/** A fresh link: 130 random bits in base32, lower case, 26 characters. */
export function newLink(): string {
  const alphabet = 'abcdefghijklmnopqrstuvwxyz234567';
  return Array.from(randomBytes(26), (byte) => alphabet[byte & 31]).join('');
}

/** The text of a new proposal's file, ready for the letter to be written. */
export function proposalText(start: ProposalStart, link: string): string {
  const data = {
    link,
    client: { name: start.client, ...(start.email === '' ? {} : { email: start.email }) },
    occasion: start.occasion,
    date: start.date,
    'serve at': start.serveAt,
    place: start.place,
    'valid until': start.validUntil,
    guests: { adults: start.adults, ...(start.children === '' ? {} : { children: start.children }) },
    packages: start.packages,
  };
  // The failsafe schema keeps every figure as it was typed: it is text to the reader as well.
  const yaml = stringify(data, { schema: 'failsafe', lineWidth: 0 });
  // A name is a name to Markdown too, whatever signs are in it.
  const name = start.client.replace(/[\\`*_{}[\]<>#!|~&]/g, '\\$&');
  return `---\n${yaml}---\nDear ${name},\n\nThank you for asking us.\n`;
}
