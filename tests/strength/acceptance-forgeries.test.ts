import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { takeAcceptance } from '../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../src/offers/answers/make-acceptance.ts';
import { offerProblem } from '../../src/offers/check-offer.ts';
import { digestOfRecord } from '../../src/offers/digest.ts';
import type { Acceptance } from '../../src/schema/acceptance.ts';
import { type Offer, offerSchema } from '../../src/schema/offer.ts';
import { type Seeded, seeded } from '../bench/seeded.ts';
import { acceptanceOf, offerIn } from '../commands/accepted-kitchen.ts';
import { change, keptCopyOf, pictureOf } from '../commands/kitchen-copy.ts';
import { run } from '../commands/run.ts';
import { inWords } from '../in-words.ts';
import { LONG } from './long.ts';

const TODAY = '2027-04-28' as Day;
const TRIES = LONG ? 10_000 : 1_000;
/** As many of them go through the command, to see that nothing is written. */
const CALLS = LONG ? 1_000 : 40;

let dir: string;
let book: Book;
/** The newest revision, and the one it replaced. */
let offer: Offer;
let replaced: Offer;
let honest: Acceptance;
/** What somebody else rightly accepts: another proposal at the same terms. */
let others: Acceptance;

/** The second kitchen with its evening issued twice, and the same evening for others once. */
beforeAll(async () => {
  dir = keptCopyOf();
  const own = readFileSync(join(dir, 'proposals/lifeboat-evening.md'), 'utf8');
  writeFileSync(
    join(dir, 'proposals/regatta-lunch.md'),
    own.replace(/^link: .+$/m, 'link: ryx6usbuof2ek2zoccd4j5hh5r'),
  );
  expect(await run(dir, 'issue', 'regatta-lunch', '--today', '2027-04-26')).toMatchObject({ code: 0 });
  others = acceptanceOf(
    offerSchema.parse(JSON.parse(readFileSync(join(dir, 'offers/regatta-lunch-r1.json'), 'utf8'))),
  );
  expect(await run(dir, 'issue', 'lifeboat-evening', '--today', '2027-04-26')).toMatchObject({ code: 0 });
  replaced = offerIn(dir);
  change(dir, ['proposals/lifeboat-evening.md', 'Dear crew,', 'Dear crew of both boats,']);
  expect(await run(dir, 'issue', 'lifeboat-evening', '--today', '2027-04-27')).toMatchObject({ code: 0 });
  offer = offerIn(dir, 2);
  honest = acceptanceOf(offer);
  book = await freshBook();
});

async function freshBook(): Promise<Book> {
  const { book: read } = await readBook(dir, offerProblem);
  if (!read) throw new Error('the kitchen cannot be read');
  return read;
}

type Forger = (random: Seeded) => object | string;
/** With its own digest made anew; where nobody can make one, as of half a sign, with the old one. */
function resealed(record: object): object {
  try {
    return { ...record, digest: digestOfRecord(record) };
  } catch {
    return record;
  }
}

const cents = (random: Seeded) => (random.below(400_000) / 100).toFixed(2);

