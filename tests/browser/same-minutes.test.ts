import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import ICAL from 'ical.js';
import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { planText } from '../../src/commands/text/plan-text.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { explain } from '../../src/exports/explanation.ts';
import type { PrepPlanDocument } from '../../src/exports/form/prep-plan.ts';
import { explainedHours } from '../../src/views/kitchen/explained-hours.ts';
import { sortedEvents } from '../../src/views/kitchen/sorted-events.ts';
import { planAsRead } from '../../src/views/sums-as-read.ts';
import { wordsIn } from '../../src/words/words-in.ts';
import { launch, openPage } from './open-page.ts';
import { sharedKitchen } from './shared-kitchen.ts';

// Paper and labels have each line of the event's page and plan, times included: same-figures.test.ts. Here the whole demo is
// compared on all else.

const TODAY = '2027-04-26' as Day;
/** New York in May and June is four hours behind UTC. */
const moment = (date: string, clock: string) => new Date(`${date}T${clock}:00-04:00`).getTime();
/** As American readers have it, by the formatter built into Node: `9:40 AM`. */
const FORM = new Intl.DateTimeFormat('en-US', { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });
const read = (clock: string) => FORM.format(new Date(`2027-01-01T${clock}:00Z`)).replaceAll('\u202f', ' ');
const plain = (words: string) => words.replace(/\s+/g, ' ').trim();

/** `8:20 AM` in minutes from midnight. */
const minuteOf = (clock: string) => {
  const [, hour = '', minute = '', half] = /^(\d+):(\d+) (AM|PM)$/.exec(clock) ?? [];
  return (Number(hour) % 12) * 60 + Number(minute) + (half === 'PM' ? 720 : 0);
};

/** A bar of the day’s picture: in whose row, of which task, where. */
interface Bar {
  row: string;
  group: string;
  number: string;
  left: number;
  width: number;
}

/** Everything a day's page says of minutes, as its reader finds it. */
interface DayShown {
  tasks: { number: string; at: string; name: string }[];
  now: { href: string; time: string; name: string; handsOff: number }[];
  bars: Bar[];
  /** Packing and loading, in the rows of the cooks. */
  vans: Bar[];
  chain: { number: string; time: string }[];
  timeline: string[];
  loads: string[];
}

