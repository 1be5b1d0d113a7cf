import { isAllergy, parseNeed } from '../../engine/food/need.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import type { PlanMark, PlanSeat } from '../../exports/form/tables.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';

/** A card for every guest's place, for printing. */
export interface PlaceCardsView {
  readonly kind: 'place cards';
  readonly brand: BrandView;
  /** Occasion, client and day. */
  readonly job: string;
  readonly cards: readonly PlaceCard[];
}

/** One guest's card: the front is read by servers from where they stand, the back from nearby. */
export interface PlaceCard {
  readonly name: string;
  readonly table: string;
  /** As on the list, for the back: an allergy is nobody else's business at the table. */
  readonly need: string;
  /** What sets this guest's plates apart, with the sign that says the same; null where nothing does. */
  readonly flag: { readonly sign: 'sealed' | 'ask' | 'diet'; readonly words: string } | null;
  readonly dishes: readonly PlaceCardDish[];
  /** What is made for this guest in courses of which nobody chooses. */
  readonly besides: readonly string[];
}

/** A dish on a card: what this guest really gets. */
export interface PlaceCardDish {
  readonly mark: PlanMark;
  readonly name: string;
  /** What tells this guest's portion from the others' of the same dish: `VEGAN`, `SEALED`, `ASK`; empty for none. */
  readonly tag: string;
}

/** The place cards of an event that is carried to the table and has a guest list; null for any other. */
export function placeCards(
  { event, tables }: Pick<PrepPlanDocument, 'event' | 'tables'>,
  brand: BrandView,
): PlaceCardsView | null {
  if (event.style !== 'plated' || !tables) return null;
  const say = wordsIn(brand.locale);
  const job = `${event.occasion}, ${event.client}, ${event.dateText}`;
  return { kind: 'place cards', brand, job, cards: tables.seats.map((seat) => placeCard(seat, say)) };
}

function placeCard(seat: PlanSeat, say: Say): PlaceCard {
  const { name, table, need, dishes, notFor, apart } = seat;
  const sealed = sealedFor(seat);
  const chosen = new Set(dishes.flatMap(({ made }) => made ?? []));
  return {
    name,
    table,
    need,
    flag: flagOf(seat, sealed, say),
    dishes: dishes.map(({ letters, shape, name: dish, made }) => ({
      mark: { letters, shape },
      name: made ?? dish,
      tag: notFor.includes(dish)
        ? say('cards.ask')
        : made === undefined
          ? ''
          : sealed.includes(made)
            ? say('cards.sealed')
            : need.toUpperCase(),
    })),
    besides: apart
      .filter((each) => !chosen.has(each))
      .map((each) =>
        sealed.includes(each)
          ? say('cards.sealed-dish', { dish: each })
          : say('cards.separately', { dish: each }),
      ),
  };
}

/** A plan made before sealed portions were recorded: all that is made for an allergy is. */
function sealedFor({ need, apart, sealed }: PlanSeat): readonly string[] {
  return sealed ?? (harms(need) ? apart : []);
}

function flagOf({ need, notFor, dishes }: PlanSeat, sealed: readonly string[], say: Say): PlaceCard['flag'] {
  if (notFor.length > 0) return { sign: 'ask', words: say('cards.ask-first') };
  if (sealed.length > 0) {
    const chosen = dishes.some(({ made }) => made !== undefined && sealed.includes(made));
    return { sign: 'sealed', words: chosen ? say('cards.sealed-meal') : say('cards.sealed-back') };
  }
  if (need === '') return null;
  return harms(need)
    ? { sign: 'ask', words: say('cards.allergy-back') }
    : { sign: 'diet', words: need.toUpperCase() };
}

/** A need in words that Salver does not know may be an allergy. */
function harms(text: string): boolean {
  const need = parseNeed(text);
  return text !== '' && (!need.ok || isAllergy(need.value));
}
