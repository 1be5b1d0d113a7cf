import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { money } from '../../engine/money/money.ts';
import { quote } from '../../engine/quote/quote.ts';
import { statement } from '../../engine/text/statement.ts';
import { type Acceptance, acceptanceSchema } from '../../schema/acceptance.ts';
import type { AcceptedFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { offerProblem } from '../check-offer.ts';
import { heldOffer, RESTORE_OFFER } from '../issue/held-offer.ts';
import { droppedWords, problemClause } from '../problem-words.ts';
import { answerProblems, needsDropped } from './client-may.ts';
import { readAnswer } from './read-answer.ts';
import { type Judged, type Refusal, refusal } from './refusal.ts';

/**
 * An acceptance's text turned into the fact that begins an event, or refused with what is wrong. It must be whole
 * and unaltered (its own digest), name the newest revision of an offer that stands, choose what the terms allow,
 * be dated within the offer's validity and not after today, and say the total that the terms give. One that takes off
 * a need that was proposed is taken only where `dropNeeds` says that somebody has asked.
 */
export function takeAcceptance(
  book: Book,
  text: string,
  today: Day,
  { dropNeeds = false }: { readonly dropNeeds?: boolean } = {},
): Judged<AcceptedFact> {
  const read = readAcceptance(text);
  if (!read.ok) return read;
  const acceptance = read.value;
  const offer = currentOffer(book, acceptance);
  if (!offer.ok) return offer;
  const against = refusalOf(offer.value, acceptance, today);
  if (against) return against;
  const dropped = needsDropped(offer.value.proposed.needs, acceptance.choice.needs);
  if (dropped.length > 0 && !dropNeeds)
    return refusal(
      statement('answers.drops-proposed', {
        needs: droppedWords(scriptWordsIn(offer.value.terms.locale), dropped),
      }),
      statement('answers.drops-proposed.way'),
    );
  const { proposal, revision, digest } = offer.value;
  return {
    ok: true,
    value: { version: 1, kind: 'accepted', on: today, proposal, revision, digest, acceptance },
  };
}

/** An acceptance's text, whole and unaltered (its own digest), or why it is none. What it accepts is not looked at. */
export function readAcceptance(text: string): Judged<Acceptance> {
  return readAnswer(text, acceptanceSchema, 'acceptance');
}

function currentOffer(book: Book, acceptance: Acceptance): Judged<Offer> {
  const id = acceptance.proposal;
  const held = heldOffer(book, id);
  if (held) return refusal(held, RESTORE_OFFER);
  const revisions = book.offers.get(id) ?? [];
  const named = revisions.find((each) => each.revision === acceptance.revision);
  if (!named || named.digest !== acceptance.offer)
    return refusal(
      statement('answers.no-offer', { id, revision: `${acceptance.revision}` }),
      statement('answers.no-offer.way'),
    );
  const last = revisions.at(-1);
  if (last && last.revision !== named.revision)
    return refusal(
      statement('answers.replaced', { id, revision: `${named.revision}`, last: `${last.revision}` }),
      statement('answers.replaced.way'),
    );
  if (book.events.has(id))
    return refusal(statement('answers.accepted-already', { id }), statement('answers.accepted-already.way'));
  if (book.proposals.get(id)?.withdrawn)
    return refusal(statement('answers.withdrawn', { id }), statement('answers.withdrawn.way'));
  const reason = book.proposals.has(id) ? undefined : book.held.get(`proposal/${id}`);
  if (reason !== undefined)
    return refusal(
      statement('answers.proposal-unread', { id, reason }),
      statement('answers.proposal-unread.way'),
    );
  const problem = offerProblem(named);
  return problem ? refusal(problem.what, problem.wayOut) : { ok: true, value: named };
}

/** Why an acceptance of a standing offer cannot be taken on a day: its dates, its choice or its total. */
export function refusalOf(offer: Offer, acceptance: Acceptance, today: Day): Refusal | undefined {
  const { accepted, choice, total } = acceptance;
  if (accepted > today)
    return refusal(
      statement('answers.dated-ahead', { made: { day: accepted }, today: { day: today } }),
      statement('answers.dated-ahead.way'),
    );
  if (accepted < offer.issued)
    return refusal(
      statement('answers.dated-before', { made: { day: accepted }, issued: { day: offer.issued } }),
      statement('answers.dated-before.way'),
    );
  if (accepted > offer.validUntil)
    return refusal(
      statement('answers.expired', { until: { day: offer.validUntil }, made: { day: accepted } }),
      statement('answers.expired.way'),
    );
  const [problem] = answerProblems({ terms: offer.terms, proposed: offer.proposed.guests }, choice);
  if (problem)
    return refusal(
      statement('answers.misfit', {
        path: problem.path,
        problem: problemClause(scriptWordsIn(offer.terms.locale), problem),
      }),
      statement('answers.misfit.way'),
    );
  const { currency, locale } = offer.terms;
  const show = (sum: string) => displayMoney(money(sum, currency), locale);
  const due = quote(offer.terms, choice).total;
  if (total !== due)
    return refusal(
      statement('answers.total', { total: show(total), due: show(due) }),
      statement('answers.total.way'),
    );
  return undefined;
}
