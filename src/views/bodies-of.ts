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
      ...keyed(text),
    })),
    ...distinct(stories).map((text) => ({ collection: 'packages' as const, ...keyed(text) })),
  ];
}

function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts.map((text) => text.trim()))].filter((text) => text !== '').sort();
}

function keyed(text: string): { id: string; text: string } {
  return { id: bodyKey(text), text };
}
