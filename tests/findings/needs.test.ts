import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { printFindings } from '../../src/book/findings/print-findings.ts';
import { findingsOn } from '../../src/check/findings-on.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { takeAcceptance } from '../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../src/offers/answers/make-acceptance.ts';
import { nextOffer } from '../../src/offers/issue/issue.ts';
import type { Offer } from '../../src/schema/offer.ts';
import { must } from '../unit/plan/builders.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

const TODAY = '2027-04-26' as Day;

/** The cheese plate with what may be left out or swapped. */
function plate(changes: string): Record<string, string> {
  return changed('recipes/cheese-plate.mdx', 'steps:\n', `${changes}steps:\n`);
}

describe('what is left out or swapped: what check says', () => {
  test('an item that no line calls for, a need nobody knows, a swap that does not say for whom', async () => {
    expect(
      await foundIn(
        contentWith(
          plate('without: { hil-cheese: vegan, hill-cheese: vegn }\nswap: { hill-cheese: lentils }\n'),
        ),
      ),
    ).toMatchInlineSnapshot(`
      "content/recipes/cheese-plate.mdx:6:12 error unknown-id no line of this recipe uses “hil-cheese” — did you mean hill-cheese?
      content/recipes/cheese-plate.mdx:6:44 error not-understood “vegn” is not a diet or allergy that Salver knows — did you mean vegan?
      content/recipes/cheese-plate.mdx:7:22 error not-understood “lentils” does not name the substitute and the need it is for — write it as corn-bread for no gluten"
    `);
  });

  test('something taken instead that is nowhere, and in a unit that leads to no pack of it', async () => {
    expect(
      await foundIn(
        contentWith({
          ...plate('swap: { hill-cheese: beans for vegan; late-lentils for milk }\n'),
          'prices/hill-farm.csv': `${SMALL_CONTENT['prices/hill-farm.csv']}late-lentils,1 box,9.00,,2026-01-01\n`,
          'ingredients/own.yaml': `${SMALL_CONTENT['ingredients/own.yaml']}late-lentils: { from: plant, contains: none }\n`,
        }),
      ),
    ).toMatchInlineSnapshot(`
      "content/recipes/cheese-plate.mdx:6:22 error unit-not-reached “late-lentils” is bought by the box, and there is no conversion from lb — add to the conversions of late-lentils what 1 lb is, such as “1 lb = … box”
      content/recipes/cheese-plate.mdx:6:22 error unknown-id no ingredient or recipe is called “beans” — add it in ingredients/, or as a recipe"
    `);
  });

  test('a recipe that is, by a swap, part of itself', async () => {
    expect(
      await foundIn(contentWith(plate('swap: { hill-cheese: cheese-plate for vegan }\n'))),
    ).toMatchInlineSnapshot(
      `"content/recipes/cheese-plate.mdx:6:9 error circular-recipe the recipe is part of itself: cheese-plate → cheese-plate — remove one of these lines"`,
    );
  });

  test('a change that does not help, with what stands against it still', async () => {
    expect(
      await foundIn(
        contentWith({
          ...changed(
            'recipes/cheese-plate.mdx',
            '  hill-cheese: 3 lb\n',
            '  hill-cheese: 3 lb\n  lentils: 1 oz\nswap: { hill-cheese: curd for vegan }\nwithout: { lentils: sesame }\n',
          ),
          'prices/hill-farm.csv': `${SMALL_CONTENT['prices/hill-farm.csv']}curd,1 lb,9.00,,2026-01-01\n`,
          'ingredients/own.yaml': `${SMALL_CONTENT['ingredients/own.yaml']}curd: { from: milk, contains: milk }\n`,
        }),
      ),
    ).toMatchInlineSnapshot(
      `"content/recipes/cheese-plate.mdx:7:22 warning change-no-help swapping “hill-cheese” for vegan is not enough: “curd” still rules it out, or not enough is known about it — leave out or swap “curd” too, fill in the missing facts, or remove this"`,
    );
  });

  test('nothing where it helps, and what is swapped in counts as used', async () => {
    expect(await foundIn(contentWith(plate('swap: { hill-cheese: [lentils for vegan, milk] }\n')))).toBe('');
  });

  test('a dish that is held back and taken by others as well', async () => {
    expect(
      await foundIn(
        contentWith(
          changed(
            'packages/supper.mdx',
            'cheese-plate: 1 serving per guest',
            'cheese-plate: { amount: 1 serving per guest, others: 20 %, held back: yes }',
          ),
        ),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:11:60 error not-understood the dish is held back, but other guests are planned to take it — keep one of the two"`,
    );
  });
});

describe('a dish in place of another: what check says', () => {
  const soup = (facts: string) =>
    changed(
      'packages/supper.mdx',
      'lentil-soup: 8 fl oz per guest',
      `lentil-soup: { amount: 8 fl oz per guest, ${facts} }`,
    );

  test('nothing where the other is in its course', async () => {
    expect(await foundIn(contentWith(soup('instead of: cheese-plate, for: [vegan, milk]')))).toBe('');
  });

  test('of one that is not in its course, of itself, of needs without a dish, of a need nobody knows', async () => {
    const found = async (facts: string) => foundIn(contentWith(soup(facts)));
    expect(await found('instead of: chese-plate')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:61 error unknown-id “All of it” has no other dish “chese-plate” — did you mean cheese-plate?"`,
    );
    expect(await found('instead of: lentil-soup')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:61 error unknown-id “All of it” has no other dish “lentil-soup” — name a dish of the same course"`,
    );
    expect(await found('for: vegan')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:49 error not-understood “for” lists needs, but no dish is named that this one replaces — add “instead of:” with the id of that dish"`,
    );
    expect(await found('instead of: cheese-plate, for: vegn')).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:80 error not-understood “vegn” is not a diet or allergy that Salver knows — did you mean vegan?"`,
    );
  });

  test('of one that takes the place of another itself, and in a course of which dishes are chosen', async () => {
    const both = SMALL_CONTENT['packages/supper.mdx']!.replace(
      / {6}lentil-soup.*\n {6}cheese-plate.*\n/,
      '      lentil-soup: { amount: 8 fl oz per guest, instead of: cheese-plate }\n      cheese-plate: { amount: 1 serving per guest, instead of: lentil-soup }\n',
    );
    expect(await foundIn(contentWith({ 'packages/supper.mdx': both }))).toMatchInlineSnapshot(`
      "content/packages/supper.mdx:10:61 error not-understood “cheese-plate” itself replaces “lentil-soup” — write “instead of: lentil-soup” here too
      content/packages/supper.mdx:11:64 error not-understood “lentil-soup” itself replaces “cheese-plate” — write “instead of: cheese-plate” here too"
    `);
    const chosen = soup('instead of: cheese-plate')['packages/supper.mdx']!;
    expect(
      await foundIn(
        contentWith({ 'packages/supper.mdx': chosen.replace('    dishes:', '    choose: 1\n    dishes:') }),
      ),
    ).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:11:61 error course-choice guests choose among the dishes of “All of it”, so none can replace another — offer it as one of the choices, or put it in a course where everybody gets every dish"`,
    );
  });

  test('in the food of an add-on', async () => {
    const food = changed(
      'kitchen.yaml',
      'lentil-soup: 6 fl oz per guest',
      'lentil-soup: { amount: 6 fl oz per guest, instead of: cheese-plate }',
    );
    expect(await foundIn(contentWith(food))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:16:121 error course-choice the food of an add-on can’t replace a dish, because no guest depends on it for a meal — delete “instead of”, or put the dish in a course of a package"`,
    );
  });

  test('of a need that it does not suit itself', async () => {
    const plateFirst = changed(
      'packages/supper.mdx',
      'cheese-plate: 1 serving per guest',
      'cheese-plate: { amount: 1 serving per guest, instead of: lentil-soup, for: [milk, sesame] }',
    );
    expect(await foundIn(contentWith(plateFirst))).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:11:82 warning instead-no-help “cheese-plate” does not suit milk, or no one can tell yet, so those guests do not get it — remove the need, fill in what its foods contain, or name another dish for it"`,
    );
  });

  test('and of words that say for whom a dish is cooked', async () => {
    expect(await foundIn(contentWith(soup('cooked for: those who can eat it')))).toBe('');
    expect(await foundIn(contentWith(soup('cooked for: eaters')))).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:10:61 error unknown-word “cooked for” can’t be “eaters” — write one of everybody, those who can eat it"`,
    );
  });
});

