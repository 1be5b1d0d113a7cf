import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  degreesIn,
  heldTemperatureText,
  parseHeldTemperature,
  parseTemperature,
  scaleOf,
  type TemperatureScale,
  temperatureText,
} from '../../../src/engine/measure/temperature.ts';
import { understood as must } from './understood.ts';

describe('temperatures', () => {
  it('are read in both scales, with the time they are held, and print what is read back', () => {
    for (const text of [
      '165 °F',
      '74 °C',
      '155 °F for 17 s',
      '130 °F for 1 h 52 min',
      '145 °F for 4 min',
      '54.4 °C',
    ])
      expect(heldTemperatureText(must(parseHeldTemperature(text)))).toBe(text);
    expect(must(parseHeldTemperature('130 F for 112 minutes')).seconds).toBe(6720);
    expect(must(parseHeldTemperature('165 °F')).seconds).toBeUndefined();
  });

  it.each([
    ['165°F', '165 °F'],
    ['165 f', '165 °F'],
    ['165 degrees F', '165 °F'],
    ['1 degree c', '1 °C'],
    ['74ºC', '74 °C'],
    ['155 °F for 17 sec', '155 °F for 17 s'],
    ['155 °F for 90 seconds', '155 °F for 90 s'],
    ['145 °F for 180 s', '145 °F for 3 min'],
    ['158 °F for 0 s', '158 °F'],
  ])('written %s are %s', (text, words) => {
    expect(heldTemperatureText(must(parseHeldTemperature(text)))).toBe(words);
  });

  it('are printed to a tenth of a degree, half up', () => {
    const printed = (degrees: string, scale: TemperatureScale) =>
      temperatureText({ degrees: new Fraction(degrees), scale });
    expect(printed('1634/30', 'C')).toBe('54.5 °C');
    expect([printed('54.44', 'C'), printed('54.45', 'C')]).toEqual(['54.4 °C', '54.5 °C']);
    expect([printed('134.94', 'F'), printed('134.96', 'F')]).toEqual(['134.9 °F', '135 °F']);
  });

  it('are read off a thermometer in the scale of the kitchen’s measures', () => {
    expect([scaleOf('us'), scaleOf('metric')]).toEqual(['F', 'C']);
  });

  it('are converted exactly', () => {
    expect(degreesIn('F', must(parseTemperature('74 °C'))).toFraction()).toBe('826/5');
    expect(degreesIn('C', must(parseTemperature('41 °F'))).toFraction()).toBe('5');
    expect(degreesIn('F', must(parseTemperature('41 °F'))).toFraction()).toBe('41');
  });

  it.each([
    '165',
    'hot',
    '165 °K',
    '-18 °C',
    '155 °F for ever',
    '155 °F for',
    '1e3 °F',
    '1650 °F',
    '165.55 °F',
    'at 165 °F',
    '165 °F or so',
    '155 °F for 5 apples',
  ])('refuse “%s” with a way out', (text) => {
    const read = parseHeldTemperature(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.wayOut).toMatch(/write/);
  });
});
