import { parseGrams } from '../../../engine/kitchen/parse-grams.ts';
import { parseBoxSize } from '../../../engine/kitchen/parse-size.ts';
import type { Vehicle } from '../../../engine/menu/vehicle.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** A kind of vehicle. */
export function linkVehicle(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['vehicles']>[string],
): Vehicle | undefined {
  const count = reading.understand(['count'], text.count ?? '1', wholeNumber(1, 1000));
  const payloadGrams =
    text.payload === undefined ? undefined : reading.understand(['payload'], text.payload, parseGrams);
  const space =
    text.space === undefined ? undefined : reading.understand(['space'], text.space, parseBoxSize);
  return count === undefined
    ? undefined
    : { id, name: text.name, count, ...(payloadGrams && { payloadGrams }), ...(space && { space }) };
}
