import type { Terms } from '../../engine/quote/terms.ts';
import { paymentLabel } from '../../exports/words/payment-label.ts';
import { percentText } from '../../exports/words/percent-text.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { changedLine, notIn } from './change-line.ts';

/** The longest paragraph of the terms that is repeated; of a longer one only its head is. */
const SHORT = 320;
/** The most paragraphs of the terms that are repeated. */
const FEW = 4;

/** When money and the last count are due, and under which rules. */
export function dueChanged(before: Terms, now: Terms): string[] {
  const say = wordsIn(now.locale);
  const script = scriptWordsIn(now.locale);
  const payments = (terms: Terms) =>
    terms.payments.length === 0
      ? say('changes.due.all')
      : terms.payments.map((each) => paymentLabel(script, each, terms)).join('; ');
  const due = ({ guarantee }: Terms) => say('changes.due.when', { days: guarantee.daysBefore });
  return [
    ...changedLine(say, say('changes.due.payments'), payments(before), payments(now)),
    ...changedLine(say, say('changes.due.count'), due(before), due(now)),
    ...changedLine(
      say,
      say('changes.due.floor'),
      percentText(before.guarantee.floorRate, now.locale),
      percentText(now.guarantee.floorRate, now.locale),
    ),
  ];
}

/**
 * The terms in words: which paragraphs are other ones, with the new and the old where they are short, else by their
 * heads. A change of order or of spaces alone is told as a change, since it may be one of meaning.
 */
export function legalChanged(before: string, now: string, say: Say): string[] {
  if (before === now) return [];
  const [past, present] = [paragraphs(before), paragraphs(now)];
  const came = notIn(present, past);
  const left = notIn(past, present);
  const short = came.length + left.length <= FEW && [...came, ...left].every(({ length }) => length <= SHORT);
  if (short && came.length + left.length > 0)
    return [
      say('changes.terms'),
      ...came.map((text) => say('changes.terms.now', { text: plain(text) })),
      ...left.map((text) => say('changes.terms.before', { text: plain(text) })),
    ];
  const heads = [...new Set([...came, ...left].map(headOf))].filter((head) => head !== '');
  return heads.length > 0
    ? [say('changes.terms.heads', { heads: heads.map((head) => `“${head}”`).join(', ') })]
    : [say('changes.terms.read')];
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
  say: Say,
): string[] {
  const [past, present] = [before.notIncluded ?? [], now.notIncluded ?? []];
  const items = (words: WordKey, list: readonly string[]) =>
    list.length === 0 ? [] : [say(words, { items: list.join('; ') })];
  return [
    ...items('changes.not-included', notIn(present, past)),
    ...items('changes.not-included.gone', notIn(past, present)),
  ];
}
