/** Files whose every small change must be noticed, and the tests nearest to them. */
export interface Area {
  readonly mutate: readonly string[];
  readonly tests: readonly string[];
  /**
   * The share of mutants, in hundredths, that the tests must find. What is left are changes that show nowhere: a memory
   * that is not kept, a tie between equals, a text that is trimmed twice, how an error is worded.
   */
  readonly found: number;
}

/** What matters most: who can eat what, what is paid, how much is cooked and bought. */
export const AREAS: Readonly<Record<string, Area>> = {
  allergens: {
    mutate: [
      'src/engine/food/allergen.ts',
      'src/engine/food/allergen-columns.ts',
      'src/engine/food/allergen-law.ts',
      'src/engine/food/allergens-known.ts',
      'src/engine/food/allergens-of.ts',
      'src/engine/food/diets-of.ts',
      'src/engine/food/need.ts',
      'src/engine/food/variant.ts',
      'src/engine/food/batches.ts',
    ],
    tests: [
      'tests/unit/food/*.test.ts',
      'tests/property/allergens.test.ts',
      'tests/reference/food/*.test.ts',
    ],
    found: 85,
  },
  money: {
    mutate: ['src/engine/money/*.ts'],
    tests: ['tests/unit/money/*.test.ts', 'tests/property/money.test.ts', 'tests/reference/money/*.test.ts'],
    found: 85,
  },
  quote: {
    mutate: ['src/engine/quote/*.ts'],
    tests: [
      'tests/unit/quote/*.test.ts',
      'tests/property/{quote,menu-floor}.test.ts',
      'tests/reference/money/*.test.ts',
    ],
    found: 85,
  },
};
