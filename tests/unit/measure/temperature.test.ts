import { describe, expect, it } from 'vitest';
import {
  degreesIn,
  heldTemperatureText,
  parseHeldTemperature,
  parseTemperature,
} from '../../../src/engine/measure/temperature.ts';
import { must } from '../plan/builders.ts';

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

  it('are converted exactly', () => {
    expect(degreesIn('F', must(parseTemperature('74 °C'))).toFraction()).toBe('826/5');
    expect(degreesIn('C', must(parseTemperature('41 °F'))).toFraction()).toBe('5');
    expect(degreesIn('F', must(parseTemperature('41 °F'))).toFraction()).toBe('41');
  });

  it.each(['165', 'hot', '165 °K', '-18 °C', '155 °F for ever', '155 °F for', '1e3 °F'])(
    'refuse “%s” with a way out',
    (text) => {
      const read = parseHeldTemperature(text);
      expect(read.ok).toBe(false);
      expect(!read.ok && read.wayOut).toMatch(/write/);
    },
  );
});
