import { parse } from 'csv-parse/sync';
import ICAL from 'ical.js';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { planDeadlines } from '../../src/exports/plan/deadlines.ts';
import { planAsRead } from '../../src/views/sums-as-read.ts';
import { wordsIn } from '../../src/words/words-in.ts';
import { launch, type OpenPage, openPage } from './open-page.ts';
import { eventFolder, type SecondKitchen } from './second-kitchen.ts';
import { sharedKitchen } from './shared-kitchen.ts';

describe('what the kitchen works from', () => {
  let kitchen: SecondKitchen;
  let browser: Browser;
  let event: OpenPage;
  let plan: PrepPlanDocument;

  beforeAll(async () => {
    kitchen = await sharedKitchen('plain');
    browser = await launch();
    event = await openPage(browser, kitchen.out, `${eventFolder}/index.html`);
    plan = planAsRead(await kitchen.plan(), 'en-IE');
  });

  afterAll(async () => {
    await browser?.close();
    await kitchen?.remove();
  });

  test('needs, recipes, packs and tasks on the page are those of prep-plan.json', async () => {
    expect(plan.dishes.length).toBeGreaterThan(2);
    expect(await event.words('.dish-lines > li > .big')).toEqual(
      plan.dishes.map(({ need, asMade }) =>
        need.printed === asMade.printed ? need.printed : `${need.printed} = ${asMade.printed}`,
      ),
    );
    expect(await event.words('.recipe .makes b')).toEqual(plan.recipes.map(({ makes }) => makes.printed));
    expect(await event.words('.recipe .amount')).toEqual(
      plan.recipes.flatMap(({ lines }) => lines.map(({ amount }) => amount.printed)),
    );
    expect(await event.words('.shopping-lines > li:not(.head) > div:nth-child(3) .strong')).toEqual(
      plan.shopping.flatMap(({ packs }) => packs.map(({ count, pack }) => `${count} × ${pack}`)),
    );
    expect(await event.words('.day .task-head > .strong')).toEqual(
      plan.days.flatMap(({ tasks }) => tasks.map(({ recipeName }) => recipeName)),
    );
  });

  test('every container line says stage, count and container as the plan has them', async () => {
    const lines = plan.dishes.flatMap(({ containers }) =>
      containers.map(({ stage, count, name, each, lastFull }) =>
        `${stage} ${count} × ${name} ${count === 1 ? `${lastFull} full` : `${each.printed} in each, the last ${lastFull} full`}`.toLowerCase(),
      ),
    );
    const shown = await event.words('.container-lines > li > ul > li:has(.stage)');
    expect(shown.map((text) => text.toLowerCase())).toEqual(lines);
  });

  test('needs of guests stand on top with the dishes that are not for them', async () => {
    const vegan = plan.alerts.find(({ about }) => about === '3 × vegan')!;
    expect(vegan.notFor).toContain('Smoked haddock chowder');
    const [alerts] = await event.words('.alerts');
    for (const { about, notFor } of plan.alerts)
      for (const word of [about, ...notFor]) expect(alerts).toContain(word);
    const [box, list] = await event.page.evaluate(() =>
      ['.alerts', '#servings'].map((each) => document.querySelector(each)!.getBoundingClientRect().top),
    );
    expect(box).toBeLessThan(list!);
  });

  test('the whole day is read without scrolling sideways', async () => {
    expect(await event.page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    const day = await openPage(browser, kitchen.out, `private/kitchen/days/${plan.event.date}/index.html`);
    expect(await day.page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    const tasks = plan.days.find(({ date }) => date === plan.event.date)!.tasks;
    const text = (await day.words('.tasks')).join(' ');
    for (const task of tasks) expect(text).toContain(task.text);
    expect([...event.complaints, ...day.complaints]).toEqual([]);
    await day.page.close();
  });

  test('shopping.csv, read by another parser, buys the same packs for the same money', async () => {
    const rows = parse(await kitchen.text(`${eventFolder}/shopping.csv`), { columns: true }) as Record<
      string,
      string
    >[];
    const data = await kitchen.plan();
    expect(rows.map((row) => [row.name, row.packs, row.pack, row.cost, row['need in words']])).toEqual(
      data.shopping.flatMap(({ name, need, packs }) =>
        packs.map(({ count, pack, cost }) => [name, String(count), pack, cost, need.printed]),
      ),
    );
    const cents = rows.reduce((sum, row) => sum + Number(row.cost!.replace('.', '')), 0);
    expect(cents).toBe(Number(data.foodCost!.replace('.', '')));
  });

  test('pack-out.csv, read by another parser, is the list on the page', async () => {
    const rows = parse(await kitchen.text(`${eventFolder}/pack-out.csv`), { columns: true }) as Record<
      string,
      string
    >[];
    const listed = rows.map((row) => `${row.count} ${row.container || row.unit} ${row.item} ${row.note}`);
    const shown = await event.words('.pack-lines > li:not(.head)');
    expect(shown.map((text) => text.trim())).toEqual(listed.map((text) => text.trim()));
  });

  test('prep.ics, read by another parser, has each task and the service at its hour', async () => {
    const calendar = new ICAL.Component(ICAL.parse(await kitchen.text(`${eventFolder}/prep.ics`)));
    const entries = calendar.getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));
    const tasks = plan.days.flatMap(({ date, tasks: list }) => list.map((task) => ({ date, task })));
    const deadlines = planDeadlines(plan, wordsIn('en-US'));
    expect(deadlines.map(({ what }) => what.split(':')[0])).toEqual([
      'Final count due',
      'Order from Strand Stores',
      'Payment due (Balance, on the day of the event)',
    ]);
    expect(entries).toHaveLength(tasks.length + plan.timeline.length + deadlines.length);
    for (const { id, date } of deadlines)
      expect(entries.find(({ uid }) => uid === `${id}@salver`)?.startDate.toString()).toBe(date);
    for (const { date, task } of tasks) {
      const entry = entries.find(({ uid }) => uid.startsWith(`${task.id}@`));
      // Dublin in May is an hour ahead of UTC; work whose hour is not known has its day alone.
      const hour = task.until === undefined ? date : new Date(`${date}T${task.at}:00+01:00`).toISOString();
      const start = entry?.startDate;
      expect(start?.isDate ? start.toString() : start?.toJSDate().toISOString()).toBe(hour);
      expect(entry?.summary).toBe(`${task.recipeName}: ${task.text}`);
    }
    const serve = entries.find(({ uid }) => uid.startsWith('lifeboat-evening.serve'))!;
    // 19:30 in Dublin in May, which then is an hour ahead of UTC.
    expect(serve.startDate.toJSDate().toISOString()).toBe('2027-05-21T18:30:00.000Z');
  });
});
