import { readFileSync } from 'node:fs';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import { parseOrigin } from '../../../src/engine/food/origin.ts';
import { contradictions, parseConversion } from '../../../src/engine/measure/conversions.ts';
import { allFoods, hundredths, storeRoomFiles, words } from './read-store-room.ts';

const foods = allFoods();
const FIELDS = [
  'name',
  'from',
  'contains',
  'may contain',
  'conversions',
  'yield',
  'yields',
  'storage',
  'sold as',
  'source',
];

test('every file is read with the failsafe schema, and together they hold at least 170 foods', () => {
  expect(storeRoomFiles().length).toBeGreaterThanOrEqual(12);
  expect(foods.length).toBeGreaterThanOrEqual(170);
  for (const food of foods) expect(typeof food.fields.name, food.id).toBe('string');
});

test('no id stands twice, in one file or over two', () => {
  const ids = foods.map((food) => food.id);
  expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([]);
  expect(ids.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
});

test('every food says what it comes from, what it contains, how it is stored and where its figures come from', () => {
  for (const { id, fields } of foods) {
    expect(
      Object.keys(fields).filter((field) => !FIELDS.includes(field)),
      id,
    ).toEqual([]);
    expect(words(fields.from).length, id).toBeGreaterThan(0);
    for (const word of words(fields.from)) expect(parseOrigin(word), id).toMatchObject({ ok: true });
    for (const word of [...words(fields.contains), ...words(fields['may contain'] ?? 'none')])
      expect(parseAllergen(word), id).toMatchObject({ ok: true });
    expect(['dry', 'chilled', 'frozen'], id).toContain(fields.storage);
    expect(fields.source, id).toMatch(/^\S.{9,}/);
  }
});

test('a food with a figure names a publication or says that the figure is from memory', () => {
  for (const { id, fields } of foods)
    if (fields.conversions !== undefined || fields.yield !== undefined)
      expect(fields.source, id).toMatch(
        /USDA SR (Legacy )?\d{5}|Armed Forces factor \d\.\d\d|from memory, not checked against the publication$/,
      );
});

test('the README claims as many published figures as there are, and no more', () => {
  const sources = foods.map(({ fields }) => String(fields.source));
  const without = sources.filter((source) => source.startsWith('no figures')).length;
  const remembered = sources.filter((source) =>
    source.endsWith('from memory, not checked against the publication'),
  );
  const published = foods.length - without - remembered.length;
  const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8').replaceAll(/\s+/g, ' ');
  expect(readme).toContain(
    `brings ${foods.length} plain foods with what they come from and their allergens.`,
  );
  expect(readme).toContain(
    `Of these, ${published} have yields or weights, each with its published source; ${remembered.length} oils have a weight from memory, not checked against the publication; ${without} have no figures.`,
  );
  for (const { id, fields } of foods)
    if (String(fields.source).startsWith('no figures'))
      expect([fields.conversions, fields.yield, fields.yields], id).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
});

test('every yield lies above 0 and up to 100 %, and whoever lists preparations gives a default', () => {
  for (const { id, fields } of foods) {
    const yields = (fields.yields ?? {}) as Record<string, unknown>;
    for (const share of [fields.yield ?? '100 %', ...Object.values(yields)]) {
      expect(hundredths(share), id).toBeGreaterThan(0n);
      expect(hundredths(share), id).toBeLessThanOrEqual(10000n);
    }
    if (fields.yields !== undefined) expect(fields.yield, id).toBeDefined();
  }
});

test('every conversion is understood, reaches a weight, and no two of one food contradict each other', () => {
  for (const { id, fields } of foods) {
    const conversions = ((fields.conversions ?? []) as string[]).map((text) => {
      const conversion = parseConversion(text);
      if (!conversion.ok) throw new Error(`${id}: ${conversion.what}`);
      expect(['g', 'lb'], id).toContain(conversion.value.right.unit);
      return conversion.value;
    });
    expect(contradictions(conversions, new Fraction(0n)), id).toEqual([]);
  }
});

test('what an animal gives and the allergen it is agree, both ways', () => {
  const pairs = [
    ['milk', 'milk'],
    ['egg', 'egg'],
    ['fish', 'fish'],
    ['crustacean', 'crustacean'],
    ['mollusc', 'mollusc'],
  ] as const;
  for (const { id, fields } of foods) {
    const groups = words(fields.contains).map((word) => {
      const allergen = parseAllergen(word);
      return allergen.ok ? allergen.value.group : word;
    });
    for (const [origin, group] of pairs)
      expect(groups.includes(group), `${id}: ${origin}`).toBe(words(fields.from).includes(origin));
  }
});
