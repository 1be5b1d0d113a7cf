import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { copyOf, pictureOf, SECOND_KITCHEN } from './kitchen-copy.ts';
import { findingsOf, run } from './run.ts';

const SAID = {
  client: 'Maeve Dorrity',
  email: 'maeve@dorrity.example',
  occasion: 'Harbour wedding',
  date: '2027-07-03',
  adults: '40',
  packages: 'storm-supper, chowder-lunch',
};

const flags = (said: Record<string, string>) =>
  Object.entries(said).flatMap(([flag, value]) => [`--${flag}`, value]);
const begin = (dir: string, said: Record<string, string>, ...words: string[]) =>
  run(dir, 'new', 'harbour-wedding', ...flags(said), '--today', '2027-04-26', ...words);
const linkIn = (dir: string) =>
  /^link: (.*)$/m.exec(readFileSync(join(dir, 'proposals/harbour-wedding.md'), 'utf8'))?.[1] ?? '';

/** A kitchen whose servers are sold for as long as any of its menus takes them. */
const kitchen = () => copyOf(SECOND_KITCHEN, [['kitchen.yaml', 'hours: 4 hours', 'hours: 7 hours']]);

describe('new begins a proposal', () => {
  // Names of devices on Windows, from memory of Microsoft's "Naming Files, Paths, and Namespaces".
  test.each(['con', 'nul', 'aux', 'prn', 'com1', 'lpt9'])(
    'but under no name that Windows keeps: %s',
    async (id) => {
      const dir = copyOf();
      const before = pictureOf(dir);
      expect(await run(dir, 'new', id, ...flags(SAID), '--today', '2027-04-26')).toEqual({
        code: 2,
        out: '',
        err: `Windows reserves the name ${id}, so no file there can have it; add a word, such as ${id}-supper.\n`,
      });
      expect(pictureOf(dir)).toEqual(before);
      expect((await run(dir, 'new', `${id}-supper`, ...flags(SAID), '--today', '2027-04-26')).code).toBe(0);
    },
  );

  test('from flags; what it writes has no finding, can be priced and can be issued', async () => {
    const dir = kitchen();
    const { code, out, err } = await begin(dir, SAID);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(
      'Written: proposals/harbour-wedding.md. Write the letter below the data, then run: issue harbour-wedding.\n',
    );
    expect(await findingsOf(dir, 'proposals/harbour-wedding.md')).toEqual([]);
    expect((await run(dir, 'issue', 'harbour-wedding', '--today', '2027-04-26')).code).toBe(0);
  });

  test('with a link of at least 100 random bits, another each time, in the alphabet of addresses', async () => {
    const dirs = [copyOf(), copyOf()];
    for (const dir of dirs) await begin(dir, SAID);
    const [one = '', two = ''] = dirs.map(linkIn);
    for (const link of [one, two]) {
      expect(link).toMatch(/^[a-z2-7]+$/);
      expect(link.length * Math.log2(32)).toBeGreaterThanOrEqual(100);
    }
    expect(one).not.toBe(two);
  });

  test('with names that YAML and Markdown would read otherwise', async () => {
    const dir = kitchen();
    const client = 'O’Hara & <Sons>: *the* #1 [caterers] `_x_`';
    await begin(dir, { ...SAID, client, occasion: 'yes', adults: '040' });
    expect(await findingsOf(dir, 'proposals/harbour-wedding.md')).toEqual([]);
    const { code, out } = await run(dir, 'issue', 'harbour-wedding', '--today', '2027-04-26', '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      client: { name: client },
      occasion: 'yes',
      guests: { adults: 40 },
    });
  });

  test('says as JSON where it is', async () => {
    const dir = copyOf();
    const { out } = await begin(dir, SAID, '--json');
    const file = join(dir, 'proposals/harbour-wedding.md');
    expect(JSON.parse(out)).toEqual({ id: 'harbour-wedding', file, link: linkIn(dir) });
  });

  test('does not let it be accepted after the event where nothing is said', async () => {
    const dir = kitchen();
    await begin(dir, { ...SAID, date: '2027-05-03' });
    expect(readFileSync(join(dir, 'proposals/harbour-wedding.md'), 'utf8')).toContain(
      'valid until: 2027-05-03\n',
    );
    expect(await findingsOf(dir, 'proposals/harbour-wedding.md')).toEqual([]);
  });
});

describe('new writes nothing', () => {
  test('without a terminal to ask in: it names what is missing', async () => {
    const dir = copyOf();
    const before = pictureOf(dir);
    expect(await begin(dir, { client: 'Maeve Dorrity', date: '2027-07-03' })).toEqual({
      code: 2,
      out: '',
      err: 'Not running in a terminal, so give --occasion, --adults, --packages.\n',
    });
    expect(pictureOf(dir)).toEqual(before);
  });

  test('over a proposal that is there', async () => {
    const dir = copyOf();
    const before = pictureOf(dir);
    const { code, out, err } = await run(dir, 'new', 'lifeboat-evening', ...flags(SAID));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toBe(
      'Can’t do that: there is already a proposal lifeboat-evening — choose another id, or edit that proposal.\n',
    );
    expect(pictureOf(dir)).toEqual(before);
  });

  test.each<[Record<string, string>, string]>([
    [{ date: '2027-06-31' }, '--date: 2027-06-31 does not exist; '],
    [{ packages: 'storm-super' }, '--packages: “storm-super” is not known; did you mean storm-supper?'],
    [{ packages: 'storm-supper,storm-supper' }, '--packages: Name each one once.'],
    [{ place: 'dunmarrow, dunmarrow' }, '--place: Name one only.'],
    [{ place: 'elsewhere' }, '--place: “elsewhere” is not known; choose from dunmarrow.'],
    [{ email: 'maeve' }, '--email: Write it as name@example.org, or leave it blank.'],
    [{ client: '   ' }, '--client: Please enter something.'],
    [{ 'serve-at': '25:00' }, '--serve-at: Write the time such as 5:30 pm or 17:30.'],
    [{ adults: '1.5' }, '--adults: '],
  ])('that does not fit: %j', async (change, sentence) => {
    const dir = copyOf();
    const before = pictureOf(dir);
    const { code, out, err } = await begin(dir, { ...SAID, ...change });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err.startsWith(sentence)).toBe(true);
    expect(err.trimEnd()).not.toContain('\n');
    expect(pictureOf(dir)).toEqual(before);
  });

  test.each(['../escape', 'Harbour', 'a b', 'a--b', '-a', 'a'.repeat(61)])('under the id %j', async (id) => {
    const dir = copyOf();
    const before = pictureOf(dir);
    const { code, err } = await run(dir, 'new', ...flags(SAID), '--', id);
    expect(code).toBe(2);
    expect(err).toContain('must be lower-case words joined by hyphens');
    expect(pictureOf(dir)).toEqual(before);
  });
});
