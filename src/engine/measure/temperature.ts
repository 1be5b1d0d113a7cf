import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { durationText, minutes, parseDuration } from './duration.ts';

/** Degrees Fahrenheit or Celsius. */
export type TemperatureScale = 'F' | 'C';

/** A temperature as written. */
export interface Temperature {
  readonly degrees: Fraction;
  readonly scale: TemperatureScale;
}

/** A temperature to reach inside, and how long it is held there. */
export interface HeldTemperature extends Temperature {
  /** Whole seconds; undefined where no time is stated. */
  readonly seconds?: number | undefined;
}

/** The scale in which a kitchen that cooks in these measures reads its thermometers. */
export function scaleOf(measures: 'us' | 'metric'): TemperatureScale {
  return measures === 'us' ? 'F' : 'C';
}

const FORM = /^(\d{1,3}(?:\.\d)?) ?(?:°|º|degrees?)? ?([FC])$/i;
const HELD_FORM = /^(.+?) for (.+)$/i;
const SECONDS_FORM = /^(\d{1,5}) ?(?:s|sec|secs|second|seconds)$/i;
const WAY_OUT = 'write it as "165 °F" or "74 °C"';

/** Reads `165 °F`, `74 °C`, `165 F`, exact. Minus signs are refused: nothing here is set below 0 °F or 0 °C. */
export function parseTemperature(text: string): Parsed<Temperature> {
  const [, degrees, scale] = FORM.exec(text.slice(0, 40).trim()) ?? [];
  return degrees === undefined || scale === undefined
    ? notParsed(`“${text.slice(0, 40)}” is not a temperature`, WAY_OUT)
    : parsed({ degrees: new Fraction(degrees), scale: scale.toUpperCase() as TemperatureScale });
}

/** Reads a temperature alone or with the time it is held: `165 °F`, `155 °F for 17 s`, `130 °F for 112 min`. */
export function parseHeldTemperature(text: string): Parsed<HeldTemperature> {
  const [, degrees = text, time] = HELD_FORM.exec(text.slice(0, 60).trim()) ?? [];
  const temperature = parseTemperature(degrees);
  if (!temperature.ok || time === undefined) return temperature;
  const seconds = parseSeconds(time);
  return seconds.ok ? parsed({ ...temperature.value, seconds: seconds.value }) : seconds;
}

/** The words of a temperature, to a tenth of a degree, half up; `parseTemperature` reads them back. */
export function temperatureText({ degrees, scale }: Temperature): string {
  const tenths = degrees.mul(10n).add(new Fraction(1n, 2n)).floor();
  return `${tenths.div(10n).toString()} °${scale}`;
}

/** A temperature and its time as recipes write them: `155 °F for 17 s`. No time, and a time of nothing, is left out. */
export function heldTemperatureText(held: HeldTemperature): string {
  const { seconds = 0 } = held;
  return seconds === 0 ? temperatureText(held) : `${temperatureText(held)} for ${secondsText(seconds)}`;
}

/** The same temperature in the other scale or its own, exact: °F = °C × 9/5 + 32. */
export function degreesIn(scale: TemperatureScale, { degrees, scale: own }: Temperature): Fraction {
  if (own === scale) return degrees;
  return scale === 'F' ? degrees.mul(9n).div(5n).add(32n) : degrees.sub(32n).mul(5n).div(9n);
}

function parseSeconds(text: string): Parsed<number> {
  const [, seconds] = SECONDS_FORM.exec(text.trim()) ?? [];
  if (seconds !== undefined) return parsed(Number(seconds));
  const duration = parseDuration(text);
  return duration.ok
    ? parsed(duration.value * 60)
    : notParsed(`“${text}” does not give a time`, 'write the time as 17 s, 4 min or 1 h 52 min');
}

function secondsText(seconds: number): string {
  return seconds % 60 === 0 ? durationText(minutes(seconds / 60)) : `${seconds} s`;
}
