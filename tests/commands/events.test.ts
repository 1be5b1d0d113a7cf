import { describe, expect, test } from 'vitest';
import { changed, done, EVENT, supperKitchen } from '../unit/events/supper-kitchen.ts';
import { run } from './run.ts';

const TODAY = ['--today', '2027-05-01'];

describe('commands on an event', () => {
  test('say in one sentence what is wrong with a call, and write nothing', async () => {
    const calls: readonly [string, string[], string][] = [
      ['guarantee', [], 'Name one event: guarantee EVENT --guests N.'],
      ['guarantee', [EVENT], 'Give the count: guarantee EVENT --guests N.'],
      [
        'guarantee',
        [EVENT, '--guests', 'many'],
        '--guests: "many" is not a number of guests; write a whole number in digits: 1000.',
      ],
      [
        'guarantee',
        [EVENT, '--need', 'vegan'],
        'can’t read --need vegan; write --need vegetarian=9, or --need vegan=0 for none.',
      ],
      [
        'guarantee',
        [EVENT, '--take', 'Main:a'],
        'can’t read --take Main:a; write --take "Main course=a:50,b:34".',
      ],
      ['guarantee', ['--from', 'none.json'], 'Can’t read none.json: no such file.'],
      [
        'guarantee',
        ['--from', 'none.json', '--guests', '3'],
        'A count change is complete in itself, so --guests does not go with --from.',
      ],
      ['served', [EVENT], 'Give the number served: served EVENT --adults N --children N.'],
      ['payment', [EVENT], 'Name one event and what came in: payment EVENT AMOUNT.'],
      [
        'postpone',
        [EVENT, '--to', 'soon'],
        '--to: "soon" is not a date; write the date as year-month-day, for example 2027-04-26.',
      ],
      [
        'substitute',
        [EVENT, 'pea-pot'],
        'Name one event, what goes out and what comes in: substitute EVENT OLD NEW.',
      ],
      ['cancel', [], 'Name one event: cancel EVENT.'],
    ];
    for (const [name, words, sentence] of calls)
      expect([words, await run('/nowhere', name, ...words)]).toEqual([
        words,
        { code: 2, out: '', err: `${sentence}\n` },
      ]);
  });

  test('name the nearest event where there is none', async () => {
    const dir = await supperKitchen();
    for (const [name, ...words] of [
      ['guarantee', '--guests', '90'],
      ['payment', '10.00'],
      ['postpone'],
      ['cancel'],
      ['served', '--adults', '9'],
      ['substitute', 'a', 'b'],
    ] as [string, ...string[]][])
      expect(await run(dir, name, 'pell-super', ...words, ...TODAY)).toEqual({
        code: 1,
        out: '',
        err: 'Can’t do that: there is no event pell-super — did you mean pell-supper?\n',
      });
  });

  test('print what a guarantee changes as a cook and an owner read it', async () => {
    const dir = await supperKitchen(
      changed(
        'kitchen.yaml',
        'add-ons:',
        'rentals:\n  bowl: { name: Bowls, amount: 1 each per guest }\nadd-ons:',
      ),
    );
    // 30 % of 3,360.00 came in on acceptance: 1,008.00, which leaves 2,352.00, and 2,672.00 of 3,680.00.
    expect(await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '92')).toBe(
      `Guaranteed: pell-supper, 92 adults.
Main, scaled in proportion: lamb-stew 69, pea-pot 23. Ask the client, then set them with --take.

Packs to add or return
  White beans  +1 × 3 lb bag  Hill Farm  3 → 4

Orders and delivery fees
  Hill Farm  order  +$6.00  $400.00 → $406.00

Dishes
  Bean fritters  +8 pieces    84 pieces → 92 pieces
  Lamb stew      +6 servings  63 servings → 69 servings
  Pea pot        +2 servings  21 servings → 23 servings

Batches
  Herb yogurt    +0.4  4.2 → 4.6
  Bean fritters  +0.4  4.2 → 4.6
  Pea pot        +0.2  2.1 → 2.3

Containers, service ware, kit and add-ons
  Bowls    +8  84 → 92

Hands-on time
  Saturday, May 15, 2027  +4 min  1 h 2 min → 1 h 6 min
  All days                +4 min  4 h 37 min → 4 h 41 min

Payments still open
  Balance, 7 days before the event  Saturday, May 8, 2027  +$320.00  $2,352.00 → $2,672.00

Money
  Client’s total       +$320.00  $3,360.00 → $3,680.00
  Still open in all    +$320.00  $2,352.00 → $2,672.00
  Food in whole packs  +$6.00    $400.00 → $406.00
`,
    );
    expect(await done(dir, '2027-05-02', 'guarantee', EVENT, '--need', 'vegan=5')).toBe(
      'Guaranteed: pell-supper, 92 adults.\n\nThe plan does not change.\n',
    );
  });
});
