import type { Page } from 'playwright';

/** What marks the elements that are to be asked of; no page has it otherwise. */
const MARK = 'data-new-colors';

/**
 * Marks one element for each way in which words are set on a page and that is not known yet, and gives the selector of
 * them all; empty where there is none. It then is known. A way is everything that the contrast of words hangs on: their
 * color, size, weight and line, the color of the words around them, all backgrounds behind them and how much shows
 * through, and whether they are in use, or there for those who hear the page alone.
 */
export async function newColors(page: Page, known: Set<string>): Promise<string> {
  const ways = await page.evaluate(
    ({ mark, before }) => {
      const seen = new Set(before);
      for (const each of document.querySelectorAll(`[${mark}]`)) each.removeAttribute(mark);
      const holdsWords = (each: Element) =>
        each.matches('input, select, textarea') ||
        [...each.childNodes].some((node) => node.nodeType === 3 && node.nodeValue?.trim());
      const fresh: string[] = [];
      for (const each of document.body.querySelectorAll('*')) {
        if (!holdsWords(each) || !each.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
          continue;
        const { color, fontSize, fontWeight, textDecorationLine } = getComputedStyle(each);
        const { width, height } = each.getBoundingClientRect();
        const behind: string[] = [];
        for (let at: Element | null = each; at; at = at.parentElement) {
          const { backgroundColor, backgroundImage, opacity } = getComputedStyle(at);
          const layer = `${backgroundColor} ${backgroundImage} ${opacity}`;
          if (layer !== 'rgba(0, 0, 0, 0) none 1') behind.push(layer);
        }
        const around = each.parentElement ? getComputedStyle(each.parentElement).color : '';
        const isOff = each.closest(':disabled, [aria-disabled=true]') !== null;
        const way = [
          each.matches('a'),
          color,
          fontSize,
          fontWeight,
          textDecorationLine,
          around,
          isOff,
          width <= 1 || height <= 1,
          ...behind,
        ].join('|');
        if (seen.has(way)) continue;
        seen.add(way);
        fresh.push(way);
        each.setAttribute(mark, '');
      }
      return fresh;
    },
    { mark: MARK, before: [...known] },
  );
  for (const way of ways) known.add(way);
  return ways.length > 0 ? `[${MARK}]` : '';
}
