import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brandStylesheet, brandStylesheetPath, contrast } from '../../../src/views/brand/stylesheet.ts';

const colour = fc
  .tuple(fc.nat(255), fc.nat(255), fc.nat(255))
  .map((channels) => `#${channels.map((value) => value.toString(16).padStart(2, '0')).join('')}`);

function channels(css: string, name: string): [number, number, number] {
  const [, ...values] = new RegExp(`--${name}: rgb\\((\\d+) (\\d+) (\\d+)\\)`).exec(css)!;
  return values.map(Number) as [number, number, number];
}

describe("the stylesheet of a caterer's colour", () => {
  // Source: WCAG 2.2, definition of contrast ratio: black on white is 21 : 1, equal colours are 1 : 1. The third,
  // #777777 on white 4.48 : 1, is from memory of the published contrast examples.
  test('reckons contrast as published', () => {
    expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 10);
    expect(contrast([9, 9, 9], [9, 9, 9])).toBe(1);
    expect(contrast([119, 119, 119], [255, 255, 255])).toBeCloseTo(4.48, 2);
  });

  test('makes every colour readable, as words on white and on dark paper, and under words', () => {
    fc.assert(
      fc.property(colour, (accent) => {
        const css = brandStylesheet(accent);
        expect(contrast(channels(css, 'accent-words'), [255, 255, 255])).toBeGreaterThanOrEqual(7);
        expect(contrast(channels(css, 'accent-words-dark'), [36, 33, 30])).toBeGreaterThanOrEqual(7);
        expect(contrast(channels(css, 'on-accent'), channels(css, 'accent'))).toBeGreaterThanOrEqual(4.5);
      }),
    );
  });

  test('has a path of its own for each colour, however it is written', () => {
    expect(brandStylesheetPath('#7A4a2b')).toBe('/brand-7a4a2b.css');
  });

  test.each(['red', '#fff', '#7a4a2b}', '#7a4a2b;x', '../#7a4a2'])('refuses %s', (accent) => {
    expect(() => brandStylesheet(accent)).toThrow('is not a color');
  });
});
