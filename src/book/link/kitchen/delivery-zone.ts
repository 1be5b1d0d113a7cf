import type { DeliveryZone } from '../../../engine/menu/delivery-zone.ts';
import { parseDistance } from '../../../engine/menu/parse-distance.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { idInWords } from '../../findings/words.ts';
import { moneyIn } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** Where the kitchen delivers to at one price. */
export function linkDeliveryZone(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['delivery zones']>[string],
  currency: string,
): DeliveryZone | undefined {
  const far = text['up to'];
  const meters = far === undefined ? undefined : reading.understand(['up to'], far, parseDistance);
  const price = reading.understand(['price'], text.price, moneyIn(currency));
  const minimum =
    text.minimum === undefined ? undefined : reading.understand(['minimum'], text.minimum, moneyIn(currency));
  if (
    price === undefined ||
    (far !== undefined && !meters) ||
    (text.minimum !== undefined && minimum === undefined)
  )
    return undefined;
  return {
    id,
    name: text.name ?? idInWords(id),
    ...(meters && { meters }),
    price,
    ...(minimum !== undefined && { minimum }),
  };
}
