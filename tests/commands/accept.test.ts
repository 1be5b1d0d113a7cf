import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { acceptedFactOf } from './accepted-fact.ts';
import {
  ACCEPTED,
  acceptanceOf,
  acceptedKitchen,
  fileWith,
  forged,
  issuedKitchen,
  offerIn,
} from './accepted-kitchen.ts';
import { change, pictureOf } from './kitchen-copy.ts';
import { findingsOf, run } from './run.ts';

const accept = (dir: string, text: string, today = ACCEPTED) =>
  run(dir, 'accept', fileWith(text), '--today', today);

describe('an acceptance is taken', () => {
  test('from a file: the event begins with it, and the deposit is named', async () => {
    const dir = await issuedKitchen();
    const acceptance = acceptanceOf(offerIn(dir));
    const { code, out, err } = await accept(dir, JSON.stringify(acceptance));
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(
      'Accepted: lifeboat-evening, 34 adults, 3 children, 1 vendor meal, €711.75.\n' +
        'The date is on hold. When the deposit of €177.94 is in, run: confirm lifeboat-evening.\n',
    );
    expect(readdirSync(join(dir, 'events/lifeboat-evening'))).toEqual(['001-accepted.json']);
    expect(acceptedFactOf(dir)).toEqual({
      version: 1,
      kind: 'accepted',
      on: ACCEPTED,
      proposal: 'lifeboat-evening',
      revision: 1,
      digest: acceptance.offer,
      acceptance,
    });
  });

  test('with the choice the client made of what is offered, priced by the terms', async () => {
    const dir = await issuedKitchen();
    const guests = { adults: 40, children: 0, vendors: 1, staff: 3 };
    const acceptance = acceptanceOf(offerIn(dir), { guests, courses: { Bowls: ['bean-and-leek-stew'] } });
    // 40 × 11.00 (never less than the 39 at 12.50 = 487.50) + 8.00 + 2 servers × 4 h × 27.50 + 40.00
    expect(acceptance.total).toBe('755.50');
    expect((await accept(dir, JSON.stringify(acceptance))).code).toBe(0);
    expect(acceptedFactOf(dir).acceptance.choice.courses).toEqual({ Bowls: ['bean-and-leek-stew'] });
  });

  test('with a byte order mark or its keys in another order, since mail programs do that', async () => {
    const dir = await issuedKitchen();
    const acceptance = acceptanceOf(offerIn(dir));
    const turned = Object.fromEntries(Object.entries(acceptance).reverse());
    expect((await accept(dir, `\uFEFF${JSON.stringify(turned, null, 4)}\r\n`)).code).toBe(0);
  });

  test('as signed on paper, with what the client chose by flags, up to the last day of validity', async () => {
    const dir = await issuedKitchen();
    const signed = [
      '--signed',
      'lifeboat-evening',
      '--name',
      'Aine Trask',
      '--email',
      'aine@lifeboat.example',
    ];
    const chosen = ['--package', 'storm-supper', '--adults', '30', '--children', '0', '--add', 'tea-table'];
    chosen.push('--need', 'vegan=4', '--need', 'celery=0', '--need', 'tree nuts + no gluten=1');
    const late = ['--on', '2027-05-10', '--today', '2027-05-12'];
    const ran = await run(dir, 'accept', ...signed, ...chosen, ...late, '--json');
    expect({ code: ran.code, err: ran.err }).toEqual({ code: 0, err: '' });
    const fact = acceptedFactOf(dir);
    expect(JSON.parse(ran.out)).toEqual(fact);
    expect([fact.on, fact.acceptance.accepted]).toEqual(['2027-05-12', '2027-05-10']);
    expect(fact.acceptance.choice).toMatchObject({
      package: 'storm-supper',
      guests: { adults: 30, children: 0, vendors: 1 },
      addOns: { 'tea-table': 1 },
    });
    expect(fact.acceptance.choice.needs).toEqual({ vegan: 4, 'tree nuts + no gluten': 1 });
    const mains = Object.values(fact.acceptance.choice.mains.Main ?? {});
    expect(mains.reduce((sum, each) => sum + each, 0)).toBe(31);
  });

  test('says so where no deposit is asked for, instead of naming another payment', async () => {
    const dir = await issuedKitchen([
      'kitchen.yaml',
      '[25 % when accepted, balance on the day]',
      '[balance on the day]',
    ]);
    const { out } = await accept(dir, JSON.stringify(acceptanceOf(offerIn(dir))));
    expect(out).toContain('No deposit is due; run: confirm lifeboat-evening --received AMOUNT.');
  });
});

