import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

describe('what a content file may say: what check says', () => {
  test('the small kitchen itself has no finding', async () => {
    expect(await foundIn(contentWith())).toMatchInlineSnapshot(`""`);
  });

  test('a folder without kitchen.yaml', async () => {
    expect(await foundIn(contentWith({ 'kitchen.yaml': null }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:1:1 error no-kitchen there is no kitchen.yaml — write it in the content folder, or name another folder with --content"`,
    );
  });

  test('a field that is needed and missing, with an example and its meaning', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'makes: [40 servings, 2 gal]\n', ''))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:2:1 error missing-field “makes” is missing — write it, such as “makes: 50 servings, 13 lb” (what a batch makes; more entries give the same batch in other units, and so convert the finished food)"`,
    );
  });

  test('a mistyped field, with the nearest', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'keeps:', 'kepes:'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:10:1 error unknown-field there is no field “kepes” here — did you mean keeps?"`,
    );
  });

  test('a list where one text is expected', async () => {
    expect(
      await foundIn(
        contentWith(changed('recipes/lentil-soup.mdx', 'name: Lentil soup', 'name: [Lentil, soup]')),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:2:7 error wrong-form “name” is a list — write one text"`,
    );
  });

  test('a word that the field does not take', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', 'style: buffet', 'style: bufet'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:3:8 error unknown-word “style” can’t be “bufet” — did you mean buffet?"`,
    );
  });

  test('a text longer than its field holds', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', 'name: Supper', `name: ${'x'.repeat(301)}`))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:2:7 error too-long “name” is longer than 300 — use fewer words or entries"`,
    );
  });

  test('an id that is none, in a mapping of ids', async () => {
    expect(
      await foundIn(contentWith(changed('kitchen.yaml', '  tub: {', '  Big Tub: {'))),
    ).toMatchInlineSnapshot(
      `"content/kitchen.yaml:13:3 error bad-id “Big Tub” can’t be an id — write it as big-tub"`,
    );
  });

  test('an ingredient whose id is none', async () => {
    expect(
      await foundIn(contentWith(changed('ingredients/own.yaml', 'hill-cheese:', 'Hill Cheese:'))),
    ).toMatchInlineSnapshot(
      `"content/ingredients/own.yaml:5:1 error bad-id “Hill Cheese” can’t be an id — write it as hill-cheese"`,
    );
  });

  test('a price of staff that could be by the day', async () => {
    expect(
      await foundIn(contentWith(changed('kitchen.yaml', 'price: 38.00 per hour', 'price: 38.00'))),
    ).toMatchInlineSnapshot(
      `"content/kitchen.yaml:11:35 error not-understood “38.00” is not an hourly rate — write it as "38.00 per hour""`,
    );
  });

  test('a service charge that is called a gratuity', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('kitchen.yaml', 'stations:', 'service charge: { rate: 18 %, label: Gratuity }\nstations:'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/kitchen.yaml:8:38 error not-understood the service charge is called “Gratuity”, but a mandatory charge is not a gratuity — call it a service charge"`,
    );
  });

  test('an unknown currency, locale and time zone', async () => {
    expect(
      await foundIn(
        contentWith(
          changed(
            'kitchen.yaml',
            'locale: en-US\ncurrency: USD\ntime zone: America/Chicago',
            'locale: english\ncurrency: USX\ntime zone: Chicago',
          ),
        ),
      ),
    ).toMatchInlineSnapshot(`
      "content/kitchen.yaml:2:9 error not-understood “english” is not a language with a country — write it as en-US or de-DE
      content/kitchen.yaml:3:11 error not-understood “USX” is not a currency — write its ISO 4217 code, such as USD or EUR
      content/kitchen.yaml:4:12 error not-understood “Chicago” is not a time zone — write it as America/New_York or Europe/Dublin"
    `);
  });

  test('a date that does not exist', async () => {
    expect(
      await foundIn(contentWith(changed('proposals/gale.md', 'date: 2027-05-15', 'date: 2027-02-30'))),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:5:7 error not-understood 2027-02-30 does not exist — that month runs from 2027-02-01 to 2027-02-28"`,
    );
  });

  test('payments that do not make the total', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('kitchen.yaml', 'staff:', 'payments: [30 % when accepted, 50 % 7 days before]\nstaff:'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/kitchen.yaml:10:1 error payments-sum the installments may not add up to the total — add one such as "balance 7 days before""`,
    );
  });

  test('a picture that is not there', async () => {
    expect(
      await foundIn(contentWith(changed('recipes/lentil-soup.mdx', 'Stir often.', '![Soup](soup.jpg)'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/lentil-soup.mdx:14:1 error picture-missing there is no picture recipes/soup.jpg — put it there, or fix its path"`,
    );
  });
});
