import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { readBook } from '../../../src/book/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { proposalsOf } from '../../../src/views/kitchen-view-of.ts';

const { book } = await readBook(resolve(import.meta.dirname, '../../../content'));
const shown = (id: string, today: string) => {
  if (!book) throw new Error('the kitchen could not be read');
  return proposalsOf(book, today as Day).find((each) => each.id === id);
};

test('an open proposal says what it waits for, until when, and what to do next', () => {
  expect(shown('reading-room-opening', '2027-04-26')).toMatchObject({
    state: 'offered',
    next: expect.stringMatching(
      /^The client may answer until \w+, \w+ \d+, 2027\. .* accept reading-room-opening$/,
    ),
  });
  expect(shown('tansyfield-lunch', '2027-04-26')).toMatchObject({
    state: 'expired',
    next: expect.stringMatching(/^Ran out unanswered on \w+, \w+ \d+, 2027\. .*issue tansyfield-lunch$/),
  });
  expect(shown('nettlebarrow-reunion', '2027-04-26')?.next).toBe(
    'Not offered yet. When it is ready: issue nettlebarrow-reunion',
  );
});

test('nothing is next once it is answered, withdrawn, or its day has passed', () => {
  expect(shown('farrowick-wedding', '2027-04-26')?.next).toBe('');
  expect(shown('hathersby-birthday', '2027-04-26')?.next).toBe('');
  expect(shown('reading-room-opening', '2027-12-01')?.next).toBe('');
});
