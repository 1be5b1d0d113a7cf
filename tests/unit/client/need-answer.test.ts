import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import { needAnswer } from '../../../src/client/need-answer.ts';
import { columnsFor } from '../../../src/engine/food/allergen-columns.ts';
import { type Need, parseNeed } from '../../../src/engine/food/need.ts';
import { recipeSuits, variantFor } from '../../../src/engine/food/variant.ts';
import type { DishTerms } from '../../../src/engine/quote/terms.ts';
import { recipeFacts } from '../../../src/offers/issue/dish-terms.ts';
import { dishNeeds, needLabels } from '../../../src/views/client/need-filter-of.ts';

const content = fileURLToPath(new URL('../../../content', import.meta.url));
const { book } = await readBook(content);
const recipes = [...book!.recipes.values()];
const termsOf = (recipe: (typeof recipes)[number]): DishTerms => ({
  recipe: recipe.id,
  name: recipe.name,
  perGuest: '1 each per guest',
  counts: {},
  ...recipeFacts(recipe),
});

/** What each tick of the page means to the kitchen. */
const MEANING: Record<string, string> = {
  'crustacean shellfish': 'crustaceans',
  'wheat or gluten (allergy)': 'no gluten',
  soybeans: 'soy',
  'sesame seeds': 'sesame',
  'sulfur dioxide and sulfites': 'sulphites',
  nuts: 'tree nuts',
};

function needOf(label: string): Need | undefined {
  const diet = parseNeed(label);
  if (diet.ok) return diet.value;
  const name = label.replace(/^no /, '');
  const need = parseNeed(MEANING[name] ?? name);
  return need.ok ? need.value : undefined;
}

describe.each([[['us'] as const], [['eu'] as const]])(
  'what a dish is for a guest, under the law of %s',
  ([law]) => {
    const columns = columnsFor([law], recipes.map(termsOf));
    const labels = needLabels(columns, 'en-US');
    const needs = labels.map(needOf);

    test('every tick is a need the kitchen knows', () => {
      expect(labels.filter((_, index) => !needs[index])).toEqual([]);
      expect(labels.length).toBeGreaterThanOrEqual(law === 'us' ? 15 : 20);
    });

    test('is on every dish of the demo what the kitchen says, for each need and each two together', () => {
      const seen = { suits: 0, 'on request': 0, not: 0, ask: 0 };
      for (const recipe of recipes) {
        const { suits, made } = dishNeeds(termsOf(recipe), columns);
        for (const [first, one] of needs.entries())
          for (const [second, other] of needs.entries()) {
            if (second < first) continue;
            const answer = needAnswer(suits, made, first === second ? [first] : [first, second]);
            const both: Need = { kind: 'all', of: [one, other] as never };
            const known = recipeSuits(recipe, both);
            const about = `${recipe.id}: ${labels[first]} and ${labels[second]}`;
            seen[answer] += 1;
            expect([about, answer === 'suits']).toEqual([about, known === 'yes']);
            if (answer === 'on request')
              expect([about, variantFor(recipe, both) !== undefined]).toEqual([about, true]);
            if (first === second && answer === 'ask') expect([about, known]).toEqual([about, 'unknown']);
          }
      }
      for (const count of Object.values(seen)) expect(count).toBeGreaterThan(0);
    });
  },
);

describe('answers to several needs', () => {
  test('are no promise where each is met only by a dish of its own', () => {
    expect(needAnswer('nn', '0 1', [0, 1])).toBe('ask');
    expect(needAnswer('nn', '0+1', [0, 1])).toBe('on request');
    expect(needAnswer('yn', '1', [0, 1])).toBe('ask');
    expect(needAnswer('ny', '', [0, 1])).toBe('not');
  });

  test('are never a yes where something is unknown', () => {
    expect(needAnswer('uy', '', [0])).toBe('ask');
    expect(needAnswer('uy', '', [0, 1])).toBe('ask');
    expect(needAnswer('uy', '', [1])).toBe('suits');
  });

  test('tell a dish with unsaid allergens from one without, and name a warning of traces a no', () => {
    const dish = { ...termsOf(recipes[0]!), marks: [], contains: [], onRequest: [] };
    const columns = columnsFor(['us'], []);
    const milk = needLabels(columns, 'en-US').indexOf('no milk');
    expect(dishNeeds({ ...dish, mayContain: [], unsaid: true }, columns).suits[milk]).toBe('u');
    expect(dishNeeds({ ...dish, mayContain: ['milk'] }, columns).suits[milk]).toBe('n');
    expect(dishNeeds({ ...dish, mayContain: [] }, columns).suits[milk]).toBe('y');
  });
});
