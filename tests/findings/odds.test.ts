import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

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
      `"content/packages/supper.mdx:10:49 error odds-unsaid a risk is chosen, and nobody has said how much guests take — write for example “appetite: { none: 20 %, one: 55 %, two: 25 % }”"`,
    );
  });

  test('a risk that is none', async () => {
    expect(await soup('appetite: { one: 60 % }, overage: short at most 1 in 1')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:83 error not-understood “short at most 1 in 1” is no risk of running short — write it as “short at most 1 in 50”, with a whole number from 2 to 10,000"`,
    );
  });

  test('an appetite of more than all guests', async () => {
    expect(await soup('appetite: { one: 60 %, two: 50 % }')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:59 error not-understood the shares of the appetite come to 110 % — let them come to 100 %"`,
    );
  });

  test('one cost without the other', async () => {
    expect(await soup('appetite: { one: 60 % }, missing: 6.00')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:74 error odds-unsaid what a helping costs is said for one that is missing alone — say “left over” too, or neither"`,
    );
  });

  test('an appetite beside the share of others', async () => {
    expect(await soup('appetite: { one: 60 % }, others: 20 %')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:74 error odds-clash “appetite” and “others” both say who takes the dish — keep one of the two"`,
    );
  });

  test('a first choice of one dish alone, in a course without a risk', async () => {
    expect(await soup('first choice: 40 %')).toMatchInlineSnapshot(`
      "content/packages/supper.mdx:8:5 error odds-unsaid “All of it” says who takes which dish first, and not how often it may run short — write “overage: short at most 1 in 50” at the course
      content/packages/supper.mdx:11:7 error odds-unsaid other dishes of “All of it” say who takes them first, and “cheese-plate” does not — write “first choice: 40 %” at each dish"
    `);
  });
});
