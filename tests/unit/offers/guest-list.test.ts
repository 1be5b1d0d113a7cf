import { describe, expect, test } from 'vitest';
import type { CourseTerms } from '../../../src/engine/quote/terms.ts';
import { listDifferences } from '../../../src/offers/guest-list/differences.ts';
import { needKey, needOf } from '../../../src/offers/guest-list/need.ts';
import { guestRows } from '../../../src/offers/guest-list/rows.ts';
import { mealsByTable, tablesOf } from '../../../src/offers/guest-list/tables.ts';
import type { ListedGuest } from '../../../src/schema/event-fact.ts';

const course = (name: string, ...dishes: [recipe: string, name: string][]) =>
  ({ name, dishes: dishes.map(([recipe, called]) => ({ recipe, name: called })) }) as unknown as CourseTerms;
const MAIN = course('Main', ['trout', 'Smoked trout'], ['tart', 'Leek tart']);
const SWEET = course('Sweet', ['pears', 'Poached pears'], ['plums', 'Baked plums']);

const read = (csv: string) => guestRows(csv, [MAIN, SWEET]);
const keys = (csv: string) => {
  const { problems, notes } = read(csv);
  return { problems: problems.map(({ key }) => key), notes: notes.map(({ key }) => key) };
};
const guest = (name: string, facts: Partial<ListedGuest> = {}): ListedGuest => ({
  name,
  table: '1',
  mains: {},
  need: '',
  ...facts,
});

describe('a guest list', () => {
  test('has its columns by any of their names, the first course also as “main”, the others by their own', () => {
    const rows = [
      'Guest,Table No,Allergies,Meal,Sweet,Shoe size',
      'Ada Fenn,3,nut allergy,trout,plums,7',
      "'=1+1,,,Leek,Poached,",
    ];
    const { guests, problems, notes } = read(rows.join('\n'));
    expect(guests).toEqual([
      { name: 'Ada Fenn', table: '3', need: 'nuts', mains: { Main: 'trout', Sweet: 'plums' } },
      { name: '=1+1', table: '', need: '', mains: { Main: 'tart', Sweet: 'pears' } },
    ]);
    expect(problems).toEqual([]);
    expect(notes).toEqual([
      { key: 'guests.column-unused', values: { column: 'Shoe size' } },
      { key: 'guests.no-table', values: { row: '3', name: '=1+1' } },
    ]);
  });

  test('is refused without names, without guests, and with more than a thousand', () => {
    expect(read('table,need\n1,vegan').problems).toEqual([
      { key: 'guests.no-name-column', values: { columns: { by: 'comma', list: ['table', 'need'] } } },
    ]);
    expect(read('').problems).toEqual([
      {
        key: 'guests.broken-row',
        values: { row: '1', what: 'the file is empty', way: 'name the columns on the first line' },
      },
    ]);
    expect(keys('name\n')).toEqual({ problems: ['guests.none'], notes: [] });
    const many = (count: number) =>
      read(`name\n${Array.from({ length: count }, (_, at) => `Guest ${at}`).join('\n')}`);
    expect(many(1000).problems).toEqual([]);
    expect(many(1001).problems.map(({ values }) => values)).toEqual([{ guests: '1001', most: '1000' }]);
    expect(many(1001).guests).toHaveLength(1000);
  });

  test('with a broken row is refused for it alone, so that no guest of it is lost', () => {
    for (const csv of ['name,table\nAda Fenn,1\nBert Rook', 'name,table\nBert Rook'])
      expect(keys(csv).problems).toEqual(['guests.broken-row']);
  });

  test('keeps an apostrophe that is part of a name', () => {
    const names = (name: string) => read(`name,table\n${name},1`).guests.map((each) => each.name);
    expect(names("Ada O'-Fenn")).toEqual(["Ada O'-Fenn"]);
    expect(names("'-Ada")).toEqual(['-Ada']);
    expect(names("'Ada'")).toEqual(["'Ada'"]);
  });

  test('names the row of a guest without a name, of a text too long, hidden, and of a dish that is not on the menu', () => {
    const problems = (row: string) => read(`name,table,need,main\n${row}`).problems;
    expect(problems(',4,,')).toEqual([{ key: 'guests.no-name', values: { row: '2' } }]);
    // A row without a name has nothing else to be looked at.
    expect(read('name,table,need,main\n,,vegan,').notes).toEqual([]);
    const long = (name: number, table: number, need: number) =>
      problems(`${'n'.repeat(name)},${'t'.repeat(table)},${'x'.repeat(need)},`).map(
        ({ values: { text, most } }) => `${text} ${most}`,
      );
    expect(long(80, 20, 120)).toEqual([]);
    expect(long(81, 21, 121)).toEqual(['name 80', 'table 20', 'need 120']);
    expect(problems('Ada\u200b,1,,').map(({ key, values }) => [key, values.row])).toEqual([
      ['guests.text', '2'],
    ]);
    expect(problems('Ada,1,,soup')).toEqual([
      {
        key: 'guests.no-such-dish',
        values: {
          row: '2',
          written: 'soup',
          course: 'Main',
          dishes: { by: 'comma', list: ['Smoked trout', 'Leek tart'] },
        },
      },
    ]);
  });

  test('notes a need nobody knows, a dish that is missing, and two rows of one name, whatever its case', () => {
    const { notes } = read('name,table,need,main,sweet\nAda Fenn,1,no lovage,tart,\nada fenn,1,,tart,pears');
    expect(notes).toEqual([
      { key: 'guests.need-unknown', values: { row: '2', need: 'no lovage', name: 'Ada Fenn' } },
      { key: 'guests.no-dish', values: { row: '2', name: 'Ada Fenn', course: 'Sweet' } },
      { key: 'guests.same-name', values: { name: 'Ada Fenn', rows: { by: 'comma', list: ['2', '3'] } } },
    ]);
  });
});

