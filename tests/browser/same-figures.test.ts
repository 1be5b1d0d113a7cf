import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, parse as parsePath } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import ICAL from 'ical.js';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { command as build } from '../../src/commands/build.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../src/exports/prep-plan-document.ts';
import { launch, type OpenPage, openPage } from './open-page.ts';
import { sheetsOf, withPdf } from './read-pdf.ts';

const demo = fileURLToPath(new URL('../../content', import.meta.url));
/** A plated wedding with a guest list, a buffet, and a supper in family style with an add-on and three service lines. */
const EVENTS = ['farrowick-wedding', 'brindlemoor-naming-day', 'weir-crew-supper'] as const;

/** Lists of the page, line by line, that stand on paper as well. */
const LINES = {
  alerts: '.alert-list > li',
  servings: '.dish-lines > li',
  containers: '.container-lines > li',
  tasks: '.tasks > li',
  shopping: '.shopping-lines > li:not(.head)',
  'pack-out': '.pack-lines > li:not(.head)',
  timeline: '.timeline > li',
  'recipe yields': '.recipe .makes',
  'recipe amounts': '.recipe .amounts tbody tr',
} as const;

/** Words as they can be compared: fractions in figures, since paper sets them so, no white space, no capitals. */
function plain(words: string): string {
  return words
    .replaceAll('Why this much', '')
    .normalize('NFKD')
    .replaceAll('\u2044', '/')
    .replace(/\s+/g, '')
    .toLowerCase();
}

