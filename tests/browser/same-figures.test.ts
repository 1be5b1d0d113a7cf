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
import { readNumber } from '../../src/engine/measure/mixed-number.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { packsText } from '../../src/exports/words/packs-text.ts';
import { planAsRead } from '../../src/views/sums-as-read.ts';
import { launch, type OpenPage, openPage } from './open-page.ts';
import { type Sheet, sheetsOf, withPdf } from './read-pdf.ts';

const demo = fileURLToPath(new URL('../../content', import.meta.url));
/** A plated wedding with a guest list, a buffet, and a supper in family style with an add-on and three service lines. */
const EVENTS = [
  'farrowick-wedding',
  'sorrelby-seed-lunch',
  'brindlemoor-naming-day',
  'weir-crew-supper',
] as const;

/** Lists of the page, line by line, that stand on paper as well. */
const LINES = {
  alerts: '.alert-list > li',
  servings: '.dish-lines > li',
  containers: '.container-lines > li',
  tasks: '.tasks > li',
  shopping: '.shopping-lines > li:not(.head)',
  'pack-out': '.pack-lines > li:not(.head)',
  timeline: '.timeline > li',
  'food safety': '.safety:has(.blanks) tbody tr',
  'recipe yields': '.recipe .makes',
  'recipe amounts': '.recipe .amounts tbody tr',
} as const;

/** Sums as American readers have them, by the formatter built into Node; the data has plain figures. */
const DOLLARS = new Intl.NumberFormat('en-US', { style: 'currency', currency: 'USD' });

/** Hours as American readers have them, by the same. */
const CLOCK = new Intl.DateTimeFormat('en-US', { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });

/** Words as they can be compared: fractions in figures, since paper sets them so, no white space, no capitals. */
function plain(words: string): string {
  return words
    .replaceAll('Why this much', '')
    .normalize('NFKD')
    .replaceAll('\u2044', '/')
    .replace(/\s+/g, '')
    .toLowerCase();
}

/**
 * Whether figures stand together somewhere on paper: all others within a few lines around the first, which is a name that
 * may stand elsewhere too.
 */
function standTogether(paper: string, [first = '', ...others]: readonly string[]): boolean {
  for (let at = paper.indexOf(first); at >= 0; at = paper.indexOf(first, at + 1)) {
    const around = paper.slice(Math.max(0, at - 150), at + first.length + 700);
    if (others.every((other) => around.includes(other))) return true;
  }
  return false;
}

