import { describe, expect, test } from 'vitest';
import { usualKit } from '../../src/book/read/usual-kit.ts';
import { readBook } from '../../src/check/read-book.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith } from './small-content.ts';

/** The small kitchen with a grill and kit. */
const withKit = (kit: string) =>
  contentWith(
    changed(
      'kitchen.yaml',
      'add-ons:',
      `equipment:\n  grill: { name: Charcoal grill, station: stove, travels: yes }\n${kit}\nadd-ons:`,
    ),
  );
const kitIn = async (dir: string) => (await readBook(dir)).book!.kitchen.kit;

describe('kit: what check says', () => {
  test('nothing of rules by all that is counted', async () => {
    const dir = withKit(
      'kit:\n  extinguisher: 1 per event, 1 per charcoal grill\n  tray: { name: Trays, amount: [2 per server, 1 per 20 guests], counts: adults, for: buffet, if: [no cover, Rain], note: the round ones }',
    );
    expect(await foundIn(dir)).toBe('');
    const kit = await kitIn(dir);
    expect(kit?.get('extinguisher')?.rules.map(({ base }) => base)).toEqual([
      { kind: 'event' },
      { kind: 'equipment', equipment: 'grill', name: 'Charcoal grill' },
    ]);
    expect(kit?.get('tray')).toMatchObject({
      name: 'Trays',
      rules: [
        { base: { kind: 'role', role: 'server', name: 'Servers' } },
        { per: 20n, base: { kind: 'guest' } },
      ],
      counts: { adults: '1' },
      styles: ['buffet'],
      venue: ['cover'],
      weather: ['rain'],
      note: 'the round ones',
    });
  });

  test('a kitchen that says nothing of it has none', async () => {
    expect((await readBook(contentWith())).book!.kitchen).not.toHaveProperty('kit');
  });

  test('the usual kit is read whole, and one line takes it', async () => {
    const dir = withKit('usual kit: yes');
    expect(await foundIn(dir)).toBe('');
    const kit = (await kitIn(dir))!;
    expect([...kit.keys()]).toEqual(Object.keys(usualKit()));
    expect(
      ['gloves', 'trash-bags', 'crew-water', 'tongs', 'hand-wash'].map((id) => kit.get(id)?.usedUp),
    ).toEqual([true, true, true, undefined, undefined]);
  });

  test('what is used up says so, and a kitchen may collect what the usual kit uses up', async () => {
    const dir = withKit(
      'usual kit: yes\nkit:\n  gloves: { used up: no }\n  candles: { amount: 2 per line, used up: yes }',
    );
    expect(await foundIn(dir)).toBe('');
    const kit = (await kitIn(dir))!;
    expect([kit.get('gloves')?.usedUp, kit.get('candles')?.usedUp]).toEqual([undefined, true]);
  });

  test('a kitchen adds to the usual kit, changes a field of it and leaves some out', async () => {
    const dir = withKit(
      'usual kit: yes\nkit:\n  tongs: 3 per cook\n  canopy: { note: the blue ones }\n  board: none\n  drum: 1 per event',
    );
    expect(await foundIn(dir)).toBe('');
    const kit = (await kitIn(dir))!;
    expect(kit.has('board')).toBe(false);
    expect([...kit.keys()].at(-1)).toBe('drum');
    expect(kit.get('tongs')).toMatchObject({
      name: usualKit().tongs?.name,
      rules: [{ written: '3 per cook' }],
    });
    expect(kit.get('canopy')).toMatchObject({ note: 'the blue ones', venue: ['cover'] });
  });

  test('rules, words and ids that are none, each at its place', async () => {
    const dir = withKit(
      [
        'usual kit: yes',
        'kit:',
        '  one: two of them',
        '  two: 1 per gril',
        '  three: { amount: 1 per event, for: standing, if: no watter }',
        '  four: { name: Four }',
        '  tonngs: none',
        '  six: 1 per event, 2 gal per 10 guests',
      ].join('\n'),
    );
    expect(await foundIn(dir)).toMatchInlineSnapshot(`
      "content/kitchen.yaml:19:8 error not-understood “two of them” does not tell how many go along for what — write it such as “2 per event”, “1 per 50 guests” or “1 per field-oven”
      content/kitchen.yaml:20:8 error unknown-id kit goes per “gril”, which is nothing that is counted — did you mean grill?
      content/kitchen.yaml:21:38 error unknown-word “standing” is not a service style — choose from plated, buffet, family style, stations
      content/kitchen.yaml:21:52 error unknown-word “no watter” is nothing that kit can depend on — did you mean no water?
      content/kitchen.yaml:22:3 error missing-field “amount” of “four” is missing — write it, such as “amount: 1 per event”
      content/kitchen.yaml:23:3 error unknown-id the usual kit has no “tonngs” to leave out — did you mean tongs?
      content/kitchen.yaml:24:8 error not-understood “2 gal per 10 guests” is in another unit than “1 per event”, so they can’t be summed — write all rules of one thing in one unit"
    `);
    const kit = (await kitIn(dir))!;
    expect(['one', 'two', 'three', 'four', 'tonngs', 'six'].filter((id) => kit.has(id))).toEqual([]);
  });
});
