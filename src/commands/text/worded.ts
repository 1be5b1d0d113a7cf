import { notParsed, type Parsed } from '../../engine/parsed.ts';
import { statementsIn } from '../../exports/words/statement-text.ts';
import type { Judged } from '../../offers/answers/refusal.ts';

/** What was made of a client's answer, or why not in the words of a locale. */
export function worded<T>(judged: Judged<T>, locale: string): Parsed<T> {
  if (judged.ok) return judged;
  const inWords = statementsIn(locale);
  return notParsed(inWords(judged.what), inWords(judged.wayOut));
}
