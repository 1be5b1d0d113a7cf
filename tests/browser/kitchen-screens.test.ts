import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as build } from '../../src/commands/build.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { launch, openPage } from './open-page.ts';

const demo = fileURLToPath(new URL('../../content', import.meta.url));
const [WEDDING, SATURDAY] = ['events/farrowick-wedding', 'days/2027-05-15'];
/** A phone as it is held at the bench. */
const PHONE = { width: 390, height: 844 };

describe('the kitchen’s pages on a phone', () => {
  let folder: string;
  let browser: Browser;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'salver-'));
    let said = '';
    const say = (line: string) => {
      said += `${line}\n`;
    };
    const call = { args: [], flags: { pdf: false }, contentDir: demo, outDir: folder, json: false };
    const code = await build.run({ ...call, today: '2027-04-26' as Day, write: say, complain: say });
    expect([code, code === 0 ? '' : said]).toEqual([0, '']);
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  async function phone(path: string): Promise<Page> {
    const { page } = await openPage(browser, folder, `private/kitchen/${path}index.html`, { folded: true });
    await page.setViewportSize(PHONE);
    return page;
  }

  test.each(['', `${WEDDING}/`, `${SATURDAY}/`])('are at most 20 screens long: kitchen/%s', async (path) => {
    const page = await phone(path);
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    expect([path, height <= 20 * PHONE.height, height]).toEqual([path, true, height]);
  });

  test('fold what is long, and open it for whoever follows a link into it', async () => {
    const page = await phone(`${SATURDAY}/`);
    const card = page.locator('.recipe').first();
    expect(await card.locator('.method').isVisible()).toBe(false);
    await page.locator('.part > summary', { hasText: 'Cold bench' }).click();
    const link = page.locator('.part[open] .task-head a').first();
    const name = await link.textContent();
    await link.click();
    const shown = page.locator(`.recipe[open]`);
    await expect.poll(() => shown.count()).toBe(1);
    expect(await shown.locator('h3').textContent()).toBe(name);
    expect(await shown.locator('.method').isVisible()).toBe(true);
    // A second tap on the same link goes there again, after the card was folded.
    await shown.locator('summary').first().click();
    await link.click();
    await expect.poll(() => shown.count()).toBe(1);
  });

  test('lead from the front page to a dish of a day by three taps, within two screens', async () => {
    const page = await phone('');
    const day = page.locator('a[href*="days/2027-05-15"]').first();
    const taps = [
      day,
      page.locator('#recipes > summary'),
      page.locator('.recipe > summary', { hasText: 'Soft potato rolls' }).first(),
    ];
    for (const tap of taps) await tap.click();
    const card = page.locator('.recipe[open]');
    await expect.poll(() => card.count()).toBe(1);
    expect(await card.locator('.amounts').isVisible()).toBe(true);
  });
});
