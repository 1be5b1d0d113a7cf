import type { Day } from '../engine/calendar/day.ts';
import { readAcceptance, refusalOf } from '../offers/accept.ts';
import { inboxName, isKnown, type Put, putInInbox } from '../offers/inbox.ts';
import type { Acceptance } from '../schema/acceptance.ts';
import type { IssuedOffer, IssuedOffers } from './issued-offers.ts';

/** What the sender of an acceptance is told. */
export interface Answer {
  readonly status: 202 | 422 | 429 | 503;
  readonly body: { readonly received: string; readonly message: string } | { readonly refused: string };
}

/** What a receiver works with. */
export interface Receiving {
  readonly contentDir: string;
  readonly offers: IssuedOffers;
  /** Today in a time zone. */
  today(timeZone: string): Day;
  /** Told of each file that is new in the inbox, `inbox/<name>.json`, and of failures. */
  say(sentence: string): void;
}

/**
 * Takes posted acceptances in, one after another, so that the inbox's bounds hold. Whoever posts the same one twice
 * is answered the same twice. An answer says nothing that the sender has not sent, or cannot read in the offer that
 * the acceptance names by its digest.
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
  const { contentDir, offers, today, say } = receiving;
  const read = readAcceptance(text);
  if (!read.ok) return refuse(422, `${sentence(read.what)} Please accept again from the page.`);
  const acceptance = read.value;
  const issued = await offers.find(acceptance.offer);
  if (!issued || !names(acceptance, issued))
    return refuse(422, 'This acceptance names no offer that was issued here.');
  try {
    if (await isKnown(contentDir, acceptance)) return received(acceptance);
    const unfit = whyNot(issued, acceptance, today(issued.offer.kitchen.timeZone));
    if (unfit !== undefined) return refuse(422, unfit);
    const put = await putInInbox(contentDir, acceptance);
    if (put === 'stored') say(`An acceptance has come in: inbox/${inboxName(acceptance)}.`);
    return answerTo(put, acceptance);
  } catch (error) {
    const { code = 'unknown' } = error as NodeJS.ErrnoException;
    say(`An acceptance of ${acceptance.proposal} could not be stored (${code}); its sender was told so.`);
    return refuse(503, 'Your acceptance could not be stored just now. Please send it by mail.');
  }
}

function names({ proposal, revision }: Acceptance, { offer }: IssuedOffer): boolean {
  return offer.proposal === proposal && offer.revision === revision;
}

/** What `accept` would refuse for good, said to the client at once; undefined where nothing stands against it. */
function whyNot(
  { offer, replaced, accepted }: IssuedOffer,
  acceptance: Acceptance,
  today: Day,
): string | undefined {
  if (accepted) return 'This offer has been accepted already. Please write to us about changes.';
  if (replaced) return 'A newer offer has replaced this one. Please open the page again.';
  if (today > offer.validUntil)
    return `This offer was valid until ${offer.validUntil}. Please ask us for a new one.`;
  const refusal = refusalOf(offer, acceptance, today);
  return refusal && !refusal.ok
    ? `This acceptance cannot be taken: ${refusal.what}. Please accept again from the page.`
    : undefined;
}

function answerTo(put: Put, acceptance: Acceptance): Answer {
  switch (put) {
    case 'stored':
    case 'known':
      return received(acceptance);
    case 'too many of this offer':
      return refuse(429, 'Several acceptances of this offer are waiting already. Please write to us.');
    case 'full':
      return refuse(503, 'No more acceptances can be stored just now. Please send yours by mail.');
  }
}

function received({ digest }: Acceptance): Answer {
  const message = 'Your acceptance has arrived. We look at it and write back to you.';
  return { status: 202, body: { received: digest, message } };
}

function refuse(status: 422 | 429 | 503, refused: string): Answer {
  return { status, body: { refused } };
}

function sentence(what: string): string {
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}.`;
}
