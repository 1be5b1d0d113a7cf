import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/** The stations by id: their names, how many can work at one, and which skill its work takes, where that is stated. */
export function linkStations(
  reading: Reading,
  { stations, crew }: Pick<KitchenText, 'stations' | 'crew'>,
): Pick<Kitchen, 'stations' | 'stationPlaces' | 'stationSkills'> {
  const places = new Map<string, number>();
  const skills = new Map<string, string>();
  const known = new Map(Object.entries(crew?.skills ?? {}));
  for (const [id, station] of Object.entries(stations)) {
    if (station.skill !== undefined) {
      lookUp(reading, 'skill', station.skill, known, ['stations', id, 'skill']);
      skills.set(id, station.skill);
    }
    if (station.places === undefined) continue;
    const read = reading.understand(['stations', id, 'places'], station.places, wholeNumber(1, 100));
    if (read !== undefined) places.set(id, read);
  }
  return {
    stations: stationNames(stations),
    ...(places.size > 0 && { stationPlaces: places }),
    ...(skills.size > 0 && { stationSkills: skills }),
  };
}

/** The stations’ names by id. */
export function stationNames(text: KitchenText['stations']): ReadonlyMap<string, string> {
  return new Map(Object.entries(text).map(([id, { name }]) => [id, name]));
}
