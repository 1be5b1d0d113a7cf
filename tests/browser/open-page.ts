import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright';
import { findBrowser } from '../../src/print/find-browser.ts';

/** A page of the output as a browser shows it, and everything it asked for or complained of. */
export interface OpenPage {
  page: Page;
  requests: string[];
  complaints: string[];
  /** The words of every match, spaces made one. */
  words(selector: string): Promise<string[]>;
}

export async function launch(): Promise<Browser> {
  const browser = findBrowser();
  if (!browser) throw new Error('no browser: run `npm run setup`');
  return chromium.launch({ executablePath: browser.path });
}

/** Opens a file of the output from the disk, at the size of a phone. */
export async function openPage(browser: Browser, out: string, file: string): Promise<OpenPage> {
  const page = await browser.newPage({ viewport: { width: 320, height: 640 } });
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(pathToFileURL(join(out, file)).href);
  return {
    page,
    requests,
    complaints,
    words: async (selector) =>
      (await page.locator(selector).allInnerTexts()).map((text) => text.replace(/\s+/g, ' ').trim()),
  };
}
