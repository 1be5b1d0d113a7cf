import type { Book } from '../book/book.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { piecesOffCircuit } from '../engine/kitchen/circuits.ts';
import { factOfGear, placeAnswer, placeStations, venueCount } from '../engine/kitchen/place-gear.ts';
import type { VenueKit } from '../engine/menu/venue-kit.ts';
import { venueKitOf } from '../offers/event/clock-facts.ts';
import { eventInputOf } from '../offers/event/input-of.ts';
import { useText } from '../offers/offer-in-use.ts';
import type { Offer } from '../schema/offer.ts';
import { atVenue } from './at-venue.ts';

/** A dish that an offer may ask for, or an event serves. */
interface OfferedDish {
  readonly name: string;
  readonly recipe: Recipe;
}

/**
 * What an offer in use has cooked at its place on equipment that is neither there nor brought, and, while it is open, brought
 * equipment that draws more than the place’s circuits carry.
 */
export function placeCooking(book: Book, offer: Offer): Finding[] {
  const kit = venueKitOf(book, offer);
  const dishes = dishesOf(book, offer);
  const stations = placeStations(dishes.map(({ recipe }) => recipe));
  return [
    ...[...stations].flatMap((station) => cannotCook(book, offer, station, dishes, kit)),
    ...shortOfPower(book, offer, stations, kit),
  ];
}

/** The dishes an event serves; of an open offer all that its client may still choose. */
function dishesOf(book: Book, offer: Offer): OfferedDish[] {
  if (book.events.has(offer.proposal)) {
    const input = eventInputOf(book, offer.proposal);
    return input.ok ? [...input.value.dishes] : [];
  }
  const offered = offer.terms.packages.flatMap(({ courses }) => courses.flatMap(({ dishes }) => dishes));
  const byRecipe = new Map(offered.map(({ recipe, name }) => [recipe, name]));
  return [...byRecipe].flatMap(([id, name]) => {
    const recipe = book.recipes.get(id);
    return recipe ? [{ name, recipe }] : [];
  });
}

function cannotCook(
  book: Book,
  offer: Offer,
  station: string,
  dishes: readonly OfferedDish[],
  kit: VenueKit | undefined,
): Finding[] {
  const { equipment, stations } = book.kitchen;
  const answer = placeAnswer(station, equipment.values(), kit);
  if (answer === 'yes') return [];
  const needing = dishes.filter(({ recipe }) => placeStations([recipe]).has(station));
  const gear = [...equipment.values()].filter((each) => each.station === station);
  const fact = gear.map(factOfGear).find((each) => each !== undefined);
  const work = `${needing.map(({ name }) => `“${name}”`).join(', ')} ${needing.length === 1 ? 'is' : 'are'} cooked at the place at “${stations.get(station) ?? station}”`;
  const lack =
    answer === 'no'
      ? `the venue has no ${fact ?? 'such equipment'}`
      : `nothing states that the venue has ${fact ?? 'such equipment'}`;
  const state =
    answer === 'no' || fact === undefined
      ? ''
      : `write what the venue has as “${fact}: 2” or “${fact}: none”, `;
  return [
    atVenue(
      book,
      offer,
      answer === 'no' ? 'place-cannot-cook' : 'place-not-stated',
      fact,
      `${work} for ${useText(book, offer)}, but ${lack}, and the kitchen’s ${gear.map(({ name }) => name).join(', ')} is not stated to travel`,
      `${state}bring equipment for that station (“travels: yes” in kitchen.yaml), do the step in the kitchen (“at: kitchen”), or serve another dish of the menu`,
    ),
  ];
}

/**
 * Of what is brought for the work at the place of an open offer, and the venue does not have, what finds no circuit with all of it lit
 * at once; of an event the clock tells what is lit when.
 */
function shortOfPower(
  book: Book,
  offer: Offer,
  stations: ReadonlySet<string>,
  kit: VenueKit | undefined,
): Finding[] {
  if (!kit?.circuits || book.events.has(offer.proposal)) return [];
  const pieces = [...book.kitchen.equipment.values()]
    .filter((gear) => gear.travels && stations.has(gear.station ?? '') && !venueCount(gear, kit))
    .flatMap(({ count, name, amperes }) =>
      amperes === undefined ? [] : Array.from({ length: count }, () => ({ name, amperes })),
    );
  const off = piecesOffCircuit(pieces, kit.circuits);
  if (off.length === 0) return [];
  const has = kit.circuits.map(({ count, amperes }) => `${count} × ${amperes} A`).join(', ');
  const what = `for ${useText(book, offer)} no circuit is left for ${off.map(({ name, amperes }) => `${name} (${amperes} A)`).join(', ')}; the venue has ${has === '' ? 'no power' : has}`;
  const wayOut =
    'bring fewer of them, equipment that burns gas, or a generator, and write its amperes under “power”';
  return [atVenue(book, offer, 'circuits-too-few', 'power', what, wayOut)];
}
