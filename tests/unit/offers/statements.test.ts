import { describe, expect, test } from 'vitest';
import {
  asNow,
  asPublished,
  onOffered,
  onRecord,
  onServed,
  type Statement,
  swappedIn,
  withStatements,
} from '../../../src/offers/corrections/statements.ts';
import type { SubstitutionFact } from '../../../src/schema/event-fact.ts';

const swap = (from: string, to: string, what: 'dish' | 'ingredient' = 'ingredient') =>
  ({ kind: 'substitution', what, from, to }) as SubstitutionFact;
const said = (facts: Partial<Statement>): Statement => ({
  recipe: 'tart',
  contains: [],
  mayContain: [],
  lostMarks: [],
  ...facts,
});

test('a food is in until a later swap takes it out again', () => {
  expect(swappedIn([swap('butter', 'oil'), swap('leek', 'onion')])).toEqual(['oil', 'onion']);
  expect(swappedIn([swap('butter', 'oil'), swap('oil', 'tahini')])).toEqual(['tahini']);
  expect(swappedIn([swap('oil', 'tahini'), swap('butter', 'oil')])).toEqual(['tahini', 'oil']);
  expect(swappedIn([swap('tart', 'stew', 'dish'), swap('butter', 'oil')])).toEqual(['oil']);
  expect(swappedIn([swap('butter', 'oil'), swap('oil', 'stew', 'dish')])).toEqual(['oil']);
});

describe('what is on record of an offer', () => {
  const records = (revision: number, of: Statement) => [{ revision, dishes: [of] }];
  const [first, second] = [said({ contains: ['milk'] }), said({ contains: ['egg'] })];
  const book = {
    corrections: new Map([['gale', [...records(1, first), ...records(2, second)]]]),
    told: new Map([['gale', records(2, first)]]),
    held: new Map([['corrections/storm', 'it is no JSON']]),
  } as unknown as Parameters<typeof onRecord>[1];

  test('is of its proposal and its revision, and lost where what was published cannot be read', () => {
    expect(onRecord({ proposal: 'gale', revision: 2 }, book)).toEqual({
      published: [second],
      told: [first],
      isLost: false,
    });
    expect(onRecord({ proposal: 'gale', revision: 1 }, book)).toMatchObject({ published: [first], told: [] });
    expect(onRecord({ proposal: 'storm', revision: 1 }, book)).toEqual({
      published: [],
      told: [],
      isLost: true,
    });
  });

  test('counts on the page for ever, and for whoever tells only while the dish cannot be read', () => {
    const record = { published: [first], told: [second], isLost: false };
    expect([asPublished(record, true), asPublished(record, false)]).toEqual([[first], [first, second]]);
    expect([asNow(record, true), asNow(record, false)]).toEqual([[], [first, second]]);
  });
});

describe('a statement is of', () => {
  const offered = said({ contains: ['milk'] });
  const instead = said({ instead: 'stew', contains: ['egg'] });
  const made = said({ madeWith: ['tahini', 'oil'], contains: ['sesame'] });
  const both = said({ instead: 'stew', madeWith: ['tahini'], contains: ['celery'] });
  const other = said({ recipe: 'soup' });
  const all = [offered, instead, made, both, other];

  test('the dish that was offered where it names neither another nor a food taken instead', () => {
    expect(onOffered(all, 'tart')).toEqual([offered]);
    expect(onOffered(all, 'soup')).toEqual([other]);
  });

  test('the dish as it is served where the same is served, with a food still in that it was made with', () => {
    const served = (dish: { instead?: string; isReadable: boolean }, ...swaps: SubstitutionFact[]) =>
      onServed({ published: all, told: [], isLost: false }, asPublished, { recipe: 'tart', ...dish }, swaps);
    expect(served({ isReadable: true })).toEqual([]);
    expect(served({ isReadable: true }, swap('butter', 'oil'))).toEqual([made]);
    expect(served({ isReadable: true }, swap('butter', 'tahini'), swap('tahini', 'lard'))).toEqual([]);
    // While the dish cannot be read nobody knows what a swap took out of it.
    expect(served({ isReadable: false })).toEqual([offered]);
    expect(served({ isReadable: false }, swap('butter', 'oil'))).toEqual([offered, made]);
    expect(served({ instead: 'stew', isReadable: true })).toEqual([instead]);
    expect(served({ instead: 'stew', isReadable: true }, swap('butter', 'tahini'))).toEqual([instead, both]);
    expect(served({ instead: 'pie', isReadable: true })).toEqual([]);
  });
});

describe('facts of a dish with what is stated of it', () => {
  const food = {
    marks: ['vegan', 'vegetarian'],
    contains: ['rye'],
    mayContain: ['milk', 'celery'],
    onRequest: ['no gluten', 'milk'],
  };

  test('have every allergen, contained before warned of, and only the claims that no statement ends', () => {
    const first = said({ contains: ['milk'], lostMarks: ['vegan'] });
    const second = said({ contains: ['rye'], mayContain: ['egg', 'milk'], lostMarks: ['milk on request'] });
    expect(withStatements(food, [first, second])).toEqual({
      marks: ['vegetarian'],
      contains: ['rye', 'milk'],
      mayContain: ['celery', 'egg'],
      onRequest: ['no gluten'],
    });
  });

  test('are the same without any, and name no requests where none is left', () => {
    expect(withStatements(food, [])).toBe(food);
    const lost = said({ lostMarks: ['no gluten on request', 'milk on request'] });
    expect(withStatements({ ...food, unsaid: true }, [lost])).toEqual({
      marks: food.marks,
      contains: food.contains,
      mayContain: food.mayContain,
      unsaid: true,
    });
  });
});
