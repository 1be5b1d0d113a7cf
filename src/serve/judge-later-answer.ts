import type { Day } from '../engine/calendar/day.ts';
import { dateText } from '../exports/words/date-text.ts';
import { statementsIn } from '../exports/words/statement-text.ts';
import { answerProblems, needsDropped } from '../offers/answers/client-may.ts';
import { coursesByAnyName } from '../offers/guest-list/guest-list.ts';
import { guestRows } from '../offers/guest-list/rows.ts';
import { droppedWords, problemClause } from '../offers/problem-words.ts';
import type { CountChange } from '../schema/count-change.ts';
import type { GuestList } from '../schema/guest-list.ts';
import type { Offer } from '../schema/offer.ts';
import { scriptWordsIn } from '../words/script-words.ts';
import { wordsIn } from '../words/words-in.ts';
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
  const { locale } = offer.terms;
  const say = wordsIn(locale);
  const script = scriptWordsIn(locale);
  const date = (day: Day) => dateText(day, locale);
  if (!event) return say('receiver.not-accepted');
  if (event.digest !== offer.digest) return say('receiver.other-revision');
  const { status } = event;
  const { made } = answer;
  if (status.state === 'cancelled') return say('receiver.canceled');
  if (status.date !== null && status.date < today) return say('receiver.over');
  if (made > today || made < status.accepted.acceptance.accepted)
    return say('receiver.dated', { made: date(made), today: date(today) });
  if (answer.kind === 'guest list') {
    const [problem] = guestRows(answer.csv, coursesByAnyName(offer, status)).problems;
    return problem === undefined
      ? undefined
      : say('receiver.guest-list', { problem: statementsIn(locale)(problem) });
  }
  if (status.deadline !== null && today > status.deadline)
    return say('receiver.counts-until', { date: date(status.deadline) });
  const { guests, needs, mains } = answer;
  const held = { terms: offer.terms, proposed: offer.proposed.guests };
  const [problem] = answerProblems(held, { ...status.choice, guests, needs, mains }, status.choice.guests);
  const asked = answer.withoutNeeds ?? [];
  const unasked = needsDropped(status.choice.needs, needs).filter(({ name }) => !asked.includes(name));
  if (!problem && unasked.length > 0)
    return say('receiver.needs-left-out', { needs: droppedWords(script, unasked) });
  return problem ? say('receiver.counts', { problem: problemClause(script, problem) }) : undefined;
}
