import Fraction from 'fraction.js';
import { type DayTimes, USUAL_DAY } from '../../../engine/kitchen/day-times.ts';
import { parseClock } from '../../../engine/kitchen/parse-clock.ts';
import { parseHourly } from '../../../engine/kitchen/parse-hourly.ts';
import { minutes, parseDuration } from '../../../engine/measure/duration.ts';
import { parseHours } from '../../../engine/measure/parse-hours.ts';
import type { Crew } from '../../../engine/menu/crew.ts';
import type { CooksText } from '../../../schema/cooks.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import type { Path } from '../../files/place-of.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/** How long the parts of an event's day take, usual ones where nothing is written. */
export function linkDayTimes(reading: Reading, text: KitchenText['day']): DayTimes {
  const time = (part: keyof DayTimes): number => {
    const written = text?.[part];
    const read =
      written === undefined ? undefined : reading.understand(['day', part], written, parseDuration);
    return read ?? USUAL_DAY[part];
  };
  return { pack: time('pack'), load: time('load'), clear: time('clear'), unload: time('unload') };
}

/** Who cooks on a day of preparation. */
export function linkCrew(reading: Reading, text: KitchenText['crew'], currency: string): Crew | undefined {
  if (!text) return undefined;
  const pay =
    text.pay === undefined
      ? undefined
      : reading.understand(['crew', 'pay'], text.pay, (words) => parseHourly(words, currency));
  return linkCooks(reading, ['crew'], text, pay, undefined);
}

/** Who cooks in the kitchen on an event’s own day, at the pay of the kitchen’s crew and with its skills where none are stated. */
export function linkEventCooks(
  reading: Reading,
  text: CooksText,
  crew: Pick<Crew, 'pay' | 'skills'> | undefined,
): Crew | undefined {
  return linkCooks(reading, ['cooks'], text, crew?.pay, crew?.skills ?? new Map());
}

/** `usual` are the skills that the kitchen’s crew has; undefined for the crew itself, which names them. */
function linkCooks(
  reading: Reading,
  path: Path,
  text: CooksText,
  pay: string | undefined,
  usual: Crew['skills'],
): Crew | undefined {
  const people = reading.understand([...path, 'people'], text.people, wholeNumber(1, 500));
  const hours = reading.understand([...path, 'hours'], text.hours, parseHours);
  const from =
    text.from === undefined ? undefined : reading.understand([...path, 'from'], text.from, parseClock);
  if (people === undefined || hours === undefined) return undefined;
  const each = minutes(Number(new Fraction(hours).mul(60n).n));
  const skills = linkSkills(reading, [...path, 'skills'], text.skills, people, usual);
  return { people, each, from, ...(pay !== undefined && { pay }), ...(skills.size > 0 && { skills }) };
}

/** How many have which skill: as written, else as many of the usual ones as there are people. */
function linkSkills(
  reading: Reading,
  path: Path,
  text: CooksText['skills'],
  people: number,
  usual: Crew['skills'],
): ReadonlyMap<string, number> {
  if (!text) return new Map([...(usual ?? [])].map(([skill, count]) => [skill, Math.min(count, people)]));
  const skills = new Map<string, number>();
  for (const [skill, words] of Object.entries(text)) {
    if (usual) lookUp(reading, 'skill', skill, usual, [...path, skill], 'key');
    const count = reading.understand([...path, skill], words, wholeNumber(0, people));
    if (count !== undefined) skills.set(skill, count);
  }
  return skills;
}
