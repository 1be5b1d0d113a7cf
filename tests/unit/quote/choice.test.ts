import { describe, expect, it } from 'vitest';
import { type Choice, checkChoice } from '../../../src/engine/quote/choice.ts';
import { plainChoice } from '../../../src/engine/quote/plain-choice.ts';
import { problemWords } from '../../../src/offers/problem-words.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import {
  sampleAddOn,
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
  sampleTerms,
} from './sample-terms.ts';

const plated = sampleCourse({
  name: 'Main course',
  choose: null,
  eachGuest: true,
  dishes: [
    sampleDish({ recipe: 'lamb' }),
    sampleDish({ recipe: 'barley', counts: { adults: '1', children: '1/2' } }),
  ],
});
const chosen = samplePackage({
  courses: [sampleCourse(), plated],
  minimumGuests: 20,
  addOns: ['espresso', 'hour'],
});
const terms = sampleTerms({
  packages: [chosen],
  addOns: [
    sampleAddOn(),
    sampleAddOn({ id: 'hour', name: 'Extra hour', per: 'hour' }),
    sampleAddOn({ id: 'arch' }),
  ],
});
const complete = sampleChoice(sampleGuests(10, { children: 2, vendors: 3 }), {
  courses: { Mains: ['squash', 'hake'] },
  mains: { 'Main course': { lamb: 5, barley: 7 } },
  addOns: { espresso: 1, hour: 1.5 },
  needs: { vegan: 2 },
});
const say = scriptWordsIn('en-US');
const problems = (change: Partial<Choice>) =>
  checkChoice(terms, { ...complete, ...change }).map(
    (problem) => `${problem.path}: ${problemWords(say, problem)}`,
  );

describe('a choice', () => {
  it('that is complete has no problem, even under the minimum count', () => {
    expect(problems({})).toEqual([]);
    expect(checkChoice(terms, plainChoice(chosen, sampleGuests(30, { children: 5, staff: 2 })))).toEqual([]);
  });

  it('names a menu of the offer and whole numbers of guests', () => {
    expect(problems({ package: 'constructor' })).toEqual([
      'package: This offer doesn’t have that menu. Choose one of: Harvest table.',
    ]);
    expect(
      problems({ guests: sampleGuests(-1, { children: 1.5, vendors: 100_001, staff: Number.NaN }) }),
    ).toEqual([
      'guests.adults: Enter a whole number from 0 to 100000.',
      'guests.children: Enter a whole number from 0 to 100000.',
      'guests.vendors: Enter a whole number from 0 to 100000.',
      'guests.staff: Enter a whole number from 0 to 100000.',
    ]);
    expect(problems({ guests: sampleGuests(0, { vendors: 3 }) })).toEqual([
      'guests.adults: Enter the number of guests: at least one adult or child.',
    ]);
  });

  it('stays within the counts that are priced', () => {
    const closed = samplePackage({ tiers: [{ from: 1, to: 80, perHead: '40.00' }] });
    const over = checkChoice(
      sampleTerms({ packages: [closed] }),
      sampleChoice(sampleGuests(79, { children: 2 })),
    );
    expect(over.map((problem) => problemWords(say, problem))).toEqual([
      'Harvest table is priced for up to 80 guests, and this comes to 81. Please ask us for a price.',
    ]);
  });

  it('takes as many different dishes as each course asks for', () => {
    expect(problems({ courses: {} })).toEqual(['courses.Mains: Choose 2 dishes for Mains; you chose 0.']);
    expect(problems({ courses: { Mains: ['squash', 'squash'] } })).toEqual([
      'courses.Mains: A dish is chosen twice for Mains. Choose different dishes.',
    ]);
    expect(problems({ courses: { Mains: ['squash', 'beef'] } })).toEqual([
      'courses.Mains: A dish you chose isn’t offered for Mains. Choose again.',
    ]);
    expect(problems({ courses: { Mains: ['squash', 'hake'], Sweets: ['pie'] } })).toEqual([
      'courses.Sweets: Harvest table doesn’t have that course to choose from.',
    ]);
  });

  it('counts one main for every guest who is served one', () => {
    expect(problems({ mains: { 'Main course': { lamb: 5, barley: 5 } } })).toEqual([
      'mains.Main course: The counts for Main course must add up to 12, one for each guest: 2 too few.',
    ]);
    expect(problems({ mains: { 'Main course': { lamb: 13, barley: -1 } } })).toEqual([
      'mains.Main course.barley: Enter a whole number, such as 12.',
    ]);
    expect(problems({ mains: { 'Main course': { lamb: 5, hake: 7 } } })).toEqual([
      'mains.Main course.hake: A dish you chose isn’t offered for Main course. Choose again.',
    ]);
  });

  it('takes add-ons that go with the menu, hours in quarters', () => {
    expect(problems({ addOns: { arch: 1 } })).toEqual([
      'addOns.arch: This add-on isn’t available with this menu.',
    ]);
    expect(problems({ addOns: { hour: 1.3 } })).toEqual([
      'addOns.hour: Enter from 0 to 72 hours for Extra hour, in quarter hours.',
    ]);
    expect(problems({ addOns: { espresso: 2 } })).toEqual([
      'addOns.espresso: For Espresso cart, enter 1 to add it or 0 to leave it out; its price goes by the guest count.',
    ]);
    for (const hours of [0, 0.25, 71.75, 72]) expect(problems({ addOns: { hour: hours } })).toEqual([]);
    for (const hours of [-0.25, 72.25, Number.NaN])
      expect(problems({ addOns: { hour: hours } })).toHaveLength(1);
    expect(problems({ addOns: { espresso: 0 } })).toEqual([]);
  });

  it('that is for nobody, or for a need whose name hides something, is refused', () => {
    expect(problems({ guests: sampleGuests(0), mains: { 'Main course': {} } })).toEqual([
      'guests.adults: Enter the number of guests: at least one adult or child.',
    ]);
    const found = problems({ needs: { 've\u202egan': 1, vegan: 15 } });
    expect(found).toEqual([expect.stringMatching(/^needs\.ve.*gan: Please type this need again: /)]);
  });

  it('is told of mains too many, and of a course unknown among several', () => {
    expect(problems({ mains: { 'Main course': { lamb: 6, barley: 7 } } })).toEqual([
      'mains.Main course: The counts for Main course must add up to 12, one for each guest: 1 too many.',
    ]);
    const two = samplePackage({ courses: [sampleCourse(), sampleCourse({ name: 'Sweets', choose: 1 })] });
    const courses = { Mains: ['squash', 'hake'], Sweets: ['lamb'] };
    expect(checkChoice(sampleTerms({ packages: [two] }), sampleChoice(sampleGuests(5), { courses }))).toEqual(
      [],
    );
  });

  it('may name as many guests as anybody counts, and no more', () => {
    const packages = [samplePackage()];
    const of = (adults: number) => checkChoice(sampleTerms({ packages }), sampleChoice(sampleGuests(adults)));
    expect([of(100_000).length, of(100_001).length]).toEqual([0, 1]);
    const closed = samplePackage({ tiers: [{ from: 1, to: 80, perHead: '40.00' }] });
    expect(checkChoice(sampleTerms({ packages: [closed] }), sampleChoice(sampleGuests(80)))).toEqual([]);
  });

  it('names no more guests with a need than come', () => {
    expect(problems({ needs: { vegan: 16, 'tree nuts': 0.5 } })).toEqual([
      'needs.vegan: “vegan” is down for 16 guests, but only 15 are coming.',
      'needs.tree nuts: Enter how many guests have “tree nuts”.',
    ]);
  });
});
