import type { Place } from '../../../engine/menu/place.ts';
import { LINE_CLASSES, type LineClass } from '../../../engine/quote/line-class.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { moneyIn, parseRateText } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** A place where events are, with its taxes; a class that names no rate is not taxed there. */
export function linkPlace(
  reading: Reading,
  id: string,
  text: KitchenText['places'][string],
  currency: string,
): Place {
  const tax = Object.fromEntries(
    LINE_CLASSES.map((line) => [line, rateOf(reading, line, text.tax?.[line] ?? '0 %')]),
  ) as Record<LineClass, string>;
  const delivery =
    text.delivery === undefined ? null : reading.understand(['delivery'], text.delivery, moneyIn(currency));
  const minimum =
    text.minimum === undefined ? undefined : reading.understand(['minimum'], text.minimum, moneyIn(currency));
  const cost = text['delivery cost'];
  const deliveryCost =
    cost === undefined ? undefined : reading.understand(['delivery cost'], cost, moneyIn(currency));
  return {
    id,
    name: text.name,
    taxIncluded: text['prices include tax'] === 'yes',
    tax,
    delivery: delivery ?? null,
    ...(minimum !== undefined && { minimum }),
    ...(deliveryCost !== undefined && { deliveryCost }),
  };
}

function rateOf(reading: Reading, line: LineClass, text: string): string {
  return reading.understand(['tax', line], text, parseRateText) ?? text;
}
