import Fraction from 'fraction.js';
import { type DayTimes, USUAL_DAY } from '../../engine/kitchen/day-times.ts';
import type { Crew } from '../../engine/kitchen/kitchen.ts';
import { parseClock } from '../../engine/kitchen/parse-clock.ts';
import { parseHourly } from '../../engine/kitchen/parse-hourly.ts';
import { minutes, parseDuration } from '../../engine/measure/duration.ts';
import { parseHours } from '../../engine/measure/parse-hours.ts';
import type { KitchenText } from '../../schema/kitchen.ts';
import { wholeNumber } from './plain-grammars.ts';
import type { Reading } from './reading.ts';

/** How long the parts of an event's day take, usual ones where nothing is written. */
export function linkDayTimes(reading: Reading, text: KitchenText['day']): DayTimes {
  const time = (part: keyof DayTimes): number => {
    const written = text?.[part];
    const read =
      written === undefined ? undefined : reading.understand(['day', part], written, parseDuration);
    return read ?? USUAL_DAY[part];
  };
  return { pack: time('pack'), load: time('load'), clear: time('clear') };
}

/** Who cooks on a day of preparation. */
export function linkCrew(reading: Reading, text: KitchenText['crew'], currency: string): Crew | undefined {
  if (!text) return undefined;
  const people = reading.understand(['crew', 'people'], text.people, wholeNumber(1, 500));
  const hours = reading.understand(['crew', 'hours'], text.hours, parseHours);
  const from =
    text.from === undefined ? undefined : reading.understand(['crew', 'from'], text.from, parseClock);
  const pay =
    text.pay === undefined
      ? undefined
      : reading.understand(['crew', 'pay'], text.pay, (words) => parseHourly(words, currency));
  if (people === undefined || hours === undefined) return undefined;
  const each = minutes(Number(new Fraction(hours).mul(60n).n));
  return { people, each, from, ...(pay !== undefined && { pay }) };
}
