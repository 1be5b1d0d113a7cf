import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as accept } from '../../src/commands/accept.ts';
import { command as guarantee } from '../../src/commands/guarantee.ts';
import { command as issue } from '../../src/commands/issue.ts';
import { command as leftovers } from '../../src/commands/leftovers.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { axeSlips, noColorsAsked } from './axe-slips.ts';
import { copyProposal, runCommand } from './client-kitchen.ts';
import { htmlSlips } from './html-slips.ts';
import { type OneWindow, oneWindow } from './one-window.ts';
import { launch, unfold } from './open-page.ts';
import { eventFolder, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

const accepted = 'private/kitchen/events/regatta-lunch';

/** Pages in the states that look unlike: an event whose count has changed is confirmed, the other is accepted only. */
const PAGES = {
  'the front page': 'private/kitchen',
  'an event that is confirmed and changed': eventFolder,
  'an event that is accepted': accepted,
  'a day of one event': 'private/kitchen/days/2027-05-21',
  'a day of two events': 'private/kitchen/days/2027-06-12',
  'an invoice': `${eventFolder}/invoice`,
  'the money of an event': `${eventFolder}/money`,
  'what was left over': 'private/kitchen/leftovers',
} as const;
type Shown = keyof typeof PAGES;
const NAMES = Object.keys(PAGES) as Shown[];

describe('the standards the kitchen’s pages are held to', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let one: OneWindow;
  let plan: PrepPlanDocument;

  beforeAll(async () => {
    kitchen = await secondKitchen(async (content) => {
      // One event more on the other's Saturday, and one that is over.
      await copyProposal(content, 'pier-tea', 'p7ierharbourwall4t5x6y7z2m', []);
      await copyProposal(content, 'quay-supper', 'q6uayharbourwall4t5x6y7z2m', [
        ['2027-06-12', '2027-04-17'],
        ['2027-05-30', '2027-04-10'],
      ]);
      for (const [id, on] of [
        ['quay-supper', '2027-03-20'],
        ['pier-tea', '2027-04-26'],
      ] as const) {
        await runCommand(content, issue, [id], {}, on);
        const guest = { signed: id, name: 'Una Brack', email: 'una@skerrivane.example' };
        await runCommand(content, accept, [], { ...guest, package: 'storm-supper' }, on);
      }
      const csv = join(content, '..', 'left.csv');
      await writeFile(
        csv,
        'dish,came back,ran out,note\nApple and oat crumble,9 pieces,,\nSmoked haddock chowder,,20:15,\n',
      );
      await runCommand(content, leftovers, ['quay-supper'], { from: csv, adults: '34' }, '2027-04-18');
    });
    const signature = { signed: 'regatta-lunch', name: 'Marit Skarn', email: 'marit@skerrivane.example' };
    await runCommand(kitchen.content, accept, [], { ...signature, package: 'chowder-lunch' });
    await count('43');
    plan = await kitchen.plan();
    browser = await launch();
    one = await oneWindow(browser, 'kitchen');
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  /** Records so many guests at the crew's table, and builds. */
  async function count(guests: string): Promise<void> {
    const take = `Main=haddock-chowder:${Number(guests) - 9},bean-and-leek-stew:10`;
    await runCommand(kitchen.content, guarantee, ['lifeboat-evening'], { guests, take });
    const { code, said, complained } = await kitchen.build();
    if (code !== 0) throw new Error(`the test's kitchen could not be built: ${said}${complained}`);
  }

  test.each(NAMES)('the HTML of %s conforms', async (shown) => {
    expect(await htmlSlips(await kitchen.text(`${PAGES[shown]}/index.html`))).toEqual([]);
  });

  const addressOf = (shown: Shown) => pathToFileURL(join(kitchen.out, PAGES[shown], 'index.html')).href;

  async function open(shown: Shown, within: BrowserContext): Promise<Page> {
    const page = await within.newPage();
    await page.goto(addressOf(shown));
    await unfold(page);
    return page;
  }

  const asked = noColorsAsked();
  test.each(NAMES)(
    'axe finds nothing on %s, at three widths, light and dark, with everything unfolded',
    async (shown) => {
      const page = await one.open(addressOf(shown));
      await page.evaluate(() => {
        for (const each of document.querySelectorAll('details')) each.open = true;
      });
      expect(await axeSlips(page, asked)).toEqual([]);
    },
  );

  test.each(NAMES)('%s is read without scrolling sideways, and nothing in it has to be', async (shown) => {
    const page = await one.open(addressOf(shown));
    await unfold(page);
    for (const width of [320, 390, 768, 1024]) {
      await page.setViewportSize({ width, height: 900 });
      const wide = await page.evaluate(() => ({
        page: document.documentElement.scrollWidth,
        boxes: [...document.querySelectorAll('.table-box')]
          .filter((box) => box.scrollWidth > box.clientWidth + 1)
          .map((box) => box.getAttribute('aria-label')),
      }));
      expect(wide.page).toBe(width);
      // On the narrowest phone a wide table may scroll in its own box; from 390 px on nothing does.
      if (width >= 390) expect([width, wide.boxes]).toEqual([width, []]);
    }
  });

  test('words are 18 px at least where the crew works from them, and figures are larger', async () => {
    const page = await one.open(addressOf('an event that is confirmed and changed'), {
      width: 768,
      height: 1024,
    });
    const sizes = (selector: string) =>
      page.evaluate(
        (each) =>
          [...document.querySelectorAll(each)].map((one) =>
            Number.parseFloat(getComputedStyle(one).fontSize),
          ),
        selector,
      );
    const worked = await sizes('.task-text, .task-head > span, .pack-lines p, .method p, .alert-list li, dd');
    expect(worked.length).toBeGreaterThan(20);
    expect(Math.min(...worked)).toBeGreaterThanOrEqual(18);
    const figures = await sizes(
      '.dish-lines .big, .recipe .amount, .makes b, .pack-lines .big, .timeline .big',
    );
    expect(figures.length).toBeGreaterThan(20);
    expect(Math.min(...figures)).toBeGreaterThanOrEqual(22);
  });

  test('everything to press is 24 px at least each way, boxes and buttons 44', async () => {
    for (const shown of NAMES) {
      const page = await one.open(addressOf(shown), { width: 390, height: 800 });
      await unfold(page);
      const tick = page.locator('.tick > input').first();
      if ((await tick.count()) > 0) await tick.check();
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('.tick, button, summary, .jump a, ul.plain a, .top a, .card-title a')]
          .filter((each) => each.checkVisibility())
          .map((each) => ({
            html: each.outerHTML.slice(0, 80),
            least: each.matches('.tick, button, summary, .jump a') ? 44 : 24,
            box: each.getBoundingClientRect(),
          }))
          .filter(({ box, least }) => box.width < least || box.height < least)
          .map(({ html, box }) => `${box.width} × ${box.height} ${html}`),
      );
      expect([shown, small]).toEqual([shown, []]);
    }
  });

  test('a tick stays on the device, on every page that has the line, and is cleared and put back by hand', async () => {
    const device = await browser.newContext();
    const page = await open('an event that is confirmed and changed', device);
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(error.message));
    const shopping = page.locator('.shopping-lines input');
    const ticked = () => page.locator('.shopping-lines :checked').count();
    await shopping.nth(1).focus();
    await page.keyboard.press('Space');
    await shopping.nth(3).check();
    // The day's list and the recipe's card have the same step.
    const task = page.locator('.tasks input').first();
    await task.check();
    const line = (await task.getAttribute('data-tick'))!;
    const twins = page.locator(`[data-tick=${JSON.stringify(line)}]`);
    expect(await twins.count()).toBe(2);
    expect(await twins.nth(1).isChecked()).toBe(true);

    await page.reload();
    await unfold(page);
    expect(await ticked()).toBe(2);
    expect(await shopping.nth(1).isChecked()).toBe(true);
    expect(await twins.nth(1).isChecked()).toBe(true);
    const state = page.locator('.tick-state:has(+ .shopping-lines)');
    expect(await state.textContent()).toContain(`2 of ${plan.shopping.length} done`);
    await state.getByRole('button').click();
    expect(await ticked()).toBe(0);
    expect(await twins.first().isChecked()).toBe(true);
    await state.getByRole('button', { name: 'Restore checkmarks' }).click();
    expect(await ticked()).toBe(2);
    await shopping.nth(3).uncheck();
    await page.reload();
    await unfold(page);
    expect(await ticked()).toBe(1);

    const other = await open('an event that is accepted', device);
    expect(await other.locator(':checked').count()).toBe(0);
    expect(complaints).toEqual([]);
    await device.close();
  });

  test('without a script a box is a box, and no tick is promised to stay', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(addressOf('an event that is confirmed and changed'));
    await page.locator('#pack-out > summary').click();
    const box = page.locator('.pack-lines input').first();
    await box.check();
    expect(await box.isChecked()).toBe(true);
    await context.close();
  });

  /** A page as a kitchen's own machine serves it, loaded and then cut off: a file needs no network anyhow. */
  async function cutOff(context: BrowserContext, shown: Shown): Promise<{ page: Page; asked: string[] }> {
    const page = await context.newPage();
    const asked: string[] = [];
    await page.route('http://kitchen.example/**', async (route) => {
      const path = decodeURIComponent(new URL(route.request().url()).pathname);
      const body = await readFile(join(kitchen.out, 'private', path));
      const type = path.endsWith('.css') ? 'text/css' : path.endsWith('.js') ? 'text/javascript' : undefined;
      await route.fulfill({ body, ...(type && { contentType: type }) });
    });
    await page.goto(`http://kitchen.example/${PAGES[shown].replace('private/', '')}/index.html`, {
      waitUntil: 'networkidle',
    });
    await context.setOffline(true);
    page.on('request', (request) => asked.push(request.url()));
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('details')) each.open = true;
    });
    return { page, asked };
  }

  test.each(NAMES)(
    'once loaded, %s asks the network for nothing more, whatever is unfolded',
    async (shown) => {
      const context = await browser.newContext();
      const { page, asked } = await cutOff(context, shown);
      const tick = page.locator('.tick > input').first();
      if ((await tick.count()) > 0) await tick.check();
      await page.waitForTimeout(100);
      expect(asked).toEqual([]);
      // The stand-ins are of the device itself, where it has them.
      const failed = await page.evaluate(async () => {
        // What was unfolded may still be read from what is loaded, on a busy machine.
        await document.fonts.ready;
        return [...document.fonts]
          .filter(({ family, status }) => !family.includes('fallback') && status !== 'loaded')
          .map(({ family, style }) => `${family} ${style}`);
      });
      expect(failed).toEqual([]);
      await context.close();
    },
  );

  test('nor does it for a tick, for clearing all, or for a letter and a slope that it had no use for', async () => {
    const context = await browser.newContext();
    const { page, asked } = await cutOff(context, 'an event that is confirmed and changed');
    await page.locator('.tasks input').first().check();
    await page.evaluate(() => {
      document.querySelector('.why li')!.innerHTML += ' <em>Žižka ćwikła</em>';
    });
    await page.locator('.tick-state:visible button').first().click();
    await page.waitForTimeout(300);
    expect(asked).toEqual([]);
    await context.close();
  });

  // Last: it changes the plan.
  test('a line whose amount has changed loses its tick and says so; one that has not keeps it', async () => {
    const device = await browser.newContext();
    const page = await open('an event that is confirmed and changed', device);
    const boxes = '.shopping-lines input, .pack-lines input';
    const lines = () =>
      page.evaluate(
        (each) =>
          [...document.querySelectorAll<HTMLInputElement>(each)].map(
            ({ dataset, checked, parentElement }) => ({
              line: dataset.tick ?? '',
              amount: dataset.amount ?? '',
              checked,
              note: parentElement?.parentElement?.querySelector(':scope > .tick-note')?.textContent ?? '',
            }),
          ),
        boxes,
      );
    for (const box of await page.locator(boxes).all()) await box.check();
    const before = new Map((await lines()).map((each) => [each.line, each]));
    await count('60');
    await page.reload();
    await unfold(page);
    const after = await lines();
    const changed = after.filter(({ line, amount }) => before.get(line)?.amount !== amount);
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.length).toBeLessThan(after.length);
    for (const { line, amount, checked, note } of after) {
      const was = before.get(line)?.amount;
      expect([line, checked]).toEqual([line, was === amount]);
      expect(note).toBe(was === undefined || was === amount ? '' : `Checked off when it was ${was}`);
    }
    await device.close();
  });
});
