import type { Collection } from './collections.ts';
import type { Finding } from './finding.ts';
import type { ContentFolder } from './list-content.ts';
import { readText } from './read-text.ts';

/** One file of a collection with its text; without text the reason is among the findings. */
export interface ContentText {
  readonly id: string;
  readonly file: string;
  readonly text: string | undefined;
}

/** The files of a collection in the folder's order, read now: nothing is kept from an earlier reading. */
export function textsOf(folder: ContentFolder, collection: Collection, findings: Finding[]): ContentText[] {
  return folder.files
    .filter((each) => each.collection === collection)
    .map(({ id, file, path }) => {
      const read = readText(path, file);
      findings.push(...read.findings);
      return { id, file, text: read.text };
    });
}