describe('the minutes of the whole demo', () => {
  let content: string;
  let folder: string;
  let browser: Browser;
  let plans: PrepPlanDocument[];
  const days = new Map<string, DayShown>();

  beforeAll(async () => {
    ({ content, folder } = await sharedKitchen('demo'));
    const { book } = await readBook(content);
    const ids = sortedEvents(book!, TODAY).coming.map(({ offer }) => offer.proposal);
    plans = await Promise.all(
      ids.map(async (id) => JSON.parse(await readFile(fileOf(id, 'prep-plan.json'), 'utf8'))),
    );
    browser = await launch();
    for (const date of new Set(plans.flatMap((plan) => plan.days.map((each) => each.date))))
      days.set(date, await dayShown(date));
  });

  afterAll(() => browser?.close());

  const fileOf = (event: string, name: string) => join(folder, 'out/private/kitchen/events', event, name);

  async function dayShown(date: string): Promise<DayShown> {
    const { page } = await openPage(browser, folder, `out/private/kitchen/days/${date}/index.html`);
    const shown = await page.evaluate((): DayShown => {
      const text = (within: Element, selector: string) =>
        (within.querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ').trim();
      const all = (selector: string) => [...document.querySelectorAll(selector)];
      const drawn = (bar: Element): Bar => {
        const number = bar.nextElementSibling as Element;
        const group = bar.closest('g')?.getAttribute('class') ?? '';
        const names = [...(bar.closest('g')?.querySelectorAll('.station-name') ?? [])];
        const row = names.findLast((name) => name.compareDocumentPosition(bar) & 4);
        return {
          row: row?.textContent?.trim() ?? '',
          group,
          number: number.textContent?.trim() ?? '',
          left: Number(bar.getAttribute('x')),
          width: Number(bar.getAttribute('width')),
        };
      };
      return {
        tasks: all('.tasks > li').map((line) => ({
          number: text(line, '.task-at').split(' ')[0] ?? '',
          at: text(line, '.task-at .soft'),
          name: text(line, '.task-head > .strong'),
        })),
        now: all('.now-next li').map((line) => ({
          href: line.querySelector('a')?.getAttribute('href') ?? '',
          time: text(line, '.now-at'),
          name: text(line, '.now-what'),
          handsOff: Number(line.getAttribute('data-hours')?.split(' ')[1]),
        })),
        bars: all('.day-picture :is(.stations .hands, .people .hands, .oven-full)').map(drawn),
        vans: all('.day-picture .people .oven').map(drawn),
        chain: all('.day-chain li').map((line) => ({
          number: text(line, '.chain-number'),
          time: text(line, '.big'),
        })),
        timeline: all('.timeline > li').map((line) => (line.textContent ?? '').replace(/\s+/g, ' ')),
        loads: all('#ovens .load-lines > li').map((line) =>
          [text(line, '.big'), text(line, '.strong')].join(' '),
        ),
      };
    });
    await page.close();
    return shown;
  }

  /** Tasks of all events on a date whose hour is known, under the names that lists have. */
  const tasksOn = (date: string) =>
    plans.flatMap((plan) => plan.days.filter((each) => each.date === date).flatMap((each) => each.tasks));
  const pairs = (all: readonly (readonly [string, string])[]) =>
    [...new Set(all.map((each) => each.join(' ')))].sort();

  test('are many, on days of one event and of several', () => {
    expect(plans.length).toBeGreaterThan(3);
    expect(days.size).toBeGreaterThan(6);
    expect(plans.flatMap(({ days: own }) => own.flatMap(({ tasks }) => tasks)).length).toBeGreaterThan(100);
  });

  test('of each task are the same on its event’s page and on its day’s, where lists, phone and critical path agree', async () => {
    for (const [date, { tasks, now, chain }] of days) {
      const own = tasksOn(date);
      expect([date, pairs(tasks.map(({ name, at }) => [name, at]))]).toEqual([
        date,
        pairs(own.map(({ recipeName, at }) => [recipeName, read(at)])),
      ]);
      expect([date, pairs(now.map(({ name, time }) => [name, time]))]).toEqual([
        date,
        pairs(own.map(({ recipeName, at, until }) => [recipeName, `${read(at)}–${read(until!)}`])),
      ]);
      const atOf = new Map(tasks.map(({ number, at }) => [number, at]));
      expect(atOf.size).toBe(tasks.length);
      for (const { href, time } of now) expect(time.split('–')[0]).toBe(atOf.get(href.replace('#task-', '')));
      const numbered = chain.filter(({ number }) => number !== '');
      expect([date, numbered.length > 0]).toEqual([date, true]);
      for (const { number, time } of numbered) expect(time.split('–')[0]).toBe(atOf.get(number));
    }
    for (const plan of plans) {
      const open = await openPage(browser, folder, `out/private/kitchen/events/${plan.event.id}/index.html`);
      const shown = await open.words('.task-at .soft');
      expect([plan.event.id, shown]).toEqual([
        plan.event.id,
        plan.days.flatMap((each) => each.tasks.map(({ at }) => read(at))),
      ]);
      await open.page.close();
    }
  });

  test('are drawn as they are listed: stations, ovens and cooks stand at the same minutes, no cook and no oven at two', () => {
    for (const [date, { tasks, bars }] of days) {
      const at = new Map(tasks.map(({ number, at: text }) => [number, minuteOf(text)]));
      const stations = bars.filter(({ group }) => group === 'stations');
      const [first, ...others] = stations.toSorted((a, b) => a.left - b.left);
      const last = others.findLast(({ number }) => at.get(number)! > at.get(first!.number)!);
      if (!first || !last) continue;
      const start = at.get(first.number)!;
      const perMinute = (last.left - first.left) / (at.get(last.number)! - start);
      for (const { number, left } of stations)
        expect([date, number, Math.round((left - first.left) / perMinute)]).toEqual([
          date,
          number,
          at.get(number)! - start,
        ]);
      const cooks = bars.filter(({ group }) => group === 'people');
      expect([date, cooks.length > 0]).toEqual([date, true]);
      for (const { number, left } of cooks)
        expect([date, number, stations.some((bar) => bar.number === number && bar.left === left)]).toEqual([
          date,
          number,
          true,
        ]);
      for (const group of ['people', 'equipment'])
        for (const row of Map.groupBy(
          bars.filter((bar) => bar.group === group),
          (bar) => bar.row,
        ).values())
          for (const [index, bar] of row.slice(1).entries())
            expect([
              date,
              bar.row,
              bar.number,
              bar.left + 1e-6 >= row[index]!.left + row[index]!.width,
            ]).toEqual([date, bar.row, bar.number, true]);
    }
  });

  test('of ovens are the same on event’s page and day’s page', () => {
    for (const [date, { loads }] of days) {
      const own = plans.flatMap((plan) =>
        plan.days.filter((each) => each.date === date).flatMap((each) => each.loads),
      );
      expect([date, [...new Set(loads)].sort()]).toEqual([
        date,
        pairs(
          own.map(({ recipeName, goesIn, comesOut }) => [`${read(goesIn)}–${read(comesOut)}`, recipeName]),
        ),
      ]);
    }
  });

  test('of each event’s own parts are the same on its timeline and its day’s', () => {
    for (const { event, timeline } of plans)
      for (const { part, what, begins, ends } of timeline.filter((each) => each.part !== 'cook')) {
        const lines = days.get(event.date)?.timeline ?? [];
        const said = lines.filter((line) => line.includes(event.occasion) && line.includes(what));
        const times = [begins, ends].filter(Boolean).map(read);
        expect([
          event.id,
          part,
          said.some((line) => times.every((time) => plain(line).includes(time))),
        ]).toEqual([event.id, part, true]);
      }
  });

  /** `9 h 25 min`, `2 h`, `50 min`. */
  const lengthOf = (time: string) =>
    [...time.matchAll(/(\d+) (d|h|min)/g)].reduce(
      (sum, [, n, unit]) => sum + Number(n) * { d: 1440, h: 60, min: 1 }[unit as 'h']!,
      0,
    );
  const centsOf = (sum: string) => Math.round(Number(sum.replace(/[$,]/g, '')) * 100);
  /** The figures of an owner's page: who is at the event, and what pay is counted. */
  const moneyOf = async (event: string) => {
    const open = await openPage(browser, folder, `out/private/kitchen/events/${event}/money/index.html`);
    const rows = (await open.words('.hours-lines tbody tr')).map(plain);
    const costs = (await open.words('.money-lines tr')).map(plain);
    await open.page.close();
    return { rows, costs };
  };

  test('are those that pay is counted by: of each role at the event, from truck to truck', async () => {
    for (const { event, timeline } of plans) {
      const { rows, costs } = await moneyOf(event.id);
      const at = (part: string) => timeline.find((each) => each.part === part)!;
      const kitchen = `${read(at('load').begins)} to ${read(at('unload').ends)}`;
      const venue = `${read(at('arrive').begins)} to ${read(at('done').begins)}`;
      expect([event.id, rows.length > 1]).toEqual([event.id, true]);
      for (const row of rows) {
        const [, role = '', people = '', time = '', hours = ''] =
          /^(.+?) (\d+) (?:person|people) × (.+?), (.+? to .+?);/.exec(row) ?? [];
        expect([event.id, row, [kitchen, venue].includes(hours)]).toEqual([event.id, row, true]);
        const [from = '', until = ''] = hours.split(' to ').map(minuteOf);
        expect([row, lengthOf(time)]).toEqual([row, (Number(until) - Number(from) + 1440) % 1440]);
        const cost = costs.find((line) => line.startsWith(`${role}, pay`)) ?? '';
        const pay = /\$([\d.]+) an hour/.exec(cost)?.[1] ?? '';
        expect([event.id, role, cost]).toEqual([
          event.id,
          role,
          expect.stringContaining(`${people} × ${time} × $${pay} an hour, at work ${hours}; `),
        ]);
        const paid = Math.round((Number(people) * lengthOf(time) * centsOf(pay)) / 60);
        expect([event.id, role, centsOf(/\$[\d.,]+$/.exec(cost)?.[0] ?? '')]).toEqual([event.id, role, paid]);
      }
    }
  });

  test('are those that pay is counted by: of the cooks in the kitchen, from their first bar of each day to the last', async () => {
    const drawn = [...days].map(([date, { tasks, bars, vans, now }]) => {
      const at = new Map(tasks.map(({ number, at: text }) => [number, minuteOf(text)]));
      const people = bars.filter(({ group }) => group === 'people');
      const numbered = people.filter(({ number }) => at.has(number)).toSorted((a, b) => a.left - b.left);
      const [first, last] = [numbered[0]!, numbered.at(-1)!];
      const started = numbered.find(({ number }) => at.get(number) !== at.get(first.number));
      if (!started) throw new Error(`the picture of ${date} has no two minutes to measure by`);
      const perMinute = (last.left - first.left) / (at.get(last.number)! - at.get(first.number)!);
      const minute = (place: number) => at.get(first.number)! + Math.round((place - first.left) / perMinute);
      // A bar may be drawn wider than its few minutes, so a task's own end counts.
      const ends = new Map(now.map(({ href, handsOff }) => [href.replace('#task-', ''), handsOff]));
      return [...Map.groupBy([...people, ...vans], ({ row }) => row).values()].reduce((sum, row) => {
        const from = Math.min(...row.map(({ left }) => minute(left)));
        const until = Math.max(
          ...row.map(({ number, left, width }) => ends.get(number) ?? minute(left + width)),
        );
        return sum + until - from;
      }, 0);
    });
    const there = await Promise.all(
      plans.map(async ({ event }) => {
        const { costs } = await moneyOf(event.id);
        const line = costs.find((each) => each.startsWith('Kitchen crew between tasks')) ?? '';
        const [, all = '', work = '', between = '', pay = ''] =
          /there (.+?) from .+? last, (.+?) of it .+?: (.+?), loading included, × \$([\d.]+) an hour/.exec(
            line,
          ) ?? [];
        expect([event.id, lengthOf(between)]).toEqual([event.id, lengthOf(all) - lengthOf(work)]);
        const paid = Math.round((lengthOf(between) * centsOf(pay)) / 60);
        expect([event.id, centsOf(/\$[\d.,]+$/.exec(line)?.[0] ?? '')]).toEqual([event.id, paid]);
        return lengthOf(all);
      }),
    );
    const total = (all: readonly number[]) => all.reduce((sum, each) => sum + each, 0);
    expect(total(there)).toBe(total(drawn));
  });

  test('stand in the calendar from beginning to end', async () => {
    for (const { event, days: own } of plans) {
      const text = await readFile(fileOf(event.id, 'prep.ics'), 'utf8');
      const entries = new Map(
        new ICAL.Component(ICAL.parse(text))
          .getAllSubcomponents('vevent')
          .map((each) => new ICAL.Event(each))
          .map((each) => [each.uid, each]),
      );
      for (const { date, tasks } of own)
        for (const { id, at, until } of tasks) {
          const entry = entries.get(`${id}@salver`)!;
          const length = (moment(date, until!) - moment(date, at) + 86_400_000) % 86_400_000;
          const begins = entry.startDate.toJSDate().getTime();
          expect([id, begins, entry.endDate.toJSDate().getTime() - begins]).toEqual([
            id,
            moment(date, at),
            length,
          ]);
        }
    }
  });

  test('are what the command line tells of each task, and of what holds it there', async () => {
    const { book } = await readBook(content);
    const say = wordsIn('en-US');
    for (const plan of plans) {
      const text = planText(planAsRead(plan, 'en-US'), 'en-US');
      const hours = explainedHours(book!, plan.event.id, TODAY);
      for (const { date, dateText, tasks } of plan.days)
        for (const { recipe, recipeName, number, at, until } of tasks) {
          const line = `${read(at)}–${read(until!)}`;
          expect([
            recipe,
            number,
            text.split('\n').some((each) => each.includes(line) && each.includes(recipeName)),
          ]).toEqual([recipe, number, true]);
          const told = explain(plan, recipe, say, hours);
          if (!told.ok) throw new Error(told.what);
          const about = `${recipeName}, step ${number}: ${dateText}, ${at} to ${until}`;
          const [why] = told.value.filter((each) => each.about === about).map((each) => each.why);
          expect([about, why !== undefined]).toEqual([about, true]);
          // It ends in what would let it begin later, and on the event's own day in the truck or the table.
          expect(why!.at(-1)).toBe(say(date === plan.event.date ? 'clock.later.end' : 'clock.later.prep'));
        }
    }
  });
});
