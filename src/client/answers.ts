import { compareDays } from '../engine/calendar/day.ts';
import { dateText } from '../exports/words/date-text.ts';
import { acceptanceFileName } from '../offers/answers/acceptance-file-name.ts';
import { needsDropped } from '../offers/answers/client-may.ts';
import { makeAcceptance } from '../offers/answers/make-acceptance.ts';
import { makeCountChange } from '../offers/answers/make-count-change.ts';
import { digestOfRecord } from '../offers/digest.ts';
import { addOnField, PACKAGE_FIELD } from '../views/client/proposal-choice-fields.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import type { Answer } from './answer-panel.ts';
import type { Texts } from './form-texts.ts';
import { type AnswerFile, handOver, type Outlet } from './hand-over.ts';
import type { kitchenDay } from './kitchen-day.ts';
import { signatureIn } from './signature.ts';
import { say } from './words.ts';

/** The answer that accepts the offer, as `accept` takes it. */
export function acceptance(
  data: ClientTerms,
  today: () => ReturnType<typeof kitchenDay>,
  sent: () => void,
): Answer {
  return {
    closed: () => (compareDays(today(), data.validUntil) > 0 ? expiredWords(data) : null),
    file(choice, texts) {
      const { name, email, note } = signatureIn(texts);
      const record = makeAcceptance(data, choice, { name, email, note, accepted: today() });
      return jsonFile(
        record,
        acceptanceFileName(data.proposal, data.revision),
        say('subject.acceptance', { occasion: data.occasion, revision: data.revision }),
      );
    },
    send: (file) => handOver(file, data.answers, outlet()),
    sent,
  };
}

/** The answer that changes an accepted event's counts. */
export function countChange(
  data: ClientTerms,
  today: () => ReturnType<typeof kitchenDay>,
  sent: () => void,
): Answer {
  const until = data.accepted?.until;
  return {
    closed: () =>
      until && compareDays(today(), until) > 0
        ? say('closed.counts', { date: dateText(until, data.terms.locale) })
        : null,
    file(choice, texts) {
      const { name, note } = signatureIn(texts);
      const dropped = needsDropped(data.accepted?.choice.needs ?? {}, choice.needs);
      const record = makeCountChange(choice, {
        withoutNeeds: dropped.map((each) => each.name),
        event: data.proposal,
        offer: data.digest,
        made: today(),
        name,
        note,
      });
      return jsonFile(
        record,
        `count-change-${data.proposal}.json`,
        say('subject.count', { occasion: data.occasion }),
      );
    },
    send: (file) => handOver(file, data.answers, outlet()),
    sent,
  };
}

/** A change of counts has no field for the menu and what goes with it: those are as accepted. */
export function withAcceptedMenu(data: ClientTerms): (texts: Texts) => Texts {
  const accepted = data.accepted?.choice;
  const addOns = data.terms.addOns.flatMap(({ id }, index): [string, string][] => {
    const taken = accepted?.addOns[id];
    return taken ? [[addOnField(index), String(taken)]] : [];
  });
  return (texts) => new Map([...texts, [PACKAGE_FIELD, accepted?.package ?? ''], ...addOns]);
}

/** Sends a guest list: the CSV by itself, or within a record where it is posted. */
export async function sendGuestList(data: ClientTerms, csv: string, made: string) {
  const record = { version: 1, kind: 'guest list', event: data.proposal, offer: data.digest, made, csv };
  const file: AnswerFile = {
    name: `guest-list-${data.proposal}.csv`,
    type: 'text/csv;charset=utf-8',
    text: csv,
    posted: JSON.stringify({ ...record, digest: digestOfRecord(record) }),
    subject: say('subject.guest-list', { occasion: data.occasion }),
  };
  return { file, way: await handOver(file, data.answers, outlet()) };
}

function jsonFile(record: object, name: string, subject: string): AnswerFile {
  return { name, type: 'application/json', text: `${JSON.stringify(record, null, 2)}\n`, subject };
}

function outlet(): Outlet {
  return {
    fetch: (...call) => fetch(...call),
    open: (address) => location.assign(address),
    download: ({ name, type, text }) => {
      const link = document.createElement('a');
      link.href = URL.createObjectURL(new Blob([text], { type }));
      link.download = name;
      link.click();
    },
  };
}

/** What the page tells of an offer that has expired. */
export function expiredWords(data: ClientTerms): string {
  return say('closed.expired', { date: dateText(data.validUntil, data.terms.locale) });
}
