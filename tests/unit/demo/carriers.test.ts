import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { explain } from '../../../src/exports/explanation.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const today = '2027-04-26' as Day;
const say = wordsIn('en-US');

async function weddingPlan() {
  const { book } = await readBook('content');
  if (!book) throw new Error('the demo kitchen has a Book');
  const planned = await plannedEvent(book, 'farrowick-wedding', today);
  if (!planned.ok || !planned.value.plan.ok) throw new Error('the wedding has a plan');
  return planned.value.plan.value;
}

describe('the wedding on its van', () => {
  test('has every container of its pack-out in the carriers that its line and its labels name, and no more', async () => {
    const { carriers = [], packOut, labels } = await weddingPlan();
    const food = packOut.filter(({ group }) => group === 'food');
    for (const line of food.filter((each) => each.carriers)) {
      const inside = carriers
        .filter(({ number }) => line.carriers?.includes(number))
        .flatMap(({ hold, foods }) => foods.filter((each) => each.item === line.item && hold === line.hold));
      expect(
        inside.reduce((sum, { count }) => sum + count, 0),
        line.item,
      ).toBeGreaterThanOrEqual(line.count);
    }
    const packed = carriers.flatMap(({ foods }) => foods).reduce((sum, { count }) => sum + count, 0);
    expect(packed).toBe(food.filter((each) => each.carriers).reduce((sum, { count }) => sum + count, 0));
    expect(labels.filter(({ carrier }) => carrier !== undefined)).toHaveLength(packed);
    // What goes on the van without a carrier goes in something that needs none.
    expect(food.filter((each) => !each.carriers).map(({ container }) => container)).toEqual([
      'Rack of covered plates',
    ]);
  });

  test('has raw food in a carrier of its own, and only there', async () => {
    const { carriers = [], packOut } = await weddingPlan();
    const raw = packOut.filter((line) => line.raw).map(({ item }) => item);
    expect(raw).toEqual(['Hake in a parcel with leek and lemon']);
    for (const carrier of carriers)
      expect(carrier.foods.every(({ item }) => raw.includes(item))).toBe(carrier.raw);
  });

  test('has ice for cold carriers alone, warmth for hot ones, and all of them in one zone of the van', async () => {
    const { carriers = [], van } = await weddingPlan();
    for (const { hold, ice, warmth } of carriers)
      expect([hold, ice !== null, warmth !== null]).toEqual([hold, hold === 'cold', hold === 'hot']);
    const { cab = [], middle = [], doors = [] } = van?.zones ?? {};
    const zones = [...doors, ...middle, ...cab];
    expect([...zones].sort((a, b) => a - b)).toEqual(carriers.map(({ number }) => number));
    expect(Math.max(...doors)).toBeLessThan(Math.min(...cab));
    expect(van?.runs).toBe(1);
  });

  test('is explained carrier by carrier', async () => {
    const plan = await weddingPlan();
    const hot = plan.carriers?.find(({ hold }) => hold === 'hot');
    const found = explain(plan, `carrier ${hot?.number}`, say, () => []);
    expect(found.ok && found.value.map(({ about }) => about)).toEqual([
      `Carrier ${hot?.number}: Insulated hot carrier`,
    ]);
    expect(found.ok && found.value[0]?.why).toContain(hot?.warmth?.why);
    const none = explain(plan, 'carrier 99', say, () => []);
    expect(none.ok ? '' : none.wayOut).toMatch(/^did you mean carrier \d/);
  });
});
