import { photosIn } from '../book/bodies/photos.ts';
import type { Book } from '../book/book.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import { placeOfOffer } from '../offers/offer-in-use.ts';
import type { Offer } from '../schema/offer.ts';

/** The pictures that an offer's frozen stories show and that are there no more: the stories are shown without them. */
export function photosGone(book: Book, offer: Offer): Finding[] {
  return Object.entries(offer.stories).flatMap(([id, story]) =>
    photosIn(story, 'packages')
      .filter(({ file }) => !book.photos.has(file))
      .map(({ file }) =>
        finding(
          'photo-gone',
          placeOfOffer(offer),
          `the story of “${id}” was offered with ${file}, which is gone or can’t be shown`,
          'put the picture back; until then the story appears without it',
        ),
      ),
  );
}
