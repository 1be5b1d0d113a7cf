import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../src/check/findings-on.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const PROPOSAL = 'proposals/gale.md';
const SUPPER = 'packages/supper.mdx';

/** The supper with so many of staff, and what is written for them. */
const eats = (meal: string, staff = ', staff: 3') =>
  changed(
    PROPOSAL,
    'guests: { adults: 40, vendors: 2 }\n',
    `guests: { adults: 40, vendors: 2${staff} }\n${meal === '' ? '' : `crew meal: ${meal}\n`}`,
  );

/** What is said of crews a month before the supper. */
async function onDay(files: Readonly<Record<string, string>>, today = '2027-04-15'): Promise<string[]> {
  const { book, findings } = await readBook(contentWith(files));
  if (!book) throw new Error(findings.map(({ what }) => what).join());
  return findingsOn(book, today as Day)
    .filter(({ code }) => code.startsWith('crew-'))
    .map(
      ({ code, severity, place, what, wayOut }) => `${place.line} ${severity} ${code} ${what} — ${wayOut}`,
    );
}

describe('what the crew eats: what check says', () => {
  test('nothing of words and of dishes in any unit that their recipe makes', async () => {
    for (const meal of [
      'none',
      'the menu',
      '75 % of the menu',
      '{ lentil-soup: 12 fl oz, cheese-plate: 1 serving }',
    ])
      expect(await foundIn(contentWith(eats(meal))), meal).toBe('');
  });

  test('words, shares, dishes and amounts that are none', async () => {
    const said = async (meal: string) => (await foundIn(contentWith(eats(meal)))).split('\n')[0];
    expect(await said('pizza')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:10:12 error not-understood “pizza” is not a meal for the crew — write “none”, “the menu”, “75 % of the menu”, or dishes with the amount for one person: { braised-lamb: 6 oz }"`,
    );
    expect(await said('120 % of the menu')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:10:12 error not-understood the crew can’t eat 120 % of a guest’s amount — write a share above 0 and up to 100 %"`,
    );
    expect(await said('{ lentil-sop: 12 fl oz }')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:10:14 error unknown-id no recipe is called “lentil-sop” — did you mean lentil-soup?"`,
    );
    expect(await said('{ lentil-soup: plenty }')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:10:27 error not-understood "plenty" does not start with a number — write the number first, such as 2 or 1 1/2"`,
    );
    expect(await said('{ lentil-soup: 1 slice }')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:10:27 error unit-not-made “lentil-soup” is given to the crew by the slice, but its recipe makes serving, gal — write the amount in serving, gal, or add to the recipe’s “makes” what a batch is in slice"`,
    );
  });

  test('an error in what kitchen.yaml says of it holds the kitchen back from nothing else', async () => {
    const { book, findings } = await readBook(
      contentWith(changed('kitchen.yaml', 'staff:\n', 'crew meal: { lentil-sop: 6 oz }\nstaff:\n')),
    );
    expect(findings.map(({ code }) => code)).toEqual(['unknown-id']);
    expect([...(book?.held.keys() ?? [])]).toEqual(['crew-meal/kitchen']);
    expect(book?.proposals.has('gale')).toBe(true);
  });

  test('a meal that is planned for nobody, and one beside dishes that count staff', async () => {
    expect(await onDay(eats('{ lentil-soup: 12 fl oz }', ''))).toMatchInlineSnapshot(`
      [
        "10 warning crew-meal-for-nobody a meal for the crew is written, but no staff are counted to eat it — write how many under “guests”, such as “staff: 6”, or “crew meal: none”",
      ]
    `);
    expect(await onDay(eats('none', ''))).toEqual([]);
    const counted = changed(SUPPER, 'adults, children, vendors', 'adults, children, vendors, staff');
    expect(await onDay({ ...counted, ...eats('{ lentil-soup: 12 fl oz }') })).toMatchInlineSnapshot(`
      [
        "11 warning crew-fed-twice the crew gets a meal of its own, and dishes of supper count staff too — take “staff” out of the package’s “counts”, or write “crew meal: none”",
      ]
    `);
    expect(await onDay({ ...counted, ...eats('the menu') })).toEqual([]);
  });

  test('a long day for which nothing is stated, and no short one', async () => {
    const served = (hours: string) => changed(SUPPER, 'minimum guests', `hours: ${hours}\nminimum guests`);
    // 1 h 30 min from arriving to serving and 1 h 15 min to clear, both by default, and the hours served.
    expect(await onDay({ ...served('3 hours'), ...eats('') })).toMatchInlineSnapshot(`
      [
        "1 note crew-meal-not-stated at 1 event the crew is at the place for more than 5 hours, and what it eats is not stated: gale — write “crew meal:” in the proposal or in kitchen.yaml: dishes with the amount for one person, “the menu”, or “none” if they bring their own",
      ]
    `);
    expect(await onDay({ ...served('2 hours'), ...eats('') })).toEqual([]);
    expect(await onDay({ ...served('3 hours'), ...eats('none') })).toEqual([]);
    expect(await onDay({ ...served('3 hours'), ...eats('') }, '2027-05-16')).toEqual([]);
    const kitchens = changed('kitchen.yaml', 'staff:\n', 'crew meal: the menu\nstaff:\n');
    expect(await onDay({ ...served('3 hours'), ...kitchens, ...eats('') })).toEqual([]);
  });
});
