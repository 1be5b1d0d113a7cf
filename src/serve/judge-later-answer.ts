import type { Day } from '../engine/calendar/day.ts';
import { answerProblems, droppedWords, needsDropped } from '../offers/answers/client-may.ts';
import { coursesByAnyName } from '../offers/guest-list/guest-list.ts';
import { guestRows } from '../offers/guest-list/rows.ts';
import type { CountChange } from '../schema/count-change.ts';
import type { GuestList } from '../schema/guest-list.ts';
import type { Offer } from '../schema/offer.ts';
import type { AcceptedEvent } from './accepted-event.ts';

/**
 * What the kitchen would refuse of a client's later answer for good, said at once; undefined where nothing stands
 * against it. A count is taken up to the guarantee's deadline, as the page says; a guest list until the day itself.
 */
export function whyNotLater(
  answer: CountChange | GuestList,
  offer: Offer,
  event: AcceptedEvent | undefined,
  today: Day,
): string | undefined {
  if (!event) return 'This offer has not been accepted yet. Please accept it first.';
  if (event.digest !== offer.digest)
    return 'Another revision of this offer was accepted. Please open the page again.';
  const { status } = event;
  const { made } = answer;
  if (status.state === 'cancelled') return 'This event was canceled. Please write to us.';
  if (status.date !== null && status.date < today) return 'This event is over. Please write to us.';
  if (made > today || made < status.accepted.acceptance.accepted)
    return `It is dated ${made}, and today is ${today}. Please send it again from the page.`;
  if (answer.kind === 'guest list') {
    const [problem] = guestRows(answer.csv, coursesByAnyName(offer, status)).problems;
    return problem === undefined ? undefined : `This guest list can’t be accepted: ${problem}.`;
  }
  if (status.deadline !== null && today > status.deadline)
    return `Counts could be changed until ${status.deadline}. Please write to us.`;
  const { guests, needs, mains } = answer;
  const held = { terms: offer.terms, proposed: offer.proposed.guests };
  const [problem] = answerProblems(held, { ...status.choice, guests, needs, mains }, status.choice.guests);
  const asked = answer.withoutNeeds ?? [];
  const unasked = needsDropped(status.choice.needs, needs).filter(({ name }) => !asked.includes(name));
  if (!problem && unasked.length > 0)
    return `These counts leave out the need on record for ${droppedWords(unasked)}. Please open the page again.`;
  return problem
    ? `These counts can’t be accepted: ${problem.what.replace(/\.$/, '')}. Please send them again from the page.`
    : undefined;
}
