import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** The stations by id: their names, and how many can work at one where that is stated. */
export function linkStations(
  reading: Reading,
  text: KitchenText['stations'],
): Pick<Kitchen, 'stations' | 'stationPlaces'> {
  const places = new Map<string, number>();
  for (const [id, station] of Object.entries(text)) {
    if (station.places === undefined) continue;
    const read = reading.understand(['stations', id, 'places'], station.places, wholeNumber(1, 100));
    if (read !== undefined) places.set(id, read);
  }
  return { stations: stationNames(text), ...(places.size > 0 && { stationPlaces: places }) };
}

/** The stations’ names by id. */
export function stationNames(text: KitchenText['stations']): ReadonlyMap<string, string> {
  return new Map(Object.entries(text).map(([id, { name }]) => [id, name]));
}
