import ICAL from 'ical.js';
import { afterEach, describe, expect, test } from 'vitest';
import { prepCalendar } from '../../../src/exports/files/prep-calendar.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const ZONE = 'Europe/Dublin';
const TODAY = '2027-05-01';

/** Read by a library that had no part in writing it. */
function entriesOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));
}

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

describe('the calendar of a plan', () => {
  test('has the service at its time in the kitchen’s zone and every task at its own hour', async () => {
    const plan = await planOf(accepted(await secondKitchen()));
    const entries = entriesOf(prepCalendar(plan, ZONE, 'en-US', TODAY));
    const names = new Set(plan.days.flatMap((day) => day.tasks.map(({ id }) => `${id}@salver`)));
    const tasks = entries.filter(({ uid }) => names.has(uid));
    const timed = entries.filter(({ startDate, uid }) => !startDate.isDate && !names.has(uid));
    const at = (time: { toJSDate(): Date }) => time.toJSDate().toISOString().slice(0, 16);
    // 19:30 in Dublin is summer time, one hour ahead of UTC; 90 min to set up, 10 on the road, 30 to load, 60 to pack.
    expect(timed.map(({ summary, startDate }) => [summary, at(startDate)]).slice(1, 6)).toEqual([
      ['Pack: Crew evening', '2027-05-21T15:20'],
      ['Load: Crew evening', '2027-05-21T16:20'],
      ['Leave: Crew evening', '2027-05-21T16:50'],
      ['Arrive: Crew evening', '2027-05-21T17:00'],
      ['Set up: Crew evening', '2027-05-21T17:00'],
    ]);
    const serve = timed.find(({ summary }) => summary === 'Serve: Crew evening');
    expect(serve && at(serve.startDate)).toBe('2027-05-21T18:30');
    // Served for two hours, then 75 min.
    expect(
      timed
        .map(({ summary, startDate, endDate }) => summary.startsWith('Clear') && [at(startDate), at(endDate)])
        .filter(Boolean),
    ).toEqual([['2027-05-21T20:30', '2027-05-21T21:45']]);
    // An hour is the kitchen's own, as its page has it: in Dublin one hour ahead of UTC.
    const utc = (date: string, clock: string) =>
      new Date(Date.parse(`${date}T${clock}:00Z`) - 3_600_000).toISOString().slice(0, 16);
    const planned = plan.days.flatMap((day) =>
      day.tasks.map((task) =>
        task.until === undefined
          ? [day.date, `${task.recipeName}: ${task.text}`]
          : [utc(day.date, task.at), `${task.recipeName}: ${task.text}`],
      ),
    );
    expect(
      tasks.map(({ startDate, summary }) => [
        startDate.isDate ? startDate.toString() : at(startDate),
        summary,
      ]),
    ).toEqual(planned);
    expect(tasks.some(({ startDate }) => !startDate.isDate)).toBe(true);
    expect(planned).toHaveLength(4);
  });

  test('has the last day for the count, each order and each payment, without a sum', async () => {
    const book = accepted(await secondKitchen());
    const deadlines = (text: string) =>
      entriesOf(text)
        .filter(({ startDate, description }) => startDate.isDate && !description)
        .map(({ startDate, summary, uid }) => [startDate.toString(), summary, uid]);
    // Served on Friday, May 21, 2027. The count five days before; the broth is begun on Wednesday, delivered that day
    // and ordered on the day before, since the supplier wants one; the deposit is due with the acceptance.
    expect(deadlines(prepCalendar(await planOf(book), ZONE, 'en-US', TODAY))).toEqual([
      ['2027-05-16', 'Final count due: Crew evening', 'lifeboat-evening.final-count@salver'],
      ['2027-05-18', 'Order from Strand Stores: Crew evening', 'lifeboat-evening.order-strand-stores@salver'],
      [
        '2027-04-28',
        'Payment due (25% on acceptance): Crew evening',
        'lifeboat-evening.payment-25-when-accepted@salver',
      ],
      [
        '2027-05-21',
        'Payment due (Balance, on the day of the event): Crew evening',
        'lifeboat-evening.payment-balance-on-the-day@salver',
      ],
    ]);
  });

  test('gives each entry one UID, the same after the plan has changed, so that nothing doubles', async () => {
    const uids = (plan: PrepPlanDocument, today: string) =>
      entriesOf(prepCalendar(plan, ZONE, 'en-US', today)).map(({ uid }) => uid);
    const before = uids(await planOf(accepted(await secondKitchen())), TODAY);
    const guests = { adults: 50, children: 0, vendors: 2, staff: 3 };
    const after = uids(await planOf(accepted(await secondKitchen(), { guests })), '2027-05-09');
    expect(after).toEqual(before);
    expect(new Set(before).size).toBe(before.length);
    expect(before).toContain('lifeboat-evening.strand-broth.1@salver');
  });

  test('is written alike by machines in other zones, and again and again', async () => {
    const plan = await planOf(accepted(await secondKitchen()));
    const written = ['UTC', 'Pacific/Auckland', 'America/Los_Angeles', 'UTC'].map((machine) => {
      process.env.TZ = machine;
      return prepCalendar(plan, ZONE, 'en-US', TODAY);
    });
    expect(new Set(written).size).toBe(1);
  });

  test('keeps to RFC 5545: CRLF, no line over 75 octets, commas, semicolons and breaks escaped', async () => {
    const occasion = `Crew evening; fish, “chowder” \\ and 🐟${'ü'.repeat(60)}\nsecond line`;
    const plan = await planOf(accepted(await secondKitchen()));
    const text = prepCalendar({ ...plan, event: { ...plan.event, occasion } }, ZONE, 'en-US', TODAY);
    const lines = text.split('\r\n');
    expect(lines.join('')).not.toMatch(/[\r\n]/);
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\n')).toBe(true);
    // The reader leaves a property it has no type for as it is written; as TEXT it unescapes to this.
    const name = String(new ICAL.Component(ICAL.parse(text)).getFirstPropertyValue('x-wr-calname'));
    const unescaped = name.replace(/\\([\\;,n])/g, (_, sign) => (sign === 'n' ? '\n' : sign));
    expect(unescaped).toBe(`${occasion}, Dunmarrow Lifeboat Crew`);
    expect(entriesOf(text).map(({ summary }) => summary)).toContain(`Serve: ${occasion}`);
    for (const entry of entriesOf(text))
      expect(entry.component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2027-05-01T00:00:00Z');
  });
});
