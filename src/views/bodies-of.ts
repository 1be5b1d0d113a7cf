import { withPhotos } from '../book/body-photos.ts';
import type { Book } from '../book/book.ts';
import type { Body } from '../build/mirror-bodies.ts';
import { bodyKey } from '../offers/body-key.ts';

/** Every body that a page may show: cooks' notes, stories of packages as they are, and as offers froze them. */
export function bodiesOf(book: Book): Body[] {
  const stories = [
    ...book.packageBodies.values(),
    ...[...book.offers.values()].flatMap((offers) => offers.flatMap((offer) => Object.values(offer.stories))),
  ];
  return [
    ...distinct([...book.recipeBodies.values()]).map((text) => ({
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
