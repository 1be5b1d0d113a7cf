import { daysBeforeText } from '../../engine/calendar/offset.ts';
import { instalmentLabel } from '../../engine/money/instalments.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { percentText } from '../../exports/words/percent-text.ts';
import { textAsRead } from '../../exports/words/text-as-read.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { changedLine, notIn } from '../kitchen/change-line.ts';

/** The longest paragraph of the terms that is repeated; of a longer one only its head is. */
const SHORT = 320;
/** The most paragraphs of the terms that are repeated. */
const FEW = 4;

/** When money and the last count are due, and under which rules. */
export function dueChanged(before: Terms, now: Terms): string[] {
  const payments = ({ payments: list, currency, locale }: Terms) =>
    list.length === 0
      ? 'all on the day'
      : list.map((each) => textAsRead(instalmentLabel(each, currency, locale), locale)).join(', then ');
  return [
    ...changedLine('Payments', payments(before), payments(now)),
    ...changedLine(
      'Your final count is due',
      daysBeforeText(before.guarantee.daysBefore),
      daysBeforeText(now.guarantee.daysBefore),
    ),
    ...changedLine(
      'Never billed for less, of the count accepted, than',
      percentText(before.guarantee.floorRate, now.locale),
      percentText(now.guarantee.floorRate, now.locale),
    ),
  ];
}

/**
 * The terms in words: which paragraphs are other ones, with the new and the old where they are short, else by their
 * heads. A change of order or of spaces alone is said as a change, since it may be one of meaning.
 */
export function legalChanged(before: string, now: string): string[] {
  if (before === now) return [];
  const [past, present] = [paragraphs(before), paragraphs(now)];
  const came = notIn(present, past);
  const left = notIn(past, present);
  const short = came.length + left.length <= FEW && [...came, ...left].every(({ length }) => length <= SHORT);
  if (short && came.length + left.length > 0)
    return [
      'The terms were changed.',
      ...came.map((text) => `Now: “${plain(text)}”`),
      ...left.map((text) => `Before: “${plain(text)}”`),
    ];
  const heads = [...new Set([...came, ...left].map(headOf))].filter((head) => head !== '');
  return heads.length > 0
    ? [`The terms were changed: ${heads.map((head) => `“${head}”`).join(', ')}. Please read them again.`]
    : ['The terms were changed. Please read them again.'];
}

function paragraphs(text: string): string[] {
  return text
    .split(/\n\s*\n/)
    .map((each) => each.trim())
    .filter((each) => each !== '');
}

/** The bold words that a paragraph begins with, or a heading. */
function headOf(paragraph: string): string {
  const [, bold, heading] = /^(?:\*\*(.{1,80}?)\.?\*\*|#{1,6} (.{1,80})$)/m.exec(paragraph) ?? [];
  return bold ?? heading ?? '';
}

/** Markdown without its signs of emphasis, heading and list, on one line. */
function plain(markdown: string): string {
  return markdown.replace(/\*\*|__|^#{1,6} |^[-*] /gm, '').replace(/\s+/g, ' ');
}

/** What is not included by the offer, item by item. */
export function notIncludedChanged(
  before: Pick<OfferContent, 'notIncluded'>,
  now: Pick<OfferContent, 'notIncluded'>,
): string[] {
  const [past, present] = [before.notIncluded ?? [], now.notIncluded ?? []];
  const items = (words: string, list: readonly string[]) =>
    list.length === 0 ? [] : [`${words}: ${list.join('; ')}.`];
  return [
    ...items('Now named as not included', notIn(present, past)),
    ...items('No longer named as not included', notIn(past, present)),
  ];
}
