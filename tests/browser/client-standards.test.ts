import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeSlips, noColorsAsked } from './axe-slips.ts';
import { LINKS, MORE_LINKS, openClient, pageUrl } from './client-kitchen.ts';
import { htmlSlips } from './html-slips.ts';
import { type OneWindow, oneWindow } from './one-window.ts';
import { launch } from './open-page.ts';
import { HEAVIEST, pageWeight } from './page-weight.ts';
import type { SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

const ALL = { ...LINKS, ...MORE_LINKS };
const STATES = Object.keys(ALL) as (keyof typeof ALL)[];
/** Ways a page looks besides as it was opened. */
const MOMENTS: Readonly<Record<string, (page: Page, kitchen: SecondKitchen) => Promise<void>>> = {
  'as opened': async () => undefined,
  'with mistakes': async (page) => {
    await page.fill('#answer-guests\\.adults', 'x');
    await page.fill('[name="a.guests"]', 'x');
    await page.locator('[data-part=more-needs]').first().click();
    await page.click('[data-client=answer] [type=submit]');
  },
  answered: async (page) => {
    await page.fill('#answer-name', 'Marit Skarn');
    await page.fill('#answer-email', 'marit@skerrivane.example');
    await page.check('#answer-agreed');
    await page.click('[data-client=answer] [type=submit]');
    await page.waitForSelector('[data-part=sent]:not([hidden])');
  },
  'left open until it was replaced': async (page, kitchen) => {
    let digest: string | undefined;
    await page.route('http://kitchen.example/**', async (route) => {
      const { pathname } = new URL(route.request().url());
      const path = join(kitchen.out, 'public', pathname.endsWith('/') ? `${pathname}index.html` : pathname);
      if (digest === undefined || !pathname.endsWith('/standing.json')) return route.fulfill({ path });
      return route.fulfill({ json: { ...JSON.parse(await readFile(path, 'utf8')), offer: digest } });
    });
    await page.goto(`http://kitchen.example/proposals/${LINKS.offered}/`);
    await page.waitForSelector('html[data-ready]', { state: 'attached' });
    digest = '0'.repeat(64);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await page.locator('[data-client=answer]').waitFor({ state: 'hidden' });
  },
  'asked what suits a guest': async (page) => {
    await page.locator('[data-part=needs] summary').first().click();
    await page.locator('[data-part=needs] input').first().check();
  },
};
const VIEWS = [
  ...STATES.map((state) => [state, 'as opened'] as const),
  ['offered', 'with mistakes'] as const,
  ['offered', 'answered'] as const,
  ['offered', 'left open until it was replaced'] as const,
  ['offered', 'asked what suits a guest'] as const,
];

describe('the standards a client’s page is held to', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let one: OneWindow;

  beforeAll(async () => {
    kitchen = await sharedKitchen('states');
    browser = await launch();
    one = await oneWindow(browser, 'client');
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  const asked = noColorsAsked();
  test.each(VIEWS)(
    'axe finds nothing on a page that is %s, %s, narrow and wide, light and dark',
    async (state, moment) => {
      // What a moment sets in a browser, such as an address that it answers itself, is that view's alone.
      const isOpened = moment === 'as opened';
      const page = isOpened
        ? await one.open(pageUrl(kitchen, state))
        : (await openClient(browser, pageUrl(kitchen, state))).page;
      await MOMENTS[moment]!(page, kitchen);
      for (const width of [320, 768, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      }
      expect(await axeSlips(page, asked)).toEqual([]);
      if (!isOpened) await page.close();
    },
  );

  test.each(STATES)('everything to press on a page that is %s is 24 px at least, each way', async (state) => {
    const page = await one.open(pageUrl(kitchen, state), { width: 320, height: 640 });
    if (state === 'offered') await MOMENTS['with mistakes']!(page, kitchen);
    const pressed = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'button, input, select, textarea, summary, .ways a, .papers a, .problems a',
        ),
      ]
        .filter((element) => element.checkVisibility())
        .map((element) => {
          const { width, height } = element.getBoundingClientRect();
          return {
            small: width < 24 || height < 24,
            html: `${width} × ${height} ${element.outerHTML.slice(0, 80)}`,
          };
        }),
    );
    expect(pressed.length).toBeGreaterThan(0);
    expect(pressed.filter(({ small }) => small).map(({ html }) => html)).toEqual([]);
  });

  test.each(STATES)(
    'everything to press on a page that is %s is reached by Tab, in its order, and seen to be',
    async (state) => {
      const page = await one.open(pageUrl(kitchen, state), { width: 1280, height: 900 });
      // Of radio buttons with a name, Tab goes to the one that is chosen; the arrows go on from there.
      const wanted = await page.evaluate(() => {
        const all = [
          ...document.querySelectorAll<HTMLElement>(
            'a[href], button, input, select, textarea, summary, [tabindex="0"]',
          ),
        ];
        const reached = all.filter(
          (element) =>
            element.checkVisibility({ visibilityProperty: true }) &&
            !(element as HTMLButtonElement).disabled &&
            element.tabIndex >= 0 &&
            !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked),
        );
        for (const [index, element] of reached.entries()) element.dataset.order = String(index);
        // The page itself notes where each press leads, which saves asking it after every one.
        const seen: string[] = [];
        Object.assign(window, { seen });
        document.addEventListener('focusin', () => {
          const element = document.activeElement as HTMLElement;
          const { outlineStyle, outlineWidth } = getComputedStyle(element);
          const outlined = outlineStyle !== 'none' && outlineWidth !== '0px';
          seen.push(
            outlined
              ? (element.dataset.order ?? element.outerHTML.slice(0, 80))
              : `bare ${element.outerHTML.slice(0, 80)}`,
          );
        });
        return reached.length;
      });
      for (let presses = 0; presses < wanted; presses += 1) await page.keyboard.press('Tab');
      const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
      expect(wanted).toBeGreaterThan(2);
      expect(seen).toEqual(Array.from({ length: wanted }, (_, index) => String(index)));
    },
  );

  test.each(STATES)('the HTML of a page that is %s conforms', async (state) => {
    const html = await kitchen.text(`public/proposals/${ALL[state]}/index.html`);
    expect(await htmlSlips(html)).toEqual([]);
  });

  test.each(STATES)(
    'a page that is %s weighs 60 KB at most, compressed, without its fonts',
    async (state) => {
      expect(await pageWeight(kitchen.out, `public/proposals/${ALL[state]}`)).toBeLessThanOrEqual(HEAVIEST);
    },
  );

  test.each(STATES)('nothing moves while a page that is %s loads and is read to its end', async (state) => {
    expect(await shiftsWhileRead(await one.open(pageUrl(kitchen, state)))).toBe(0);
  });

  test('nothing on the page moves by itself: not while it loads, nor while a slider is drawn', async () => {
    for (const width of [390, 1280]) {
      const { page, complaints } = await openClient(browser, `${pageUrl(kitchen, 'offered')}#compare-now`, {
        viewport: { width, height: 900 },
        newDevice: true,
      });
      await page.evaluate(() => {
        const shifts: number[] = [];
        Object.assign(window, { shifts });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
        }).observe({ type: 'layout-shift', buffered: true });
      });
      const slider = page.locator('.slider').first();
      await slider.scrollIntoViewIfNeeded();
      const box = (await slider.boundingBox())!;
      await page.mouse.move(box.x + 8, box.y + box.height / 2);
      await page.mouse.down();
      for (let step = 0; step <= 30; step += 1)
        await page.mouse.move(box.x + 8 + ((box.width - 16) * step) / 30, box.y + box.height / 2);
      await page.mouse.up();
      for (const part of ['.picture', '.compared', '.coverage', '.answer-now']) {
        await page.locator(part).first().scrollIntoViewIfNeeded();
        await page.waitForTimeout(60);
      }
      const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
      expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBe(0);
      expect(complaints).toEqual([]);
      await page.close();
    }
  });
});

/** The sum of layout shifts from the first paint on until the page has been scrolled to its end. */
async function shiftsWhileRead(page: Page): Promise<number> {
  await page.evaluate(() => {
    const shifts: number[] = [];
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
  });
  for (let share = 1; share <= 10; share += 1) {
    await page.evaluate((part) => window.scrollTo(0, (document.body.scrollHeight * part) / 10), share);
    await page.waitForTimeout(40);
  }
  const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
  return shifts.reduce((sum, shift) => sum + shift, 0);
}
