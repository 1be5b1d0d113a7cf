import type { QuoteNote } from '../../engine/quote/quote.ts';
import type { PackageTerms } from '../../engine/quote/terms.ts';
import type { ScriptKey, ScriptSay } from '../../words/script-words.ts';

const NOTES: Readonly<Record<Exclude<QuoteNote, 'minimum guests'>, ScriptKey>> = {
  'service charge': 'quote.service-charge',
  exempt: 'quote.exempt',
  'tax included': 'quote.prices-with-tax',
};

/** What the client should know about how a total came about, a sentence each. */
export function quoteNoteWords(
  say: ScriptSay,
  notes: readonly QuoteNote[],
  menu: Pick<PackageTerms, 'name' | 'minimumGuests'> | undefined,
): string[] {
  return notes.map((note) =>
    note === 'minimum guests'
      ? say('quote.minimum', { menu: menu?.name ?? '', n: menu?.minimumGuests ?? 0 })
      : say(NOTES[note]),
  );
}
