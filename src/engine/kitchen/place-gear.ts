import { isAtPlace, type Recipe } from '../food/recipe.ts';
import { partsFirst } from '../food/walk.ts';
import type { VenueKit } from '../menu/venue-kit.ts';
import type { Equipment } from './kitchen.ts';

/** What each fact of a venue counts, by the words for it in the name of a piece of equipment or of its station. */
const KINDS: readonly (readonly [fact: 'ovens' | 'burners', words: RegExp])[] = [
  ['ovens', /oven/i],
  ['burners', /burner|\bring\b|stove|range|cooktop|\bhob\b/i],
];

/** The fact of a venue that tells how many it has of a kind of equipment; undefined where no fact does. */
export function factOfGear({ id, name, station }: Equipment): 'ovens' | 'burners' | undefined {
  const words = [id.replaceAll('-', ' '), name, station?.replaceAll('-', ' ') ?? ''];
  return KINDS.find(([, pattern]) => words.some((text) => pattern.test(text)))?.[0];
}

/** The stations at which recipes and their parts are worked on at the place. */
export function placeStations(recipes: Iterable<Recipe>): Set<string> {
  return new Set(
    partsFirst(recipes).flatMap(({ steps }) => steps.filter(isAtPlace).map(({ station }) => station)),
  );
}

/** Whether a station's work can be done at a place on its own equipment or on what is brought. */
export type PlaceAnswer = 'yes' | 'no' | 'not stated';

/**
 * Whether a station's work can be done at the place: yes where the kitchen keeps nothing at that station, where some
 * equipment of it travels, and where the venue has some of its kind; no where the venue is stated to have none of any.
 */
export function placeAnswer(
  station: string,
  equipment: Iterable<Equipment>,
  kit: VenueKit | undefined,
): PlaceAnswer {
  const gear = [...equipment].filter((each) => each.station === station);
  if (gear.length === 0 || gear.some(({ travels }) => travels)) return 'yes';
  const counts = gear.map((each) => venueCount(each, kit));
  if (counts.some((count) => count !== undefined && count > 0)) return 'yes';
  return counts.every((count) => count === 0) ? 'no' : 'not stated';
}

/** How many of a kind of equipment the venue has; undefined where that is not stated. */
export function venueCount(gear: Equipment, kit: VenueKit | undefined): number | undefined {
  const fact = factOfGear(gear);
  return fact && kit?.[fact];
}
