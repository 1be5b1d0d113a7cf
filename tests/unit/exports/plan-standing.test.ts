import { expect, test } from 'vitest';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { accepted, day, EVENING, must, planOf, secondKitchen, withFacts } from '../offers/second-kitchen.ts';

const counts = { adults: 40, children: 4, vendors: 1, staff: 3 };
const guaranteed: EventFact = {
  version: 1,
  kind: 'guarantee',
  on: day('2027-05-10'),
  guests: counts,
  needs: { vegan: 3 },
  mains: {},
};

test('an accepted event has its date, count, needs, orders and payments open, each with its last day', async () => {
  const { event, orders } = await planOf(accepted(await secondKitchen(), { needs: {} }));
  expect(event.decided).toEqual(['The menu: revision 1 of the offer, accepted on Wednesday, 28 April 2027.']);
  const whats = event.open.map(({ what }) => what);
  expect(whats[0]).toBe('Date on hold until the event is confirmed.');
  expect(whats).toContain('Dietary needs: not stated by the client.');
  expect(whats.some((what) => what.startsWith('The final count: '))).toBe(true);
  for (const { name, orderBy, orderByText } of orders)
    expect(event.open).toContainEqual({
      what: `The order from ${name}.`,
      due: orderBy,
      dueText: orderByText,
      late: false,
    });
  expect(event.open.filter(({ what }) => what.startsWith('A payment: '))).toHaveLength(event.payments.length);
  const days = event.open.map(({ due }) => due);
  expect(days).toEqual([...days].sort());
  // The crew reads it, so it names no sum of the event.
  for (const { amount } of event.payments) expect(whats.join(' ')).not.toContain(amount);
});

test('a guaranteed count is decided, and what is not done by its day is late', async () => {
  const book = withFacts(accepted(await secondKitchen(), { needs: { vegan: 3 } }), guaranteed);
  const late = must(must(await plannedEvent(book, EVENING, day('2027-05-21'))).plan).event;
  expect(late.decided[1]).toMatch(/^The count: 44 guests at the table, guaranteed on Monday, 10 May 2027\. /);
  expect(late.open.map(({ what }) => what).join(' ')).not.toMatch(/final count|Dietary needs/);
  expect(late.open.filter(({ due }) => due !== '' && due < '2027-05-21').length).toBeGreaterThan(0);
  for (const { due, late: passed } of late.open) expect(passed).toBe(due !== '' && due < '2027-05-21');
});

test('a count that nobody guaranteed in time stands as accepted and may only rise', async () => {
  const book = accepted(await secondKitchen());
  const { decided, open } = must(must(await plannedEvent(book, EVENING, day('2027-05-21'))).plan).event;
  expect(decided[1]).toContain('as accepted. Its deadline has passed, so it can go up but not down');
  expect(open.map(({ what }) => what).join(' ')).not.toContain('final count');
});