test('a food from milk that is said to contain none', async () => {
  expect(
    await foundIn(contentWith(changed('ingredients/own.yaml', '  contains: milk', '  contains: none'))),
  ).toMatchInlineSnapshot(
    `"content/ingredients/own.yaml:7:13 warning allergen-not-named “hill-cheese” comes from milk, but its “contains” does not list it, so its allergens count as unknown and no offer with it can be issued — read its label and add milk to “contains”, or remove it from “from” if there is no milk in it"`,
  );
});

/** What is found on a day, after some files were changed since an offer was issued. */
async function foundSince(dir: string, offers: readonly Offer[], accepted: boolean, today: Day) {
  const { book } = await readBook(dir);
  if (!book) throw new Error('no book');
  const open = { ...book, offers: new Map([['gale', offers]]) };
  if (!accepted) return printed(findingsOn(open, today));
  const [offer] = offers as [Offer];
  const signature = { name: 'T', email: 't@gale.example', note: '', accepted: TODAY };
  const fact = must(
    takeAcceptance(open, JSON.stringify(makeAcceptance(offer, offer.proposed, signature)), TODAY),
  );
  return printed(findingsOn({ ...open, events: new Map([['gale', { id: 'gale', facts: [fact] }]]) }, today));
}

function printed(findings: ReturnType<typeof findingsOn>): string[] {
  return printFindings(findings, 'content').trimEnd().split('\n').slice(0, -1);
}

