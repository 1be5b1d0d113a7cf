import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright';
import { looksOf } from './looks-of.ts';
import { newColors } from './new-colors.ts';

/** WCAG 2.2 AA with everything below it, as axe tags its rules, and what axe itself calls good practice. */
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The rules that a change of colors alone can break. */
const COLOR_RULES = ['color-contrast', 'link-in-text-block'];

const SCHEMES = ['light', 'dark'] as const;
const WIDTHS = [320, 768, 1280];

/** What is put into a page that has axe: its half megabyte would be read twice more for each question. */
const NOTHING = ';';

/** The colors that axe has been asked of, on all pages of a file's tests, by scheme. */
export type AskedColors = Readonly<Record<(typeof SCHEMES)[number], Set<string>>>;

export const noColorsAsked = (): AskedColors => ({ light: new Set(), dark: new Set() });

/**
 * Where a page breaks axe's rules, narrow and wide, light and dark: each rule with the first element that breaks it.
 * Each page is asked of every rule at each width at which it looks another way (`looksOf`), but of what is alike on most
 * pages once: only colors differ in the dark, and colors are asked in full of the first page alone, of others where
 * text stands in colors that no page before had (`newColors`).
 */
export async function axeSlips(page: Page, asked: AskedColors): Promise<string[]> {
  const found: string[] = [];
  for (const scheme of SCHEMES) {
    await page.emulateMedia({ colorScheme: scheme });
    const isFirst = asked[scheme].size === 0;
    const seen = new Set<string>();
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 900 });
      const looks = await looksOf(page);
      if (seen.has(looks)) continue;
      seen.add(looks);
      const others = scheme === 'dark' ? [] : await slips(page, { of: 'other' });
      const places = await newColors(page, asked[scheme]);
      const colors = isFirst
        ? await slips(page, { of: 'colors' })
        : places === ''
          ? []
          : await slips(page, { of: 'colors', within: places });
      found.push(...[...others, ...colors].map((slip) => `${width} ${scheme} ${slip}`));
    }
  }
  return found;
}

/**
 * Axe is run in the page itself and gives what is wrong alone: putting the results of frames together and handing over
 * all that is right takes three quarters of its time, and no page has a frame.
 */
async function slips(
  page: Page,
  { of, within }: { of: 'colors' | 'other'; within?: string },
): Promise<string[]> {
  if (page.frames().length > 1) throw new Error('the page has a frame, which would not be looked into');
  const off = (each: string) => [each, { enabled: false }] as const;
  const rules =
    of === 'colors'
      ? { runOnly: { type: 'rule' as const, values: COLOR_RULES } }
      : { runOnly: { type: 'tag' as const, values: WCAG }, rules: Object.fromEntries(COLOR_RULES.map(off)) };
  const isThere = await page.evaluate(() => 'axe' in window);
  const builder = new AxeBuilder({ page, ...(isThere ? { axeSource: NOTHING } : {}) });
  const axe = builder.options({ ...rules, resultTypes: ['violations'] }).setLegacyMode();
  if (within !== undefined) axe.include(within);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}
