import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { digestOfRecord } from '../../../src/offers/digest.ts';
import { needKey, needOf } from '../../../src/offers/guest-list/need.ts';
import { tablesOf } from '../../../src/offers/guest-list/tables.ts';
import { fileWith } from '../../commands/accepted-kitchen.ts';
import { run } from '../../commands/run.ts';
import { bookOf, done, EVENT, factsIn, refusal, supperKitchen } from './supper-kitchen.ts';

const DAY = '2027-04-26';
const take = (dir: string, csv: string, ...words: string[]) =>
  done(dir, DAY, 'guests', EVENT, '--from', fileWith(csv), ...words);
const refuse = (dir: string, csv: string, ...words: string[]) =>
  refusal(dir, DAY, 'guests', EVENT, '--from', fileWith(csv), ...words);

/** As many rows as the supper has guests, with as many mains and needs; the first row is the sheet's second. */
function fullList(change: (row: string, index: number) => string = (row) => row): string {
  const rows = Array.from({ length: 84 }, (_, index) => {
    const main = index < 63 ? 'Lamb stew' : 'Pea pot';
    const need = index < 2 ? 'milk' : index >= 80 ? 'vegan' : '';
    return change(`Guest ${index + 1},${Math.floor(index / 8) + 1},${main},${need}`, index);
  });
  return ['name,table,main,need', ...rows, ''].join('\r\n');
}

/** A list as the client's page posts it. */
function posted(dir: string, csv: string, changes: object = {}): string {
  const accepted = factsIn(dir)[0]?.fact;
  const record = {
    version: 1,
    kind: 'guest list',
    event: EVENT,
    offer: accepted?.digest,
    made: '2027-04-20',
    csv,
  };
  const whole = { ...record, ...changes };
  return JSON.stringify({ ...whole, digest: digestOfRecord(whole) });
}

