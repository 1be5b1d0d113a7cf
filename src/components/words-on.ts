import { type Say, wordsIn } from '../words/words-in.ts';

/** The words of the page that is being made, in the language that it declares. */
export function wordsOn({ view }: App.Locals): Say {
  if (!view) throw new Error('it was given nothing to show');
  return wordsIn(view.brand.locale);
}

/** The locale that its times, shares and figures have the form of. */
export function localeOn({ view }: App.Locals): string {
  if (!view) throw new Error('it was given nothing to show');
  return view.brand.locale;
}
