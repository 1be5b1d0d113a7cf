import { describe, expect, test } from 'vitest';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { answerDifferences } from '../../../src/offers/answers/answer-differences.ts';
import { answerProblems, needsDropped } from '../../../src/offers/answers/client-may.ts';
import { droppedWords, problemWords } from '../../../src/offers/problem-words.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import {
  sampleAddOn,
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
  sampleTerms,
} from '../quote/sample-terms.ts';

const terms = sampleTerms();
const say = scriptWordsIn('en-US');

/** What keeps an answer for these guests from being taken, where others were proposed and stand on record. */
function problems(
  guests: ReturnType<typeof sampleGuests>,
  proposed: ReturnType<typeof sampleGuests>,
  recorded?: ReturnType<typeof sampleGuests>,
): string[] {
  const found = answerProblems({ terms, proposed }, sampleChoice(guests), recorded);
  return found.map((each) => `${each.path}: ${problemWords(say, each)}`);
}

describe('the guests at the table that a client may name', () => {
  const upTo = (most: string, named: number) => [
    `guests.adults: You can enter up to ${most} here, and you entered ${named}. Please ask us for a new proposal.`,
  ];

  test('are five times those proposed, children among them', () => {
    const proposed = sampleGuests(50, { children: 10 });
    expect(problems(sampleGuests(290, { children: 10 }), proposed)).toEqual([]);
    expect(problems(sampleGuests(291, { children: 10 }), proposed)).toEqual(upTo('300 guests', 301));
  });

  test('are two hundred for a small party', () => {
    expect(problems(sampleGuests(200), sampleGuests(12))).toEqual([]);
    expect(problems(sampleGuests(201), sampleGuests(12))).toEqual(upTo('200 guests', 201));
    expect(problems(sampleGuests(201), sampleGuests(40))).toEqual(upTo('200 guests', 201));
    expect(problems(sampleGuests(205), sampleGuests(41))).toEqual([]);
  });

  test('may always be as many as stand on record', () => {
    expect(problems(sampleGuests(400), sampleGuests(12), sampleGuests(390, { children: 10 }))).toEqual([]);
    expect(problems(sampleGuests(401), sampleGuests(12), sampleGuests(400))).toEqual(upTo('400 guests', 401));
  });
});

describe('the vendor meals that a client may name', () => {
  test('are as many as guests at the table, those proposed, or those on record', () => {
    expect(problems(sampleGuests(8, { children: 2, vendors: 10 }), sampleGuests(10))).toEqual([]);
    expect(problems(sampleGuests(8, { children: 2, vendors: 11 }), sampleGuests(10))).toEqual([
      'guests.vendors: That is 11 vendor meals for 10 guests at the table. Please ask us.',
    ]);
    expect(problems(sampleGuests(10, { vendors: 14 }), sampleGuests(10, { vendors: 14 }))).toEqual([]);
    const recorded = sampleGuests(10, { vendors: 15 });
    expect(problems(sampleGuests(10, { vendors: 15 }), sampleGuests(10), recorded)).toEqual([]);
    expect(problems(sampleGuests(10, { vendors: 16 }), sampleGuests(10), recorded)).toHaveLength(1);
  });

  test('are told in the singular where it is one', () => {
    expect(problems(sampleGuests(0, { vendors: 1 }), sampleGuests(10))).toContain(
      'guests.vendors: That is 1 vendor meal for 0 guests at the table. Please ask us.',
    );
  });
});

describe('the crew’s meals', () => {
  test('are never the client’s to set: those proposed or on record may stand, none else', () => {
    const proposed = sampleGuests(10, { staff: 4 });
    const recorded = sampleGuests(10, { staff: 6 });
    expect(problems(sampleGuests(10, { staff: 4 }), proposed, recorded)).toEqual([]);
    expect(problems(sampleGuests(10, { staff: 6 }), proposed, recorded)).toEqual([]);
    for (const staff of [0, 5, 7, 400])
      expect(problems(sampleGuests(10, { staff }), proposed, recorded)).toEqual([
        `guests.staff: The caterer sets the number of crew meals: 6, not ${staff}.`,
      ]);
    expect(problems(sampleGuests(10, { staff: 3 }), proposed)).toEqual([
      'guests.staff: The caterer sets the number of crew meals: 4, not 3.',
    ]);
  });
});

test('an answer is held to the terms as well, and everything is told at once', () => {
  const found = problems(sampleGuests(0, { vendors: 9, staff: 1 }), sampleGuests(10));
  expect(found.map((each) => each.split(':')[0])).toEqual([
    'guests.adults',
    'guests.staff',
    'guests.vendors',
  ]);
});

