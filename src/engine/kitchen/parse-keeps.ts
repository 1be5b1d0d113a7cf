import { notParsed, type Parsed, parsed } from '../parsed.ts';

const FORM = /^(\d{1,4}) (day|days|week|weeks|month|months|year|years)$/i;
const DAYS: Readonly<Record<string, number>> = { day: 1, week: 7, month: 30, year: 365 };

/** Reads how long something keeps, `3 days`, `2 weeks`, `6 months` (of 30 days), `1 year`, as whole days from 1. */
export function parseKeeps(text: string): Parsed<number> {
  const [, count = '0', unit = ''] = FORM.exec(text.slice(0, 40).trim().replace(/\s+/g, ' ')) ?? [];
  const days = Number(count) * (DAYS[unit.toLowerCase().replace(/s$/, '')] ?? 0);
  return days > 0
    ? parsed(days)
    : notParsed(`“${text.slice(0, 40)}” does not give a time it keeps`, 'write it as "3 days" or "2 weeks"');
}
