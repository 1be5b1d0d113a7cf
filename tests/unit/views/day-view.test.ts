import { expect, test } from 'vitest';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { dayCrew } from '../../../src/views/kitchen/day/crew-of.ts';
import { dayRecipes } from '../../../src/views/kitchen/day/recipes-of.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { inWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from '../plan/builders.ts';

const DATE = day('2027-05-15');
const soup = recipe('soup', '1 gal', [line(food('beans'), '2 lb')], {
  batches: 'whole',
  steps: [step('on the day', 'Heat', { handsOn: minutes(40) }), step('at serving', 'Ladle')],
});
const stock = recipe('stock', '1 gal', [line(food('bones'), '3 lb')], {
  steps: [step('the day before', 'Simmer')],
});
const chowder = recipe('chowder', '1 gal', [line(stock, '1 qt')], { steps: [step('on the day', 'Heat')] });

function plan(id: string, adults: number, of = soup) {
  const guests = { adults, children: 0, vendors: 0, staff: 0 };
  const input = event([dish(of, '8 fl oz per guest')], { id, occasion: id, guests, date: DATE });
  return planEvent(input, kitchen(), prices());
}

const setting = {
  system: 'us' as const,
  laws: [],
  stations: new Map(),
  notesOf: () => '',
  nameOf: (id: string) => id,
  containers: new Map(),
  inWords,
  say: wordsIn('en-US'),
};

test('a day’s card says the amounts of all its events, the split, and how many batches are saved', () => {
  const [found] = dayRecipes([plan('lunch', 20), plan('dinner', 10)], DATE, setting);
  expect(found?.events.map(({ id }) => id)).toEqual(['lunch', 'dinner']);
  expect(found?.fewer).toBe('2 × the recipe together; separately it would take 3');
  expect(found?.card.lines.map(({ amount, name }) => `${amount.printed} ${name}`)).toEqual(['4 lb beans']);
  expect(found?.card.usedBy.map(({ by, need }) => `${need.printed} for ${by}`)).toEqual([
    '1 gal 1 qt for soup (lunch)',
    '2 qt 2 cups for soup (dinner)',
  ]);
});

test('a part cooked on another day is named on a card, without a link to a card that is not there', () => {
  const cards = dayRecipes([plan('lunch', 20, chowder)], DATE, setting);
  expect(cards.map(({ card }) => card.id)).toEqual(['chowder']);
  expect(cards[0]?.card.lines.map(({ kind, name }) => [kind, name])).toEqual([['ingredient', 'stock']]);
});

test('hands-on time over all events is held against the crew, work at serving left out', () => {
  const plans = [plan('lunch', 20), plan('dinner', 10)];
  const crew = { people: 1, each: minutes(60), from: undefined };
  expect(dayCrew(plans, DATE, crew, wordsIn('en-US'))?.over).toMatch(/^20 min more than the crew has/);
  expect(dayCrew(plans, DATE, { ...crew, people: 2 }, wordsIn('en-US'))?.over).toBe('');
  expect(dayCrew(plans, DATE, undefined, wordsIn('en-US'))).toBeNull();
});