describe('a need as a guest writes it', () => {
  test.each([
    ['none', ''],
    ['N/A', ''],
    [' – ', ''],
    ['-', ''],
    ['--', ''],
    ['nothing', ''],
    ['Vegan,  nut allergy', 'vegan + nuts'],
    ['allergic to milk and sesame', 'milk + sesame'],
    ['Allergy: peanut', 'peanut'],
    ['allergy:peanut', 'peanut'],
    ['no  lovage', 'no lovage'],
    ['gluten-free', 'no gluten'],
    ['Gluten free / vegetarian', 'no gluten + vegetarian'],
    ['vegan,', 'vegan'],
    ['vegan &vegetarian', 'vegan + vegetarian'],
    // What only holds such words is kept as it is, so that somebody reads it.
    ['mostly gluten-free', 'mostly gluten-free'],
    ['gluten-free oats are fine', 'gluten-free oats are fine'],
    ['mild allergy to nuts', 'mild allergy to nuts'],
    ['no lovage, please', 'no lovage, please'],
  ])('“%s” is “%s”', (written, need) => {
    expect(needOf(written)).toBe(need);
  });

  test('has one key in any order and number, and another for anything else', () => {
    expect(needKey('vegan + tree nuts')).toBe(needKey('tree nut + vegan'));
    expect(needKey('tree nuts')).not.toBe(needKey('peanuts'));
    expect(needKey('No Lovage ')).toBe(needKey('no lovage'));
    expect(needKey('no lovage')).not.toBe(needKey('lovage'));
  });
});

describe('a list beside the count', () => {
  const list = [
    guest('Ada', { need: 'tree nut', mains: { Main: 'trout' } }),
    guest('Bert', { mains: { Main: 'trout' } }),
    guest('Cora', { mains: { Main: 'tart' } }),
  ];
  const choice = (facts: object = {}) => ({
    guests: { adults: 2, children: 1, vendors: 0, staff: 0 },
    mains: { Main: { trout: 2, tart: 1 } },
    needs: { 'tree nuts': 1 },
    ...facts,
  });

  test('says nothing where both agree, those who work that day listed or not', () => {
    expect(listDifferences(list, choice(), [MAIN])).toEqual([]);
    const working = { adults: 1, children: 0, vendors: 1, staff: 1 };
    expect(listDifferences(list, choice({ guests: working }), [MAIN])).toEqual([]);
  });

  test('counts none planned of a course that no count was made for', () => {
    const [dishes] = listDifferences(list, choice({ mains: {} }), [MAIN]);
    expect(dishes).toMatchObject({ key: 'found.list-dishes', values: { course: 'Main' } });
    expect(JSON.stringify(dishes)).toContain('"listed":2,"planned":0');
  });

  test('tells one guest too many or too few', () => {
    const of = (adults: number, vendors = 0) =>
      listDifferences(list, choice({ guests: { adults, children: 0, vendors, staff: 0 } }), [MAIN]);
    expect(of(4)).toEqual([{ key: 'found.list-count', values: { n: 3, planned: 4 } }]);
    expect(of(2)).toEqual([{ key: 'found.list-count', values: { n: 3, planned: 2 } }]);
    expect(of(1, 1)).toEqual([{ key: 'found.list-count', values: { n: 3, planned: 1 } }]);
  });

  test('tells dishes and needs with both counts, and who has a need that more or fewer are planned for', () => {
    const differing = choice({ mains: { Main: { trout: 1, tart: 2 } }, needs: { vegan: 2 } });
    const [dishes, ...needs] = listDifferences(list, differing, [MAIN]);
    expect(dishes).toMatchObject({ key: 'found.list-dishes', values: { course: 'Main' } });
    expect(JSON.stringify(dishes)).toContain('"listed":2,"planned":1');
    expect(JSON.stringify(dishes)).toContain('"listed":1,"planned":2');
    expect(needs).toEqual([
      { key: 'found.list-need', values: { need: 'vegan', listed: 0, planned: 2 } },
      {
        key: 'found.list-need-who',
        values: { need: 'tree nut', listed: 1, planned: 0, who: { by: 'comma', list: ['Ada'] } },
      },
    ]);
  });
});

describe('tables', () => {
  const seated = [
    guest('Ada', { table: '10', mains: { Main: 'trout' } }),
    guest('Bert', { table: '', mains: { Main: 'tart' } }),
    guest('Cora', { table: 'rose', mains: { Main: 'tart' } }),
    guest('Dora', { table: '2', mains: { Main: 'trout' } }),
    guest('Egon', { table: 'Rose' }),
  ];

  test('go as people number them, then by name, those without one last', () => {
    expect(tablesOf(seated).map(([table, guests]) => [table, guests.map(({ name }) => name)])).toEqual([
      ['2', ['Dora']],
      ['10', ['Ada']],
      ['rose', ['Cora', 'Egon']],
      ['', ['Bert']],
    ]);
  });

  test('count each dish of a course, and the guests of whom none is on record', () => {
    expect(mealsByTable(seated, MAIN)).toEqual([
      { table: '2', counts: [1, 0], unsaid: 0 },
      { table: '10', counts: [1, 0], unsaid: 0 },
      { table: 'rose', counts: [0, 1], unsaid: 1 },
      { table: '', counts: [0, 1], unsaid: 0 },
    ]);
  });
});
