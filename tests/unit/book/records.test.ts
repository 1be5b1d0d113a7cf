import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { printFindings } from '../../../src/book/findings/print-findings.ts';
import { findingsOn } from '../../../src/check/findings-on.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { takeAcceptance } from '../../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { eventDishes } from '../../../src/offers/event/dishes.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import type { Offer } from '../../../src/schema/offer.ts';
import { changed, contentWith, SMALL_CONTENT } from '../../findings/small-content.ts';
import { must } from '../plan/builders.ts';

const TODAY = '2027-04-01' as Day;
const OFFER = 'offers/gale-r1.json';
const ACCEPTED = 'events/gale/001-accepted.json';

function write(dir: string, file: string, data: unknown): void {
  mkdirSync(dirname(join(dir, file)), { recursive: true });
  writeFileSync(join(dir, file), typeof data === 'string' ? data : JSON.stringify(data, null, 2));
}

async function bookOf(dir: string): Promise<{ book: Book; lines: string[] }> {
  const { book, findings } = await readBook(dir, offerProblem);
  if (!book) throw new Error('the kitchen could not be read');
  const all = [...findings, ...findingsOn(book, TODAY)];
  return { book, lines: printFindings(all, 'content').trimEnd().split('\n').slice(0, -1) };
}

/** The small kitchen with its proposal issued and, if wanted, accepted, by the product's own functions. */
async function issued({ accepted = false } = {}): Promise<{ dir: string; offer: Offer }> {
  const dir = contentWith();
  const { book } = await bookOf(dir);
  const proposal = book.proposals.get('gale');
  const offer = proposal && nextOffer(book, proposal, TODAY);
  if (!offer?.ok) throw new Error('the proposal could not be issued');
  write(dir, OFFER, offer.value);
  if (!accepted) return { dir, offer: offer.value };
  const signature = { name: 'Tamsin Gale', email: 'tamsin@example.org', note: '', accepted: TODAY };
  const acceptance = makeAcceptance(offer.value, offer.value.proposed, signature);
  write(dir, ACCEPTED, must(takeAcceptance((await bookOf(dir)).book, JSON.stringify(acceptance), TODAY)));
  return { dir, offer: offer.value };
}

