import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

describe('packages and their prices: what check says', () => {
  test('more dishes in a course than an offer holds', async () => {
    const many = Array.from({ length: 61 }, (_, at) => `plate-${at}`);
    const plate = SMALL_CONTENT['recipes/cheese-plate.mdx'] as string;
    expect(
      await foundIn(
        contentWith({
          ...Object.fromEntries(many.map((id) => [`recipes/${id}.mdx`, plate])),
          ...changed(
            'packages/supper.mdx',
            '      cheese-plate: 1 serving per guest\n',
            many.map((id) => `      ${id}: 1 serving per guest\n`).join(''),
          ),
        }),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:7 error too-long 62 dishes are listed together, but an offer can have at most 60 in one course or add-on — move some of them to another course or add-on"`,
    );
  });

  test('prices that overlap', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '20-49', '20-50'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:4:24 error price-tiers the tiers overlap: 50 guests are priced twice — start the later tier at 51"`,
    );
  });

  test('prices that leave out a count', async () => {
    expect(await foundIn(contentWith(changed('packages/supper.mdx', '50+', '60+')))).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:4:24 error price-tiers no tier prices 50 guests — start the tier from 60 there"`,
    );
  });

  test('prices that begin above the minimum', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '20-49', '30-49'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:4:10 error price-tiers the first tier starts at 30 guests — start it at 20 or below, or write “minimum guests: 30”"`,
    );
  });

  test('no price at all', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '{ 20-49: 30.00, 50+: 29.50 }', '{}'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:4:1 error price-tiers there is no price tier — write at least one: from how many guests, and the price per guest"`,
    );
  });

  test('a step at which more guests pay less in all', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '50+: 29.50', '50+: 25.00'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:4:29 warning price-drop 49 guests pay $1,470.00 for the menu and 50 pay $1,250.00 — write “never less in all: yes”, or make the step smaller"`,
    );
  });

  test('more to choose than there is', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', '    dishes:', '    choose: 3\n    dishes:'))),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:9:13 error course-choice “All of it” asks to choose 3 from 2 dishes — write 2 or fewer, or add dishes"`,
    );
  });

  test('two ways of choosing at once', async () => {
    expect(
      await foundIn(
        contentWith(
          changed('packages/supper.mdx', '    dishes:', '    choose: 1\n    each guest: one\n    dishes:'),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:5 error course-choice “All of it” has both “choose” and “each guest” — “choose” gives everybody the chosen dishes, “each guest: one” one dish to each; keep one of the two"`,
    );
  });

  test('two courses of one name', async () => {
    expect(
      await foundIn(
        contentWith(
          changed(
            'packages/supper.mdx',
            '---\nA plain',
            '  - name: All of it\n    dishes: { lentil-soup: 8 fl oz per guest }\n---\nA plain',
          ),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:12:11 error defined-again two courses are called “All of it” — give each its own name; choices refer to it"`,
    );
  });
});