describe('a guest list', () => {
  test('is a fact of the event, told by table, and has nothing to say where it fits the count', async () => {
    const dir = await supperKitchen();
    const said = await take(dir, fullList());
    expect(said.split('\n').slice(0, 5)).toEqual([
      `Guest list of ${EVENT}: 84 guests.`,
      '',
      'Main, by table:',
      '  Table 1: 8 × Lamb stew',
      '  Table 2: 8 × Lamb stew',
    ]);
    // Table 8 has guests 57 to 64, of whom the first seven take the stew.
    expect(said).toContain('  Table 8: 7 × Lamb stew, 1 × Pea pot\n');
    expect(said).toContain('  Table 11: Guest 84, vegan\n');
    expect(said).not.toMatch(/differ|looked at|deadline/);
    const { file, fact } = factsIn(dir).at(-1) as { file: string; fact: { guests: unknown[] } };
    expect(file).toBe('003-guest-list.json');
    expect(fact).toMatchObject({ kind: 'guest list', on: DAY });
    expect(fact.guests[80]).toEqual({
      name: 'Guest 81',
      table: '11',
      mains: { Main: 'pea-pot' },
      need: 'vegan',
    });
    expect((await bookOf(dir)).events.get(EVENT)?.facts).toHaveLength(3);
  });

  test('that says something else than the count is told apart by guests, mains and needs', async () => {
    const dir = await supperKitchen();
    const said = await take(
      dir,
      fullList((row, index) => (index === 0 ? 'Guest 1,1,pea,Tree nuts' : row)).replace(
        'Guest 84,11,Pea pot,vegan\r\n',
        '',
      ),
    );
    expect(said).toContain(
      [
        'The list and the planned count differ:',
        '  the list has 83 guests, but 84 are planned at the table.',
        '  Main: Lamb stew 62 on the list (63 planned).',
        '  milk: 1 on the list (Guest 2), 2 planned.',
        '  vegan: 3 on the list (Guest 81, Guest 82, Guest 83), 4 planned.',
        '  Tree nuts: 1 on the list (Guest 1), 0 planned.',
      ]
        .join('\n')
        .replace('Tree nuts', 'tree nuts'),
    );
  });

  test('has its columns in any order and case, and names for a name, a need and a dish as people write them', async () => {
    const dir = await supperKitchen();
    const csv = 'Diet;GUEST;Table;Note;Main\nnut allergy, vegan;Ada Lund;Top;x;pot\nnone;Bo;;;lamb-stew\n';
    const said = await take(dir, csv);
    const fact = factsIn(dir).at(-1)?.fact as { guests: unknown };
    expect(fact.guests).toEqual([
      { name: 'Ada Lund', table: 'Top', mains: { Main: 'pea-pot' }, need: 'nuts + vegan' },
      { name: 'Bo', table: '', mains: { Main: 'lamb-stew' }, need: '' },
    ]);
    expect(said).toContain('  the column “Note” is not used.\n  row 3: Bo has no table.\n');
  });

  test('is noted where a name stands twice, a need is not known, or a dish is not said', async () => {
    const said = await take(
      await supperKitchen(),
      'name,table,main,need\nAda,1,,celiac\nBo,1,lamb,\nada,2,pea,\n',
    );
    expect(said).toContain(
      [
        'Check these:',
        '  row 2: “celiac” for Ada is not a diet or allergy that Salver knows; check the dishes by hand.',
        '  row 2: Ada has no dish of Main.',
        '  Ada is in rows 2, 4.',
      ].join('\n'),
    );
  });

  test.each<[string, string, string]>([
    ['without a name', 'name,main\nAda,lamb\n,pea\n', 'row 3 has no name'],
    [
      'with a dish that the menu has not',
      'name,main\nAda,goose\n',
      'row 2: “goose” does not match exactly one dish of Main; write one of Lamb stew, Pea pot',
    ],
    [
      'without a column for names',
      'table,main\n1,lamb\n',
      'there is no column called name; the columns are table, main',
    ],
    ['that is empty', 'name,table\n', 'the list has no guests'],
    ['with a quotation mark that stays open', 'name,table\nAda,"1\nBo,2\n', 'row 2: a quotation mark'],
    ['with a control code', 'name,table\nA\u001b[2J,1\n', 'row 2: '],
    ['with a name too long for a card', `name\n${'a'.repeat(81)}\n`, 'row 2: the name is longer than 80'],
    ['of too many', `name\n${'Ada\n'.repeat(1001)}`, 'the list has 1001 guests, and the limit is 1000'],
  ])('%s is refused with its row, and nothing is written', async (_what, csv, sentence) => {
    const dir = await supperKitchen();
    expect(await refuse(dir, csv)).toContain(`Can’t do that: ${sentence}`);
    expect(factsIn(dir)).toHaveLength(2);
  });

  test('keeps hostile words as words: a formula, a tag, a key of objects', async () => {
    const dir = await supperKitchen();
    await take(dir, `name,table,main,need\n'=HYPERLINK(A1),@x,pea,__proto__\n<b>Bo</b>,1,lamb,constructor\n`);
    const fact = factsIn(dir).at(-1)?.fact as { guests: { name: string; table: string; need: string }[] };
    expect(fact.guests.map(({ name, table, need }) => [name, table, need])).toEqual([
      ['=HYPERLINK(A1)', '@x', '__proto__'],
      ['<b>Bo</b>', '1', 'constructor'],
    ]);
    await bookOf(dir);
  });

  test('is replaced by a later one, and the same one is refused', async () => {
    const dir = await supperKitchen();
    await take(dir, fullList());
    expect(await refuse(dir, fullList())).toContain('this list is the same as the last one');
    await take(dir, fullList().replace('Guest 1,1', 'Guest One,1'));
    expect(factsIn(dir).map(({ file }) => file)).toContain('004-guest-list.json');
  });

  test('after the deadline is taken and marked, by the day the client gave it', async () => {
    const dir = await supperKitchen();
    const late = await done(dir, '2027-05-12', 'guests', EVENT, '--from', fileWith(fullList()));
    expect(late).toContain(
      'It came after the deadline of Saturday, May 8, 2027: there may be no time left to cook what it changes.',
    );
    const other = await supperKitchen();
    const given = await done(
      other,
      '2027-05-12',
      'guests',
      EVENT,
      '--from',
      fileWith(fullList()),
      '--on',
      '2027-05-07',
    );
    expect(given).not.toContain('deadline');
  });

  test('that the page posted says its event and day itself, and goes from the inbox to those taken', async () => {
    const dir = await supperKitchen();
    mkdirSync(join(dir, 'inbox'));
    writeFileSync(join(dir, 'inbox/list.json'), posted(dir, fullList()));
    await done(dir, DAY, 'guests', '--from', 'inbox/list.json');
    expect(factsIn(dir).at(-1)?.fact).toMatchObject({ on: DAY, given: '2027-04-20' });
    expect(readdirSync(join(dir, 'inbox'))).toEqual(['taken']);
  });

  test.each<[string, object, RegExp]>([
    ['another offer', { offer: '0'.repeat(64) }, /for another offer than/],
    ['tomorrow', { made: '2027-04-27' }, /can’t have been given on Tuesday, April 27, 2027/],
    ['another form', { guests: 4 }, /Unrecognized key/],
  ])('posted for %s is refused', async (_what, changes, sentence) => {
    const dir = await supperKitchen();
    expect(await refuse(dir, posted(dir, fullList(), changes))).toMatch(sentence);
    const damaged = posted(dir, fullList()).replace('Guest 1,', 'Guest 9,');
    expect(await refuse(dir, damaged)).toMatch(/altered or damaged/);
  });

  test('for no event, or read from no file, is a wrong call', async () => {
    const dir = await supperKitchen();
    const file = fileWith(fullList());
    expect(await run(dir, 'guests', EVENT)).toMatchObject({ code: 2, out: '' });
    expect(await run(dir, 'guests', '--from', file)).toMatchObject({ code: 2, out: '' });
    expect(await run(dir, 'guests', EVENT, '--from', `${file}x`)).toMatchObject({ code: 2, out: '' });
    expect(await refusal(dir, DAY, 'guests', 'nobody', '--from', file)).toContain('there is no event nobody');
  });
});

describe('a need on a list', () => {
  test.each([
    ['Vegan and no gluten', 'vegan + no gluten'],
    ['Allergic to peanuts', 'peanuts'],
    ['gluten-free / Milk allergy', 'no gluten + milk'],
    ['N/A', ''],
    ['no shellfish please', 'no shellfish please'],
  ])('written %j is %j', (written, need) => {
    expect(needOf(written)).toBe(need);
  });

  test('is the same in one number or the other and in any order, and never another kind', () => {
    expect(needKey('tree nut + vegan')).toBe(needKey('Vegan + tree nuts'));
    expect(needKey('almond')).not.toBe(needKey('tree nuts'));
    expect(needKey('Celiac')).not.toBe(needKey('no gluten'));
  });
});

test('tables stand as they are numbered, then those with names, guests without one last', () => {
  const at = (table: string) => ({ name: 'A', table, mains: {}, need: '' });
  const order = tablesOf(['10', '', 'Top', '2', 'top', '1'].map(at)).map(([table, guests]) => [
    table,
    guests.length,
  ]);
  expect(order).toEqual([
    ['1', 1],
    ['2', 1],
    ['10', 1],
    ['Top', 2],
    ['', 1],
  ]);
});