describe('an acceptance is refused in one sentence and nothing is written', () => {
  const other = '0'.repeat(64);
  test.each<[string, RegExp, (dir: string) => string]>([
    [
      'an altered total',
      /altered or damaged/,
      (dir) => JSON.stringify({ ...acceptanceOf(offerIn(dir)), total: '1.00' }),
    ],
    [
      'an altered total, digest made anew',
      /its total is €1\.00, but by the offer’s terms it is €711\.75/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { total: '1.00' })),
    ],
    [
      'a count that the total does not fit',
      /its total is €711\.75, but by the offer’s terms it is €699\.25/,
      (dir) => {
        const acceptance = acceptanceOf(offerIn(dir));
        const guests = { ...acceptance.choice.guests, adults: 33 };
        return JSON.stringify(forged(acceptance, { choice: { ...acceptance.choice, guests } }));
      },
    ],
    [
      'no guests at all',
      /does not fit the offer at guests\.adults: Enter the number of guests/,
      (dir) => {
        const acceptance = acceptanceOf(offerIn(dir));
        const guests = { adults: 0, children: 0, vendors: 1, staff: 3 };
        return JSON.stringify(forged(acceptance, { choice: { ...acceptance.choice, guests } }));
      },
    ],
    [
      'a package that is not offered',
      /does not fit the offer at package: This offer doesn’t have that menu/,
      (dir) => {
        const acceptance = acceptanceOf(offerIn(dir));
        return JSON.stringify(
          forged(acceptance, { choice: { ...acceptance.choice, package: 'harvest-table' } }),
        );
      },
    ],
    [
      'an offer of another digest',
      /revision 1 of lifeboat-evening, as it stands in this file, was never issued here/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { offer: other })),
    ],
    [
      'a revision that was never issued',
      /revision 2 of lifeboat-evening, as it stands in this file, was never issued/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { revision: 2 })),
    ],
    [
      'another proposal',
      /revision 1 of harbour-wedding, as it stands in this file, was never issued/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { proposal: 'harbour-wedding' })),
    ],
    [
      'a day that is still to come',
      /dated Thursday, 29 April 2027, and today is Wednesday, 28 April 2027/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { accepted: '2027-04-29' })),
    ],
    [
      'a day before the offer',
      /dated Sunday, 25 April 2027, before the offer of Monday, 26 April 2027/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { accepted: '2027-04-25' })),
    ],
    [
      'a day that does not exist',
      /accepted is not as it was written: must be a date/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { accepted: '2027-02-30' })),
    ],
    ['text that is not JSON', /it is not JSON/, () => 'Dear Tidewrack, yes please!'],
    ['JSON of another kind', /not an acceptance that Salver knows/, () => '[1, 2]'],
    ['nothing', /it is not JSON/, () => ''],
    ['a file too long', /too long to be an acceptance/, () => `{"note":"${'a'.repeat(70_000)}"}`],
    [
      'a further field',
      /not an acceptance that Salver knows.*discount/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { discount: '50 %' })),
    ],
    [
      'a field left out',
      /not an acceptance that Salver knows: agreed/,
      (dir) => {
        const { agreed: _, ...rest } = acceptanceOf(offerIn(dir));
        return JSON.stringify(rest);
      },
    ],
    [
      'an answer that agrees to nothing',
      /not an acceptance that Salver knows: agreed/,
      (dir) => JSON.stringify(forged(acceptanceOf(offerIn(dir)), { agreed: false })),
    ],
    [
      'a key that every object has',
      /altered or damaged|not an acceptance that Salver knows/,
      (dir) =>
        JSON.stringify(acceptanceOf(offerIn(dir))).replace(
          '"version"',
          '"__proto__":{"total":"0.00"},"version"',
        ),
    ],
    [
      'a need by such a name',
      /altered or damaged|not an acceptance that Salver knows/,
      (dir) => {
        const acceptance = acceptanceOf(offerIn(dir));
        const needs = JSON.parse('{"__proto__": 3}');
        return JSON.stringify(forged(acceptance, { choice: { ...acceptance.choice, needs } }));
      },
    ],
    [
      'an add-on by the name of what every object has',
      /does not fit the offer|not an acceptance that Salver knows/,
      (dir) => {
        const acceptance = acceptanceOf(offerIn(dir));
        return JSON.stringify(
          forged(acceptance, { choice: { ...acceptance.choice, addOns: { constructor: 1 } } }),
        );
      },
    ],
  ])('%s', async (_, sentence, text) => {
    const dir = await issuedKitchen();
    const before = pictureOf(dir);
    const { code, out, err } = await accept(dir, text(dir));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^Can’t do that: [^\n]+ — [^\n]+\.\n$/);
    expect(pictureOf(dir)).toEqual(before);
  });

  test('a second acceptance of the same event, also as JSON', async () => {
    const dir = await acceptedKitchen();
    const before = pictureOf(dir);
    const again = await run(
      dir,
      'accept',
      fileWith(JSON.stringify(acceptanceOf(offerIn(dir)))),
      '--today',
      ACCEPTED,
      '--json',
    );
    expect(again).toMatchObject({ code: 1, err: '' });
    expect(JSON.parse(again.out).refused).toBe('lifeboat-evening has been accepted already');
    expect(pictureOf(dir)).toEqual(before);
  });

  test('an acceptance of a revision that was replaced', async () => {
    const dir = await issuedKitchen();
    const first = JSON.stringify(acceptanceOf(offerIn(dir)));
    change(dir, ['packages/chowder-lunch.mdx', '10-39: 12.50', '10-39: 13.00']);
    expect((await run(dir, 'issue', 'lifeboat-evening', '--today', '2027-04-27')).code).toBe(0);
    const before = pictureOf(dir);
    const { code, err } = await accept(dir, first);
    expect(code).toBe(1);
    expect(err).toContain('it accepts revision 1 of lifeboat-evening, which revision 2 has replaced');
    expect(pictureOf(dir)).toEqual(before);
  });

  test('the earlier revision while the one that replaced it cannot be read', async () => {
    const dir = await issuedKitchen();
    const first = JSON.stringify(acceptanceOf(offerIn(dir)));
    writeFileSync(join(dir, 'offers/lifeboat-evening-r2.json'), '{ "version": 1');
    const before = pictureOf(dir);
    const { code, err } = await accept(dir, first);
    expect(code).toBe(1);
    expect(err).toContain('lifeboat-evening-r2 can’t be used');
    expect(pictureOf(dir)).toEqual(before);
  });

  test('an offer whose proposal cannot be read, which may say that it is withdrawn', async () => {
    const dir = await issuedKitchen();
    change(dir, ['proposals/lifeboat-evening.md', 'client:', 'withdrawn: yes\nclient: [\n']);
    const { code, err } = await accept(dir, JSON.stringify(acceptanceOf(offerIn(dir))));
    expect(code).toBe(1);
    expect(err).toMatch(
      /can’t be read \(.+\), so there is no telling whether it was withdrawn — fix it first/,
    );
  });

  test('an offer that was changed after it was issued', async () => {
    const dir = await issuedKitchen();
    const acceptance = JSON.stringify(acceptanceOf(offerIn(dir)));
    change(dir, ['offers/lifeboat-evening-r1.json', '"perHead": "12.50"', '"perHead": "1.50"']);
    const { code, err } = await accept(dir, acceptance);
    expect(code).toBe(1);
    expect(err).toContain('lifeboat-evening revision 1 was changed after it was issued');
  });

  test('the day after the last day of validity, and an offer that was withdrawn', async () => {
    const dir = await issuedKitchen();
    const late = JSON.stringify(forged(acceptanceOf(offerIn(dir)), { accepted: '2027-05-11' }));
    expect((await accept(dir, late, '2027-05-12')).err).toContain(
      'the offer was valid until Monday, 10 May 2027, but it is dated Tuesday, 11 May 2027',
    );
    change(dir, ['proposals/lifeboat-evening.md', 'client:', 'withdrawn: yes\nclient:']);
    const before = pictureOf(dir);
    const { code, err } = await accept(dir, JSON.stringify(acceptanceOf(offerIn(dir))));
    expect({ code, err }).toMatchObject({
      code: 1,
      err: expect.stringContaining('lifeboat-evening was withdrawn'),
    });
    expect(pictureOf(dir)).toEqual(before);
  });
});

