import { describe, expect, test } from 'vitest';
import { allergenText, compareAllergens, parseAllergen } from '../../../src/engine/food/allergen.ts';
import { columnsFor } from '../../../src/engine/food/allergen-columns.ts';
import { declaredNames, lawColumns, outsideLaw } from '../../../src/engine/food/allergen-law.ts';
import { must } from '../plan/builders.ts';

const allergens = (...texts: string[]) => texts.map((text) => must(parseAllergen(text)));

describe('an allergen as a file writes it', () => {
  test.each(['fish', 'crustacean', 'mollusc'])(
    '%s alone is refused, since the law asks for the kind',
    (word) => {
      const read = parseAllergen(word);
      expect(read).toMatchObject({ ok: false, what: `“${word}” does not name the kind of ${word}` });
      expect(must(parseAllergen(`${word} (some kind)`))).toEqual({ group: word, kind: 'some kind' });
    },
  );

  test('may have other spaces and capitals, and is written back in one form', () => {
    for (const text of ['brazil nut', ' Brazil   Nut ', 'BRAZIL NUT', 'tree nut ( brazil  nut )'])
      expect(allergenText(must(parseAllergen(text))), text).toBe('brazil nut');
    expect(allergenText(must(parseAllergen('Fish(Cod)')))).toBe('fish (cod)');
  });

  test('is told what may be written where it is none', () => {
    expect(parseAllergen('gluten')).toMatchObject({
      ok: false,
      what: '“gluten” is not an allergen that Salver knows',
      wayOut: expect.stringMatching(
        /^write one of milk, egg, peanut, .*wheat, .*almond, .*chestnut, or fish \(…\)/,
      ),
    });
  });

  test('stands in the order of Regulation (EU) No 1169/2011, Annex II, then by kind', () => {
    const mixed = allergens('mollusc (squid)', 'walnut', 'milk', 'rye', 'almond', 'barley', 'egg');
    expect(mixed.toSorted(compareAllergens).map(allergenText)).toEqual([
      'barley',
      'rye',
      'egg',
      'milk',
      'almond',
      'walnut',
      'mollusc (squid)',
    ]);
    const [rye, wheat] = allergens('rye', 'wheat');
    expect([compareAllergens(rye!, wheat!), compareAllergens(wheat!, rye!)]).toEqual([-1, 1]);
    const [same] = allergens('rye');
    expect(compareAllergens(same!, { ...same! })).toBe(0);
  });
});

describe('the names a law wants', () => {
  test('take in each kind once, and only what the law covers', () => {
    expect(declaredNames(allergens('almond', 'almond', 'pecan', 'milk', 'rye'), ['us'])).toEqual([
      'milk',
      'tree nuts (almond, pecan)',
    ]);
    expect(declaredNames(allergens('almond', 'pine nut', 'rye'), ['eu'])).toEqual([
      'cereals containing gluten (rye)',
      'nuts (almond)',
    ]);
  });

  test('under both laws go by the one that covers more of a group, and what it leaves by the other', () => {
    // Pine nut is a tree nut in the US alone, rye a gluten cereal in the EU alone.
    expect(declaredNames(allergens('almond', 'pine nut'), ['eu', 'us'])).toEqual([
      'tree nuts (almond, pine nut)',
    ]);
    expect(declaredNames(allergens('wheat', 'rye'), ['us', 'eu'])).toEqual([
      'cereals containing gluten (rye, wheat)',
    ]);
    expect(declaredNames(allergens('wheat'), ['us', 'eu'])).toEqual(['wheat']);
    expect(declaredNames(allergens('wheat'), ['eu', 'us'])).toEqual(['cereals containing gluten (wheat)']);
  });

  test('leave out what no law names, which is told besides', () => {
    expect(declaredNames(allergens('celery'), ['us'])).toEqual([]);
    expect(outsideLaw(allergens('celery', 'milk', 'rye', 'wheat'), ['us']).map(allergenText)).toEqual([
      'celery',
      'rye',
    ]);
    expect(outsideLaw(allergens('celery', 'pine nut'), ['eu']).map(allergenText)).toEqual(['pine nut']);
    expect(outsideLaw(allergens('celery', 'pine nut'), ['us', 'eu'])).toEqual([]);
  });
});

describe('the columns of a table by allergen', () => {
  test('are nine in the US (21 U.S.C. 321(qq)), fourteen in the EU (Annex II), and each group once for both', () => {
    expect(lawColumns(['us']).map(({ name }) => name)).toEqual([
      'milk',
      'egg',
      'fish',
      'crustacean shellfish',
      'tree nuts',
      'wheat',
      'peanuts',
      'soybeans',
      'sesame',
    ]);
    expect(lawColumns(['eu'])).toHaveLength(14);
    const both = lawColumns(['us', 'eu']);
    expect(new Set(both.map(({ group }) => group)).size).toBe(both.length);
    expect(both).toHaveLength(14);
    // Of two names for a group the one that leaves out fewer kinds, on a tie that of the first law.
    const named = (laws: Parameters<typeof lawColumns>[0], group: string) =>
      lawColumns(laws).find((law) => law.group === group)?.name;
    expect([named(['us', 'eu'], 'cereal'), named(['eu', 'us'], 'tree nut')]).toEqual([
      'cereals containing gluten',
      'tree nuts',
    ]);
    expect([named(['us', 'eu'], 'milk'), named(['eu', 'us'], 'egg'), named(['us', 'eu'], 'egg')]).toEqual([
      'milk',
      'eggs',
      'egg',
    ]);
  });

  test('are joined by what else the dishes state, contained or warned of, in the order of Annex II', () => {
    const columns = columnsFor(
      ['us'],
      [
        { contains: ['mollusc (squid)', 'milk'], mayContain: ['celery'] },
        { contains: ['rye'], mayContain: ['celery', 'no allergen at all'] },
      ],
    );
    expect(columns.slice(9).map(({ name, kind, kindNamed }) => [name, kind, kindNamed])).toEqual([
      ['rye', 'rye', false],
      ['celery', null, false],
      ['mollusc (squid)', 'squid', false],
    ]);
    expect(columns.filter(({ kind }) => kind === 'wheat').map(({ name }) => name)).toEqual(['wheat']);
  });

  test('each take in what is theirs and nothing else', () => {
    const columns = columnsFor(['us'], [{ contains: ['rye', 'celery'], mayContain: [] }]);
    const takeRate = (text: string) =>
      columns.filter(({ takes }) => takes(must(parseAllergen(text)))).map(({ name }) => name);
    expect(takeRate('spelt')).toEqual(['wheat']);
    expect(takeRate('rye')).toEqual(['rye']);
    expect(takeRate('celery')).toEqual(['celery']);
    expect(takeRate('pine nut')).toEqual(['tree nuts']);
    expect(takeRate('mustard')).toEqual([]);
  });
});
