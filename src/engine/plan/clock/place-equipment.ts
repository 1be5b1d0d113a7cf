import type { Equipment } from '../../kitchen/kitchen.ts';
import { venueCount } from '../../kitchen/place-gear.ts';
import type { VenueKit } from '../../menu/venue-kit.ts';
import { holdsAny } from '../days/loads.ts';

/** Equipment as it stands at an event's place. */
export interface PlaceEquipment {
  readonly equipment: Equipment;
  /** How many the venue has of its own; they need no time to heat that is not in the recipe. */
  readonly there: number;
}

/**
 * What work at a place runs on, by station: the venue's own ovens and burners, as far as it states them, and what the
 * kitchen brings of the equipment that it says can travel. A piece stands for a whole kind: one entry with their count.
 */
export function placeEquipment(
  equipment: ReadonlyMap<string, Equipment>,
  venue: VenueKit | undefined,
): PlaceEquipment[] {
  const stations = [...new Set([...equipment.values()].flatMap(({ station }) => station ?? []))];
  return stations.flatMap((station) => {
    const kinds = [...equipment.values()].filter((each) => each.station === station && holdsAny(each));
    const [first] = kinds;
    if (!first) return [];
    const there = venueCount(first, venue) ?? 0;
    const brought = kinds.filter(({ travels }) => travels);
    const count = there + brought.reduce((sum, each) => sum + each.count, 0);
    if (count === 0) return [];
    const kind = brought[0] ?? first;
    return [{ equipment: { ...kind, count }, there }];
  });
}
