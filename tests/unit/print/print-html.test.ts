import { describe, expect, test } from 'vitest';
import { printableFractions } from '../../../src/print/print-html.ts';

describe('fractions on paper', () => {
  test('are set from figures where our fonts have no sign, apart from the whole number before them', () => {
    expect(printableFractions('<p>2⅓ cups, ⅔ lb and ½ oz</p>')).toBe(
      '<p>2\u2009<span class="fraction">1\u20443</span> cups, <span class="fraction">2\u20443</span> lb and ½ oz</p>',
    );
  });

  test('stay as they are in the title, in attributes and in what is no text', () => {
    const html =
      '<head><title>⅓</title></head><body><img alt="⅓ pan"><!-- <b>⅓</b> --><script>f(">⅓<")</script></body>';
    expect(printableFractions(html)).toBe(html);
  });
});
