import type { Page } from 'playwright';

/**
 * What of a page axe goes by, besides where its boxes lie: each element that shows, with its attributes, its text's
 * color, size and weight, its background and its role of display. At two widths with the same looks, nothing but
 * breaking of lines differs, and axe is asked once. What overlaps or runs off the page has tests of its own.
 */
export async function looksOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const looks = [...document.body.querySelectorAll('*')].flatMap((each) => {
      if (!each.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return [];
      const { color, backgroundColor, backgroundImage, fontSize, fontWeight, display, position } =
        getComputedStyle(each);
      const own = [...each.attributes].map(({ name, value }) => `${name}=${value}`).join(' ');
      return [
        [
          each.tagName,
          own,
          color,
          backgroundColor,
          backgroundImage,
          fontSize,
          fontWeight,
          display,
          position,
        ].join('|'),
      ];
    });
    return looks.join('\n');
  });
}