/** Ways to forge an acceptance, each by somebody who knows the form and how a digest is made. */
const FORGERS: Readonly<Record<string, Forger>> = {
  'another total': (random) => resealed({ ...honest, total: cents(random) }),
  'another package': (random) =>
    resealed({
      ...honest,
      choice: { ...honest.choice, package: random.of(['', 'storm', 'chowder', '__proto__', 'x'.repeat(80)]) },
    }),
  'another count at the old total': (random) => {
    const guests = { ...honest.choice.guests };
    guests[random.of(['adults', 'children'] as const)] += 1 + random.below(60);
    return resealed({ ...honest, choice: { ...honest.choice, guests } });
  },
  'fewer than may come': (random) =>
    resealed(made({ guests: { ...honest.choice.guests, adults: -random.below(90), children: 0 } })),
  'a count that is none': (random) =>
    resealed({
      ...honest,
      choice: {
        ...honest.choice,
        guests: {
          ...honest.choice.guests,
          adults: random.of([0.5, 1e308, -1, '12', null, [], {}]),
        },
      },
    }),
  'another offer’s digest': (random) => resealed({ ...honest, offer: hex(random) }),
  'another revision’s digest': () => resealed({ ...honest, offer: replaced.digest }),
  'another revision': (random) => resealed({ ...honest, revision: random.of([0, 1, 3, -1, 999, 2.5]) }),
  'the replaced revision, rightly made': () => acceptanceOf(replaced),
  'another proposal’s': (random) =>
    resealed({
      ...honest,
      proposal: random.of([
        'regatta-lunch',
        'lifeboat',
        'lifeboat-evening-2',
        '../offers',
        '__proto__',
        'constructor',
      ]),
    }),
  'another proposal’s, rightly made, under this one’s name': (random) =>
    resealed({
      ...others,
      proposal: honest.proposal,
      revision: random.of([1, 2]),
      offer: random.of([others.offer, replaced.digest]),
    }),
  'this one’s under another proposal’s name': (random) =>
    resealed({ ...honest, proposal: others.proposal, revision: random.of([1, 2]) }),
  'another proposal’s digest': () => resealed({ ...honest, offer: others.offer }),
  'a day outside its time': (random) =>
    resealed({
      ...honest,
      accepted: random.of([
        '2027-04-26',
        '2027-04-29',
        '2027-05-11',
        '2026-04-28',
        '2099-01-01',
        '2027-02-30',
        '0000-00-00',
        '',
      ]),
    }),
  'not agreed': (random) => resealed({ ...honest, agreed: random.of([false, 'true', 1, null, undefined]) }),
  'another version': (random) => resealed({ ...honest, version: random.of([0, 2, '1', 1.5]) }),
  'another kind': (random) =>
    resealed({ ...honest, kind: random.of(['offer', 'confirmed', 'count change', 'accepted', '']) }),
  'more in it': (random) =>
    resealed({ ...honest, [random.of(['discount', 'extra', 'toString', 'received'])]: '1' }),
  'less in it': (random) => {
    const left = { ...honest } as Record<string, unknown>;
    delete left[random.of(Object.keys(honest).filter((key) => key !== 'digest'))];
    return resealed(left);
  },
  'crew meals, which are the kitchen’s': (random) =>
    rightlyMade({ guests: { ...honest.choice.guests, staff: random.of([0, 4, 400, 100_000]) } }),
  'more guests than anybody proposed': (random) =>
    rightlyMade({
      guests: {
        ...honest.choice.guests,
        adults: random.of([201, 4_000, 100_000]) - honest.choice.guests.children,
      },
    }),
  'more vendor meals than guests': (random) =>
    rightlyMade({ guests: { ...honest.choice.guests, vendors: 38 + random.below(90_000) } }),
  'a proposed need taken off unasked': (random) => {
    const needs = { ...honest.choice.needs };
    const name = random.of(Object.keys(needs));
    return rightlyMade({ needs: random.below(2) === 0 ? without(needs, name) : { ...needs, [name]: 0 } });
  },
  'an add-on nobody offers': (random) =>
    resealed({
      ...honest,
      choice: { ...honest.choice, addOns: { [random.of(['tea', 'late-hour', '__proto__'])]: 1 } },
    }),
  'an add-on too often': (random) =>
    resealed({ ...honest, choice: { ...honest.choice, addOns: { 'tea-table': 2 + random.below(1e6) } } }),
  'mains that are not on the menu': (random) =>
    resealed({
      ...honest,
      choice: { ...honest.choice, mains: { Main: { [random.of(['lobster', 'haddock'])]: 5 } } },
    }),
  'its digest left as it was': (random) => ({ ...honest, note: `${honest.note}${random.below(1e9)}` }),
  'another digest': (random) => ({ ...honest, digest: hex(random) }),
  'a letter changed': (random) => {
    const text = JSON.stringify(honest);
    const place = random.below(text.length);
    const letter = String.fromCharCode(33 + random.below(90));
    const changed = text.slice(0, place) + letter + text.slice(place + 1);
    return changed === text ? `${text}x` : changed;
  },
  'cut off': (random) => JSON.stringify(honest).slice(0, random.below(JSON.stringify(honest).length)),
  'two in one': () => `${JSON.stringify(honest)}${JSON.stringify(honest)}`,
  'a field twice': (random) =>
    JSON.stringify(honest)
      .replace('{', `{"total":"${cents(random)}",`)
      .replace(/"total":"(?=[^"]*","name)/, '"total":"1'),
  'words that would run': (random) =>
    resealed({
      ...honest,
      name: random.of(['\u0000', '\u2028', 'a\nb', 'x'.repeat(201), '', '   ', '\uD800']),
    }),
};

