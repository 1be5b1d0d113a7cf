import type { Finding } from '../findings/finding.ts';
import type { Collection } from './collections.ts';
import type { ContentFolder } from './list-content.ts';
import { readText } from './read-text.ts';

/** One file of a collection with its text; without text the reason is among the findings. */
export interface ContentText {
  readonly id: string;
  readonly file: string;
  readonly text: string | undefined;
  /** Of a file without text, as much of it as can be seen. */
  readonly seen?: string;
}

/** The files of a collection in the folder's order, read now: nothing is kept from an earlier reading. */
export function textsOf(folder: ContentFolder, collection: Collection, findings: Finding[]): ContentText[] {
  return [...eachText(folder, collection, findings)];
}

/** The same, one after another: each is read when it is asked for, so that of thousands one is held at a time. */
export function* eachText(
  { files }: ContentFolder,
  collection: Collection,
  findings: Finding[],
): Generator<ContentText> {
  for (const { id, file, path, collection: own } of files) {
    if (own !== collection) continue;
    const read = readText(path, file);
    findings.push(...read.findings);
    yield { id, file, text: read.text, ...(read.seen === undefined ? {} : { seen: read.seen }) };
  }
}

/** Files of ingredients under names that are not read, with their texts: their names have findings already. */
export function misnamedTexts({ misnamedFoods }: ContentFolder): ContentText[] {
  return misnamedFoods.map(({ file, path }) => {
    const { text, seen } = readText(path, file);
    return { id: file, file, text, ...(seen === undefined ? {} : { seen }) };
  });
}

/** Whether two lists are of the same files with the same texts, in the same order. */
export function areSame(some: readonly ContentText[], others: readonly ContentText[]): boolean {
  return (
    some.length === others.length &&
    some.every(({ file, text }, at) => others[at]?.file === file && others[at]?.text === text)
  );
}
