import { acceptanceSchema } from '../schema/acceptance.ts';
import type { ContentText } from './content-texts.ts';
import { type Finding, finding } from './finding.ts';
import { readJson } from './read-json.ts';

/**
 * What waits in the inbox: a note for each acceptance, a warning for whatever is none. Whether an acceptance can be
 * taken is not judged here; nothing of the Book rests on it before it is.
 */
export function inboxFindings(files: readonly ContentText[]): Finding[] {
  return files.flatMap(({ file, text }) => {
    if (text === undefined) return [];
    const read = readJson(file, text, acceptanceSchema);
    if ('problem' in read) {
      const { place, what } = read.problem;
      const wayOut = 'ask the client to send it again from the page, and delete this file';
      return [finding('inbox-unusable', place, what, wayOut)];
    }
    const { name, proposal, revision } = read.value;
    const what = `${name} accepts ${proposal}, revision ${revision}`;
    return [finding('acceptance-waiting', { file, line: 1, column: 1 }, what, `take it: accept ${file}`)];
  });
}
