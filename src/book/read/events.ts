import { type EventFact, eventFactSchema, factFileName } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import type { EventRecord } from '../book.ts';
import type { ContentText } from '../files/content-texts.ts';
import { readJson } from '../files/read-json.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { finding } from '../findings/finding.ts';
import type { ItemKey } from '../item.ts';
import { hold, type Ledger, restsOn } from '../ledger.ts';
import { wholeFile } from './offers.ts';

/** One fact with the file it is in. */
interface FactFile {
  readonly file: string;
  readonly fact: EventFact;
}

/**
 * Reads the facts of all events. An event is its whole history: one fact that cannot be read, is out of order or
 * relies on an offer that is gone holds the event back.
 */
export function readEvents(
  ledger: Ledger,
  files: readonly ContentText[],
  offers: ReadonlyMap<string, readonly Offer[]>,
): Map<string, EventRecord> {
  const byEvent = Map.groupBy(files, ({ id }) => id);
  const events = new Map<string, EventRecord>();
  for (const [id, facts] of byEvent) {
    const first = facts[0]?.file ?? '';
    ledger.spots.set(`event/${id}`, [{ source: wholeFile(first), base: [] }]);
    const read = facts.flatMap((each) => readFact(ledger, id, each));
    if (read.length < facts.length) continue;
    if (!inOrder(ledger, id, read) || !onItsOffer(ledger, id, read, offers)) continue;
    events.set(id, { id, facts: read.map(({ fact }) => fact) });
  }
  return events;
}

function readFact(ledger: Ledger, event: string, { file, text }: ContentText): FactFile[] {
  const read = text === undefined ? undefined : readJson(file, text, eventFactSchema);
  if (read && 'value' in read) return [{ file, fact: read.value }];
  if (read) ledger.findings.push(read.problem);
  hold(ledger, `event/${event}`, read ? `${read.problem.what} (${file})` : `${file} can’t be read`);
  return [];
}

/** Facts are numbered from 001 without gaps, each file says the kind it holds, and the first is the acceptance. */
function inOrder(ledger: Ledger, event: string, facts: readonly FactFile[]): boolean {
  for (const [index, { file, fact }] of facts.entries()) {
    const due = factFileName(index + 1, fact.kind);
    const name = file.split('/').at(-1);
    if (name !== due) {
      const what = `the fact that should be ${due} is called ${name}`;
      return refuse(
        ledger,
        event,
        file,
        'record-order',
        what,
        'restore the files as Salver wrote them, none missing',
      );
    }
    if ((fact.kind === 'accepted') !== (index === 0)) {
      const what =
        index === 0 ? 'the event does not start with its acceptance' : 'the event is accepted twice';
      return refuse(ledger, event, file, 'record-order', what, 'restore the files as Salver wrote them');
    }
  }
  return true;
}

function onItsOffer(
  ledger: Ledger,
  event: string,
  [first]: readonly FactFile[],
  offers: ReadonlyMap<string, readonly Offer[]>,
): boolean {
  if (first?.fact.kind !== 'accepted') return false;
  const { proposal, revision, digest } = first.fact;
  if (proposal !== event) {
    const what = `the event accepts an offer for ${proposal}`;
    return refuse(ledger, event, first.file, 'record-name', what, `name its folder events/${proposal} again`);
  }
  const item: ItemKey = `offer/${proposal}-r${revision}`;
  if (ledger.held.has(item)) {
    hold(ledger, `event/${event}`, restsOn(ledger, item));
    return false;
  }
  const offer = offers.get(proposal)?.find((each) => each.revision === revision);
  if (!offer) {
    const what = `the event accepts revision ${revision}, and offers/${proposal}-r${revision}.json is gone`;
    return refuse(ledger, event, first.file, 'record-missing', what, 'restore the offer as `issue` wrote it');
  }
  if (offer.digest === digest) return true;
  const what = `the event accepts revision ${revision} with a digest that is not the offer’s`;
  return refuse(
    ledger,
    event,
    first.file,
    'record-missing',
    what,
    'restore offer and event as Salver wrote them',
  );
}

function refuse(
  ledger: Ledger,
  event: string,
  file: string,
  code: FindingCode,
  what: string,
  wayOut: string,
): false {
  ledger.findings.push(finding(code, { file, line: 1, column: 1 }, what, wayOut));
  hold(ledger, `event/${event}`, what);
  return false;
}
