import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { acceptedKitchen, ISSUED, issuedKitchen, offerIn } from './accepted-kitchen.ts';
import { change, copyOf, pictureOf, SECOND_KITCHEN } from './kitchen-copy.ts';
import { run } from './run.ts';

const issue = (dir: string, ...words: string[]) => run(dir, 'issue', 'lifeboat-evening', ...words);

describe('issue freezes a proposal', () => {
  test('as revision 1, with its total, its digest and its file', async () => {
    const dir = copyOf();
    const { code, out, err } = await issue(dir, '--today', ISSUED);
    const offer = offerIn(dir);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out.split('\n').slice(0, 2)).toEqual([
      'Issued lifeboat-evening, revision 1, valid until 2027-05-10.',
      `Total as proposed €711.75, reference ${offer.digest.slice(0, 4)} ${offer.digest.slice(4, 8)} ${offer.digest.slice(8, 12)}.`,
    ]);
    expect(readdirSync(join(dir, 'offers'))).toEqual(['lifeboat-evening-r1.json']);
    expect([offer.revision, offer.issued, offer.samples[0]?.total]).toEqual([1, ISSUED, '711.75']);
  });

  test('prints the offer as JSON, the same as it wrote', async () => {
    const dir = copyOf();
    const { out } = await issue(dir, '--today', ISSUED, '--json');
    expect(JSON.parse(out)).toEqual(offerIn(dir));
  });

  test('not twice when nothing has changed, and as revision 2 when something has, keeping the first as it was', async () => {
    const dir = await issuedKitchen();
    const before = pictureOf(dir);
    const again = await issue(dir, '--today', '2027-04-27');
    expect(again).toMatchObject({ code: 1, out: '' });
    expect(again.err).toContain('nothing has changed in lifeboat-evening since revision 1');
    expect(pictureOf(dir)).toEqual(before);
    const first = readFileSync(join(dir, 'offers/lifeboat-evening-r1.json'));
    change(dir, ['proposals/lifeboat-evening.md', 'Crew evening', 'Crew supper']);
    expect((await issue(dir, '--today', '2027-04-27')).code).toBe(0);
    expect(offerIn(dir, 2)).toMatchObject({ revision: 2, issued: '2027-04-27', occasion: 'Crew supper' });
    expect(readFileSync(join(dir, 'offers/lifeboat-evening-r1.json')).equals(first)).toBe(true);
  });

  test('holds nothing of what the food costs or who supplies it', async () => {
    const text = readFileSync(join(await issuedKitchen(), 'offers/lifeboat-evening-r1.json'), 'utf8');
    expect(text).not.toMatch(/strand-stores|Strand Stores|17\.80|"pay"|17\.00|overage|1 tin|food cost/);
  });
});

describe('issue refuses, and writes nothing,', () => {
  test.each<[string, [string, string, string], string[], RegExp]>([
    [
      'an ingredient whose allergens nobody has said, naming it and its dishes',
      ['ingredients/own.yaml', '  contains: fish (haddock)\n', ''],
      [],
      /the allergens are not stated for smoked-haddock \(in Smoked haddock chowder\)/,
    ],
    [
      'the same in the food of an add-on',
      [
        'kitchen.yaml',
        '    class: drink\n',
        '    class: food\n    dishes: { tea-bread: 1 slice per guest }\n',
      ],
      [],
      /the allergens are not stated for barm \(in Tea bread\)/,
    ],
    [
      'an ingredient that leaves out of `contains` what it comes from, naming both',
      ['ingredients/own.yaml', '  contains: fish (haddock)\n', '  contains: none\n'],
      [],
      /smoked-haddock \(in Smoked haddock chowder\) comes from fish, but its `contains` does not list it — read the label and list in `contains` every allergen that `from` names/,
    ],
    [
      'a proposal past its validity',
      ['kitchen.yaml', 'Tidewrack', 'Tidewrack'],
      ['--today', '2027-05-11'],
      /is valid only until Monday, 10 May 2027, and today is Tuesday, 11 May 2027/,
    ],
    [
      'one whose day has come',
      ['proposals/lifeboat-evening.md', 'valid until: 2027-05-10', 'valid until: 2027-05-21'],
      ['--today', '2027-05-21'],
      /the event of lifeboat-evening is on Friday, 21 May 2027, which is not in the future/,
    ],
    [
      'one that is withdrawn',
      ['proposals/lifeboat-evening.md', 'client:', 'withdrawn: yes\nclient:'],
      [],
      /lifeboat-evening is withdrawn/,
    ],
    [
      'one that is held back, saying why',
      ['proposals/lifeboat-evening.md', 'packages: chowder-lunch', 'packages: chowder-lunches'],
      [],
      /the proposal lifeboat-evening can’t be used: .*chowder-lunches/,
    ],
  ])('%s', async (_, edit, words, sentence) => {
    const dir = copyOf();
    if (edit[0] === 'kitchen.yaml' && edit[2].includes('tea-bread')) addTeaBread(dir);
    change(dir, edit);
    const before = pictureOf(dir);
    const { code, out, err } = await issue(dir, ...(words.length > 0 ? words : ['--today', ISSUED]));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^Can’t do that: [^\n]+ — [^\n]+\.\n$/);
    expect(pictureOf(dir)).toEqual(before);
  });

  test('what has been accepted already', async () => {
    const dir = await acceptedKitchen();
    change(dir, ['proposals/lifeboat-evening.md', 'Crew evening', 'Crew supper']);
    const { code, err } = await issue(dir, '--today', '2027-04-29');
    expect(code).toBe(1);
    expect(err).toContain('lifeboat-evening has been accepted already');
  });

  test('a further revision while an earlier one cannot be read', async () => {
    const dir = await issuedKitchen();
    writeFileSync(join(dir, 'offers/lifeboat-evening-r1.json'), '{}\n');
    const before = pictureOf(dir);
    expect((await issue(dir, '--today', ISSUED)).err).toContain('lifeboat-evening-r1 can’t be used');
    expect(pictureOf(dir)).toEqual(before);
  });

  test('an id that is not there, with the nearest that is', async () => {
    const { code, err } = await run(SECOND_KITCHEN, 'issue', 'lifeboat-evenings');
    expect({ code, err }).toEqual({
      code: 1,
      err: 'Can’t do that: there is no proposal lifeboat-evenings — did you mean lifeboat-evening?\n',
    });
  });

  test('a call without a proposal, or with two, as wrong', async () => {
    const wrong = { code: 2, out: '', err: 'Name one proposal: issue PROPOSAL.\n' };
    expect(await run(SECOND_KITCHEN, 'issue')).toEqual(wrong);
    expect(await run(SECOND_KITCHEN, 'issue', 'a', 'b')).toEqual(wrong);
  });
});

function addTeaBread(dir: string): void {
  writeFileSync(
    join(dir, 'recipes/tea-bread.mdx'),
    '---\nname: Tea bread\nmakes: 12 slices\ningredients:\n  barm: 1 kg\nsteps:\n  - do: Bake.\n    station: range\nhold: room\n---\n',
  );
  writeFileSync(join(dir, 'ingredients/barm.yaml'), 'barm:\n  from: microbe\n');
}
