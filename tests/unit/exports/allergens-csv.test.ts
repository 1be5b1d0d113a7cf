import { describe, expect, test } from 'vitest';
import { DIETS } from '../../../src/engine/food/diet.ts';
import { allergensCsv } from '../../../src/exports/files/allergens-csv.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';
import { demoPlans } from './demo-plans.ts';
import { readCsv } from './read-csv.ts';

const say = wordsIn('en-US');

function recordsOf(text: string): Record<string, string>[] {
  const [header = [], ...rows] = readCsv(text);
  return rows.map((row) => Object.fromEntries(header.map((name, index) => [name, row[index] ?? ''])));
}

const US = [
  'milk',
  'egg',
  'fish',
  'crustacean shellfish',
  'tree nuts',
  'wheat',
  'peanuts',
  'soybeans',
  'sesame',
];

/** The US name of an allergen as a content file writes it; of what the law does not name nothing. */
function usName(word: string): string | undefined {
  if (['wheat', 'spelt', 'khorasan', 'triticale'].includes(word)) return 'wheat';
  if (/^(almond|hazelnut|walnut|cashew|pecan|brazil nut|pistachio|macadamia|pine nut|chestnut)$/.test(word))
    return 'tree nuts';
  const [group = ''] = word.split(' (');
  const names: Record<string, string> = {
    crustacean: 'crustacean shellfish',
    peanut: 'peanuts',
    soy: 'soybeans',
  };
  return US.find((name) => name === (names[group] ?? group));
}

describe('allergens.csv', () => {
  test('has a row for every dish of the demo’s events and what is made apart, and leaves no field empty', async () => {
    for (const plan of await demoPlans()) {
      const records = recordsOf(allergensCsv(plan, ['us'], say));
      expect(records.map(({ dish }) => dish)).toEqual(plan.dishes.map(({ name }) => name));
      for (const record of records)
        for (const name of [...US, ...DIETS]) expect([record.dish, name, record[name]]).not.toContain('');
    }
  });

  test('says the same as the plan: what it contains, what labels warn of, and the ways in', async () => {
    const [plan] = await demoPlans();
    const records = recordsOf(allergensCsv(plan!, ['us'], say));
    let warned = 0;
    for (const [index, dish] of plan!.dishes.entries()) {
      const record = records[index]!;
      const saying = (words: string) => US.filter((name) => record[name]!.includes(words));
      const lawful = (sources: typeof dish.allergenPaths) =>
        US.filter((name) => sources.some(({ allergen }) => usName(allergen) === name));
      expect([dish.name, saying('contains')]).toEqual([dish.name, lawful(dish.allergenPaths)]);
      expect([dish.name, saying('may contain')]).toEqual([dish.name, lawful(dish.mayContainPaths)]);
      warned += saying('may contain').length;
      for (const { paths } of [...dish.allergenPaths, ...dish.mayContainPaths])
        for (const path of paths) expect(record['contains via'] + record['may contain via']!).toContain(path);
      for (const { diet, suits } of dish.diets)
        expect(record[diet]).toBe(suits === 'unknown' ? 'not known' : suits);
    }
    expect(warned).toBeGreaterThan(0);
  });

  test('names a hidden source by its way: celery by the stock, for portions made apart not', async () => {
    const records = (await demoPlans()).flatMap((plan) => recordsOf(allergensCsv(plan, ['us', 'eu'], say)));
    const celery = records.filter((record) => record.celery === 'contains');
    expect(celery.some((record) => /celery: [^;]*stock → Celery/i.test(record['contains via']!))).toBe(true);
    expect(records.some((record) => record['made separately for'] !== '')).toBe(true);
  });

  test('says not known where nobody has said, and never no', async () => {
    const event = accepted(await secondKitchen());
    const since = await secondKitchen(['ingredients/own.yaml', '  contains: fish (haddock)\n', '']);
    const plan = await planOf({ ...since, offers: event.offers, events: event.events });
    const [chowder] = recordsOf(allergensCsv(plan, ['us'], say));
    expect(chowder).toMatchObject({
      fish: 'not known',
      sesame: 'not known',
      'not stated': 'Smoked haddock, undyed',
    });
    expect(chowder!.milk).toBe('contains');
  });
});