describe('the figures of the demo’s events', () => {
  let folder: string;
  let browser: Browser;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'salver-'));
    const content = join(folder, 'content');
    await cp(demo, content, { recursive: true });
    // The other proposals would be printed as well.
    for (const kind of ['proposals', 'offers', 'events'])
      for (const entry of await readdir(join(content, kind)))
        if (!EVENTS.some((event) => parsePath(entry).name.replace(/-r\d+$/, '') === event))
          await rm(join(content, kind, entry), { recursive: true });
    let said = '';
    const say = (line: string) => {
      said += `${line}\n`;
    };
    const call = { args: [], flags: {}, contentDir: content, outDir: join(folder, 'out'), json: false };
    const code = await build.run({ ...call, today: '2027-04-26' as Day, write: say, complain: say });
    expect([code, code === 0 ? '' : said]).toEqual([0, '']);
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  const fileOf = (event: string, name: string) => join(folder, 'out', 'private/kitchen/events', event, name);
  const planOf = async (event: string) =>
    JSON.parse(await readFile(fileOf(event, 'prep-plan.json'), 'utf8')) as PrepPlanDocument;
  const rowsOf = async (event: string, name: string) =>
    parse(await readFile(fileOf(event, name), 'utf8'), { columns: true }) as Record<string, string>[];

  async function pageOf(event: string): Promise<OpenPage> {
    const open = await openPage(browser, folder, `out/private/kitchen/events/${event}/index.html`);
    await open.page.setViewportSize({ width: 1280, height: 900 });
    return open;
  }

  /** What each line of a list has to say, from the document. */
  function linesOf(plan: PrepPlanDocument): Partial<Record<keyof typeof LINES, (string | number)[][]>> {
    const packed = plan.dishes.filter(({ containers }) => containers.length > 0);
    return {
      servings: plan.dishes.map(({ name, counted, perGuest, need, asMade }) => [
        name,
        `${counted} guests`,
        perGuest,
        need.printed,
        asMade.printed,
      ]),
      containers: packed.map(({ name, containers }) => [
        name,
        ...containers.map(
          (each) =>
            `${each.stage} ${each.count} × ${each.name} ${each.each.printed} in each, the last ${each.lastFull} full`,
        ),
      ]),
      tasks: plan.days.flatMap(({ tasks }) =>
        tasks.map(({ at, recipeName, makes, text, handsOn, unattended, cookTo }) => [
          at,
          recipeName,
          makes,
          text,
          handsOn,
          unattended,
          cookTo,
        ]),
      ),
      shopping: plan.shopping.map(({ name, need, packs, left, cost }) => [
        name,
        need.printed,
        ...packs.map(({ count, pack, supplierName }) => `${count} × ${pack} ${supplierName}`),
        left?.printed ?? '',
        cost ?? '',
      ]),
      'pack-out': plan.packOut.map(({ count, container, unit, item, note }) => [
        `${count} ${container || unit} ${item}`,
        note,
      ]),
      timeline: plan.timeline.map(({ begins, ends, what, why }) => [begins, ends, what, why]),
      'recipe yields': plan.recipes.map(({ makes, batches }) => [makes.printed, batches]),
      'recipe amounts': plan.recipes.flatMap(({ lines }) =>
        lines.map(({ amount, name }) => [`${amount.printed} ${name}`]),
      ),
    };
  }

  test.each(EVENTS)('stand on the page line by line as in prep-plan.json: %s', async (event) => {
    const plan = await planOf(event);
    const { page, words } = await pageOf(event);
    for (const [list, expected] of Object.entries(linesOf(plan))) {
      const shown = (await words(LINES[list as keyof typeof LINES])).map(plain);
      // The pack-out list is grouped; within a group lines keep their order.
      expect([list, shown.length]).toEqual([list, expected.length]);
      for (const [index, figures] of expected.entries())
        for (const figure of figures) {
          const line =
            list === 'pack-out'
              ? shown.find((each) => figures.every((one) => each.includes(plain(`${one}`))))
              : shown[index];
          expect([list, figures[0], line]).toEqual([
            list,
            figures[0],
            expect.stringContaining(plain(`${figure}`)),
          ]);
        }
    }
    await page.close();
  });

  test.each(EVENTS)('are printed as the screen shows them, every line whole: %s', async (event) => {
    const { page, words } = await pageOf(event);
    const sheets = await withPdf(await readFile(fileOf(event, 'prep-plan.pdf')), sheetsOf);
    const paper = plain(sheets.map(({ text }) => text).join(' '));
    for (const [list, selector] of Object.entries(LINES)) {
      const shown = await words(selector);
      expect([list, shown.length > 1]).toEqual([list, true]);
      expect([list, shown.filter((line) => !paper.includes(plain(line)))]).toEqual([list, []]);
    }
    await page.close();
  });

  test.each(EVENTS)(
    'are those of shopping.csv and pack-out.csv, read by another parser: %s',
    async (event) => {
      const plan = await planOf(event);
      const shopping = await rowsOf(event, 'shopping.csv');
      expect(
        shopping.map((row) => [
          row.name,
          row['need in words'],
          row.packs,
          row.pack,
          row.cost,
          row['order by'],
        ]),
      ).toEqual(
        plan.shopping.flatMap(({ name, need, packs }) =>
          packs.map(({ count, pack, cost, supplier }) => [
            name,
            need.printed,
            String(count),
            pack,
            cost,
            plan.orders.find((order) => order.supplier === supplier)?.orderBy,
          ]),
        ),
      );
      const cents = (sum: string) => Number(sum.replace('.', ''));
      expect(shopping.reduce((sum, { cost = '' }) => sum + cents(cost), 0)).toBe(cents(plan.foodCost ?? ''));
      const packed = await rowsOf(event, 'pack-out.csv');
      expect(
        packed.map((row) => [row.group, row.count, row.container || row.unit, row.item, row.keep, row.note]),
      ).toEqual(
        plan.packOut.map(({ group, count, container, unit, item, hold, note }) => [
          group,
          String(count),
          container || unit,
          item,
          hold,
          note,
        ]),
      );
    },
  );

  test.each(EVENTS)('are those of prep.ics, read by another parser: %s', async (event) => {
    const plan = await planOf(event);
    const calendar = new ICAL.Component(ICAL.parse(await readFile(fileOf(event, 'prep.ics'), 'utf8')));
    const entries = new Map(
      calendar
        .getAllSubcomponents('vevent')
        .map((each) => new ICAL.Event(each))
        .map((each) => [each.uid, each]),
    );
    for (const { date, tasks } of plan.days)
      for (const { id, recipeName, text, station, makes, handsOn } of tasks) {
        const entry = entries.get(`${id}@salver`);
        expect([id, entry?.startDate.toString(), entry?.summary, entry?.description]).toEqual([
          id,
          date,
          `${recipeName}: ${text}`,
          `${station}, ${makes}, hands-on ${handsOn}`,
        ]);
      }
    // New York in May is four hours behind UTC.
    for (const { part, date, begins } of plan.timeline) {
      const entry = entries.get(`${event}.${part.replaceAll(' ', '-')}@salver`);
      const begun = new Date(`${date}T${begins}:00-04:00`).toISOString();
      expect([part, entry?.startDate.toJSDate().toISOString()]).toEqual([part, begun]);
    }
    for (const { supplier, orderBy } of plan.orders)
      expect(entries.get(`${event}.order-${supplier}@salver`)?.startDate.toString()).toBe(orderBy);
  });
});