describe('guests’ needs: what check says', () => {
  const withNeeds = (needs: string) =>
    changed('proposals/gale.md', 'packages: supper', `packages: supper\nneeds: ${needs}`);
  const found = async (changes: Record<string, string>, today: Day = TODAY) => {
    const { book } = await readBook(contentWith(changes));
    return printed(findingsOn(book!, today));
  };
  const twoCourses = changed(
    'packages/supper.mdx',
    '      cheese-plate',
    '  - name: Cheese\n    dishes:\n      cheese-plate',
  );

  test('a course that has nothing for somebody, with what the kitchen has for it', async () => {
    expect(await found({ ...withNeeds('{ vegan: 2, sesame: 1 }'), ...twoCourses })).toMatchInlineSnapshot(`
      [
        "content/proposals/gale.md:11:10 warning need-not-fed “Cheese” of supper: nothing for 2 × vegan — state in a recipe what can be left out or swapped for them",
      ]
    `);
  });

  test('a main that is missing where only a side is for somebody, and a role that nobody has stated', async () => {
    const roles = (soup: string, plate: string) =>
      changed(
        'packages/supper.mdx',
        '      lentil-soup: 8 fl oz per guest\n      cheese-plate: 1 serving per guest',
        `      lentil-soup: { amount: 8 fl oz per guest${soup} }\n      cheese-plate: { amount: 1 serving per guest${plate} }`,
      );
    const needs = withNeeds('{ vegan: 2, milk: 1 }');
    expect(await found({ ...needs, ...roles(', role: side', ', role: main') })).toMatchInlineSnapshot(`
      [
        "content/proposals/gale.md:11:10 warning need-not-fed “All of it” of supper: no main for 2 × vegan — state in a recipe what can be left out or swapped for them",
        "content/proposals/gale.md:11:20 warning need-not-fed “All of it” of supper: no main for 1 × allergy: milk — state in a recipe what can be left out or swapped for them",
      ]
    `);
    expect(await found({ ...needs, ...roles(', role: side', '') })).toMatchInlineSnapshot(`
      [
        "content/packages/supper.mdx:11:7 warning role-unknown “All of it”: maybe no main for 2 × vegan of gale; no role is stated for cheese-plate — state it in the package or the recipe, such as “role: main”: main, side, bread, sauce, drink or sweet",
      ]
    `);
    expect(await found({ ...needs, ...roles(', role: side', ', role: side') })).toEqual([]);
  });

  test('nothing once the day is past', async () => {
    expect(await found({ ...withNeeds('{ vegan: 2 }'), ...twoCourses }, '2027-05-16' as Day)).toEqual([]);
  });

  test('more guests with needs than there are guests', async () => {
    expect(await found(withNeeds('{ sesame: 30, egg: 20 }'))).toMatchInlineSnapshot(`
      [
        "content/proposals/gale.md:11:1 warning needs-too-many the needs add up to 50 guests, but only 42 are fed — count each guest once, under all of that guest’s needs, such as “vegan + no gluten: 1”",
      ]
    `);
  });
});

