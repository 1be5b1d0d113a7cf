import type { Texts } from './form-texts.ts';

/** What of a browser's storage is used. */
export type TextStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** The most characters that are kept or read back; a filled form has a few thousand. */
const MOST_CHARACTERS = 200_000;

/**
 * What was typed into a page, kept by the browser under the offer's digest so that a reload loses nothing. A browser
 * that keeps nothing, or refuses, is no error: the page then works without.
 */
export interface KeptTexts {
  read(): Texts | null;
  keep(texts: Texts): void;
  forget(): void;
}

/** `store` is asked for each time, since a browser may refuse even to name its storage. */
export function keptTexts(store: () => TextStore, key: string): KeptTexts {
  return {
    read() {
      return attempt(() => {
        const text = store().getItem(key);
        return text && text.length <= MOST_CHARACTERS ? textsIn(text) : null;
      });
    },
    keep(texts) {
      attempt(() => {
        const text = JSON.stringify([...texts]);
        if (text.length <= MOST_CHARACTERS) store().setItem(key, text);
        return null;
      });
    },
    forget() {
      attempt(() => {
        store().removeItem(key);
        return null;
      });
    },
  };
}

function textsIn(text: string): Texts | null {
  const pairs: unknown = JSON.parse(text);
  if (!Array.isArray(pairs)) return null;
  return new Map(pairs.filter(isPair));
}

function isPair(pair: unknown): pair is [string, string] {
  return Array.isArray(pair) && pair.length === 2 && pair.every((each) => typeof each === 'string');
}

function attempt<T>(use: () => T | null): T | null {
  try {
    return use();
  } catch {
    return null;
  }
}
