import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { type Statement, statement } from '../text/statement.ts';

/** The most events of which one may be chosen to run short; beyond it no appetite is known well enough. */
const MOST = 10_000;

const FORM = /^short at most 1 in (\d{1,6})$/;

/** Whether a text begins as a risk does, so that it is read as one. */
export function looksLikeRisk(text: string): boolean {
  return text.trim().toLowerCase().startsWith('short');
}

/**
 * Reads a chosen risk of running short, `short at most 1 in 50`, as how many events there are to the one at which it
 * may: 50. From 2 to 10,000.
 */
export function parseRisk(text: string): Parsed<number> {
  const [, events] = FORM.exec(text.trim().toLowerCase().replaceAll(/\s+/g, ' ')) ?? [];
  const oneIn = Number(events);
  if (events !== undefined && oneIn >= 2 && oneIn <= MOST) return parsed(oneIn);
  return notParsed(
    `“${text.slice(0, 60)}” is not a risk of running short`,
    'write it as “short at most 1 in 50”, with a whole number from 2 to 10,000',
  );
}

/** The risk as it is told. */
export function riskSaid(oneIn: number): Statement {
  return statement('why.risk', { n: String(oneIn) });
}