/** What a way of making says of an event, made once. */
function once<T>(make: (event: string) => Promise<T>): (event: string) => Promise<T> {
  const made = new Map<string, Promise<T>>();
  return (event) => {
    const known = made.get(event) ?? make(event);
    made.set(event, known);
    return known;
  };
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

  /** Each page is opened and each plan on paper read once: the tests only look at them. */
  const pageOf = once(async (event): Promise<OpenPage> => {
    const open = await openPage(browser, folder, `out/private/kitchen/events/${event}/index.html`);
    await open.page.setViewportSize({ width: 1280, height: 900 });
    return open;
  });
  const planSheetsOf = once(async (event) =>
    withPdf(await readFile(fileOf(event, 'prep-plan.pdf')), sheetsOf),
  );

  const daySheetsOf = once(async (event) => {
    const sheets: Sheet[] = [];
    // Events that buy in one order have their deliveries on days of others.
    const last = (await planOf(event)).event.date;
    const days = join(folder, 'out', 'private/kitchen/days');
    for (const date of (await readdir(days)).filter((each) => each <= last))
      sheets.push(...(await withPdf(await readFile(join(days, date, 'day.pdf')), sheetsOf)));
    return sheets;
  });

  /** The dishes that are packed, in the order of the list: what leaves raw stands below all others. */
  function packedIn({ dishes }: PrepPlanDocument): PrepPlanDocument['dishes'] {
    const packed = dishes.filter(({ containers }) => containers.length > 0);
    return packed.toSorted((a, b) => Number(a.raw !== undefined) - Number(b.raw !== undefined));
  }

  /** What a food costs, by the document’s own figure. */
  function dollars({ shopping }: PrepPlanDocument, food: string): string {
    const cost = shopping.find(({ name }) => name === food)?.cost;
    return cost ? DOLLARS.format(Number(cost)) : '';
  }

  /** What each line of a list has to say, from the document as people read it. */
  function linesOf(data: PrepPlanDocument): Partial<Record<keyof typeof LINES, (string | number)[][]>> {
    const plan = planAsRead(data, 'en-US');
    const packed = packedIn(plan);
    return {
      servings: plan.dishes.map(({ name, counted, perGuest, need, asMade }) => [
        name,
        `${inDecimals(counted)} ${counted === '1' ? 'guest' : 'guests'}`,
        perGuest,
        need.printed,
        asMade.printed,
      ]),
      containers: packed.map(({ name, containers }) => [
        name,
        ...containers.map(
          (each) =>
            `${each.stage} ${each.count} × ${each.name} ${each.count === 1 ? `${each.lastFull} full` : `${each.each.printed} in each, the last ${each.lastFull} full`}`,
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
      shopping: plan.shopping.map(({ name, need, packs, left }) => [
        name,
        need.printed,
        ...packs.map(({ count, pack, supplierName }) => `${packsText(count, pack)} ${supplierName}`),
        left?.printed ?? '',
        dollars(data, name),
      ]),
      'pack-out': plan.packOut.map(({ count, container, unit, item, note }) => [
        `${count} ${container || unit} ${item}`,
        note,
      ]),
      timeline: plan.timeline.map(({ begins, ends, what, why }) => [begins, ends, what, why]),
      'food safety': plan.safetySheet.checks.map(({ when, what, limit, section, blanks }) => [
        what,
        when,
        limit,
        section,
        ...blanks,
      ]),
      'recipe yields': plan.recipes.map(({ makes, batches }) => [makes.printed, batches]),
      'recipe amounts': plan.recipes.flatMap(({ lines }) =>
        lines.map(({ amount, name }) => [`${amount.printed} ${name}`]),
      ),
    };
  }

  test.each(EVENTS)('stand on the page line by line as in prep-plan.json: %s', async (event) => {
    const plan = await planOf(event);
    const { words } = await pageOf(event);
    for (const [list, expected] of Object.entries(linesOf(plan))) {
      const shown = (await words(LINES[list as keyof typeof LINES])).map(plain);
      // Pack-out and food safety are grouped on the page, so their lines stand in another order.
      expect([list, shown.length]).toEqual([list, expected.length]);
      for (const [index, figures] of expected.entries())
        for (const figure of figures) {
          const line =
            list === 'pack-out' || list === 'food safety'
              ? shown.find((each) => figures.every((one) => each.includes(plain(`${one}`))))
              : shown[index];
          expect([list, figures[0], line]).toEqual([
            list,
            figures[0],
            expect.stringContaining(plain(`${figure}`)),
          ]);
        }
    }
  });

  test.each(EVENTS)(
    'are on paper, line by line, on the event’s sheets or those of its days: %s',
    async (event) => {
      const data = await planOf(event);
      const plan = planAsRead(data, 'en-US');
      const paper = plain(
        [...(await planSheetsOf(event)), ...(await daySheetsOf(event))].map(({ text }) => text).join(' '),
      );
      const lost = (lines: readonly (readonly (string | number)[])[]) =>
        lines.filter(
          (line) =>
            !standTogether(
              paper,
              line.map((each) => plain(`${each}`)),
            ),
        );
      const lists = linesOf(data);
      const found = {
        alerts: plan.alerts.map(({ about, who, what, notFor }) => [about, ...who, what, ...notFor]),
        servings: plan.dishes.map(({ name, counted, perGuest, need }) => [
          name,
          `${inDecimals(counted)} ${counted === '1' ? 'guest' : 'guests'}`,
          perGuest,
          need.printed,
        ]),
        containers: packedIn(plan).map(({ name, containers }) => [
          name,
          ...containers.map((each) => `${each.stage} ${each.count} × ${each.name}`),
          ...containers.filter(({ count }) => count > 1).map(({ each }) => `${each.printed} in each`),
        ]),
        tasks: plan.days.flatMap(({ tasks }) =>
          tasks.map(({ at, recipeName, text, cookTo, heat = '' }) => [
            recipeName,
            at,
            // A count in its words is that of the batch, which two events may share.
            text.split(/\d/)[0] ?? '',
            cookTo,
            heat,
          ]),
        ),
        shopping: plan.shopping.map(({ name, need, packs, left }) => [
          name,
          need.printed,
          ...packs.map(({ count, pack }) => packsText(count, pack)),
          left?.printed ?? '',
          dollars(data, name),
        ]),
        'pack-out': plan.packOut.map(({ count, container, unit, item, note }) => [
          item,
          count,
          container || unit,
          note,
        ]),
        timeline: (lists.timeline ?? []).map(([begins = '', ends = '', what = '', why = '']) => [
          what,
          begins,
          ends,
          why,
        ]),
        'food safety': plan.safetySheet.checks
          .filter(({ stage }) => stage !== 'receiving')
          // Time and initials head a column of the days' logs.
          .map(({ what, limit, section, blanks }) => [
            what,
            limit,
            section,
            ...blanks.filter((blank) => !['time', 'initials'].includes(blank)),
          ]),
        receiving: plan.safetySheet.checks
          .filter(({ stage }) => stage === 'receiving')
          .flatMap(({ what, limit }) =>
            what
              .slice(what.indexOf(': ') + 2)
              .split('; ')
              .map((food) => [food, limit]),
          ),
        'recipe yields': plan.recipes.map(({ name, makes, batches }) => [
          name,
          `${makes.printed} ${batches} × the recipe`,
        ]),
        'recipe amounts': plan.recipes.flatMap(({ lines }) =>
          lines.map(({ amount, name }) => [`${amount.printed} ${name}`]),
        ),
      };
      for (const [list, lines] of Object.entries(found)) {
        expect([list, lines.length > 0]).toEqual([list, true]);
        expect([list, lost(lines)]).toEqual([list, []]);
      }
      const { defers } = plan.safetySheet;
      const { words } = await pageOf(event);
      expect([(await words('main'))[0]?.includes(defers), paper.includes(plain(defers))]).toEqual([
        true,
        true,
      ]);
    },
  );

  test.each(EVENTS)('of carriers and van are the same on page, paper, list and labels: %s', async (event) => {
    const data = await planOf(event);
    const { carriers = [], van, packOut } = planAsRead(data, 'en-US');
    expect([carriers.length > 0, van?.vehicle]).toEqual([true, 'Delivery van']);
    const cards = carriers.map(({ number, name, raw, needed, foods, ice, warmth, emptied, weight }) => [
      `Carrier ${number}`,
      name,
      `open first at ${needed}`,
      ...(raw ? ['RAW: load it below ready-to-eat food'] : []),
      ...foods.map(
        ({ item, count, container, needed: at }) =>
          `${item} ${count === 1 ? '' : `${count} × `}${container}, for ${at}`,
      ),
      ...(ice ? [`${ice.packs} ${ice.packs === 1 ? 'pack' : 'packs'}, ${ice.amount}`] : []),
      ...(warmth ? [`Still ${warmth.after} by ${emptied}`] : []),
      ...(weight === '' ? [] : [`${weight} in all`]),
    ]);
    const { cab = [], middle = [], doors = [] } = van?.zones ?? {};
    const zones = [cab, middle, doors].map((numbers, at) => [
      ['Behind the cab: load first', 'In the middle', 'At the doors: load last'][at] ?? '',
      numbers.length === 0
        ? 'none'
        : `${numbers.length === 1 ? 'carrier' : 'carriers'} ${numbers.join(', ')}`,
    ]);
    const load = [
      `Known weight: ${van?.weight}; it may carry ${van?.payload}.`,
      `The carriers, stacked, take ${van?.floor} of its floor.`,
    ];
    const { words } = await pageOf(event);
    const shown = { cards: await words('.carrier'), zones: await words('.van-zone') };
    for (const [list, expected] of Object.entries({ cards, zones })) {
      const lines = shown[list as keyof typeof shown].map(plain);
      expect([list, lines.length]).toEqual([list, expected.length]);
      for (const [at, figures] of expected.entries())
        expect([list, figures.filter((figure) => !lines[at]?.includes(plain(figure)))]).toEqual([list, []]);
    }
    const main = plain((await words('main'))[0] ?? '');
    const paper = plain((await planSheetsOf(event)).map(({ text }) => text).join(' '));
    for (const sentence of load)
      expect([sentence, main.includes(plain(sentence)), paper.includes(plain(sentence))]).toEqual([
        sentence,
        true,
        true,
      ]);
    const together = (lines: readonly (readonly string[])[]) =>
      lines.filter((line) => !standTogether(paper, line.map(plain)));
    expect(together(zones)).toEqual([]);
    // A card may break between two columns of its sheet, but its figures stand on it in full.
    for (const card of cards)
      expect([card[0], card.filter((figure) => !paper.includes(plain(figure)))]).toEqual([card[0], []]);
    const rows = await rowsOf(event, 'pack-out.csv');
    expect(rows.map(({ carriers: numbers }) => numbers)).toEqual(
      packOut.map((line) => line.carriers?.join(', ') ?? ''),
    );
    // What a carrier's card lists is what the labels send into it.
    for (const { number, foods } of carriers) {
      const inside = data.labels.filter(({ carrier }) => carrier === `carrier ${number}`);
      expect([number, inside.length]).toEqual([number, foods.reduce((sum, { count }) => sum + count, 0)]);
    }
  });

  test('fill their sheets, and need no more of them than a crew can carry', async () => {
    const most = { 'farrowick-wedding': 24, 'brindlemoor-naming-day': 12 };
    for (const [event, sheets] of Object.entries(most))
      expect([event, (await planSheetsOf(event)).length <= sheets]).toEqual([event, true]);
    for (const event of EVENTS) {
      const sheets = await planSheetsOf(event);
      // The first four hang by themselves: the event, for whoever leads, totals, allergens. The last ends where it ends.
      for (const [index, { runs, height }] of sheets.slice(4, -1).entries()) {
        const words = runs.filter(({ top }) => top > 14 && top < height - 12);
        const lowest = Math.max(...words.map(({ top }) => top));
        expect([event, index + 5, lowest > height / 2]).toEqual([event, index + 5, true]);
      }
    }
  });

  test.each(EVENTS)('stand on labels and on paper at the minutes of the plan: %s', async (event) => {
    const plan = await planOf(event);
    const read = (clock: string) => CLOCK.format(new Date(`2027-01-01T${clock}:00Z`));
    const paper = plain(
      [...(await planSheetsOf(event)), ...(await daySheetsOf(event))].map(({ text }) => text).join(' '),
    );
    // Each task's hour is followed by its name, with its number and its hands-on time at the most between them.
    for (const { date, tasks } of plan.days)
      for (const { at, recipeName } of tasks) {
        const lines = paper.split(plain(read(at))).slice(1);
        const own = lines.some((line) =>
          line.slice(0, 60 + plain(recipeName).length).includes(plain(recipeName)),
        );
        expect([date, recipeName, at, own]).toEqual([date, recipeName, at, true]);
      }
    for (const { part, begins, ends, what } of plan.timeline) {
      const hours = ends === '' ? read(begins) : `${read(begins)}–${read(ends)}`;
      // What is after midnight has its day between.
      const lines = paper.split(plain(hours)).slice(1);
      expect([part, lines.some((line) => line.slice(0, 60).includes(plain(what)))]).toEqual([part, true]);
    }
    const labels = await withPdf(await readFile(fileOf(event, 'labels.pdf')), sheetsOf);
    const printed = plain(labels.map(({ text }) => text).join(' '));
    for (const { dish, throwAwayBy } of plan.labels)
      expect([dish, printed.includes(plain(throwAwayBy === undefined ? dish : read(throwAwayBy)))]).toEqual([
        dish,
        true,
      ]);
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
      for (const { id, recipeName, text, station, makes, handsOn, at, until } of tasks) {
        const entry = entries.get(`${id}@salver`);
        const start = entry?.startDate;
        const begins = start?.isDate ? start.toString() : start?.toJSDate().toISOString();
        expect([id, begins, entry?.summary, entry?.description]).toEqual([
          id,
          until === undefined ? date : new Date(`${date}T${at}:00-04:00`).toISOString(),
          `${recipeName}: ${text}`,
          `${station}, ${makes}, hands-on ${handsOn}`,
        ]);
      }
    // New York in May is four hours behind UTC.
    const courses = plan.timeline.filter(({ part }) => part === 'course');
    for (const each of plan.timeline) {
      const { part, date, begins } = each;
      const number = part === 'course' ? `-${courses.indexOf(each) + 1}` : '';
      const entry = entries.get(`${event}.${part.replaceAll(' ', '-')}${number}@salver`);
      const begun = new Date(`${date}T${begins}:00-04:00`).toISOString();
      expect([part, entry?.startDate.toJSDate().toISOString()]).toEqual([part, begun]);
    }
    for (const { supplier, orderBy } of plan.orders)
      expect(entries.get(`${event}.order-${supplier}@salver`)?.startDate.toString()).toBe(orderBy);
  });

  test.each(EVENTS)(
    'come with all that a cook asks of an event at a glance, on screen and on paper: %s',
    async (event) => {
      const { event: facts, alerts } = planAsRead(await planOf(event), 'en-US');
      const { decided, open } = facts;
      const { words } = await pageOf(event);
      const [shown = ''] = (await words('main')).map(plain);
      const sheets = await planSheetsOf(event);
      // What stands on the first three sheets: the rest repeats some of it.
      const paper = plain(
        sheets
          .slice(0, 3)
          .map(({ text }) => text)
          .join(' '),
      );
      const { adults, children, vendors, staff } = facts.guests;
      const counts = [
        [adults, 'adults'],
        [children, 'children'],
        [vendors, 'vendor meals'],
        [staff, 'staff meals'],
      ] as const;
      const said = [
        facts.occasion,
        facts.client,
        facts.state,
        facts.dateText,
        facts.serveAt,
        facts.place,
        facts.travel,
        `${facts.package}, ${facts.style}`,
        ...facts.venue.map(({ value }) => value),
        ...counts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`),
        ...decided,
        ...open.map(({ what }) => what),
        ...alerts.map(({ about }) => about),
      ];
      // The place says where its power, water, ovens, stairs and way in are, and the count how long it may fall.
      expect(facts.venue.map(({ label }) => label)).toEqual(
        expect.arrayContaining(['power', 'water', 'ovens', 'stairs', 'way in']),
      );
      expect(open.map(({ what, due }) => [what.split(':')[0], due])).toContainEqual([
        'The final count',
        facts.guarantee.until,
      ]);
      for (const each of said) {
        expect([each, shown.includes(plain(each))]).toEqual([each, true]);
        expect([each, paper.includes(plain(each))]).toEqual([each, true]);
      }
    },
  );

  test.each(EVENTS)(
    'have each recipe whole on one card and one sheet: steps, keeping, packing, notes: %s',
    async (event) => {
      const plan = planAsRead(await planOf(event), 'en-US');
      const { words } = await pageOf(event);
      const cards = (await words('.recipe')).map(plain);
      const notes = await words('.recipe .card-notes');
      const sheets = await planSheetsOf(event);
      expect(cards).toHaveLength(plan.recipes.length);
      for (const [index, recipe] of plan.recipes.entries()) {
        const amount = `${recipe.makes.printed} ${recipe.batches} × the recipe`;
        const own = sheets.filter(({ text }) =>
          [`${recipe.name} ${amount}`, `${recipe.name} – ${amount}`].some((each) =>
            plain(text).includes(plain(each)),
          ),
        );
        expect([recipe.name, own.length]).toEqual([recipe.name, 1]);
        // What is made separately stands in a box on the card of its recipe, with what differs from it.
        const separate = recipe.id.includes('--');
        const base = plan.recipes.find(({ id }) => id === recipe.id.split('--')[0]);
        const shared = (text: string) => separate && base?.steps.some((step) => step.text === text) === true;
        const onCard = [
          recipe.name,
          ...recipe.lines.map(({ amount, name }) => `${amount.printed} ${name}`),
          ...recipe.steps
            .filter(({ text }) => !shared(text))
            .flatMap(({ text, when, station, skill, handsOn, unattended, cookTo }) => [
              text,
              [
                when,
                station,
                skill && `skill: ${skill}`,
                handsOn && `${handsOn} hands-on`,
                unattended && `${unattended} unattended`,
              ]
                .filter(Boolean)
                .join(' · '),
              cookTo && `Cook to ${cookTo}`,
            ]),
        ].filter(Boolean);
        const besides = [
          ...recipe.usedBy.map(({ by, need }) => `${need.printed} for ${by}`),
          recipe.hold && `Hold ${recipe.hold}`,
          recipe.keeps && `Keeps ${recipe.keeps}`,
          ...(recipe.packed ?? []).map(({ what, stage }) => `${what} to ${stage}`),
          recipe.finish,
        ].filter(Boolean);
        for (const each of [...onCard, ...besides])
          expect([recipe.name, each, cards[index]!.includes(plain(each))]).toEqual([recipe.name, each, true]);
        for (const each of separate ? onCard : [...onCard, ...besides])
          expect([recipe.name, each, plain(own[0]!.text).includes(plain(each))]).toEqual([
            recipe.name,
            each,
            true,
          ]);
        expect(recipe.packed?.length).toBeGreaterThan(0);
        // What is made apart has its own steps and none of the notes.
        expect([recipe.name, notes[index] !== '']).toEqual([recipe.name, recipe.notes !== '']);
        for (const sentence of notes[index]!.split(/(?<=\.) /))
          expect([recipe.name, sentence, plain(own[0]!.text).includes(plain(sentence))]).toEqual([
            recipe.name,
            sentence,
            true,
          ]);
      }
    },
  );

  test.each(EVENTS)(
    'have their why one tap away: dishes, containers, recipes and packs: %s',
    async (event) => {
      const plan = planAsRead(await planOf(event), 'en-US');
      const { page } = await pageOf(event);
      const whysIn = (selector: string) =>
        page
          .locator(selector)
          .evaluateAll((lines) =>
            lines.map((line) =>
              [...line.querySelectorAll('.why li')].map((why) => why.textContent?.trim() ?? ''),
            ),
          );
      expect(await whysIn(LINES.servings)).toEqual(plan.dishes.map(({ why }) => why));
      expect(await whysIn(LINES.shopping)).toEqual(plan.shopping.map(({ why }) => why));
      expect(await whysIn('.recipe')).toEqual(plan.recipes.map(({ why }) => why));
      expect(await whysIn(LINES.containers)).toEqual(
        packedIn(plan).map(({ containers }) => containers.flatMap(({ why }) => why)),
      );
    },
  );

  test.each(EVENTS)(
    'are drawn for each day, time across and stations down, as the list has them: %s',
    async (event) => {
      const plan = await planOf(event);
      const { page } = await pageOf(event);
      const drawn = await page.locator('.day-picture svg').evaluateAll((pictures) =>
        pictures.map((picture) => ({
          names: ['stations', 'equipment', 'people', 'waits-rows'].map((group) =>
            [...picture.querySelectorAll(`.${group} .station-name`)].map((name) => name.textContent?.trim()),
          ),
          bars: [...picture.querySelectorAll('.stations .bar.hands')].map((bar) => ({
            number: bar.nextElementSibling?.textContent?.trim(),
            left: Number(bar.getAttribute('x')),
            top: Number(bar.getAttribute('y')),
          })),
        })),
      );
      const pictures = plan.days.flatMap((day) => day.pictures);
      expect(drawn).toHaveLength(pictures.length);
      for (const [index, { stations, equipment = [], people = [], waiting = [] }] of pictures.entries()) {
        const { bars, names } = drawn[index]!;
        const waits = ['hot', 'cold', 'frozen', 'room'].filter((as) =>
          waiting.some((each) => each.as === as),
        );
        expect(names).toEqual([
          ...[stations, equipment, people].map((rows) => rows.map(({ name }) => name)),
          waits.map((as) => (as === 'room' ? 'Waiting, room temp' : `Waiting ${as}`)),
        ]);
        const tasks = stations.flatMap(({ tasks: own }) => own);
        expect(bars).toHaveLength(tasks.length);
        // A step in waves has a bar for each, under one number.
        const leftsOf = (number: number) =>
          bars.filter((bar) => bar.number === String(number)).map(({ left }) => left);
        const leftOf = (number: number) => Math.min(...leftsOf(number));
        // As far right as it begins late: the same distance for the same time.
        const [first, last] = [...tasks]
          .sort((a, b) => a.begins - b.begins)
          .filter((_, at, all) => at === 0 || at === all.length - 1);
        if (!first || !last || first.begins === last.begins) continue;
        const minute =
          (Math.max(...leftsOf(last.number)) - leftOf(first.number)) / (last.begins - first.begins);
        for (const { number, begins } of tasks)
          expect(
            Math.min(
              ...leftsOf(number).map((left) =>
                Math.abs(left - leftOf(first.number) - (begins - first.begins) * minute),
              ),
            ),
          ).toBeLessThan(0.01);
        // A station's bars stand below those of the station before.
        const tops = stations.map(({ tasks: own }) =>
          own.map(({ number }) => bars.find((bar) => bar.number === String(number))!.top),
        );
        for (const [at, own] of tops.slice(1).entries())
          expect(Math.min(...own)).toBeGreaterThan(Math.max(...tops[at]!));
      }
    },
  );

  test('are on the place cards of the plated one: each guest once, with table and marks of what is taken', async () => {
    const plan = await planOf('farrowick-wedding');
    const sheets = await withPdf(await readFile(fileOf('farrowick-wedding', 'place-cards.pdf')), sheetsOf);
    const seats = plan.tables!.seats;
    expect(seats).toHaveLength(94);
    // Six to a sheet.
    expect(sheets).toHaveLength(Math.ceil(94 / 6));
    for (const [index, { text }] of sheets.entries())
      for (const { name, table, dishes } of seats.slice(index * 6, index * 6 + 6)) {
        expect(plain(text).split(plain(name))).toHaveLength(2);
        expect(plain(text)).toContain(plain(table));
        for (const dish of dishes) expect(plain(text)).toContain(plain(dish.letters));
      }
    await expect(readFile(fileOf('brindlemoor-naming-day', 'place-cards.pdf'))).rejects.toThrow('ENOENT');
  });
});

/** A whole or mixed number of guests as people read it: `20 ⅖` → `20.4`. */
function inDecimals(counted: string): string {
  const read = readNumber(counted);
  if (!read.ok) throw new Error(`${counted} is no number of guests`);
  return String(Math.round(read.value.value.valueOf() * 100) / 100);
}
