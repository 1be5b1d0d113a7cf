import { counted } from '../../engine/text/counted.ts';
import { type ClientAnswer, clientAnswerSchema, takenBy } from '../../schema/client-answer.ts';
import { USE_NEWER } from '../../schema/newer-version.ts';
import type { ContentText } from '../files/content-texts.ts';
import { readJson } from '../files/read-json.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { type Finding, finding } from '../findings/finding.ts';

/**
 * What waits in the inbox: a note for each answer of a client's, a warning for whatever is none. Whether one can be
 * taken is not judged here; nothing of the Book rests on it before it is.
 */
export function inboxFindings(files: readonly ContentText[]): Finding[] {
  return files.flatMap(({ file, text }) => {
    if (text === undefined) return [];
    const read = readJson<ClientAnswer>(file, text, clientAnswerSchema);
    if ('problem' in read) {
      const { place, what, wayOut: own } = read.problem;
      const wayOut =
        own === USE_NEWER ? own : 'ask the client to send it again from the page, and delete this file';
      return [finding('inbox-unusable', place, what, wayOut)];
    }
    const { code, what } = waitingOf(read.value);
    const wayOut = `to record it: ${takenBy(read.value, file)}`;
    return [finding(code, { file, line: 1, column: 1 }, what, wayOut)];
  });
}

function waitingOf(answer: ClientAnswer): { readonly code: FindingCode; readonly what: string } {
  switch (answer.kind) {
    case 'acceptance': {
      const { name, proposal, revision } = answer;
      return { code: 'acceptance-waiting', what: `${name} accepts ${proposal}, revision ${revision}` };
    }
    case 'count change': {
      const { adults, children } = answer.guests;
      const what = `${answer.name} gives a new count for ${answer.event}: ${counted(adults + children, 'guest')}`;
      return { code: 'count-change-waiting', what };
    }
    case 'guest list':
      return { code: 'guest-list-waiting', what: `a guest list has come in for ${answer.event}` };
  }
}