describe('a wrong call of accept is said in one sentence, exit code 2', () => {
  const signed = ['--signed', 'lifeboat-evening', '--name', 'A', '--email', 'a@b.example'];
  test.each<[string[], string]>([
    [[], 'Give one acceptance file, or - to read it from standard input: accept FILE.'],
    [['no-such.json'], 'Can’t read no-such.json: no such file.'],
    [
      ['some.json', '--adults', '30'],
      'An acceptance file is complete in itself, so --adults goes only with --signed.',
    ],
    [['--signed', 'lifeboat-evening'], 'Who signed? Give --name NAME --email ADDRESS.'],
    [
      ['--signed', 'lifeboat-evening', '--name', 'A', '--email', 'nowhere'],
      '--email: Invalid email address.',
    ],
    [[...signed, '--on', 'yesterday'], '--on: must be a date such as 2027-04-26.'],
  ])('%j', async (words, sentence) => {
    const dir = await issuedKitchen();
    const before = pictureOf(dir);
    expect(await run(dir, 'accept', ...words, '--today', ACCEPTED)).toEqual({
      code: 2,
      out: '',
      err: `${sentence}\n`,
    });
    expect(pictureOf(dir)).toEqual(before);
  });

  test.each<[string[], string]>([
    [['--add', 'arch'], 'at addOns.arch: This add-on isn’t available with this menu'],
    [
      ['--take', 'Bowls=haddock-chowder,bean-and-leek-stew'],
      'at courses.Bowls: Choose 1 dish for Bowls; you chose 2',
    ],
    [['--package', 'storm-super'], 'there is no package storm-super in it — did you mean storm-supper?'],
    [['--adults', 'many'], '--adults: '],
    [['--on', '2027-05-11', '--today', '2027-05-12'], 'the offer was valid until Monday, 10 May 2027'],
  ])('what was signed must fit the offer: %j', async (words, sentence) => {
    const dir = await issuedKitchen();
    const before = pictureOf(dir);
    const today = words.includes('--today') ? [] : ['--today', ACCEPTED];
    const { code, out, err } = await run(dir, 'accept', ...signed, ...words, ...today);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(sentence);
    expect(pictureOf(dir)).toEqual(before);
  });
});

test('what is recorded can be read back', async () => {
  const dir = await acceptedKitchen();
  // Readable as it is; what it says of hours is what the kitchen sold.
  expect(await findingsOf(dir, 'offers/lifeboat-evening-r1.json')).toEqual([
    expect.stringMatching(/^Servers \(2\): sold 4 h, needed 6 h 5 min/),
  ]);
  expect(await findingsOf(dir, 'events/lifeboat-evening/001-accepted.json')).toEqual([]);
  expect(readFileSync(join(dir, 'events/lifeboat-evening/001-accepted.json'), 'utf8').endsWith('}\n')).toBe(
    true,
  );
});
