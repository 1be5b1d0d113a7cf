import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright';
import { findBrowser } from '../../src/print/find-browser.ts';
import { PATIENCE, STEP_TIME } from '../patience.ts';
import { oneDevice } from './one-device.ts';

/** A page of the output as a browser shows it, and everything it asked for or complained of. */
export interface OpenPage {
  page: Page;
  requests: string[];
  complaints: string[];
  /** The words of every match, spaces made one. */
  words(selector: string): Promise<string[]>;
}

/** A browser whose pages wait as long for each step as tests may. */
export async function launch(): Promise<Browser> {
  const found = findBrowser();
  if (!found) throw new Error('no browser: run `npm run setup`');
  const timeout = STEP_TIME * PATIENCE;
  const browser = await chromium.launch({ executablePath: found.path, timeout });
  browser.on('context', (context) => context.setDefaultTimeout(timeout));
  return browser;
}

const sharedDevice = oneDevice();

/** Opens every part of a kitchen's page; the reasons of its figures stay folded. */
export async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const part of document.querySelectorAll<HTMLDetailsElement>('.part, .recipe')) part.open = true;
  });
}

/**
 * Opens a file of the output from the disk, at the size of a phone, in a window that has kept nothing, with the parts of
 * a kitchen's page open or as it comes, `folded`.
 */
export async function openPage(
  browser: Browser,
  out: string,
  file: string,
  { folded = false } = {},
): Promise<OpenPage> {
  const page = await (await sharedDevice(browser)).newPage();
  await page.setViewportSize({ width: 320, height: 640 });
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(pathToFileURL(join(out, file)).href);
  if (!folded) await unfold(page);
  return {
    page,
    requests,
    complaints,
    words: async (selector) =>
      (await page.locator(selector).allInnerTexts()).map((text) => text.replace(/\s+/g, ' ').trim()),
  };
}
