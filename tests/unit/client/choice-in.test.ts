import { describe, expect, it } from 'vitest';
import { choiceIn, choiceProblems } from '../../../src/client/choice-in.ts';
import { clientData } from './client-data.ts';

const data = clientData();
const texts = (entries: Record<string, string>) => new Map(Object.entries(entries));
const buffet = {
  package: 'harvest',
  'guests.adults': '60',
  'guests.children': ' 4 ',
  'guests.vendors': '2',
  'course.0.0.0': 'on',
  'course.0.0.1': 'on',
};

describe('a choice read from a form', () => {
  it('has the people, dishes, add-ons and needs that the fields say, and the caterer’s own meals', () => {
    const { choice, unread } = choiceIn(
      data,
      texts({
        ...buffet,
        'add-on.0': '1',
        'add-on.1': '1.5',
        'need.0': '3',
        'other-need.0.name': 'no  pork',
        'other-need.0.count': '2',
        'other-need.1.name': 'vegan',
        'other-need.1.count': '1',
      }),
    );
    expect(unread).toEqual([]);
    expect(choice).toEqual({
      package: 'harvest',
      guests: { adults: 60, children: 4, vendors: 2, staff: 3 },
      courses: { Mains: ['squash', 'hake'] },
      mains: {},
      addOns: { espresso: 1, hour: 1.5 },
      needs: { vegan: 4, 'no pork': 2 },
    });
  });

  it('takes the dishes of the menu chosen, not those still ticked for another', () => {
    const { choice } = choiceIn(data, texts({ ...buffet, package: 'plated', 'main.1.0.0': '64' }));
    expect(choice.courses).toEqual({});
    expect(choice.mains).toEqual({ Main: { lamb: 64, hake: 0 } });
  });

  it('is in order for a complete buffet', () => {
    expect(choiceProblems(data, texts(buffet))).toEqual([]);
  });

  it('has hours with a point or a comma', () => {
    const hours = (text: string) => choiceIn(data, texts({ ...buffet, 'add-on.1': text })).choice.addOns;
    expect(hours('2.5')).toEqual(hours('2,5'));
    expect(Object.values(hours('2,5'))).toContain(2.5);
    expect(choiceProblems(data, texts({ ...buffet, 'add-on.1': '2,5' }))).toEqual([]);
  });

  it.each([
    ['guests.adults', { 'guests.adults': '6o' }, /whole number/],
    ['guests.adults', { 'guests.adults': '', 'guests.children': '' }, /^Enter the number of guests/],
    ['course.0.0.0', { 'course.0.0.1': '' }, /Choose 2 dishes for Mains; you chose 1/],
    ['add-on.1', { 'add-on.1': 'two' }, /hours/],
    ['add-on.1', { 'add-on.1': '1.1' }, /quarter hours/],
    ['need.0', { 'need.0': '99' }, /is down for 99 guests/],
    ['other-need.2.name', { 'other-need.2.count': '4' }, /^Enter the need/],
    ['other-need.2.count', { 'other-need.2.name': 'sesame' }, /how many guests have “sesame”/],
    ['other-need.2.name', { 'other-need.2.name': '__proto__', 'other-need.2.count': '1' }, /plain words/],
    [
      'other-need.1.count',
      { 'other-need.1.name': 'sesame', 'other-need.1.count': '900' },
      /is down for 900 guests/,
    ],
  ])('says at %s what is wrong with %o', (field, change, what) => {
    const problems = choiceProblems(data, texts({ ...buffet, ...change }));
    expect(problems).toEqual([{ field, what: expect.stringMatching(what) }]);
  });

  it('says at the course that counts by guest do not make the guests', () => {
    const problems = choiceProblems(
      data,
      texts({ ...buffet, package: 'plated', 'main.1.0.0': '40', 'main.1.0.1': '20' }),
    );
    expect(problems).toEqual([{ field: 'course.1.0.0', what: expect.stringContaining('4 too few') }]);
  });
});