/** As the page would make it, its total right, so that nothing but the choice itself stands against it. */
function rightlyMade(choice: Partial<Acceptance['choice']>): object {
  return acceptanceOf(offer, choice);
}

function without(needs: Acceptance['choice']['needs'], name: string): Acceptance['choice']['needs'] {
  return Object.fromEntries(Object.entries(needs).filter(([each]) => each !== name));
}

function made(choice: Partial<Acceptance['choice']>): object {
  return { ...honest, choice: { ...honest.choice, ...choice } };
}

function hex(random: Seeded): string {
  return Array.from({ length: honest.digest.length }, () => '0123456789abcdef'[random.below(16)]).join('');
}

function forgery(random: Seeded): { way: string; text: string } {
  const way = random.of(Object.keys(FORGERS));
  const made = FORGERS[way]!(random);
  return { way, text: typeof made === 'string' ? made : JSON.stringify(made) };
}

test('the honest ones are taken, so that what follows is refused for what was done to it', () => {
  for (const each of [honest, others])
    expect(takeAcceptance(book, JSON.stringify(each), TODAY)).toMatchObject({ ok: true });
});

test('no mutation or forgery of an acceptance is ever taken, and each is refused in a sentence with a way out', () => {
  const taken: string[] = [];
  for (let seed = 0; seed < TRIES; seed += 1) {
    const { way, text } = forgery(seeded(seed));
    const answer = takeAcceptance(book, text, TODAY);
    if (answer.ok) taken.push(`${seed}: ${way}`);
    else {
      const [what, wayOut] = [inWords(answer.what), inWords(answer.wayOut)];
      expect(what, way).toMatch(/\S/);
      expect(wayOut, way).toMatch(/\S/);
      expect(`${what} ${wayOut}`, way).not.toMatch(/undefined|\[object|\bat \S+:\d+:\d+/);
    }
  }
  expect(taken).toEqual([]);
});

test('the command refuses them too, and writes nothing', async () => {
  const before = pictureOf(dir);
  const mail = keptCopyOf(join(dir, 'offers'));
  for (let seed = 50_000; seed < 50_000 + CALLS; seed += 1) {
    const { way, text } = forgery(seeded(seed));
    const file = join(mail, 'acceptance.json');
    writeFileSync(file, text);
    const { code, out, err } = await run(dir, 'accept', file, '--today', TODAY);
    expect(code, `${seed}: ${way} ${out}`).not.toBe(0);
    expect(`${out}${err}`).not.toMatch(/\n {4}at /);
  }
  expect(pictureOf(dir)).toEqual(before);
});

test('the same acceptance a second time is refused, whoever sends it, and changes nothing', async () => {
  const copy = keptCopyOf(dir);
  const file = join(keptCopyOf(join(dir, 'offers')), 'acceptance.json');
  writeFileSync(file, JSON.stringify(honest));
  expect(await run(copy, 'accept', file, '--today', TODAY)).toMatchObject({ code: 0 });
  const after = pictureOf(copy);
  expect((await run(copy, 'accept', file, '--today', TODAY)).code).toBe(1);
  const other = makeAcceptance(offer, honest.choice, {
    name: 'Someone Else',
    email: 'else@lifeboat.example',
    note: '',
    accepted: TODAY,
  });
  writeFileSync(file, JSON.stringify(other));
  expect((await run(copy, 'accept', file, '--today', TODAY)).code).toBe(1);
  expect(pictureOf(copy)).toEqual(after);
});
