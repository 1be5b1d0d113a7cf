import { execFileSync } from 'node:child_process';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Page } from 'playwright';
import { findBrowser } from '../../src/print/find-browser.ts';

/*
 * Takes the README's pictures of the demo: `npm run pictures`. Look at them before they are committed.
 */
const here = import.meta.dirname;
const out = await mkdtemp(join(tmpdir(), 'salver-pictures-'));
execFileSync(
  process.execPath,
  ['src/commands/main.ts', 'build', '--no-pdf', '--today', '2027-04-26', '--out', out],
  {
    stdio: 'inherit',
  },
);
const browser = findBrowser();
if (!browser) throw new Error('there is no browser to take pictures with: run `npm run setup`');
const program = await chromium.launch({ executablePath: browser.path, args: ['--no-sandbox'] });
const page = await program.newPage({ viewport: { width: 1280, height: 1000 }, deviceScaleFactor: 1 });

const open = await linkOf('l7fs');
await shoot(`public/proposals/${open}/index.html`, 'proposal.png', { width: 390, height: 1300 });
await shoot(
  `public/proposals/${open}/index.html`,
  'comparison.png',
  { width: 1100, height: 1500 },
  'section:has(> h2#compare-now)',
);
await shoot('private/kitchen/events/farrowick-wedding/index.html', 'prep-plan.png', {
  width: 1280,
  height: 1500,
});
await shoot(
  'private/kitchen/days/2027-05-15/index.html',
  'day.png',
  { width: 1280, height: 1300 },
  '.day-picture',
);
await shoot(
  'private/kitchen/events/weir-crew-supper/index.html',
  'odds.png',
  { width: 1280, height: 720 },
  '#odds',
);
await shoot(
  'private/kitchen/leftovers/index.html',
  'leftovers.png',
  { width: 1280, height: 840 },
  '#potato-rolls-harvest-table-bread',
);

await program.close();
await rm(out, { recursive: true });

async function linkOf(start: string): Promise<string> {
  const links = await readdir(join(out, 'public', 'proposals'));
  const link = links.find((each) => each.startsWith(start));
  if (link === undefined) throw new Error(`the demo has no page that begins with ${start}`);
  return link;
}

async function shoot(
  file: string,
  picture: string,
  viewport: { width: number; height: number },
  at?: string,
): Promise<void> {
  await page.setViewportSize(viewport);
  await page.goto(pathToFileURL(join(out, file)).href);
  await page.evaluate(async () => {
    for (const part of document.querySelectorAll<HTMLDetailsElement>('.part')) part.open = true;
    await document.fonts.ready;
  });
  if (at !== undefined) await showFirst(page, at);
  await page.screenshot({ path: join(here, picture) });
}

/** Scrolls what the picture is about to the top. */
async function showFirst(page: Page, selector: string): Promise<void> {
  await page
    .locator(selector)
    .first()
    .evaluate((element) => element.scrollIntoView({ block: 'start' }));
}
