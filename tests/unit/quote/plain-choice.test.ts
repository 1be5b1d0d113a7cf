import { expect, test } from 'vitest';
import { plainChoice } from '../../../src/engine/quote/plain-choice.ts';
import { sampleCourse, sampleDish, sampleGuests, samplePackage } from './sample-terms.ts';

const dish = (recipe: string, supplement?: string) =>
  sampleDish({ recipe, name: recipe, ...(supplement === undefined ? {} : { supplement }) });

test('the plainest choice takes dishes without a supplement first, in their order, and as many as a course asks for', () => {
  const chosen = samplePackage({
    courses: [
      sampleCourse({
        name: 'Starters',
        choose: 4,
        dishes: [dish('crab', '4.00'), dish('soup'), dish('quail', '6.00'), dish('slaw')],
      }),
      sampleCourse({
        name: 'Mains',
        choose: null,
        eachGuest: true,
        dishes: [dish('lamb', '9.00'), dish('hake'), dish('barley')],
      }),
      sampleCourse({ name: 'Breads', choose: null, dishes: [dish('rye'), dish('flatbread')] }),
    ],
  });
  const guests = sampleGuests(10, { children: 2, vendors: 3 });
  expect(plainChoice(chosen, guests)).toEqual({
    package: 'harvest',
    guests,
    courses: { Starters: ['soup', 'slaw', 'crab', 'quail'] },
    mains: { Mains: { hake: 12 } },
    addOns: {},
    needs: {},
  });
});

test('a course by guest without any dish is left out', () => {
  const courses = [sampleCourse({ choose: null, eachGuest: true, dishes: [] })];
  expect(plainChoice(samplePackage({ courses }), sampleGuests(4))).toMatchObject({ courses: {}, mains: {} });
});
