import type { DishTerms } from '../../engine/quote/terms.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import type { ServedSources } from '../event/recipes.ts';
import { offeredFood } from '../issue/dish-terms.ts';
import {
  type CorrectedOffer,
  type CorrectionSources,
  type DishCorrection,
  offeredCorrections,
} from './corrections.ts';
import { type DishNow, dishesNow, type KnownSince } from './dishes-now.ts';
import {
  asPublished,
  type Counted,
  markOnRequest,
  onRecord,
  onServed,
  type Statement,
} from './statements.ts';

/**
 * What is known now of the dishes of an offer: as an event's substitutions have left them, and where they are less
 * safe than was offered, with the records that count. Of a dish that a substitution touches, only what the substitution
 * itself did not say counts as a correction, and a correction of what is no longer in the dish is none.
 */
export function knownSince(
  offer: CorrectedOffer,
  book: CorrectionSources & ServedSources,
  substitutions: readonly SubstitutionFact[],
  counted: Counted = asPublished,
): KnownSince {
  const record = onRecord(offer, book);
  const found = offeredCorrections(offer, book, counted);
  const touched = dishesNow(offer, book, substitutions, found, counted);
  const offered = offeredFood(offer.terms);
  return {
    dishesNow: touched,
    corrections: [
      ...found.filter(({ recipe }) => !touched.some((each) => each.recipe === recipe)),
      ...touched.flatMap((each): DishCorrection[] => {
        const dish = offered.get(each.recipe);
        if (!dish) return [];
        if (each.unreadable) {
          const stated = onServed(record, counted, { ...each, isReadable: false }, substitutions);
          return [unreadable(each, [...found.filter(isOf(each)), ...stated])];
        }
        const told = substitutions.filter(({ tell }) =>
          tell.some((text) => isAbout(text, each.name, touched)),
        );
        return foundOutOf(dish, each, told);
      }),
    ],
  };
}

/** Whether a client reads a sentence as one about a dish, and not about another whose longer name has this one in it. */
function isAbout(text: string, name: string, dishes: readonly DishNow[]): boolean {
  const longer = dishes.filter((each) => each.name !== name && each.name.includes(name));
  return text.includes(name) && !longer.some((each) => text.includes(each.name));
}

/** What was found out of an offered dish that is still the one served. */
function isOf({ recipe, instead }: DishNow): (found: DishCorrection) => boolean {
  return (found) => instead === undefined && found.recipe === recipe;
}

/** Nothing newer is known of it than what is on record. */
function unreadable(
  { recipe, instead, name }: DishNow,
  known: readonly (DishCorrection | Statement)[],
): DishCorrection {
  const all = (field: 'contains' | 'mayContain' | 'lostMarks') => [
    ...new Set(known.flatMap((each) => each[field])),
  ];
  const contains = all('contains');
  return {
    recipe,
    ...(instead === undefined ? {} : { instead }),
    dish: name,
    contains,
    mayContain: all('mayContain').filter((each) => !contains.includes(each)),
    lostMarks: all('lostMarks'),
    unreadable: true,
  };
}

function foundOutOf(
  offered: DishTerms,
  { recipe, instead, name, food }: DishNow,
  told: readonly SubstitutionFact[],
): DishCorrection[] {
  const said = (list: 'contains' | 'mayContain' | 'dietsLost') => told.flatMap((each) => each[list]);
  const contains = food.contains.filter(
    (each) => !offered.contains.includes(each) && !said('contains').includes(each),
  );
  const known = [...offered.contains, ...offered.mayContain, ...said('contains'), ...said('mayContain')];
  const mayContain = food.mayContain.filter((each) => !known.includes(each));
  const lostMarks = [
    ...offered.marks.filter((each) => !food.marks.includes(each) && !said('dietsLost').includes(each)),
    ...(offered.onRequest ?? [])
      .filter((each) => !food.onRequest?.includes(each) && !food.marks.includes(each))
      .map(markOnRequest),
  ];
  const unsaid = food.unsaid === true && offered.unsaid !== true;
  if (contains.length + mayContain.length + lostMarks.length === 0 && !unsaid) return [];
  return [
    {
      recipe,
      ...(instead === undefined ? {} : { instead }),
      dish: name,
      contains,
      mayContain,
      lostMarks,
      ...(unsaid ? { unsaid } : {}),
    },
  ];
}
