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
    expect(dateMark(stew, day('2027-04-04'), DAYS)).toMatchObject({
      madeOn: '2027-04-01',
      atTheLatest: '2027-04-07',
    });
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
    expect(dateMark(dish, day('2027-06-05'), DAYS)).toMatchObject({
      madeOn: '2027-06-03',
      atTheLatest: '2027-06-07',
    });
  });

  it('takes the shorter of seven days and what the recipe says, and never more than seven', () => {
    const kept = (keepsDays: number) =>
      recipe('salad', '10 lb', [line(beef, '1 lb')], {
        hold: 'cold',
        keepsDays,
        steps: [step('the day before', 'Make it')],
      });
    expect(dateMark(kept(2), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-05');
    expect(dateMark(kept(30), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-10');
  });

  it('leaves dry goods to what their recipe states', () => {
    const crispbread = recipe('crispbread', '40 pieces', [line(beef, '1 lb')], {
      hold: 'room',
      keepsDays: 21,
      steps: [step('5 days before', 'Bake it')],
    });
    expect(dateMark(crispbread, day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-20');
  });

  it('stands still while frozen: frozen on day 3, thawed as day 4 (Gilmer County Health Department)', () => {
    const filling = frozenFilling(['30 days before', '28 days before']);
    const pie = pieOf(filling, '2 days before');
    // Days 4, 5, 6 and 7 are the four days from 3 June on.
    expect(dateMark(pie, day('2027-06-05'), DAYS)).toMatchObject({
      madeOn: '2027-06-03',
      atTheLatest: '2027-06-06',
    });
  });

  it('frozen on the day it is made, thawed on 17 August as day 2: use by 22 August (mcfoodsafety, Q & A Date marking)', () => {
    const pate = frozenFilling(['40 days before']);
    const toasts = pieOf(pate, 'on the day');
    expect(dateMark(toasts, day('2027-08-17'), DAYS).atTheLatest).toBe('2027-08-22');
  });

  it('is outdated at once where it was frozen on its last day, or kept frozen longer than it keeps', () => {
    const lastDay = frozenFilling(['30 days before', '24 days before']);
    expect(dateMark(pieOf(lastDay, 'on the day'), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-04');
    const tooOld = frozenFilling(['30 days before'], 20);
    expect(dateMark(pieOf(tooOld, 'on the day'), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-05-25');
  });

  it('gives a mixture that is frozen the date of its earliest part, as far as it had run', () => {
    const meat = recipe('meat', '10 lb', [line(beef, '10 lb')], {
      steps: [step('30 days before', 'Roast it')],
    });
    const ragout = recipe('ragout', '10 lb', [line(meat, '10 lb')], {
      hold: 'frozen',
      steps: [step('27 days before', 'Mix it and freeze it')],
    });
    // Frozen on day 4 of the meat; 5 June is day 5, 7 June day 7.
    expect(dateMark(pieOf(ragout, 'on the day'), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-07');
  });

  it('counts for food held hot as it does for cold', () => {
    const stew = recipe('stew', '10 lb', [line(beef, '10 lb')], {
      hold: 'hot',
      steps: [step('3 days before', 'Braise it')],
    });
    expect(dateMark(stew, day('2027-04-04'), DAYS).atTheLatest).toBe('2027-04-07');
  });

  it('of a frozen dish is outdated where a part had run out before it was frozen, and else the kitchen’s own', () => {
    const meat = recipe('meat', '10 lb', [line(beef, '10 lb')], {
      steps: [step('30 days before', 'Roast it')],
    });
    const frozen = (when: string) =>
      dateMark(
        recipe('ragout', '10 lb', [line(meat, '10 lb')], {
          hold: 'frozen',
          keepsDays: 60,
          steps: [step(when, 'Freeze it')],
        }),
        day('2027-06-05'),
        DAYS,
      ).atTheLatest;
    // Roasted on 6 May, good until 12 May: frozen that day it keeps its 60 days, frozen on the 16th it was too late.
    expect([frozen('24 days before'), frozen('20 days before')]).toEqual(['2027-07-10', '2027-05-12']);
  });

  it('goes by what is stated alone where a frozen part needs no cold', () => {
    const dough = recipe('dough', '10 lb', [line(beef, '10 lb')], {
      hold: 'frozen',
      keepsDays: 20,
      temperatureControl: false,
      steps: [step('10 days before', 'Freeze it')],
    });
    expect(dateMark(pieOf(dough, 'on the day'), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-11');
    const older = { ...dough, steps: [step('15 days before', 'Freeze it')] };
    expect(dateMark(pieOf(older, 'on the day'), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-09');
    const unstated = { ...dough, keepsDays: undefined };
    expect(dateMark(pieOf(unstated, 'on the day'), day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-11');
  });

  it('runs on for a frozen part that needs no cold, thawed on the day it was frozen', () => {
    const dough = recipe('dough', '10 lb', [line(beef, '10 lb')], {
      hold: 'frozen',
      keepsDays: 20,
      temperatureControl: false,
      steps: [step('10 days before', 'Freeze it')],
    });
    const crackers = { ...pieOf(dough, '10 days before'), hold: 'room' as const, temperatureControl: false };
    expect(dateMark(crackers, day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-14');
  });

  it('of a part without steps is made and frozen on the day itself', () => {
    const ice = recipe('ice', '10 lb', [line(beef, '10 lb')], { hold: 'frozen', keepsDays: 90 });
    expect(dateMark(pieOf(ice, 'on the day'), day('2027-06-05'), DAYS)).toMatchObject({
      madeOn: '2027-06-05',
      atTheLatest: '2027-06-10',
    });
  });

  it('has no last day where neither the dish nor its parts have one', () => {
    const rub = recipe('rub', '1 lb', [line(beef, '1 lb')], {
      hold: 'room',
      steps: [step('on the day', 'Mix')],
    });
    const crackers = recipe('crackers', '1 lb', [line(rub, '1 lb')], { hold: 'room' });
    expect(dateMark(crackers, day('2027-06-05'), DAYS)).toMatchObject({
      useBy: undefined,
      atTheLatest: undefined,
    });
  });

  it('is no use-by while nobody states how long something keeps: the code’s last day is no more than a limit', () => {
    const made = (facts: Parameters<typeof recipe>[3]) =>
      dateMark(
        recipe('spice', '1 lb', [line(beef, '1 lb')], { steps: [step('5 days before', 'Mix it')], ...facts }),
        day('2027-06-05'),
        DAYS,
      );
    // Safe without the cold, or frozen: nothing sets a day, a year least of all.
    for (const facts of [
      { hold: 'room', temperatureControl: false },
      { hold: 'room' },
      { hold: 'frozen' },
      { hold: 'cold', temperatureControl: false },
    ] as const)
      expect(made(facts)).toMatchObject({ madeOn: '2027-05-31', useBy: undefined, atTheLatest: undefined });
    expect(made({ hold: 'cold' })).toMatchObject({ useBy: undefined, atTheLatest: '2027-06-06' });
    expect(made({ hold: 'cold', keepsDays: 3 })).toMatchObject({
      useBy: '2027-06-02',
      atTheLatest: '2027-06-02',
    });
  });

  it('rests on parts made on an earlier day, and not on those of the same day', () => {
    const part = (when: string) =>
      recipe('rub', '1 lb', [line(beef, '1 lb')], { hold: 'room', steps: [step(when, 'Mix')] });
    const dish = (when: string) =>
      dateMark(
        recipe('dish', '1 lb', [line(part(when), '1 lb')], {
          hold: 'cold',
          keepsDays: 2,
          steps: [step('the day before', 'Rub')],
        }),
        day('2027-06-05'),
        DAYS,
      );
    expect(dish('the day before')).toMatchObject({ useBy: '2027-06-05', notStated: [] });
    expect(dish('9 days before')).toMatchObject({ useBy: undefined, atTheLatest: '2027-06-05' });
    expect(dish('9 days before').notStated.map(({ id }) => id)).toEqual(['rub']);
  });

  it('follows another number of days, and asks none of food that needs no cold', () => {
    const syrup = recipe('syrup', '1 qt', [line(beef, '1 lb')], {
      keepsDays: 30,
      temperatureControl: false,
      steps: [step('5 days before', 'Boil it')],
    });
    expect(dateMark(syrup, day('2027-06-05'), DAYS).atTheLatest).toBe('2027-06-29');
    const salad = recipe('salad', '1 qt', [line(beef, '1 lb')], {
      steps: [step('the day before', 'Mix it')],
    });
    expect(dateMark(salad, day('2027-06-05'), 4).atTheLatest).toBe('2027-06-07');
  });
});

/** A part with steps on these days, frozen after the last. */
function frozenFilling(days: readonly string[], keepsDays = 90) {
  return recipe('filling', '10 lb', [line(beef, '10 lb')], {
    hold: 'frozen',
    keepsDays,
    steps: days.map((when) => step(when, 'Cook it')),
  });
}

function pieOf(filling: ReturnType<typeof frozenFilling>, when: string) {
  return recipe('pie', '10 lb', [line(filling, '5 lb')], {
    hold: 'cold',
    steps: [step(when, 'Thaw and fill')],
  });
}
