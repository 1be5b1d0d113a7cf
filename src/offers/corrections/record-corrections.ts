import { join } from 'node:path';
import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { dietsOf } from '../../engine/food/diets-of.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import { callsFor } from '../../engine/food/swap-item.ts';
import type { PublishedCorrection } from '../../schema/correction.ts';
import type { Offer } from '../../schema/offer.ts';
import { servedRecipe } from '../event/recipes.ts';
import { offersInUse } from '../offer-in-use.ts';
import { writeOnce } from '../write-once.ts';
import { correctionsNow, type DishCorrection } from './corrections.ts';
import { knownSince } from './known-since.ts';
import {
  asNow,
  asPublished,
  markOnRequest,
  onOffered,
  onRecord,
  onServed,
  type Statement,
  swappedIn,
} from './statements.ts';

/** One dish of such a record. */
type Corrected = PublishedCorrection['dishes'][number];

/**
 * What pages of offers in use are about to be corrected by and no record says yet, one of an offer: of the dishes as
 * they were offered, and of those that an event's substitutions have put in their place. Only what a recipe says for
 * certain is recorded: a diet lost because a fact is missing comes back with the fact.
 */
export function correctionsToRecord(book: Book, today: Day): PublishedCorrection[] {
  return offersInUse(book, today).flatMap((offer) => {
    const dishes = [...ofOffered(book, offer), ...ofServed(book, offer)];
    const { proposal, revision } = offer;
    return dishes.length === 0
      ? []
      : [{ version: 1, kind: 'correction', on: today, proposal, revision, dishes }];
  });
}

function ofOffered(book: Book, offer: Offer): Corrected[] {
  const { published } = onRecord(offer, book);
  return correctionsNow(offer, book).flatMap((each) => {
    const made = book.recipes.get(each.recipe);
    return newlyCertain(each, made, onOffered(published, each.recipe)) ?? [];
  });
}

/**
 * Of a dish that substitutions touch, as it is served. What is on record of the offered dish is recorded of it again:
 * a later swap may take out of the one what is still in the other.
 */
function ofServed(book: Book, offer: Offer): Corrected[] {
  const facts = book.events.get(offer.proposal)?.facts ?? [];
  const substitutions = facts.filter((fact) => fact.kind === 'substitution');
  const record = onRecord(offer, book);
  const { corrections, dishesNow } = knownSince(offer, book, substitutions, asNow);
  return corrections.flatMap((each): Corrected[] => {
    const { recipe, instead, dish } = each;
    if (!dishesNow.some((touched) => touched.recipe === recipe)) return [];
    const served = servedRecipe(book, recipe, dish, substitutions);
    if (!served.ok) return [];
    const made = served.value.recipe;
    const known = onServed(record, asPublished, { recipe, instead, isReadable: true }, substitutions);
    const found = newlyCertain(each, made, known);
    if (!found) return [];
    const madeWith = swappedIn(substitutions).filter((id) => callsFor(made, id));
    return [
      {
        ...found,
        ...(instead === undefined ? {} : { instead }),
        ...(madeWith.length > 0 ? { madeWith } : {}),
      },
    ];
  });
}

function newlyCertain(
  { recipe, dish, contains, mayContain, lostMarks, unreadable }: DishCorrection,
  made: Recipe | undefined,
  known: readonly Statement[],
): Corrected | undefined {
  // Of a dish that cannot be read now nothing newer is known.
  if (unreadable || !made) return undefined;
  const isNew = (field: 'contains' | 'mayContain' | 'lostMarks') => (word: string) =>
    !known.some((each) => each[field].includes(word));
  const unsure = dietsOf(made).filter(({ suits }) => suits === 'unknown');
  const isSure = (mark: string) => !unsure.some(({ diet }) => mark === diet || mark === markOnRequest(diet));
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