describe('food that has changed since it was offered: what check says', () => {
  const offer = async () => {
    const { book } = await readBook(contentWith());
    const issued = nextOffer(book!, book!.proposals.get('gale')!, TODAY);
    if (!issued.ok) throw new Error(issued.what);
    return issued.value;
  };
  const nowContains = (dir: string, text: string) =>
    writeFileSync(
      join(dir, 'ingredients/own.yaml'),
      SMALL_CONTENT['ingredients/own.yaml']!.replace('contains: none', text),
    );

  test('an allergen added, on an open offer and on a coming event, where it comes in and whom to tell', async () => {
    const offers = [await offer()];
    const dir = contentWith();
    nowContains(dir, 'contains: celery');
    expect(await foundSince(dir, offers, false, TODAY)).toMatchInlineSnapshot(`
      [
        "content/ingredients/own.yaml:3:13 error food-facts-changed the open offer gale revision 1 has “Lentil soup”, which now contains celery; its client was told something else — tell Tamsin Gale at once; the page already shows it, and issue gale again; then run: told gale",
      ]
    `);
    expect(await foundSince(dir, offers, true, TODAY)).toMatchInlineSnapshot(`
      [
        "content/ingredients/own.yaml:3:13 error food-facts-changed the event gale on 2027-05-15 has “Lentil soup”, which now contains celery; its client was told something else — tell Tamsin Gale at once; the page already shows it; then run: told gale",
      ]
    `);
  });

  test('nothing once the offer has lapsed, or the event is over', async () => {
    const offers = [await offer()];
    const dir = contentWith();
    nowContains(dir, 'contains: celery');
    expect(await foundSince(dir, offers, false, '2027-05-02' as Day)).toEqual([]);
    expect(await foundSince(dir, offers, true, '2027-05-16' as Day)).toEqual([]);
  });

  test('a trace warned of, a diet lost, and allergens that nobody says any longer', async () => {
    const offers = [await offer()];
    const dir = contentWith();
    nowContains(dir, 'contains: none\n  may contain: wheat');
    expect(await foundSince(dir, offers, false, TODAY)).toMatchInlineSnapshot(`
      [
        "content/ingredients/own.yaml:4:16 error food-facts-changed the open offer gale revision 1 has “Lentil soup”, which now may contain wheat and can no longer be called no gluten; its client was told something else — tell Tamsin Gale at once; the page already shows it, and issue gale again; then run: told gale",
      ]
    `);
    nowContains(dir, 'source: a new label');
    expect(await foundSince(dir, offers, false, TODAY)).toMatchInlineSnapshot(`
      [
        "content/ingredients/own.yaml:1:1 error food-facts-changed the open offer gale revision 1 has “Lentil soup”, which now has ingredients whose allergens are unknown and can no longer be called vegetarian, vegan, pescatarian, no gluten; its client was told something else — tell Tamsin Gale at once; the page already shows it, and issue gale again; then run: told gale",
      ]
    `);
  });

  test('nothing where an allergen was taken out: less harmful facts stay as they were offered', async () => {
    const offers = [await offer()];
    const dir = contentWith();
    writeFileSync(
      join(dir, 'ingredients/own.yaml'),
      SMALL_CONTENT['ingredients/own.yaml']!.replace('contains: milk', 'contains: none').replace(
        'from: milk, animal rennet',
        'from: plant',
      ),
    );
    expect(await foundSince(dir, offers, false, TODAY)).toEqual([]);
  });
});
