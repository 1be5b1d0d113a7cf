import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** From how many guests to how many, both included; without an end where `to` is null. */
export interface GuestRange {
  readonly from: number;
  readonly to: number | null;
}

const FORM = /^(\d{1,6})(?: ?(?:-|–|to) ?(\d{1,6})| ?(\+)| (?:and|or) more)?$/;

/** Reads for how many guests a price holds: `20-49`, `20–49`, `20 to 49`, `100+`, `100 or more`, `50`. */
export function parseGuestRange(text: string): Parsed<GuestRange> {
  const words = text
    .slice(0, 40)
    .trim()
    .replace(/ guests$/, '');
  const match = FORM.exec(words);
  if (!match)
    return notParsed(`“${text.slice(0, 40)}” is not a range of guests`, 'write it as 20-49 or 100+');
  const [, from = '', to] = match;
  const open = match[3] !== undefined || /more$/.test(words);
  return parsed({ from: Number(from), to: open ? null : Number(to ?? from) });
}
