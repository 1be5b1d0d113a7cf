import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { Proposal } from '../../../src/engine/menu/proposal.ts';
import { takeAcceptance } from '../../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { nextOffer } from '../../../src/offers/issue/issue.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { inWords } from '../../in-words.ts';
import {
  ACCEPTED,
  accepted,
  day,
  EVENING,
  eveningOf,
  issued,
  must,
  offerOf,
  secondKitchen,
  withFacts,
} from '../offers/second-kitchen.ts';

const TODAY = day('2027-05-01');
const view = (book: Book, today = TODAY) => clientSite(book, today).pages[0]?.view as ProposalView;
const withEvening = (book: Book, change: Partial<Proposal>): Book => ({
  ...book,
  proposals: new Map([[EVENING, { ...eveningOf(book), ...change }]]),
});

/** The Book after a second revision for later hours, valid for longer. */
function reissued(book: Book): Book {
  const first = issued(book);
  const edited = withEvening(first, { serveAt: '20:15', validUntil: day('2027-05-14') });
  const second = must(nextOffer(edited, eveningOf(edited), day('2027-04-30')));
  return { ...edited, offers: new Map([[EVENING, [offerOf(book), second]]]) };
}

/** What the file beside the page says, by which a page left open learns where its offer stands. */
const standing = (book: Book, today = TODAY) =>
  JSON.parse(
    String(clientSite(book, today).files.find(({ file }) => file.endsWith('/standing.json'))?.content),
  );

/** Nothing on the page or its paper takes an answer. */
const cannotBeAccepted = ({ answering, acceptance }: ProposalView) =>
  answering.accept === null && acceptance.length === 0;

describe('what a client sees', () => {
  test('of a draft that is shared: that it is one, and nothing to accept', async () => {
    const draft = view(withEvening(await secondKitchen(), { shareDraft: true }));
    expect(draft.stateText).toMatch(/^Draft: this is not an offer yet/);
    expect(draft.sheetMarks.state).toMatch(/^Draft/);
    expect([cannotBeAccepted(draft), draft.revision, draft.changes]).toEqual([true, null, null]);
  });

  test('of a shared draft that was withdrawn: that it was', async () => {
    const gone = view(withEvening(await secondKitchen(), { shareDraft: true, withdrawn: true }));
    expect([gone.state, cannotBeAccepted(gone)]).toEqual(['withdrawn', true]);
  });

  test('of an offer: its revision, its day, until when, how to accept, and no change of a first one', async () => {
    const first = view(issued(await secondKitchen()));
    expect(first.stateText).toBe(
      'Offer, revision 1, issued Monday, 26 April 2027. It is valid until Monday, 10 May 2027.',
    );
    expect([cannotBeAccepted(first), first.changes]).toEqual([false, null]);
  });

  test('of an offer: which way the acceptance goes, what happens next, and that it shows no one’s hand', async () => {
    const book = issued(await secondKitchen());
    const offer = offerOf(await secondKitchen());
    const next = (acceptances: typeof offer.kitchen.acceptances) => {
      const offers = new Map([[EVENING, [{ ...offer, kitchen: { ...offer.kitchen, acceptances } }]]]);
      return view({ ...book, offers }).answering.accept?.next ?? [];
    };
    const ways = [
      next({ by: 'post', to: null }),
      next({ by: 'mail', to: 'yes@tidewrack.example' }),
      next({ by: 'download' }),
    ];
    expect(new Set(ways.map(([way]) => way)).size).toBe(3);
    expect(ways.map(([way = '']) => way)).toEqual([
      expect.stringMatching(/^The button sends your acceptance to Tidewrack Kitchen/),
      expect.stringContaining('yes@tidewrack.example'),
      expect.stringContaining('post@tidewrack.example'),
    ]);
    for (const [, held, proof] of ways) {
      expect(held).toMatch(/holds the date for you\. Your deposit confirms it\.$/);
      expect(proof).toMatch(/shows which offer was accepted.*can’t show who accepted/);
    }
  });

  test('of one that was replaced, under the same link: the newest, and what has changed since which day', async () => {
    const newest = view(reissued(await secondKitchen()));
    expect(newest.stateText).toMatch(/^Offer, revision 2, issued Friday, 30 April 2027/);
    expect(newest.changes?.head).toBe('What has changed since revision 1, issued Monday, 26 April 2027');
    expect(newest.changes?.groups).toEqual([
      {
        about: 'Date and place',
        lines: [
          'Valid until: Friday, 14 May 2027 (was Monday, 10 May 2027).',
          expect.stringMatching(/^Served at: 20:15 \(was \d\d:\d\d\)\.$/),
        ],
      },
    ]);
    expect(newest.changes?.total).toMatch(/as before\.$/);
  });

  test('an acceptance of the replaced revision is refused by name, one of the newest taken', async () => {
    const book = reissued(await secondKitchen());
    const [first, second] = book.offers.get(EVENING)!;
    const signature = { name: 'Aine Trask', email: 'aine@lifeboat.example', note: '', accepted: TODAY };
    const take = (offer: typeof first) =>
      takeAcceptance(book, JSON.stringify(makeAcceptance(offer!, offer!.proposed, signature)), TODAY);
    const refused = take(first);
    expect(refused.ok ? 'taken' : inWords(refused.what)).toBe(
      `it accepts revision 1 of ${EVENING}, which revision 2 has replaced`,
    );
    expect(take(second).ok).toBe(true);
  });

  test('of a proposal that was edited since, and shared as a draft: the offer as issued', async () => {
    const book = withEvening(issued(await secondKitchen()), { occasion: 'Another supper', shareDraft: true });
    const { pages } = clientSite(book, TODAY);
    expect(pages).toHaveLength(1);
    const { occasion } = offerOf(await secondKitchen());
    expect(view(book)).toMatchObject({ state: 'offered', title: occasion });
  });

  test('of a second revision that was withdrawn: that, and no offer any more', async () => {
    const gone = view(withEvening(reissued(await secondKitchen()), { withdrawn: true }));
    expect(gone.stateText).toMatch(/withdrawn and can’t be accepted/);
    expect([cannotBeAccepted(gone), gone.changes, gone.sheetMarks.state]).toEqual([true, null, 'Withdrawn']);
  });

  test('of a page left open: the file beside it names the offer that stands now, and in which state', async () => {
    const first = issued(await secondKitchen());
    const [one, two] = reissued(await secondKitchen()).offers.get(EVENING)!;
    expect(standing(first)).toEqual({ version: 1, offer: one!.digest, state: 'offered' });
    expect(standing(withEvening(first, { withdrawn: true })).state).toBe('withdrawn');
    expect(standing(reissued(await secondKitchen())).offer).toBe(two!.digest);
    expect(standing(accepted(await secondKitchen())).state).toBe('accepted');
  });

  test('of one that has run out: since when, and nothing to accept', async () => {
    const late = view(reissued(await secondKitchen()), day('2027-05-15'));
    expect(late.stateText).toMatch(/valid until Friday, 14 May 2027 and can no longer be accepted/);
    expect(cannotBeAccepted(late)).toBe(true);
  });

  test('of one accepted: the choice accepted and when, though the offer has run out since', async () => {
    const book = accepted(await secondKitchen());
    const done = view(book, day('2027-05-20'));
    expect(done.stateText).toMatch(/accepted Wednesday, 28 April 2027\. We are holding the date for you/);
    expect([done.state, cannotBeAccepted(done), done.changes]).toEqual(['accepted', true, null]);
  });
});

