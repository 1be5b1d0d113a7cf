import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright';
import type { Command } from '../../src/commands/call/command.ts';
import { command as issue } from '../../src/commands/issue.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { oneDevice } from './one-device.ts';
import { replaceIn, type SecondKitchen, secondKitchen } from './second-kitchen.ts';

/** The noon of the day on which the test's kitchen builds. */
export const NOW = new Date('2027-04-26T12:00:00Z');

/** The size of a phone’s window, unless another is given. */
const PHONE = { width: 390, height: 844 };

/** Links of the proposals in each state; `confirmed` and `offered` are the second kitchen's own. */
export const LINKS = {
  confirmed: 'oyx6usbuof2ek2zoccd4j5hh5o',
  offered: 'b2q7harbourwall4t5x6y7z2m3',
  draft: 'd3raftharbourwall4t5x6y7z2',
  expired: 'e4xpiredharbourwall4t5x6y7',
  withdrawn: 'w5ithdrawnharbourwall4t5x6',
} as const;

/** Links of proposals in the further states that `clientStates` makes. */
export const MORE_LINKS = {
  revised: 'r6evisedharbourwall4t5x6y7',
  corrected: 'c7orrectedharbourwall4t5x6',
  accepted: 'a2cceptedharbourwall4t5x6y',
  moved: 'm3ovedharbourwall4t5x6y7z2',
  'put off': 'p4utoffharbourwall4t5x6y7z',
  cancelled: 'k5ancelledharbourwall4t5x6',
} as const;
const ALL_LINKS = { ...LINKS, ...MORE_LINKS };

/** Everything that a line of a quote may come from: add-ons of each kind, a service charge, price steps. */
const EXTRAS = `  extra-hour:
    name: Extra hour of service
    price: 55.00 per hour
    class: labour
  fruit-boards:
    name: Boards of fruit
    price: 36.50 per 12 guests
    class: food
  bunting:
    name: Bunting and lamps
    price: 120.00
    class: rental
`;

/**
 * The second kitchen with add-ons of every kind and a proposal in every state, built without PDFs. `prepare` may
 * change the content before anything is issued.
 */
export async function clientKitchen(
  prepare: (content: string) => Promise<void> = async () => undefined,
): Promise<SecondKitchen> {
  const kitchen = await secondKitchen(async (content) => {
    const file = join(content, 'kitchen.yaml');
    const text = await readFile(file, 'utf8');
    const rest = 'service charge: 10 %\ntell clients of price steps: yes\n';
    await writeFile(file, text.replace('guarantee:\n', `${rest}guarantee:\n`).replace(/\s*$/, `\n${EXTRAS}`));
    const add = 'add-ons: tea-table, extra-hour, fruit-boards, bunting';
    await replaceIn(join(content, 'proposals', 'regatta-lunch.md'), 'add-ons: tea-table', add);
    await copyProposal(content, 'pier-draft', LINKS.draft, [['valid until', 'share: draft\nvalid until']]);
    await copyProposal(content, 'pier-late', LINKS.expired, [
      ['valid until: 2027-05-30', 'valid until: 2027-04-10'],
    ]);
    await copyProposal(content, 'pier-gone', LINKS.withdrawn, []);
    await prepare(content);
    await runCommand(content, issue, ['pier-late'], {}, '2027-04-01');
    await runCommand(content, issue, ['pier-gone'], {}, '2027-04-01');
    await replaceIn(join(content, 'proposals', 'pier-gone.md'), 'valid until', 'withdrawn: yes\nvalid until');
  });
  const { code, said, complained } = await kitchen.build();
  if (code !== 0) throw new Error(`the test's kitchen could not be built: ${said}${complained}`);
  return kitchen;
}

/** Another proposal, made from the open offer’s, under a link of its own. */
export async function copyProposal(
  content: string,
  id: string,
  link: string,
  edits: readonly [from: string, to: string][],
): Promise<void> {
  const file = join(content, 'proposals', `${id}.md`);
  await cp(join(content, 'proposals', 'regatta-lunch.md'), file);
  for (const [from, to] of [[LINKS.offered, link] as [string, string], ...edits])
    await replaceIn(file, from, to);
}

/** Runs a command on the content, as the command line does; throws with what it said where it fails. */
export async function runCommand(
  content: string,
  { run }: Command,
  args: string[],
  flags: Record<string, string | boolean> = {},
  today = '2027-04-26',
): Promise<string> {
  let said = '';
  const say = (line: string) => {
    said += `${line}\n`;
  };
  const outDir = join(content, '..', 'out');
  const code = await run({
    args,
    flags,
    contentDir: content,
    outDir,
    today: today as Day,
    json: false,
    write: say,
    complain: say,
  });
  if (code !== 0) throw new Error(said);
  return said;
}

/** Where a proposal's page is on the disk. */
export function pageUrl(kitchen: SecondKitchen, state: keyof typeof ALL_LINKS): string {
  return pathToFileURL(join(kitchen.out, 'public', 'proposals', ALL_LINKS[state], 'index.html')).href;
}

const sharedDevice = oneDevice();

/**
 * Opens a page at the kitchen’s noon, its script running, and hears its complaints. Pages of one browser follow each
 * other on one device, each as if it were new; settings of a device, or a second one at once, are asked for.
 */
export async function openClient(
  browser: Browser,
  url: string,
  { viewport = PHONE, newDevice = false, ...settings }: BrowserContextOptions & { newDevice?: boolean } = {},
): Promise<{ page: Page; complaints: string[] }> {
  const isOwn = newDevice || Object.keys(settings).length > 0;
  const device = isOwn ? await browser.newContext(settings) : await sharedDevice(browser);
  const page = await device.newPage();
  if (isOwn) page.once('close', () => void device.close());
  if (viewport) await page.setViewportSize(viewport);
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.clock.setFixedTime(NOW);
  await page.goto(url);
  if (settings.javaScriptEnabled !== false)
    await page.waitForSelector('html[data-ready]', { state: 'attached' });
  return { page, complaints };
}
