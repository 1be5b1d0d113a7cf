import { type Minutes, parseDuration } from '../measure/duration.ts';
import { parseHeldTemperature, parseTemperature } from '../measure/temperature.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { bothScales, type CodeTemperature, type Rung, type Stage } from './limit.ts';

/** Reads a temperature of a limit, `40 °F` or `4 °C`, in both scales. */
export function parseLimitTemperature(text: string): Parsed<CodeTemperature> {
  const read = parseTemperature(text);
  return read.ok ? parsed(bothScales(read.value)) : read;
}

/** Reads one way to cook, `155 °F for 17 s`; without a time, reaching the temperature is enough. */
export function parseRung(text: string): Parsed<Rung> {
  const read = parseHeldTemperature(text);
  return read.ok ? parsed({ temperature: bothScales(read.value), seconds: read.value.seconds ?? 0 }) : read;
}

/** Reads one stage of cooling, `70 °F within 2 h`, counted from the beginning. */
export function parseStage(text: string): Parsed<Stage> {
  const [degrees, time, more] = text.split(' within ');
  if (degrees === undefined || time === undefined || more !== undefined)
    return notParsed(
      `“${text}” does not give a temperature and a time`,
      'write both, such as 70 °F within 2 h',
    );
  const temperature = parseLimitTemperature(degrees);
  if (!temperature.ok) return temperature;
  const within = parseDuration(time);
  return within.ok ? parsed({ temperature: temperature.value, within: within.value }) : within;
}

/** Reads a time that is not to be passed, `4 h`. */
export function parseLimitTime(text: string): Parsed<Minutes> {
  return parseDuration(text);
}

/** Reads the days food may be kept, `7 days`, the day it is made counted: 1 to 31. */
export function parseLimitDays(text: string): Parsed<number> {
  const [, days] = /^(\d{1,2}) days?$/i.exec(text.trim()) ?? [];
  return days === undefined || Number(days) < 1 || Number(days) > 31
    ? notParsed(`“${text}” is not a number of days`, 'write it as 7 days, counting the day it is made')
    : parsed(Number(days));
}
