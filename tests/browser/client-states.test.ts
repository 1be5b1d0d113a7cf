import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { LINKS, MORE_LINKS, openClient, pageUrl } from './client-kitchen.ts';
import { type OneWindow, oneWindow } from './one-window.ts';
import { launch } from './open-page.ts';
import type { SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

const ALL = { ...LINKS, ...MORE_LINKS };
type State = keyof typeof ALL;

/** What the top of each page says, and what it lets its client do. */
const SAYS: Readonly<Record<State, { state: RegExp; forms: readonly string[] }>> = {
  draft: { state: /^Draft: this is not an offer yet/, forms: ['compare'] },
  offered: {
    state: /^Offer, revision 1, issued .*\. It is valid until Sunday, 30 May 2027\.$/,
    forms: ['answer', 'compare'],
  },
  revised: {
    state: /^Offer, revision 2, issued .*\. It is valid until Tuesday, 1 June 2027\.$/,
    forms: ['answer', 'compare'],
  },
  corrected: { state: /^Offer, revision 1, issued /, forms: ['answer', 'compare'] },
  expired: { state: /valid until Saturday, 10 April 2027 and can no longer be accepted/, forms: [] },
  withdrawn: { state: /^This proposal was withdrawn/, forms: [] },
  accepted: { state: /accepted .*We are holding the date for you/, forms: [] },
  confirmed: { state: /The date is confirmed\.$/, forms: ['change', 'guest-list'] },
  moved: { state: /The date is confirmed\.$/, forms: ['change', 'guest-list'] },
  'put off': { state: /The event has been postponed; the new date isn’t set yet\.$/, forms: [] },
  cancelled: { state: /The event has been cancelled\.$/, forms: [] },
};
const STATES = Object.keys(SAYS) as State[];

describe('a proposal’s page in each of its states', () => {
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

  test.each(STATES)(
    '%s: says so on top, and offers what can be done then and nothing else',
    async (state) => {
      const page = await one.open(pageUrl(kitchen, state));
      expect(await page.locator('.state').textContent()).toMatch(SAYS[state].state);
      const forms = await page
        .locator('form[data-client]')
        .evaluateAll((all) => all.map((form) => (form as HTMLElement).dataset.client).sort());
      expect(forms).toEqual(SAYS[state].forms);
      expect(one.complaints).toEqual([]);
    },
  );

  test('what was corrected or moved since stands dated above the terms, under a head that names which', async () => {
    const boxes = async (state: State) => {
      const page = await one.open(pageUrl(kitchen, state));
      const texts = await page.locator('main > .warning').allInnerTexts();
      return texts.map((text) => text.replace(/\s+/g, ' '));
    };
    expect(await boxes('corrected')).toEqual([
      expect.stringMatching(
        /^Corrected since this was issued Correction, Sunday, 25 April 2027: Pier stew contains milk/,
      ),
    ]);
    expect(await boxes('moved')).toEqual([
      expect.stringMatching(
        /^Changed since this was issued Change, .*moved from .* to Saturday, 18 September 2027\.$/,
      ),
    ]);
    expect(await boxes('offered')).toEqual([]);
  });

  test('steps at which more guests cost less are told where the kitchen says so, and only there', async () => {
    const told = async (tells: boolean) => {
      const { page } = await openClient(browser, pageUrl(kitchen, 'corrected'));
      await page.route('http://kitchen.example/**', async (route) => {
        const { pathname } = new URL(route.request().url());
        if (!pathname.endsWith('/')) return route.fulfill({ path: join(kitchen.out, 'public', pathname) });
        const html = await readFile(join(kitchen.out, 'public', pathname, 'index.html'), 'utf8');
        expect(html).toContain('"tellPriceSteps":true');
        const body = html.replace('"tellPriceSteps":true', `"tellPriceSteps":${tells}`);
        return route.fulfill({ body, contentType: 'text/html' });
      });
      await page.goto(`http://kitchen.example/proposals/${ALL.corrected}/`);
      const text = await comparedWords(page);
      await page.close();
      return text;
    };
    expect(await told(true)).toMatch(/Pier supper costs less in total for 40 guests than for 39/);
    expect(await told(false)).not.toMatch(/costs less in total for/);
  });

  test('the menus for machines claim a diet where the page marks it, and none that a correction took away', async () => {
    const claims = async (state: State) => {
      const page = await one.open(pageUrl(kitchen, state));
      const text = await page.locator('script[type="application/ld+json"]').textContent();
      const items = [...(text ?? '').matchAll(/\{"@type":"MenuItem","name":"([^"]+)"([^}]*)\}/g)];
      const marks = await page
        .locator('.dish')
        .evaluateAll((dishes) =>
          dishes.map((dish) => [
            dish.querySelector('.dish-name')?.textContent?.trim(),
            [...dish.querySelectorAll('.mark')].map((mark) => mark.textContent?.trim()),
          ]),
        );
      expect(items.length).toBe(marks.length);
      return items.map(([, name, rest = ''], index) => {
        const [shown, of] = marks[index] as [string, string[]];
        expect(shown).toBe(name);
        const claimsVegan = rest.includes('https://schema.org/VeganDiet');
        expect([name, claimsVegan]).toEqual([name, of.includes('vegan')]);
        expect(rest).not.toContain('GlutenFreeDiet');
        return `${name}: ${claimsVegan ? 'vegan' : 'not vegan'}`;
      });
    };
    expect(await claims('offered')).toContain('Butter bean and leek stew: vegan');
    expect(await claims('corrected')).toContain('Pier stew: not vegan');
  });

  test('one guest count, by buttons, slider, arrow or typed, is one count and one sum', async () => {
    const page = await one.open(pageUrl(kitchen, 'offered'));
    const field = page.locator('[name="a.guests"]');
    const slider = page.locator('.slider').first();
    const shown = async () => [
      await field.inputValue(),
      await slider.inputValue(),
      await slider.getAttribute('aria-valuetext'),
    ];
    const total = page.locator('[data-key=total] [data-cell=a]');
    await field.fill('50');
    expect(await shown()).toEqual(['50', '50', '50 guests']);
    const atFifty = await total.textContent();
    await page.getByRole('button', { name: 'More guests on side A' }).click();
    expect(await shown()).toEqual(['51', '51', '51 guests']);
    expect(await total.textContent()).not.toBe(atFifty);
    await field.press('ArrowDown');
    expect([await shown(), await total.textContent()]).toEqual([['50', '50', '50 guests'], atFifty]);
    await slider.fill('51');
    await page.getByRole('button', { name: 'Fewer guests on side A' }).click();
    expect([await shown(), await total.textContent()]).toEqual([['50', '50', '50 guests'], atFifty]);
  });

  test('nothing is set in motion: no part of a page has a transition or an animation that takes time', async () => {
    const page = await one.open(pageUrl(kitchen, 'offered'));
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')].flatMap((element) => {
        const { animationDuration, transitionDuration, scrollBehavior } = getComputedStyle(element);
        const still = [animationDuration, transitionDuration].every((time) =>
          /^(?:0s|auto)(?:, 0s)*$/.test(time),
        );
        return still && scrollBehavior === 'auto' ? [] : [element.outerHTML.slice(0, 60)];
      }),
    );
    expect(moving).toEqual([]);
  });
});

/** The words beside the picture, once it is drawn. */
async function comparedWords(page: Page): Promise<string> {
  await page.waitForSelector('[data-part=picture][data-drawn]', { state: 'attached' });
  return (await page.locator('[data-part=picture-words]').textContent()) ?? '';
}
