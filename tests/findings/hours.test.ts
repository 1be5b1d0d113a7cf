import { describe, expect, test } from 'vitest';
import { printFindings } from '../../src/book/findings/print-findings.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { hoursShortOf } from '../../src/views/kitchen/hours-short-of.ts';
import { acceptedKitchen, issuedKitchen } from '../commands/accepted-kitchen.ts';
import { type Change, change, copyOf, SECOND_KITCHEN } from '../commands/kitchen-copy.ts';
import { run } from '../commands/run.ts';

/*
 * Served at 19:30, an hour and a half to set up, ten minutes on the road, half an hour to load: from 17:20. One menu is
 * served for two hours, the other for three; an hour and a quarter to clear, ten minutes back, half an hour to unload:
 * until 23:25 and 00:25. A server is sold for 4 h and paid 17.00.
 */
const PROPOSAL = 'proposals/lifeboat-evening.md';

async function found(dir: string, today = '2027-04-28'): Promise<string> {
  const { book } = await readBook(dir);
  return book ? printFindings(hoursShortOf(book, today as Day), 'content').trimEnd() : 'no book';
}

const draft = (...changes: Change[]) => found(copyOf(SECOND_KITCHEN, changes));

describe('hours that an event takes and that are not sold', () => {
  test('are told of a draft, at the menu that lacks the most, with the hours that would do', async () => {
    // Four servers for 38 plates, 7 h 5 min each: 4 × 3 h 5 min at 17.00 is 209.67.
    expect(await draft()).toBe(
      'content/proposals/lifeboat-evening.md:19:1 warning hours-not-sold Servers (4): sold 4 h, needed 7 h 5 min from 17:20 to 00:25, 3 h 5 min short; in all 12 h 20 min of work is not in the quote and costs €209.67 — write “hours: 7.25 hours” in the proposal, or “reports to: place” for a role in kitchen.yaml that meets the truck at the venue\n1 warning.',
    );
    expect(await draft([PROPOSAL, 'lines: 1', 'lines: 1\nhours: 7.25 hours'])).toBe('Nothing found.');
    expect(await draft([PROPOSAL, 'lines: 1', 'lines: 1\nhours: 7 hours'])).toContain('5 min short');
  });

  test('are those that cut no service short: fewer hours of the crew ask for as many as the menu', async () => {
    expect(await draft([PROPOSAL, 'lines: 1', 'lines: 1\nhours: 1 hour'])).toContain(
      'write “hours: 7.25 hours”',
    );
  });

  test('are not told where only service is quoted and sold, while `quote` still says what the rest costs', async () => {
    const quiet: Change = ['kitchen.yaml', 'staff:', 'hours quoted: service\nstaff:'];
    expect(await draft(quiet)).toBe('Nothing found.');
    // One menu is served for five hours, and four are sold.
    expect(await draft(quiet, ['packages/storm-supper.mdx', 'hours: 3 hours', 'hours: 5 hours'])).toMatch(
      /sold 4 h, needed 9 h 5 min .* write “hours: 5 hours” in the proposal/,
    );
    const dir = copyOf(SECOND_KITCHEN, [quiet]);
    expect((await run(dir, 'quote', 'lifeboat-evening')).out).toContain(
      'is not in the quote and costs €70.83',
    );
    const { findings } = await readBook(
      copyOf(SECOND_KITCHEN, [['kitchen.yaml', 'staff:', 'hours quoted: some\nstaff:']]),
    );
    expect(findings).toMatchObject([
      { code: 'unknown-word', place: { file: 'kitchen.yaml' }, what: expect.stringContaining('some') },
    ]);
  });

  test('are fewer for a role that meets the truck at the venue', async () => {
    // 18:00 to 23:45.
    expect(await draft(['kitchen.yaml', 'pay: 17.00', 'reports to: place\n    pay: 17.00'])).toContain(
      'needed 5 h 45 min from 18:00 to 23:45, 1 h 45 min short; in all 7 h of work',
    );
    const { findings } = await readBook(
      copyOf(SECOND_KITCHEN, [['kitchen.yaml', 'pay: 17.00', 'reports to: venue\n    pay: 17.00']]),
    );
    expect(findings).toMatchObject([
      { code: 'unknown-word', place: { file: 'kitchen.yaml' }, what: expect.stringContaining('venue') },
    ]);
  });

  test('are noted at an offer, which is agreed, and at the event it becomes for the menu accepted', async () => {
    const offer = await issuedKitchen();
    expect(await found(offer)).toMatch(
      /^content\/offers\/lifeboat-evening-r1\.json:1:1 note hours-agreed-short Servers \(4\): sold 4 h, needed 7 h 5 min/,
    );
    expect(await found(await acceptedKitchen())).toMatch(
      /^content\/offers\/lifeboat-evening-r1\.json:1:1 note hours-agreed-short Servers \(2\): sold 4 h, needed 6 h 5 min/,
    );
  });

  test('are told of nothing that is past, withdrawn, or served for nobody knows how long', async () => {
    expect(await found(copyOf(), '2027-05-22')).toBe('Nothing found.');
    expect(await draft([PROPOSAL, 'lines: 1', 'lines: 1\nwithdrawn: yes'])).toBe('Nothing found.');
    const unknown: Change[] = [
      ['packages/chowder-lunch.mdx', 'hours: 2 hours\n', ''],
      ['packages/storm-supper.mdx', 'hours: 3 hours\n', ''],
    ];
    expect(await draft(...unknown)).toBe('Nothing found.');
    // Then it is served as long as the crew is sold for, and no hours of theirs would ever do.
    expect(await draft(...unknown, [PROPOSAL, 'lines: 1', 'lines: 1\nhours: 5 hours'])).toContain(
      '— write under “hours” in the package how long guests are served, then under “hours” in the proposal 9.25 hours',
    );
  });

  test('are in `check`, and in `quote` for the caterer alone, with the pay they cost', async () => {
    const dir = copyOf();
    expect((await run(dir, 'check', '--today', '2027-04-28')).out).toContain(
      'warning hours-not-sold Servers (4)',
    );
    const { out } = await run(dir, 'quote', 'lifeboat-evening', '--json');
    expect(JSON.parse(out)).toMatchObject({
      hoursNotSold: {
        roles: [
          {
            role: 'server',
            people: 2,
            soldMinutes: 240,
            neededMinutes: 365,
            from: '17:20',
            until: '23:25',
            missingMinutes: 250,
          },
        ],
        pay: '70.83',
      },
    });
    change(dir, [PROPOSAL, 'lines: 1', 'lines: 1\nhours: 7.25 hours']);
    expect((await run(dir, 'quote', 'lifeboat-evening')).out).not.toContain('not in the quote');
  });
});
