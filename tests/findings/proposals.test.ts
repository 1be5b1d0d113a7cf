import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

describe('proposals: what check says', () => {
  test('nobody at the table', async () => {
    expect(
      await foundIn(contentWith(changed('proposals/gale.md', 'adults: 40, vendors: 2', 'vendors: 2'))),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:9:1 error no-guests there is nobody at the table — write how many adults and children come"`,
    );
  });

  test('a number of dishes other than the course asks for', async () => {
    expect(
      await foundIn(
        contentWith({
          ...changed('packages/supper.mdx', '    dishes:', '    choose: 1\n    dishes:'),
          ...changed(
            'proposals/gale.md',
            'packages: supper',
            'packages: supper\nchoices: { supper: { All of it: [lentil-soup, cheese-plate] } }',
          ),
        }),
      ),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:11:22 error wrong-choice “All of it” asks for one dish, but 2 are proposed — name 1 of lentil-soup, cheese-plate"`,
    );
  });

  test('counts that do not make the guests', async () => {
    expect(
      await foundIn(
        contentWith({
          ...changed('packages/supper.mdx', '    dishes:', '    each guest: one\n    dishes:'),
          ...changed(
            'proposals/gale.md',
            'packages: supper',
            'packages: supper\nchoices: { supper: { All of it: { lentil-soup: 20, cheese-plate: 21 } } }',
          ),
        }),
      ),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:11:22 error wrong-choice the counts of “All of it” add up to 41, but 42 guests take one each — add the 1 missing"`,
    );
  });

  test('a choice in a course that has none', async () => {
    expect(
      await foundIn(
        contentWith(
          changed(
            'proposals/gale.md',
            'packages: supper',
            'packages: supper\nchoices: { supper: { All of it: [lentil-soup] } }',
          ),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:11:22 error wrong-choice “All of it” of supper has nothing to choose — leave it out"`,
    );
  });

  test('a link that was typed, too short', async () => {
    expect(
      await foundIn(contentWith(changed('proposals/gale.md', 'mk4vxr2hq7tz3cwnb6ylpaj5ge', 'galesupper'))),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:2:7 error weak-link the link has 10 characters, and needs at least 20 — use at least 20 random characters from a–z and 2–7; \`new\` does this for a new proposal"`,
    );
  });

  test('a link that does not look drawn', async () => {
    expect(
      await foundIn(
        contentWith(changed('proposals/gale.md', 'mk4vxr2hq7tz3cwnb6ylpaj5ge', 'aaaaaaaaaaaaaaaaaaaaaaaaaa')),
      ),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:2:7 error weak-link the link uses too few different characters — use at least 20 random characters from a–z and 2–7; \`new\` does this for a new proposal"`,
    );
  });

  test('a link used twice, at both places', async () => {
    expect(
      await foundIn(contentWith({ 'proposals/second.md': SMALL_CONTENT['proposals/gale.md']! })),
    ).toMatchInlineSnapshot(`
      "content/proposals/gale.md:2:7 error link-used-twice proposals gale and second have the same link — keep it in the proposal that was sent, and make a new one for the other
      content/proposals/second.md:2:7 error link-used-twice proposals second and gale have the same link — keep it in the proposal that was sent, and make a new one for the other"
    `);
  });

  test('vendor meals that no dish counts', async () => {
    expect(
      await foundIn(contentWith(changed('packages/supper.mdx', 'counts: adults, children, vendors\n', ''))),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:10:11 warning vendors-unfed 2 vendor meals are promised, but no dish of supper counts vendors — write “counts: adults, children, vendors” in the package, or on the dishes they get; or write a “crew meal”, which they then share"`,
    );
  });

  test('an offer that outlives its event', async () => {
    expect(
      await foundIn(
        contentWith(changed('proposals/gale.md', 'valid until: 2027-05-01', 'valid until: 2027-06-01')),
      ),
    ).toMatchInlineSnapshot(
      `"content/proposals/gale.md:8:14 warning valid-too-long it could be accepted until 2027-06-01, after the event on 2027-05-15 — write an earlier day"`,
    );
  });

  test('a need nobody knows', async () => {
    expect(
      await foundIn(
        contentWith(
          changed(
            'proposals/gale.md',
            'packages: supper',
            'packages: supper\nneeds: { vegitarian: 3, kiwi: 1, nuts: 2, vegan + no gluten: 1 }',
          ),
        ),
      ),
    ).toMatchInlineSnapshot(`
      "content/proposals/gale.md:11:10 warning unknown-need “vegitarian” is not a diet or an allergen that Salver knows, so no dish is checked for it — did you mean vegetarian?
      content/proposals/gale.md:11:25 warning unknown-need “kiwi” is not a diet or an allergen that Salver knows, so no dish is checked for it — write a diet (vegetarian, vegan, pescatarian, no gluten, no pork, no alcohol) or an allergen, such as tree nuts"
    `);
  });
});
