import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

/** What check says where the soup of the small kitchen is written so. */
function soup(fields: string): Promise<string> {
  const to = `lentil-soup: { amount: 8 fl oz per guest, ${fields} }`;
  return foundIn(contentWith(changed('packages/supper.mdx', 'lentil-soup: 8 fl oz per guest', to)));
}

describe('how guests take a dish: what check says', () => {
  test('nothing of an appetite with a risk and both costs', async () => {
    expect(
      await soup(
        'appetite: { one: 60 %, two: 20 % }, overage: short at most 1 in 50, missing: 6.00, left over: 1.20',
      ),
    ).toBe('');
  });

  test('a risk without an appetite', async () => {
    expect(await soup('overage: short at most 1 in 50')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:49 error odds-unsaid a risk is set, but there is no appetite — write for example “appetite: { none: 20 %, one: 55 %, two: 25 % }”"`,
    );
  });

  test('a risk that is none', async () => {
    expect(await soup('appetite: { one: 60 % }, overage: short at most 1 in 1')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:83 error not-understood “short at most 1 in 1” is not a risk of running short — write it as “short at most 1 in 50”, with a whole number from 2 to 10,000"`,
    );
  });

  test('an appetite of more than all guests', async () => {
    expect(await soup('appetite: { one: 60 %, two: 50 % }')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:59 error not-understood the shares of the appetite add up to 110 % — make them add up to 100 %"`,
    );
  });

  test('one cost without the other', async () => {
    expect(await soup('appetite: { one: 60 % }, missing: 6.00')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:74 error odds-unsaid the cost of a helping is given only for one that is missing — give “left over” too, or leave both out"`,
    );
  });

  test('an appetite beside the share of others', async () => {
    expect(await soup('appetite: { one: 60 % }, others: 20 %')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:74 error odds-clash “appetite” and “others” both set who takes the dish — keep one of the two"`,
    );
  });

  test('a first choice of one dish alone, in a course without a risk', async () => {
    expect(await soup('first choice: 40 %')).toMatchInlineSnapshot(`
      "content/packages/supper.mdx:8:5 error odds-unsaid “All of it” states first choices but not how often it may run short — write “overage: short at most 1 in 50” for the course
      content/packages/supper.mdx:11:7 error odds-unsaid other dishes of “All of it” state a first choice, but “cheese-plate” does not — write “first choice: 40 %” for each dish"
    `);
  });

  test('an appetite in a course whose counts by dish are given', async () => {
    const each = changed('packages/supper.mdx', '    dishes:\n', '    each guest: one\n    dishes:\n');
    const dir = contentWith({
      ...each,
      'packages/supper.mdx': (each['packages/supper.mdx'] ?? '').replace(
        'lentil-soup: 8 fl oz per guest',
        'lentil-soup: { amount: 8 fl oz per guest, appetite: { one: 60 % } }',
      ),
    });
    expect(await foundIn(dir)).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:11:49 error odds-clash “All of it” has counts for each dish, but “lentil-soup” also has “appetite” — leave it out: the client decides how many guests take each dish"`,
    );
  });

  test('a risk of a course of which no dish says its first choice', async () => {
    const to = '    overage: short at most 1 in 50\n    dishes:\n';
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '    dishes:\n', to))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:9:5 error odds-unsaid “All of it” sets a risk, but none of its dishes states a first choice — write “first choice: 40 %” for each dish"`,
    );
  });

  test('first choices that do not come to all', async () => {
    const both = changed(
      'packages/supper.mdx',
      '    dishes:\n',
      '    overage: short at most 1 in 50\n    dishes:\n',
    );
    const dir = contentWith({
      ...both,
      'packages/supper.mdx': (both['packages/supper.mdx'] ?? '')
        .replace('8 fl oz per guest', '{ amount: 8 fl oz per guest, first choice: 40 % }')
        .replace(/(cheese-plate: )(.+ per guest)/, '$1{ amount: $2, first choice: 50 % }'),
    });
    expect(await foundIn(dir)).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:5 error course-choice the first choices of “All of it” add up to 90 % — make them add up to 100 %"`,
    );
  });
});

describe('who comes: what check says', () => {
  const said = (line: string) => {
    const { 'proposals/gale.md': text = '' } = SMALL_CONTENT;
    return foundIn(contentWith({ 'proposals/gale.md': text.replace('---\n', `---\n${line}\n`) }));
  };

  test('nothing of guests who fail to come and come in parties', async () => {
    expect(await said('no-shows: 4 %\nparties of: 2')).toBe('');
  });

  test('nobody at all', async () => {
    expect(await said('no-shows: 100 %')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:2:11 error not-understood with “100 %” nobody would come — write a percentage below 100 %, such as 3 %"`,
    );
  });

  test('a share that is none, and parties of none', async () => {
    expect(await said('no-shows: few')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:2:11 error not-understood "few" is not a percentage — write a percentage such as "18 %" or "8.25 %""`,
    );
    expect(await said('parties of: 0')).toMatchInlineSnapshot(
      `"content/proposals/gale.md:2:13 error not-understood “0” does not fit here — write a whole number from 1 to 100"`,
    );
  });
});
