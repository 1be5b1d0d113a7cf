import { degreesIn, parseTemperature, type Temperature } from '../measure/temperature.ts';

const WRITTEN = /(\bat )?(\d{2,3}) ?[°º] ?([FC])\b/g;
/** No food gets as hot inside: such a temperature is an oven's, a fryer's or a grill's. In °F. */
const HEAT = 250;
/** After `at` a low oven or a bath counts too; below it, it may be what food is kept at. In °F. */
const LOW_HEAT = 150;

/**
 * The temperature that a step sets an oven, a fryer or the like to, read from its words: the first of at least 250 °F, or
 * of at least 150 °F after `at`. Undefined where its words name none. What food must reach inside stands in `cookTo`.
 */
export function stepHeat(text: string): Temperature | undefined {
  for (const [, at, degrees, scale] of text.matchAll(WRITTEN)) {
    const read = parseTemperature(`${degrees} °${scale}`);
    if (!read.ok) continue;
    if (degreesIn('F', read.value).gte(at === undefined ? HEAT : LOW_HEAT)) return read.value;
  }
  return undefined;
}
