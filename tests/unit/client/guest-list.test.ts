import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { guestListCsv, listSums, readGuestList } from '../../../src/client/guest-list.ts';
import { sentListWords } from '../../../src/client/guest-list-panel.ts';
import { plated } from './client-data.ts';

const courses = plated.courses.filter(({ eachGuest }) => eachGuest);

describe('a guest list', () => {
  it('is read from lines, however they were pasted, dishes by the beginning of their names', () => {
    const list = readGuestList('Ada Lund; 4; la; no gluten\n\nBo\t5\tHAKE\nCy Ott;6\r\n', courses);
    expect(list.problems).toEqual([]);
    expect(list.guests).toEqual([
      { name: 'Ada Lund', table: '4', dishes: ['lamb'], need: 'no gluten' },
      { name: 'Bo', table: '5', dishes: ['hake'], need: '' },
      { name: 'Cy Ott', table: '6', dishes: [''], need: '' },
    ]);
    expect(listSums(list, courses, { Main: { lamb: 40, hake: 24 } })).toEqual([
      'Main: Lamb 1 of 40, Hake 1 of 24.',
    ]);
  });

  it('says in which line a dish or a name cannot be made out', () => {
    const { problems } = readGuestList('Ada; 1; goose\n; 2; lamb', courses);
    expect(problems).toEqual([
      'Line 1: “goose” is not a dish of Main, or could be more than one.',
      'Line 2 doesn’t begin with a name.',
    ]);
  });

  it('becomes a CSV that another parser reads back, with no cell a spreadsheet would run', () => {
    const list = readGuestList('O’Hara, "Kit"; 1; lamb; =1+1\n@sum(A1); -2; hake', courses);
    const csv = guestListCsv(list, courses);
    expect(csv.startsWith('name,table,main,need\r\n')).toBe(true);
    const rows = parse(csv, { columns: true }) as Record<string, string>[];
    expect(rows).toEqual([
      { name: 'O’Hara, "Kit"', table: '1', main: 'Lamb', need: "'=1+1" },
      { name: "'@sum(A1)", table: "'-2", main: 'Hake', need: '' },
    ]);
  });

  it.each([
    [{ by: 'post' }, 'Quay has received it. A list sent later replaces it.'],
    [
      { by: 'mail' },
      'An email with it should now be open, ready to send. The file l.csv has been saved to your downloads too.',
    ],
    [
      { by: 'failed post', why: 'It is late.' },
      'It couldn’t be sent: It is late. The file l.csv has been saved to your downloads; please send it to us: nothing has reached us yet.',
    ],
  ] as const)('says what became of it where it went by %j', (way, words) => {
    expect(sentListWords({ name: 'l.csv' }, way, 'Quay')).toBe(words);
  });
});