describe('an event that was accepted and then moved', () => {
  const moved = (to: string | null): EventFact => ({
    version: 1,
    kind: 'postponed',
    on: TODAY,
    from: day('2027-06-12'),
    to: to === null ? null : day(to),
    hold: false,
  });
  const when = ({ facts }: ProposalView) => facts.find(({ label }) => label === 'When')?.value;
  const dues = ({ quote }: ProposalView) => quote.payments.map(({ due }) => due);

  test('shows its new day and the one it was moved from, and payments and the last count by the new one', async () => {
    const book = accepted(await secondKitchen());
    const before = view(book);
    const { date } = offerOf(await secondKitchen());
    const later = view(withFacts(book, { ...moved('2027-09-18'), from: date } as EventFact));
    expect(when(later)).toMatch(
      /^Saturday, 18 September 2027, served at .* \(moved from .*2027, the date in the offer\)$/,
    );
    expect(when(later)).toContain(when(before)!.split(', served')[0]);
    expect(dues(later)).not.toEqual(dues(before));
    expect(dues(later)[0]).toBe(dues(before)[0]);
    expect(dues(later).at(-1)).toMatch(/September 2027$/);
    expect([before, later].map((page) => page.sheetMarks.state)).toEqual(['Accepted', 'Accepted, moved']);
    expect(later.since.head).toBe('Changed since this was issued');
    expect(later.since.texts).toEqual([
      expect.stringMatching(/^Change, Saturday, 1 May 2027: It was moved from /),
    ]);
    const count = (page: ProposalView) =>
      page.terms.find(({ head }) => head === 'Your final count')?.texts[0];
    expect(count(later)).toMatch(/^It is due by the end of \w+, \d+ September 2027/);
    expect(count(later)).toContain('of the');
    expect(later.answering.data).toContain('"eventDate":"2027-09-18"');
  });

  test('without a new day leaves the days of payments open, and cancelled asks for none', async () => {
    const book = accepted(await secondKitchen());
    const off = view(withFacts(book, moved(null)));
    expect(when(off)).toMatch(/^Postponed from .*; the new date isn’t set yet$/);
    expect(
      dues(off)
        .slice(1)
        .every((due) => due === 'once the new date is set'),
    ).toBe(true);
    expect(dues(off)[0]).toContain('April 2027');
    const cancelled = view(withFacts(book, { version: 1, kind: 'cancelled', on: ACCEPTED }));
    expect(when(cancelled)).toMatch(/^Cancelled; it was planned for /);
    expect(cancelled.sheetMarks.state).toBe('Cancelled');
    expect(dues(cancelled)).toEqual([]);
  });
});