describe('the needs that an answer takes off', () => {
  test('are those on record that it leaves out or sets to nobody, in other letters or not', () => {
    const recorded = { vegan: 2, 'tree nuts': 1, celery: 3, milk: 0, 'no  gluten': 1 };
    const answered = { ' Vegan ': 2, 'TREE  NUTS': 0, milk: 4, 'No gluten': 1 };
    expect(needsDropped(recorded, answered)).toEqual([
      { name: 'tree nuts', guests: 1 },
      { name: 'celery', guests: 3 },
    ]);
    expect(needsDropped(recorded, recorded)).toEqual([]);
    expect(droppedWords(say, needsDropped(recorded, answered))).toBe(
      'tree nuts (1 guest), celery (3 guests)',
    );
  });
});

describe('where an answer differs from what was proposed', () => {
  const courses = [
    sampleCourse({ name: 'Starters', choose: 1 }),
    sampleCourse({
      name: 'Main',
      choose: null,
      eachGuest: true,
      dishes: [sampleDish({ recipe: 'hake', name: 'Hake' }), sampleDish({ recipe: 'lamb', name: 'Lamb' })],
    }),
    sampleCourse({ name: 'Breads', choose: null }),
  ];
  const offered = sampleTerms({
    packages: [
      samplePackage({ courses }),
      samplePackage({ id: 'winter', name: 'Winter table', courses: [sampleCourse({ name: 'Starters' })] }),
    ],
    addOns: [sampleAddOn(), sampleAddOn({ id: 'late', name: 'Late hour', per: 'hour' })],
  });
  const was = sampleChoice(sampleGuests(30, { vendors: 2 }), {
    courses: { Starters: ['squash'] },
    mains: { Main: { hake: 20, lamb: 10 } },
    addOns: { espresso: 1 },
    needs: { vegan: 2, milk: 1 },
  });
  const told = (change: Partial<Choice>) =>
    answerDifferences(offered, was, { ...was, ...change }, 'proposed');

  test('nothing is told where nothing differs', () => {
    expect(told({})).toEqual([]);
    expect(told({ addOns: { espresso: 1, late: 0 }, needs: { vegan: 2, milk: 1, celery: 0 } })).toEqual([]);
  });

  test('each line says what is now and what was', () => {
    expect(told({ guests: sampleGuests(28, { children: 3, vendors: 1, staff: 4 }) })).toEqual([
      'Adults: 28 (proposed 30)',
      'Children: 3 (proposed 0)',
      'Vendor meals: 1 (proposed 2)',
      'Crew meals: 4 (proposed 0)',
    ]);
    expect(told({ courses: { Starters: ['lamb'] }, mains: { Main: { lamb: 30 } } })).toEqual([
      'Starters: lamb (proposed squash)',
      'Main: Hake 0, Lamb 30 (proposed Hake 20, Lamb 10)',
    ]);
    expect(told({ courses: { Starters: ['hake', 'squash'] }, mains: {} })).toEqual([
      'Starters: squash, hake (proposed squash)',
      'Main: Hake 0, Lamb 0 (proposed Hake 20, Lamb 10)',
    ]);
    expect(told({ courses: {} })).toEqual(['Starters:  (proposed squash)']);
    expect(told({ addOns: { late: 1.5 } })).toEqual([
      'Espresso cart: no (proposed yes)',
      'Late hour: 1.5 h (proposed no)',
    ]);
    expect(told({ needs: { milk: 2, celery: 1 } })).toEqual([
      'Guests with vegan: 0 (proposed 2)',
      'Guests with milk: 2 (proposed 1)',
      'Guests with celery: 1 (proposed 0)',
    ]);
  });

  test('the courses are those of the menu answered', () => {
    const winter = { ...was, package: 'winter' };
    const other = { ...winter, courses: { Starters: ['lamb'] }, mains: { Main: { hake: 5, lamb: 25 } } };
    expect(answerDifferences(offered, winter, other, 'recorded')).toEqual(['Starters: lamb (was squash)']);
  });

  test('of another menu its name is told, and not its courses, which are others', () => {
    expect(told({ package: 'winter', courses: { Starters: ['lamb'] }, mains: {} })).toEqual([
      'Menu: Winter table (proposed Harvest table)',
    ]);
    expect(told({ package: 'summer', addOns: { espresso: 1, arch: 1 } })).toEqual([
      'Menu: summer (proposed Harvest table)',
      'arch: yes (proposed no)',
    ]);
  });
});
