import type { CallChanged } from '../../engine/food/recipe-called.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { type Language, languageOf } from '../../words/languages.ts';
import { type Spoken, wordsIn } from '../../words/words-in.ts';

/** One for each language, since recipes called already are known by it. */
const made = new Map<Language, CallChanged>();

/** What a recipe is called with its changes, in the language of a locale: `Leek tart (without butter, oil instead of milk)`. */
export function callChangedIn(locale: string): CallChanged {
  const language = languageOf(locale);
  const known = made.get(language);
  if (known) return known;
  const say = wordsIn(language);
  const call: CallChanged = (name, changes) => {
    const said = changes.map(({ key, values }) => say(key as WordKey, values as Spoken));
    return say('dishes.differs', { name, changes: said.join(', ') });
  };
  made.set(language, call);
  return call;
}
