import { printFindings } from '../../src/book/findings/print-findings.ts';
import { readBook } from '../../src/check/read-book.ts';

/** The findings of a content folder as `check` prints them, one a line, without the closing count. */
export async function foundIn(dir: string): Promise<string> {
  const { findings } = await readBook(dir);
  return printFindings(findings, 'content').trimEnd().split('\n').slice(0, -1).join('\n');
}
