import { describe, expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import { isAllergy, mayHelp, parseNeed, suitsNeed } from '../../../src/engine/food/need.ts';
import { must } from '../plan/builders.ts';

const need = (text: string) => must(parseNeed(text));
const facts = (contains: readonly string[], mayContain: readonly string[] = []) => {
  const sources = (texts: readonly string[]) =>
    texts.map((text) => ({ allergen: must(parseAllergen(text)), paths: [] }));
  return { contains: sources(contains), mayContain: sources(mayContain), unsaid: [] };
};
const suits = (text: string, ...of: Parameters<typeof facts>) => suitsNeed(need(text), facts(...of), []);

describe('a need', () => {
  test.each([
    ['nuts', ['peanut']],
    ['nuts', ['almond']],
    ['shellfish', ['crustacean (shrimp)']],
    ['shellfish', ['mollusc (squid)']],
    ['dairy', ['milk']],
    ['eggs', ['egg']],
    ['almonds', ['almond']],
    ['wheat', ['spelt']],
    ['wheat', ['khorasan']],
    ['wheat', ['triticale']],
    ['spelt', ['wheat']],
    ['fish (cod)', ['fish (cod)']],
  ])('%s is not suited by %s, contained or warned of', (text, allergens) => {
    expect([suits(text, allergens), suits(text, [], allergens)]).toEqual(['no', 'no']);
  });

  test.each([
    ['wheat', ['rye']],
    ['wheat', ['milk']],
    ['rye', ['wheat']],
    ['almond', ['pecan']],
    ['fish (cod)', ['fish (hake)']],
    ['fish (cod)', ['mollusc (cod)']],
    ['tree nuts', ['peanut']],
  ])('%s has nothing against %s', (text, allergens) => {
    expect(suits(text, allergens)).toBe('yes');
  });

  test('that is about a diet nobody has worked out is unknown', () => {
    expect(suits('vegan', [])).toBe('unknown');
  });

  test('with an allergy in it, alone or beside a diet, is one where traces matter', () => {
    expect(['vegan', 'no gluten', 'vegan + no gluten'].map((text) => isAllergy(need(text)))).toEqual([
      false,
      false,
      false,
    ]);
    expect(['milk', 'almond', 'vegan + milk', 'almond + vegan'].map((text) => isAllergy(need(text)))).toEqual(
      [true, true, true, true],
    );
  });

  test('of one part is that part, and of several all of them', () => {
    expect(need('vegan')).toEqual({ kind: 'diet', diet: 'vegan' });
    expect(need(' Vegan  +  no   gluten ')).toEqual({ kind: 'all', of: [need('vegan'), need('no gluten')] });
  });
});

describe('what a cook does for one need', () => {
  test.each([
    ['vegan', 'vegetarian', true],
    ['vegan', 'pescatarian', true],
    ['vegetarian', 'pescatarian', true],
    ['vegetarian', 'vegan', false],
    ['pescatarian', 'vegetarian', false],
    ['vegan', 'vegan', true],
    ['no gluten', 'no gluten', true],
    ['vegan', 'no gluten', false],
    ['no gluten', 'vegan', false],
    ['no pork', 'no gluten', false],
    ['vegan', 'milk', false],
    ['milk', 'vegan', false],
    ['shellfish', 'crustaceans', true],
    ['crustaceans', 'shellfish', true],
    ['nuts', 'peanuts', true],
    ['nuts', 'milk', false],
    ['almond', 'tree nuts', true],
    ['tree nuts', 'almond', true],
    ['almond', 'pecan', false],
    ['almond', 'milk', false],
    ['vegan + no gluten', 'no gluten', true],
    ['no gluten', 'vegan + no gluten', true],
    ['vegan + no gluten', 'milk', false],
  ])('%s may help with %s: %s', (done, asked, helps) => {
    expect(mayHelp(need(done), need(asked))).toBe(helps);
  });
});
