import { expect, test } from 'vitest';
import { alertText } from '../../../src/exports/plan/alerts.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const CHOWDER = 'Smoked haddock chowder';
const CRUMBLE = 'Apple and oat crumble';

const alertsFor = async (needs: Record<string, number>, ...changes: Change[]) =>
  (await planOf(accepted(await secondKitchen(...changes), { needs }))).alerts;

test('a diet’s alert tells the dishes that are not for it and those that suit', async () => {
  const [vegetarian] = await alertsFor({ vegetarian: 5 });
  expect(vegetarian).toMatchObject({ about: '5 × vegetarian', notFor: [CHOWDER], suits: [CRUMBLE] });
});

test('an allergy’s alert finds the allergen in a part of a part', async () => {
  const [celery] = await alertsFor({ celery: 1 });
  expect(celery).toMatchObject({ about: '1 × allergy: celery', notFor: [CHOWDER], suits: [CRUMBLE] });
});

test('an allergy rules out what may contain the allergen', async () => {
  // The bread may contain oats, and the crumble is made of them.
  const [oats] = await alertsFor({ oats: 1 });
  expect(oats).toMatchObject({ notFor: [CHOWDER, CRUMBLE], suits: [] });
});

test('a menu that feeds somebody nothing is said', async () => {
  const [vegan] = await alertsFor({ vegan: 3 });
  expect(alertText(vegan!, wordsIn('en-US'))).toBe(
    `3 × vegan. No dish on this menu suits them. Not for them: ${CHOWDER}, ${CRUMBLE}.`,
  );
});

test('a need that nobody knows is for a person to see to, never passed over', async () => {
  const [kiwi] = await alertsFor({ 'kiwi fruit': 1 });
  expect(kiwi?.about).toBe('1 × kiwi fruit');
  expect(kiwi?.what).toMatch(/ask the client/);
});

test('a need of nobody is no alert', async () => {
  expect(await alertsFor({ vegan: 0 })).toEqual([]);
});

test('allergens nobody has said come first, and leave an allergy unknown; raw animal food is told', async () => {
  const event = accepted(await secondKitchen(), { needs: { milk: 1, sesame: 2 } });
  const since = await secondKitchen(
    ['ingredients/own.yaml', '  contains: fish (haddock)\n', ''],
    ['recipes/apple-oat-crumble.mdx', 'hold: room', 'hold: room\ncontains raw: yes'],
  );
  const { alerts } = await planOf({ ...since, offers: event.offers, events: event.events });
  expect(alerts.map(({ about }) => about)).toEqual([
    CHOWDER,
    '1 × allergy: milk',
    '2 × allergy: sesame',
    CRUMBLE,
  ]);
  expect(alerts[0]?.what).toContain('Smoked haddock, undyed');
  expect(alerts[2]).toMatchObject({ notFor: [], notKnown: [CHOWDER], suits: [CRUMBLE] });
  expect(alerts[3]?.what).toMatch(/raw or undercooked/i);
});