describe('offers and events on disk', () => {
  test('are read back as they were written, without a finding', async () => {
    const { dir, offer } = await issued({ accepted: true });
    const { book, lines } = await bookOf(dir);
    expect(lines).toEqual([]);
    expect(book.offers.get('gale')).toEqual([offer]);
    expect(book.events.get('gale')?.facts).toMatchObject([{ kind: 'accepted', digest: offer.digest }]);
  });

  test('a broken draft beside an event leaves the event alone', async () => {
    const { dir } = await issued({ accepted: true });
    write(dir, 'proposals/draft.md', '---\nlink: short\n---\nDear nobody,\n');
    const { book, lines } = await bookOf(dir);
    expect(lines.every((line) => line.startsWith('content/proposals/draft.md:'))).toBe(true);
    expect([...book.held.keys()]).toEqual(['proposal/draft']);
    expect(book.events.has('gale')).toBe(true);
    expect(book.recipes.has('lentil-soup')).toBe(true);
  });

  test('a corrected allergen is in the Book while the offer stays as it was issued', async () => {
    const { dir, offer } = await issued();
    const own = SMALL_CONTENT['ingredients/own.yaml']?.replace('contains: none', 'contains: mustard') ?? '';
    write(dir, 'ingredients/own.yaml', own);
    const { book } = await bookOf(dir);
    expect(book.ingredients.get('lentils')?.contains).toEqual([{ group: 'mustard', kind: null }]);
    expect(book.offers.get('gale')).toEqual([offer]);
  });

  test('an offer changed after it was issued is held back with its event, and told once', async () => {
    const { dir } = await issued({ accepted: true });
    write(
      dir,
      OFFER,
      readFileSync(join(dir, OFFER), 'utf8').replace('"perHead": "30.00"', '"perHead": "20.00"'),
    );
    const { book, lines } = await bookOf(dir);
    expect(lines).toEqual([
      'content/offers/gale-r1.json:1:1 error offer-altered offer gale revision 1 was changed after it was issued — restore the file as `issue` wrote it; to offer something else, issue a new revision',
    ]);
    expect([...book.held.keys()]).toEqual(['offer/gale-r1', 'event/gale']);
  });

  test('an offer that is gone holds its event back', async () => {
    const { dir } = await issued({ accepted: true });
    rmSync(join(dir, OFFER));
    expect((await bookOf(dir)).lines).toEqual([
      'content/events/gale/001-accepted.json:1:1 error record-missing the event accepts revision 1, and offers/gale-r1.json is gone — restore the offer as `issue` wrote it',
    ]);
  });

  test.each([
    [
      'a renamed offer',
      async (dir: string) => {
        write(dir, 'offers/gale-r2.json', readFileSync(join(dir, OFFER), 'utf8'));
      },
      'content/offers/gale-r2.json:1:1 error record-name the file holds revision 1 of gale — name it offers/gale-r1.json again',
    ],
    [
      'a field too many, at its place',
      async (dir: string) => {
        write(
          dir,
          OFFER,
          readFileSync(join(dir, OFFER), 'utf8').replace('"version": 1,', '"version": 1, "cost": "9",'),
        );
      },
      'content/offers/gale-r1.json:1:1 error record-form the file is not as it was written: Unrecognized key: "cost" — restore the file from your history or backup; Salver wrote it and it is not edited by hand',
    ],
    [
      'an offer cut off in the middle',
      async (dir: string) => write(dir, OFFER, '{ "version": 1,\n  "kind": "off'),
      'content/offers/gale-r1.json:2:15 error record-form the file is not JSON — restore the file from your history or backup; Salver wrote it and it is not edited by hand',
    ],
    [
      'a fact of no known kind, at its place',
      async (dir: string) => write(dir, ACCEPTED, readFileSync(join(dir, OFFER), 'utf8')),
      'content/events/gale/001-accepted.json:3:11 error record-form kind is not as it was written',
    ],
  ])('%s is told', async (_what, spoil, expected) => {
    const { dir } = await issued();
    await spoil(dir);
    expect((await bookOf(dir)).lines.join('\n')).toContain(expected);
  });

  test('facts that do not follow each other hold the event back', async () => {
    const { dir } = await issued({ accepted: true });
    const payment = { version: 1, kind: 'payment', on: TODAY, received: { amount: '10.00', on: TODAY } };
    write(dir, 'events/gale/003-payment.json', payment);
    const { book, lines } = await bookOf(dir);
    expect(lines).toEqual([
      'content/events/gale/003-payment.json:1:1 error record-order the fact that should be 002-payment.json is called 003-payment.json — restore the files as Salver wrote them, none missing',
    ]);
    expect(book.events.size).toBe(0);
  });

  test('a recipe or package that is gone is an error while an open offer uses it, and none after it has lapsed', async () => {
    const { dir, offer } = await issued();
    rmSync(join(dir, 'recipes/cheese-plate.mdx'));
    write(
      dir,
      'packages/supper.mdx',
      changed('packages/supper.mdx', '      cheese-plate: 1 serving per guest\n', '')['packages/supper.mdx'],
    );
    const { book, lines } = await bookOf(dir);
    expect(lines).toContain(
      'content/offers/gale-r1.json:1:1 error gone-in-use the open offer gale revision 1 uses the recipe “cheese-plate”, which is gone — restore recipes/cheese-plate.mdx and keep it until the event is over',
    );
    expect(findingsOn(book, offer.validUntil)).toHaveLength(1);
    expect(findingsOn(book, '2027-05-02' as Day)).toEqual([]);
  });

  test('an accepted add-on that is held back or gone holds back the plan, as its food would be missing', async () => {
    const dir = contentWith(
      changed(
        'proposals/gale.md',
        'packages: supper',
        'packages: supper\nadd-ons: late-soup\ninclude: { late-soup: 1 }',
      ),
    );
    const { book } = await bookOf(dir);
    const proposal = book.proposals.get('gale');
    const offer = proposal && nextOffer(book, proposal, TODAY);
    if (!offer?.ok) throw new Error('the proposal could not be issued');
    const [terms] = offer.value.terms.packages;
    if (!terms) throw new Error('the offer has no package');
    const whole = eventDishes(book, terms, offer.value.proposed, []);
    expect(whole.ok && whole.value.map(({ course }) => course)).toEqual([
      'All of it',
      'All of it',
      'Late soup',
    ]);
    const broken = SMALL_CONTENT['kitchen.yaml']?.replace('price: 4.00 per guest', 'price: four') ?? '';
    write(dir, 'kitchen.yaml', broken);
    expect(eventDishes((await bookOf(dir)).book, terms, offer.value.proposed, [])).toMatchObject({
      ok: false,
      what: expect.stringContaining('the accepted add-on late-soup can’t be used'),
    });
    const without = SMALL_CONTENT['kitchen.yaml']?.replaceAll('late-soup', 'early-soup') ?? '';
    write(dir, 'kitchen.yaml', without);
    expect(eventDishes((await bookOf(dir)).book, terms, offer.value.proposed, [])).toMatchObject({
      ok: false,
      what: 'the accepted add-on late-soup no longer exists',
    });
  });

  test('an earlier revision that is gone, and a link other than the client’s, are told', async () => {
    const { dir, offer } = await issued();
    const record = { ...offer, revision: 2 };
    rmSync(join(dir, OFFER));
    write(dir, 'offers/gale-r2.json', record);
    write(
      dir,
      'proposals/gale.md',
      changed('proposals/gale.md', 'mk4vxr2hq7tz3cwnb6ylpaj5ge', 'nk4vxr2hq7tz3cwnb6ylpaj5ge')[
        'proposals/gale.md'
      ],
    );
    const { findings } = await readBook(dir);
    expect(printFindings(findings, 'content')).toBe(
      `content/offers/gale-r2.json:1:1 warning revision-gap revision 1 of gale is gone — restore offers/gale-r1.json
content/proposals/gale.md:2:7 error link-changed revision 2 was issued under another link, and that is the link the client has — write “link: mk4vxr2hq7tz3cwnb6ylpaj5ge” again
1 error, 1 warning.
`,
    );
  });
});
