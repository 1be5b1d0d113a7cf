import { describe, expect, test } from 'vitest';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

const SHEET = 'site-sheets/net-loft.yaml';
const named = (id = 'net-loft') =>
  changed('proposals/gale.md', 'place: hill-town\n', `place: hill-town\nsite sheet: ${id}\n`);

describe('site sheets: what check says', () => {
  test('nothing of one that answers nothing yet', async () => {
    expect(await foundIn(contentWith({ ...named(), [SHEET]: 'name: The Net Loft\n' }))).toBe('');
  });

  test('a sheet that is not there, a field that is none, an answer that cannot be read, a photo that is missing', async () => {
    const sheet = 'name: The Net Loft\npower: plenty\nphotos: { photos/gate.jpg: The gate }\n';
    expect(await foundIn(contentWith({ ...named('net-lift'), [SHEET]: sheet }))).toMatchInlineSnapshot(`
      "content/proposals/gale.md:8:13 error unknown-id no site sheet is called “net-lift” — did you mean net-loft?
      content/site-sheets/net-loft.yaml:2:8 note venue-not-understood “power: plenty” does not tell the circuits in amperes, so it counts as not stated — write how many and of how much, such as “two 20 A circuits”, or “none”
      content/site-sheets/net-loft.yaml:3:11 warning site-photo-missing there is no picture photos/gate.jpg in the content folder — put it there, or take the line out"
    `);
    expect(
      await foundIn(contentWith({ ...named(), [SHEET]: 'name: The Net Loft\nwatter: yes\n' })),
    ).toMatchInlineSnapshot(
      `"content/site-sheets/net-loft.yaml:2:1 error unknown-field there is no field “watter” here — did you mean water?"`,
    );
    expect(
      await foundIn(contentWith({ ...named(), [SHEET]: 'adress: 4 Chandler Row\n' })),
    ).toMatchInlineSnapshot(`
      "content/site-sheets/net-loft.yaml:1:1 error missing-field “name” is missing — write it, such as “name: Old Ropeworks” (its name; clients read it)
      content/site-sheets/net-loft.yaml:1:1 error unknown-field there is no field “adress” here — did you mean address?"
    `);
  });
});
