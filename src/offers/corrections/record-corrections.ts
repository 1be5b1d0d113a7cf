import { join } from 'node:path';
import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { dietsOf } from '../../engine/food/diets-of.ts';
import type { PublishedCorrection } from '../../schema/correction.ts';
import type { Offer } from '../../schema/offer.ts';
import { offersInUse } from '../offer-in-use.ts';
import { writeOnce } from '../write-once.ts';
import { correctionsNow, type DishCorrection, onRequestText } from './corrections.ts';

/**
 * What pages of offers in use are about to be corrected by and no record says yet, one of an offer. Only what a recipe
 * says for certain is recorded: a diet lost because a fact is missing comes back with the fact.
 */
export function correctionsToRecord(book: Book, today: Day): PublishedCorrection[] {
  return offersInUse(book, today).flatMap((offer) => {
    const dishes = correctionsNow(offer, book).flatMap((each) => newlyCertain(book, offer, each) ?? []);
    const { proposal, revision } = offer;
    return dishes.length === 0
      ? []
      : [{ version: 1, kind: 'correction', on: today, proposal, revision, dishes }];
  });
}

function newlyCertain(
  book: Book,
  { proposal, revision }: Offer,
  { recipe, dish, contains, mayContain, lostMarks, unreadable }: DishCorrection,
): PublishedCorrection['dishes'][number] | undefined {
  const made = book.recipes.get(recipe);
  // Of a dish that cannot be read now nothing newer is known.
  if (unreadable || !made) return undefined;
  const known = (book.corrections.get(proposal) ?? [])
    .filter((each) => each.revision === revision)
    .flatMap(({ dishes }) => dishes.filter((each) => each.recipe === recipe));
  const isNew = (field: 'contains' | 'mayContain' | 'lostMarks') => (word: string) =>
    !known.some((each) => each[field].includes(word));
  const unsure = dietsOf(made).filter(({ suits }) => suits === 'unknown');
  const isSure = (mark: string) => !unsure.some(({ diet }) => mark === diet || mark === onRequestText(diet));
  const found = {
    recipe,
    dish,
    contains: contains.filter(isNew('contains')),
    mayContain: mayContain.filter(isNew('mayContain')),
    lostMarks: lostMarks.filter(isSure).filter(isNew('lostMarks')),
  };
  return found.contains.length + found.mayContain.length + found.lostMarks.length === 0 ? undefined : found;
}

/** The file of a proposal's correction of that number, in the content folder. */
export function correctionFile(proposal: string, number: number): string {
  return `corrections/${proposal}-${String(number).padStart(3, '0')}.json`;
}

/** More than ever write of one proposal at once. */
const MOST_TRIES = 20;

/**
 * Records what the pages of offers in use are about to be corrected by, before they are published, each under the
 * next free number. Gives the files written. Fails as the file system does.
 */
export async function recordCorrections(contentDir: string, book: Book, today: Day): Promise<string[]> {
  const written: string[] = [];
  for (const record of correctionsToRecord(book, today)) {
    const first = (book.corrections.get(record.proposal)?.length ?? 0) + 1;
    for (let number = first; number < first + MOST_TRIES; number += 1) {
      const file = correctionFile(record.proposal, number);
      if (!(await writeOnce(join(contentDir, file), record))) continue;
      written.push(file);
      break;
    }
  }
  return written;
}
