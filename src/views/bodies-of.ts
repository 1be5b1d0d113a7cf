import { withPhotos } from '../book/bodies/photos.ts';
import type { Book } from '../book/book.ts';
import { bodyKey } from '../offers/issue/body-key.ts';
import type { Body } from './body.ts';
import type { PlansAtHand } from './kitchen/kept-plan.ts';

/** Every body that a page may show: cooks' notes of today and of kept plans, stories of packages as they are, and as offers froze them. */
export function bodiesOf(book: Book, plans: PlansAtHand = new Map()): Body[] {
  const notes = [
    ...book.recipeBodies.values(),
    ...[...plans.values()].flatMap(({ kept }) => Object.values(kept.notes)),
  ];
  const stories = [
    ...book.packageBodies.values(),
    ...[...book.offers.values()].flatMap((offers) => offers.flatMap((offer) => Object.values(offer.stories))),
  ];
  return [
    ...distinct(notes).map((text) => ({
      collection: 'recipes' as const,
      ...keyed(text, 'recipes', book),
    })),
    ...distinct(stories).map((text) => ({
      collection: 'packages' as const,
      ...keyed(text, 'packages', book),
    })),
  ];
}

function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts.map((text) => text.trim()))].filter((text) => text !== '').sort();
}

/** Under the digest of the text as it was written; what it shows stands in the text as it is compiled. */
function keyed(text: string, folder: string, { photos }: Book): Omit<Body, 'collection'> {
  return { id: bodyKey(text), ...withPhotos(text, folder, photos) };
}
