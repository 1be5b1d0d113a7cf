import { describe, expect, it } from 'vitest';
import { keptTexts, type TextStore } from '../../../src/client/kept-texts.ts';

function memory(): TextStore & { readonly held: Map<string, string> } {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => void held.set(key, text),
    removeItem: (key) => void held.delete(key),
  };
}

describe('what a browser keeps of a form', () => {
  it('comes back under the same offer and no other, until it is forgotten', () => {
    const store = memory();
    const one = keptTexts(() => store, 'salver:one');
    const texts = new Map([
      ['guests.adults', '6o'],
      ['note', 'two\nlines'],
    ]);
    one.keep(texts);
    expect(one.read()).toEqual(texts);
    expect(keptTexts(() => store, 'salver:two').read()).toBeNull();
    one.forget();
    expect(store.held.size).toBe(0);
  });

  it.each(['{}', 'null', '"x"', '[["a"]]', '[[1,2]]', '{"a":', '[["a","b","c"],["d","e"]]'])(
    'is nothing, or only its pairs of texts, where somebody wrote %s',
    (text) => {
      const store = memory();
      store.held.set('k', text);
      const read = keptTexts(() => store, 'k').read();
      expect([null, new Map(), new Map([['d', 'e']])]).toContainEqual(read);
    },
  );

  it('is nothing, and no error, where the browser refuses its storage', () => {
    const kept = keptTexts(() => {
      throw new Error('refused');
    }, 'k');
    kept.keep(new Map([['a', 'b']]));
    kept.forget();
    expect(kept.read()).toBeNull();
  });
});
