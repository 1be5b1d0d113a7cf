import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** A temperature as written. */
export interface Temperature {
  readonly degrees: Fraction;
  readonly scale: 'F' | 'C';
}

const FORM = /^(\d{1,3}(?:\.\d)?) ?(?:°|º|degrees?)? ?([FC])$/i;

/** Reads a temperature to cook to, `165 °F`, `74 °C`, `165 F`, exact. Below freezing is no cooking and is refused. */
export function parseTemperature(text: string): Parsed<Temperature> {
  const [, degrees, scale] = FORM.exec(text.slice(0, 40).trim()) ?? [];
  return degrees === undefined || scale === undefined
    ? notParsed(`“${text.slice(0, 40)}” is not a temperature`, 'write it as "165 °F" or "74 °C"')
    : parsed({ degrees: new Fraction(degrees), scale: scale.toUpperCase() as 'F' | 'C' });
}
