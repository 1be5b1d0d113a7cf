import type { Day } from '../engine/calendar/day.ts';
import { dateText } from '../exports/words/date-text.ts';
import { statementsIn } from '../exports/words/statement-text.ts';
import { refusalOf } from '../offers/answers/accept.ts';
import { answersTo, kindOf, readClientAnswer } from '../offers/answers/client-answer.ts';
import { inboxName, isKnown, type Put, putInInbox } from '../offers/answers/inbox.ts';
import { spokenKind } from '../offers/answers/read-answer.ts';
import type { Acceptance } from '../schema/acceptance.ts';
import type { ClientAnswer } from '../schema/client-answer.ts';
import { type Say, wordsIn } from '../words/words-in.ts';
import { acceptedEvent } from './accepted-event.ts';
import type { IssuedOffer, IssuedOffers } from './issued-offers.ts';
import { whyNotLater } from './judge-later-answer.ts';

/** What the sender of an answer is told. */
export interface Answer {
  readonly status: 202 | 422 | 429 | 503;
  readonly body: { readonly received: string; readonly message: string } | { readonly refused: string };
}

/** What a receiver works with. */
export interface Receiving {
  readonly contentDir: string;
  readonly offers: IssuedOffers;
  /** The kitchen's, for answers that name no offer of it. */
  readonly locale: string;
  /** Today in a time zone. */
  today(timeZone: string): Day;
  /** Told of each file that is new in the inbox, `inbox/<name>.json`, and of failures. */
  say(sentence: string): void;
}

/**
 * Takes clients' posted answers in (acceptances, count changes, guest lists, distinguished by their kind), one after
 * another, so that the inbox's bounds hold. Whoever posts the same one twice is answered the same twice. What is said
 * back holds nothing that the sender has not sent, cannot read in the offer that the answer names by its digest, or
 * does not see on its page.
 */
export function receiver(receiving: Receiving): (text: string) => Promise<Answer> {
  let last: Promise<unknown> = Promise.resolve();
  return (text) => {
    const answer = last.then(() => receive(receiving, text));
    last = answer.catch(() => undefined);
    return answer;
  };
}

async function receive(receiving: Receiving, text: string): Promise<Answer> {
  const { contentDir, offers, locale, say } = receiving;
  const read = readClientAnswer(text);
  if (!read.ok) {
    const problem = statementsIn(locale)(read.what);
    return refuse(422, wordsIn(locale)('receiver.unread', { kind: spokenKind(kindOf(text)), problem }));
  }
  const sent = read.value;
  const issued = await offers.find(sent.offer);
  if (!issued || !names(sent, issued))
    return refuse(
      422,
      wordsIn(issued?.offer.terms.locale ?? locale)('receiver.no-offer', { kind: spoken(sent) }),
    );
  const words = wordsIn(issued.offer.terms.locale);
  try {
    if (await isKnown(contentDir, sent)) return received(sent, words);
    const unfit = await whyNot(receiving, sent, issued);
    if (unfit !== undefined) return refuse(422, unfit);
    const put = await putInInbox(contentDir, sent);
    if (put === 'stored')
      say(wordsIn(locale)('server.came-in', { kind: spoken(sent), file: `inbox/${inboxName(sent)}` }));
    return answerTo(put, sent, words);
  } catch (error) {
    const { code = 'unknown' } = error as NodeJS.ErrnoException;
    say(wordsIn(locale)('server.came-in-unsaved', { kind: spoken(sent), id: answersTo(sent), code }));
    return refuse(503, words('receiver.not-saved', { kind: spoken(sent) }));
  }
}

function names(sent: ClientAnswer, { offer }: IssuedOffer): boolean {
  return (
    offer.proposal === answersTo(sent) && (sent.kind !== 'acceptance' || offer.revision === sent.revision)
  );
}

async function whyNot(
  { contentDir, today }: Receiving,
  sent: ClientAnswer,
  issued: IssuedOffer,
): Promise<string | undefined> {
  const day = today(issued.offer.kitchen.timeZone);
  if (sent.kind === 'acceptance') return whyNotAccept(issued, sent, day);
  return whyNotLater(sent, issued.offer, await acceptedEvent(contentDir, issued.offer), day);
}

/** What `accept` would refuse for good, said to the client at once; undefined where nothing stands against it. */
function whyNotAccept(
  { offer, replaced, accepted, withdrawn }: IssuedOffer,
  acceptance: Acceptance,
  today: Day,
): string | undefined {
  const { locale } = offer.terms;
  const words = wordsIn(locale);
  if (accepted) return words('receiver.accepted-already');
  if (replaced) return words('receiver.replaced');
  if (withdrawn) return words('receiver.withdrawn');
  if (today > offer.validUntil)
    return words('receiver.expired', { date: dateText(offer.validUntil, locale) });
  const refusal = refusalOf(offer, acceptance, today);
  return refusal && words('receiver.acceptance', { problem: statementsIn(locale)(refusal.what) });
}

function answerTo(put: Put, sent: ClientAnswer, words: Say): Answer {
  switch (put) {
    case 'stored':
    case 'known':
      return received(sent, words);
    case 'too many of this offer':
      return refuse(429, words('receiver.several'));
    case 'full':
      return refuse(503, words('receiver.full'));
  }
}

function received(sent: ClientAnswer, words: Say): Answer {
  const message = words('receiver.arrived', { kind: spoken(sent) });
  return { status: 202, body: { received: sent.digest, message } };
}

/** The kind of an answer as messages speak of it. */
function spoken({ kind }: ClientAnswer): string {
  return spokenKind(kind);
}

function refuse(status: 422 | 429 | 503, refused: string): Answer {
  return { status, body: { refused } };
}
