import { describe, expect, test } from 'vitest';
import { issuedKitchen } from './accepted-kitchen.ts';
import { change, copyOf, SECOND_KITCHEN } from './kitchen-copy.ts';
import { run } from './run.ts';

describe('quote', () => {
  test('prices a proposal line by line, tax, total and payments', async () => {
    const { code, out, err } = await run(SECOND_KITCHEN, 'quote', 'lifeboat-evening');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    // 34 × 12.50; 3 × half of it; 1 × 8.00; two servers (one for 25 of 37), 4 h each; tax is in the prices:
    // 451.75 × 13.5/113.5 = 53.73, 260.00 × 23/123 = 48.62; a quarter of 711.75 is 177.9375.
    expect(out).toBe(`Chowder lunch, 34 adults, 3 children, 1 vendor meal (draft)

Chowder lunch                                       34  €12.50  €425.00
Chowder lunch, children                              3   €6.25   €18.75
Vendor meals                                                      €8.00
Servers                                            8 h  €27.50  €220.00
Delivery to Dunmarrow                                            €40.00
Tax included at 13.5% on €451.75                                 €53.73
Tax included at 23% on €260.00                                   €48.62
Total                                                           €711.75
Per guest, all-inclusive (37 adults and children)                €19.24

25% on acceptance                                      €177.94
Balance, on the day of the event  Friday, 21 May 2027  €533.81
Prices include tax.
For you, not the client: Servers (2): sold 4 h, needed 6 h 5 min from 17:20 to 23:25, 2 h 5 min short; in all 4 h 10 min of work is not in the quote and costs €70.83.
`);
  });

  test('prices another package at another count, mains keeping their proportions, also as JSON', async () => {
    const words = [
      '--package',
      'storm-supper',
      '--adults',
      '68',
      '--children',
      '6',
      '--vendors',
      '2',
      '--json',
    ];
    const { code, out } = await run(SECOND_KITCHEN, 'quote', 'lifeboat-evening', ...words);
    const { choice, quote } = JSON.parse(out);
    expect(code).toBe(0);
    expect(choice.mains.Main).toEqual({ 'haddock-chowder': 58, 'bean-and-leek-stew': 18 });
    // 68 × 14.50 + 6 × 8.00 + 2 × 9.00 + 7 servers (one for 12 of 74) × 4 h × 27.50 + 40.00
    expect(quote.total).toBe('1862.00');
  });

  test('prices an issued offer by its frozen terms, whatever the kitchen asks now', async () => {
    const dir = await issuedKitchen();
    change(dir, ['packages/chowder-lunch.mdx', '10-39: 12.50', '10-39: 99.00']);
    const { out } = await run(dir, 'quote', 'lifeboat-evening');
    expect(out).toMatch(/^Chowder lunch, .*\(offer, revision 1\)\n/);
    expect(out).toMatch(/^Total +€711\.75$/m);
  });

  test('bills a party under the minimum at the minimum, and says so', async () => {
    const { code, out } = await run(
      SECOND_KITCHEN,
      'quote',
      'lifeboat-evening',
      '--adults',
      '4',
      '--children',
      '0',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/minimum|10 guests/i);
  });

  test.each<[string[], string]>([
    [['lifeboat-evenin'], 'there is no proposal lifeboat-evenin — did you mean lifeboat-evening?'],
    [
      ['lifeboat-evening', '--package', 'storm-super'],
      'there is no package storm-super in it — did you mean storm-supper?',
    ],
    [
      ['lifeboat-evening', '--package', 'zzz'],
      'there is no package zzz in it — choose one of chowder-lunch, storm-supper',
    ],
    [['lifeboat-evening', '--adults', '-3'], '--adults: '],
    [['lifeboat-evening', '--adults', '12.5'], '--adults: '],
    [
      ['lifeboat-evening', '--adults', '0', '--children', '0'],
      'at guests.adults: Enter the number of guests',
    ],
    [['lifeboat-evening', '--add', 'tea table'], 'can’t read --add tea table'],
    [['lifeboat-evening', '--take', 'Bowls'], 'can’t read --take Bowls'],
    [['lifeboat-evening', '--take', '__proto__=haddock-chowder'], 'Chowder lunch has no course “__proto__”'],
    [['lifeboat-evening', '--take', 'Bowl=haddock-chowder'], 'has no course “Bowl” — did you mean Bowls?'],
    [
      [
        'lifeboat-evening',
        '--package',
        'storm-supper',
        '--take',
        'Main=haddock-chowder:10,bean-and-leek-stew:9',
      ],
      'at mains.Main: The counts for Main must add up to 38, one for each guest: 19 too few',
    ],
  ])('refuses %j', async (words, sentence) => {
    const { code, out, err } = await run(SECOND_KITCHEN, 'quote', ...words);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(sentence);
    expect(err).toMatch(/^Can’t do that: [^\n]+\n$/);
  });

  test('refuses an offer that was changed after it was issued, instead of pricing from it', async () => {
    const dir = await issuedKitchen();
    change(dir, ['offers/lifeboat-evening-r1.json', '"perHead": "12.50"', '"perHead": "1.50"']);
    const { code, out, err } = await run(dir, 'quote', 'lifeboat-evening');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('was changed after it was issued');
  });

  test('says what is wrong with the kitchen itself on standard output, exit code 1', async () => {
    const dir = copyOf(SECOND_KITCHEN, [['kitchen.yaml', 'currency: EUR', 'currency: EURO']]);
    const { code, out, err } = await run(dir, 'quote', 'lifeboat-evening');
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(out).toContain('kitchen.yaml:7:');
  });
});
