import type { Book } from './book.ts';
import { type Finding, finding } from './finding.ts';

/** Earlier revisions that are gone: what a client was offered before can no longer be shown. */
export function checkOffers(book: Book): Finding[] {
  return [...book.offers].flatMap(([proposal, revisions]) => {
    const newest = revisions.at(-1)?.revision ?? 0;
    const missing = Array.from({ length: newest }, (_, index) => index + 1).filter(
      (each) =>
        !revisions.some(({ revision }) => revision === each) && !book.held.has(`offer/${proposal}-r${each}`),
    );
    return missing.map((revision) => {
      const place = { file: `offers/${proposal}-r${newest}.json`, line: 1, column: 1 };
      const what = `revision ${revision} of ${proposal} is gone`;
      return finding('revision-gap', place, what, `restore offers/${proposal}-r${revision}.json`);
    });
  });
}
