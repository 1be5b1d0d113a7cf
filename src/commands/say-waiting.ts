import { basename } from 'node:path';
import { takeAcceptance } from '../offers/accept.ts';
import { type Waiting, waitingIn } from '../offers/inbox.ts';
import { guestsText, shown } from '../views/quote-view-of.ts';
import type { Call } from './command.ts';
import type { OpenBook } from './open-book.ts';

/** Lists what waits in the inbox: who, which offer, for how much, and what stands against taking it. Exit code 0. */
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
  else if (waiting.length === 0) call.write('Nothing waits in the inbox.');
  else call.write(waiting.map((each) => inWords(each, open)).join('\n'));
  return 0;
}

function asData({ file, text, acceptance }: Waiting, { book, today }: OpenBook) {
  const taken = takeAcceptance(book, text, today);
  const refusal = taken.ok ? {} : { refused: taken.what, wayOut: taken.wayOut };
  if (!acceptance.ok) return { file, refused: acceptance.what, wayOut: acceptance.wayOut };
  const { name, email, accepted, proposal, revision, total } = acceptance.value;
  return { file, name, email, accepted, proposal, revision, total, ...refusal };
}

function inWords(waiting: Waiting, open: OpenBook): string {
  const data = asData(waiting, open);
  const against = `  cannot be taken: ${data.refused} — ${data.wayOut}`;
  if (!waiting.acceptance.ok) return `${data.file}\n${against}`;
  const {
    name,
    email,
    accepted,
    proposal,
    revision,
    offer: digest,
    choice,
    total,
  } = waiting.acceptance.value;
  const offer = open.book.offers.get(proposal)?.find((each) => each.digest === digest);
  const sum = offer ? shown(total, offer.terms) : total;
  return [
    data.file,
    `  ${name} (${email}), ${accepted}: ${proposal}, revision ${revision}, ${guestsText(choice)}, ${sum}`,
    data.refused === undefined ? `  take it: accept --inbox ${basename(data.file, '.json')}` : against,
  ].join('\n');
}
