import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { money } from '../../engine/money/money.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { quote } from '../../engine/quote/quote.ts';
import { type Acceptance, acceptanceSchema } from '../../schema/acceptance.ts';
import type { AcceptedFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { offerProblem } from '../check-offer.ts';
import { heldOffer, RESTORE_OFFER } from '../issue/held-offer.ts';
import { droppedWords, problemWords } from '../problem-words.ts';
import { answerProblems, needsDropped } from './client-may.ts';
import { readAnswer } from './read-answer.ts';

/**
 * An acceptance's text turned into the fact that begins an event, or refused in one sentence. It must be whole
 * and unaltered (its own digest), name the newest revision of an offer that stands, choose what the terms allow,
 * be dated within the offer's validity and not after today, and say the total that the terms give. One that takes off
 * a need that was proposed is taken only where `dropNeeds` says that somebody has asked.
 */
export function takeAcceptance(
  book: Book,
  text: string,
  today: Day,
  { dropNeeds = false }: { readonly dropNeeds?: boolean } = {},
): Parsed<AcceptedFact> {
  const read = readAcceptance(text);
  if (!read.ok) return read;
  const acceptance = read.value;
  const offer = currentOffer(book, acceptance);
  if (!offer.ok) return offer;
  const refusal = refusalOf(offer.value, acceptance, today);
  if (refusal) return refusal;
  const dropped = needsDropped(offer.value.proposed.needs, acceptance.choice.needs);
  if (dropped.length > 0 && !dropNeeds)
    return notParsed(
      `it drops the need proposed for ${droppedWords(scriptWordsIn(offer.value.terms.locale), dropped)}, so nothing would be cooked for them`,
      'ask the client; if it is right, accept it with --drop-needs',
    );
  const { proposal, revision, digest } = offer.value;
  return parsed({ version: 1, kind: 'accepted', on: today, proposal, revision, digest, acceptance });
}

/** An acceptance's text, whole and unaltered (its own digest), or why it is none. What it accepts is not looked at. */
export function readAcceptance(text: string): Parsed<Acceptance> {
  return readAnswer(text, acceptanceSchema, 'acceptance');
}

function currentOffer(book: Book, acceptance: Acceptance): Parsed<Offer> {
  const id = acceptance.proposal;
  const held = heldOffer(book, id);
  if (held) return notParsed(held, RESTORE_OFFER);
  const revisions = book.offers.get(id) ?? [];
  const named = revisions.find((each) => each.revision === acceptance.revision);
  if (!named || named.digest !== acceptance.offer)
    return notParsed(
      `no offer ${id} revision ${acceptance.revision} was issued with its digest`,
      'check that it is meant for this kitchen, and ask the client to accept from the page',
    );
  const last = revisions.at(-1);
  if (last && last.revision !== named.revision)
    return notParsed(
      `it accepts revision ${named.revision} of ${id}, which revision ${last.revision} has replaced`,
      'send the client the page again; it shows the latest revision',
    );
  if (book.events.has(id))
    return notParsed(`${id} has been accepted already`, 'nothing more to do; make any change on the event');
  if (book.proposals.get(id)?.withdrawn)
    return notParsed(`${id} was withdrawn`, 'delete `withdrawn: yes` first if it may still be accepted');
  const reason = book.proposals.has(id) ? undefined : book.held.get(`proposal/${id}`);
  if (reason !== undefined)
    return notParsed(
      `the proposal ${id} can’t be read (${reason}), so there is no telling whether it was withdrawn`,
      'fix it first; `check` shows where',
    );
  const problem = offerProblem(named);
  return problem ? notParsed(problem.what, problem.wayOut) : parsed(named);
}

/** Why an acceptance of a standing offer cannot be taken on a day: its dates, its choice or its total. */
export function refusalOf(offer: Offer, acceptance: Acceptance, today: Day): Parsed<never> | undefined {
  const { accepted, choice, total } = acceptance;
  if (accepted > today)
    return notParsed(
      `it is dated ${accepted}, and today is ${today}`,
      'accept it on that day, or check the date on this computer',
    );
  if (accepted < offer.issued)
    return notParsed(
      `it is dated ${accepted}, before the offer of ${offer.issued}`,
      'ask the client to accept again',
    );
  if (accepted > offer.validUntil)
    return notParsed(
      `the offer was valid until ${offer.validUntil}, but it is dated ${accepted}`,
      'issue a new revision with a later `valid until` if you still want the job',
    );
  const [problem] = answerProblems({ terms: offer.terms, proposed: offer.proposed.guests }, choice);
  if (problem)
    return notParsed(
      `its choice does not fit the offer at ${problem.path}: ${problemWords(scriptWordsIn(offer.terms.locale), problem)}`,
      'ask the client to choose again',
    );
  const { currency, locale } = offer.terms;
  const show = (sum: string) => displayMoney(money(sum, currency), locale);
  const due = quote(offer.terms, choice).total;
  if (total !== due)
    return notParsed(
      `its total is ${show(total)}, but by the offer's terms it is ${show(due)}`,
      'ask the client to accept again from the page',
    );
  return undefined;
}
