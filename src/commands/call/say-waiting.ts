import { basename } from 'node:path';
import { takeAcceptance } from '../../offers/answers/accept.ts';
import { answerDifferences } from '../../offers/answers/answer-differences.ts';
import { type Waiting, waitingIn } from '../../offers/answers/inbox.ts';
import type { Acceptance } from '../../schema/acceptance.ts';
import { takenBy } from '../../schema/client-answer.ts';
import { guestsText, shown } from '../../views/quote-view-of.ts';
import { scriptWordsIn } from '../../words/script-words.ts';
import { worded } from '../text/worded.ts';
import type { Call } from './command.ts';
import type { OpenBook } from './open-book.ts';

/** Lists what waits in the inbox: who, for what, and what stands against taking an acceptance. Exit code 0. */
export function sayWaiting(call: Call, open: OpenBook): 0 {
  const waiting = waitingIn(call.contentDir);
  if (call.json)
    call.write(
      JSON.stringify(
        waiting.map((each) => asData(each, open)),
        null,
        2,
      ),
    );
  else if (waiting.length === 0) call.write('The inbox is empty.');
  else call.write(waiting.map((each) => inWords(each, open)).join('\n'));
  return 0;
}

function asData({ file, text, answer }: Waiting, { book, today }: OpenBook) {
  const { locale } = book.kitchen;
  const read = worded(answer, locale);
  if (!read.ok) return { file, refused: read.what, wayOut: read.wayOut };
  const { value } = read;
  if (value.kind === 'acceptance') {
    const { kind, name, email, accepted, proposal, revision, total } = value;
    const taken = worded(takeAcceptance(book, text, today), locale);
    const refusal = taken.ok ? {} : { refused: taken.what, wayOut: taken.wayOut };
    return { file, kind, name, email, accepted, proposal, revision, total, ...refusal };
  }
  const { kind, event, made } = value;
  return { file, kind, event, made, ...(value.kind === 'count change' && { name: value.name }) };
}

function inWords(waiting: Waiting, open: OpenBook): string {
  const data = asData(waiting, open);
  const { answer, file } = waiting;
  if ('refused' in data && data.refused !== undefined) {
    const against = `  can’t be recorded: ${data.refused} — ${data.wayOut}`;
    const who =
      answer.ok && answer.value.kind === 'acceptance'
        ? [acceptanceText(answer.value, open), ...differing(answer.value, open).map((each) => `    ${each}`)]
        : [];
    return [file, ...who, against].join('\n');
  }
  if (!answer.ok) return file;
  const { value } = answer;
  if (value.kind === 'acceptance')
    return [
      file,
      acceptanceText(value, open),
      ...differing(value, open).map((each) => `    ${each}`),
      `  to record it: accept --inbox ${basename(file, '.json')}`,
    ].join('\n');
  const what =
    value.kind === 'count change'
      ? `${value.name}, ${value.made}: a new count for ${value.event}, ${guestsText(scriptWordsIn(open.book.kitchen.locale), value)}`
      : `${value.made}: a guest list for ${value.event}`;
  return [file, `  ${what}`, `  to record it: ${takenBy(value, file)}`].join('\n');
}

function differing({ proposal, offer: digest, choice }: Acceptance, { book }: OpenBook): string[] {
  const offer = book.offers.get(proposal)?.find((each) => each.digest === digest);
  return offer ? answerDifferences(offer.terms, offer.proposed, choice, 'proposed') : [];
}

function acceptanceText(acceptance: Acceptance, { book }: OpenBook): string {
  const { name, email, accepted, proposal, revision, offer: digest, choice, total } = acceptance;
  const offer = book.offers.get(proposal)?.find((each) => each.digest === digest);
  const sum = offer ? shown(total, offer.terms) : total;
  return `  ${name} (${email}), ${accepted}: ${proposal}, revision ${revision}, ${guestsText(scriptWordsIn(book.kitchen.locale), choice)}, ${sum}`;
}
