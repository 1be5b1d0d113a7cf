import { describe, expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { dayBatches } from '../../../src/engine/plan/days/day-batches.ts';
import type { EventInput } from '../../../src/engine/plan/event-input.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { inWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from './builders.ts';

const DATE = day('2027-05-15');
const beans = food('beans');
const stock = recipe('stock', '1 gal', [line(beans, '1 lb')], {
  batches: 'whole',
  steps: [step('the day before', 'Simmer')],
});
const soup = recipe('soup', '1 gal', [line(stock, '1 qt'), line(beans, '2 lb')], {
  batches: 'whole',
  steps: [step('on the day', 'Heat')],
});

function plan(id: string, adults: number, facts: Partial<EventInput> = {}, of = soup) {
  const guests = { adults, children: 0, vendors: 0, staff: 0 };
  const input = event([dish(of, '8 fl oz per guest')], { id, occasion: id, guests, date: DATE, ...facts });
  return planEvent(input, kitchen(), prices());
}

describe('the batches of a day', () => {
  test('two events on one date have their needs summed first and rounded to batches once', () => {
    // By hand: 20 × 8 fl oz = 1¼ gal and 10 × 8 fl oz = ⅝ gal; apart 2 + 1 batches, together 1⅞ → 2.
    const [batch] = dayBatches([plan('lunch', 20), plan('dinner', 10)], DATE);
    expect(exactText(batch!.need)).toBe('15/8 gal');
    expect([batch!.batches.toFraction(), batch!.separate.toFraction()]).toEqual(['2', '3']);
    expect(batch!.lines.map(({ amount }) => exactText(amount))).toEqual(['2 qt', '4 lb']);
    expect(batch!.events.map(({ plan: { input }, planned }) => [input.id, exactText(planned.need)])).toEqual([
      ['lunch', '5/4 gal'],
      ['dinner', '5/8 gal'],
    ]);
    expect(inWords(batch!.why.at(-1)!)).toBe('made separately for each event it would be 3 batches');
  });

  test('a day holds the recipes worked on that day alone', () => {
    const plans = [plan('lunch', 20), plan('dinner', 10)];
    expect(dayBatches(plans, day('2027-05-14')).map((each) => each.recipe.id)).toEqual(['stock']);
    expect(dayBatches(plans, day('2027-05-13'))).toEqual([]);
  });

  test('events on different dates are never put together', () => {
    const plans = [plan('lunch', 20), plan('dinner', 10, { date: day('2027-05-16') })];
    const batches = dayBatches(plans, DATE);
    expect(batches.map((each) => [each.recipe.id, each.events.length])).toEqual([
      ['soup', 1],
      ['stock', 1],
    ]);
  });

  test('food that is finished the day before, or at the place, or served at one time is good for both events', () => {
    const hot = { ...soup, hold: 'hot' as const, stands: minutes(30) };
    const cooked = (steps: typeof soup.steps, serveAt = '20:00') => {
      const of = { ...hot, steps };
      return dayBatches(
        [plan('lunch', 20, { serveAt: '12:30' }, of), plan('later', 10, { serveAt }, of)],
        steps.some(({ when }) => when.daysBefore === 0) ? DATE : day('2027-05-14'),
      ).filter((each) => each.recipe.id === 'soup').length;
    };
    const [before, own] = [step('the day before', 'Soak'), step('on the day', 'Heat')];
    expect(cooked([own])).toBe(2);
    expect(cooked([before, own])).toBe(2);
    expect(cooked([before])).toBe(1);
    expect(cooked([own, step('at serving', 'Ladle')])).toBe(1);
    expect(cooked([own], '12:30')).toBe(1);
  });

  test('food finished on the day is cooked together only for events for which it does not stand too long', () => {
    // Ready 1 h 30 of set-up and 30 min of loading before 12:30; it stands 4 h, so until 14:30.
    const hot = { ...soup, hold: 'hot' as const, stands: minutes(240) };
    const events = (serveAt: string) =>
      dayBatches([plan('lunch', 20, { serveAt: '12:30' }, hot), plan('later', 10, { serveAt }, hot)], DATE)
        .filter(({ recipe: { id } }) => id === 'soup')
        .map((batch) => batch.events.length);
    expect(events('14:30')).toEqual([2]);
    expect(events('14:31')).toEqual([1, 1]);
  });

  test('a recipe in which an event swaps something is cooked by itself', () => {
    const swapped = { ...soup, lines: [line(stock, '1 qt'), line(food('peas'), '2 lb')] };
    const batches = dayBatches([plan('lunch', 20), plan('dinner', 10, {}, swapped)], DATE);
    expect(batches.map(({ events }) => events.length)).toEqual([1, 1]);
  });

  test('what is made apart for a need, and what goes into it, is mixed with nothing', () => {
    const apart = (id: string, adults: number) => {
      const made = plan(id, adults);
      const portions = { apart: { recipe: 'soup', changes: [] } } as unknown as NonNullable<
        (typeof made.dishes)[number]['dish']['portions']
      >;
      return { ...made, dishes: made.dishes.map((each) => ({ ...each, dish: { ...each.dish, portions } })) };
    };
    const plans = [apart('lunch', 20), plan('dinner', 10)];
    for (const date of ['2027-05-15', '2027-05-14'])
      expect(dayBatches(plans, day(date)).map(({ events }) => events.length)).toEqual([1, 1]);
  });
});
