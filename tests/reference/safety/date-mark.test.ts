import { describe, expect, it } from 'vitest';
import { dateMark } from '../../../src/engine/safety/date-mark.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { day, food, line, recipe, step } from '../../unit/plan/builders.ts';

const { days: DAYS } = FOOD_CODE_2022.limits['date mark'];

const beef = food('beef');

describe('date marks, FDA Food Code 3-501.17 as adopted by states', () => {
  it('counts the day of preparation as day 1 of seven: made 1 April, use by 7 April', () => {
    const stew = recipe('stew', '10 lb', [line(beef, '10 lb')], {
      hold: 'cold',
      steps: [step('3 days before', 'Braise it')],
    });
    expect(dateMark(stew, day('2027-04-04'), DAYS)).toEqual({ madeOn: '2027-04-01', useBy: '2027-04-07' });
  });

  it('gives a mixture the date of its earliest part: meat of 1 June in a dish of 3 June, use by 7 June', () => {
    const meat = recipe('meat', '10 lb', [line(beef, '10 lb')], {
      hold: 'cold',
      steps: [step('4 days before', 'Roast it')],
    });
    const dish = recipe('dish', '10 lb', [line(meat, '5 lb')], {
      hold: 'cold',
      steps: [step('2 days before', 'Mix it')],
    });
    expect(dateMark(dish, day('2027-06-05'), DAYS)).toEqual({ madeOn: '2027-06-03', useBy: '2027-06-07' });
  });

  it('takes the shorter of seven days and what the recipe says, and never more than seven', () => {
    const kept = (keepsDays: number) =>
      recipe('salad', '10 lb', [line(beef, '1 lb')], {
        hold: 'cold',
        keepsDays,
        steps: [step('the day before', 'Make it')],
      });
    expect(dateMark(kept(2), day('2027-06-05'), DAYS).useBy).toBe('2027-06-05');
    expect(dateMark(kept(30), day('2027-06-05'), DAYS).useBy).toBe('2027-06-10');
  });

  it('leaves dry goods to what their recipe states', () => {
    const crispbread = recipe('crispbread', '40 pieces', [line(beef, '1 lb')], {
      hold: 'room',
      keepsDays: 21,
      steps: [step('5 days before', 'Bake it')],
    });
    expect(dateMark(crispbread, day('2027-06-05'), DAYS).useBy).toBe('2027-06-20');
  });
});
