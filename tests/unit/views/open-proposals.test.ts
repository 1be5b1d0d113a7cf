import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { proposalsOf } from '../../../src/views/kitchen/view-of.ts';
import { copyOf } from '../../commands/kitchen-copy.ts';
import { run } from '../../commands/run.ts';

const { book } = await readBook(resolve(import.meta.dirname, '../../../content'));
const shown = (id: string, today: string) => {
  if (!book) throw new Error('the kitchen could not be read');
  return proposalsOf(book, today as Day).find((each) => each.id === id);
};

test('an open proposal says what it waits for, until when, and what to do next', () => {
  expect(shown('reading-room-opening', '2027-04-26')).toMatchObject({
    state: 'offered',
    next: expect.stringMatching(
      /^The client may answer until \w+, \w+ \d+, 2027\. Follow up before then\. To record the answer, save the file the client emailed, then: accept acceptance-reading-room-opening-r\d+\.json\. For a signed copy: accept --signed reading-room-opening --name NAME --email ADDRESS$/,
    ),
  });
  expect(shown('tansyfield-lunch', '2027-04-26')).toMatchObject({
    state: 'expired',
    next: expect.stringMatching(
      /^Expired on \w+, \w+ \d+, 2027 without an answer\. .*issue tansyfield-lunch$/,
    ),
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

test('the command it names for a signed copy is one that is done as it stands', async () => {
  const dir = copyOf(resolve(import.meta.dirname, '../../../content'));
  const { next = '' } = shown('reading-room-opening', '2027-04-26') ?? {};
  const [, command = ''] = /For a signed copy: accept (--signed .+)$/.exec(next) ?? [];
  const words = command.replace('NAME', 'Ada').replace('ADDRESS', 'ada@lund.example').split(' ');
  const { code, out } = await run(dir, 'accept', ...words, '--today', '2027-04-26');
  expect({ code, out }).toMatchObject({
    code: 0,
    out: expect.stringContaining('Accepted: reading-room-opening'),
  });
});
