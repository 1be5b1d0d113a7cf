import Fraction from 'fraction.js';
import { HOLDS, type Hold } from '../../../engine/food/recipe.ts';
import type { Carrier, HeatTrial } from '../../../engine/kitchen/carrier.ts';
import type { Container } from '../../../engine/kitchen/container.ts';
import { parseGrams } from '../../../engine/kitchen/parse-grams.ts';
import { parseBoxSize } from '../../../engine/kitchen/parse-size.ts';
import { parseDuration } from '../../../engine/measure/duration.ts';
import { degreesIn, parseTemperature } from '../../../engine/measure/temperature.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { idInWords } from '../../findings/words.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkHeld } from './held.ts';
import { linkReturn } from './return-facts.ts';

type CarrierText = NonNullable<KitchenText['carriers']>[string];

/** What containers travel in; one that names a container the kitchen does not have is held back. */
export function linkCarrier(
  reading: Reading,
  id: string,
  text: CarrierText,
  containers: ReadonlyMap<string, Container>,
  currency: string,
): Carrier | undefined {
  const count = reading.understand(['count'], text.count ?? '1', wholeNumber(1, 10_000));
  const holds = text.holds.flatMap((each, index) => {
    const held = linkHeld(reading, index, each, containers);
    return held ? [held] : [];
  });
  const keeps = text.for.flatMap((word, index): Hold[] => {
    const hold = HOLDS.find((each) => each === word);
    if (hold === undefined)
      reading.say(
        'unknown-word',
        ['for', index],
        `“${word}” is not a way in which food travels`,
        `write ${HOLDS.slice(0, -1).join(', ')} or ${HOLDS.at(-1)}`,
      );
    return hold ? [hold] : [];
  });
  const size = text.size === undefined ? undefined : reading.understand(['size'], text.size, parseBoxSize);
  const grams =
    text.weighs === undefined ? undefined : reading.understand(['weighs'], text.weighs, parseGrams);
  const icePackGrams =
    text['ice pack'] === undefined
      ? undefined
      : reading.understand(['ice pack'], text['ice pack'], parseGrams);
  const trial = text.trial && linkTrial(reading, text.trial);
  if (count === undefined) return undefined;
  return {
    id,
    name: text.name ?? idInWords(id),
    count,
    for: keeps,
    holds,
    ...(size && { size }),
    ...(grams && { grams }),
    ...(trial && { trial }),
    ...(icePackGrams && { icePackGrams }),
    ...linkReturn(reading, text, currency),
  };
}

/** A trial whose water did not get colder, or got colder than what was around it, says nothing of the carrier. */
function linkTrial(reading: Reading, text: NonNullable<CarrierText['trial']>): HeatTrial | undefined {
  const degrees = (field: 'from' | 'to' | 'around') => {
    const read = reading.understand(['trial', field], text[field], parseTemperature);
    return read && degreesIn('C', read);
  };
  const grams = reading.understand(['trial', 'water'], text.water, parseGrams);
  const time = reading.understand(['trial', 'after'], text.after, parseDuration);
  const [from, to, around] = [degrees('from'), degrees('to'), degrees('around')];
  if (!grams || time === undefined || !from || !to || !around) return undefined;
  if (time > 0 && to.lt(from) && around.lt(to))
    return { grams, from, to, around, hours: new Fraction(time, 60) };
  reading.say(
    'not-understood',
    ['trial'],
    `water that goes from ${text.from} to ${text.to} in ${text.after} at ${text.around} tells nothing of how a carrier keeps heat`,
    'write a trial in which hot water cooled, and stayed warmer than what was around the carrier',
  );
  return undefined;
}
