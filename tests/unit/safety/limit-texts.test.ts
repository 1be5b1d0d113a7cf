import { describe, expect, test } from 'vitest';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { type LimitNameOf, rungMet, rungText, type SafetyRules } from '../../../src/engine/safety/limit.ts';
import { citation } from '../../../src/engine/safety/limit-said.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import {
  parseLimitDays,
  parseLimitTemperature,
  parseLimitTime,
  parseRung,
  parseStage,
} from '../../../src/engine/safety/parse-limit.ts';
import { sectionsOf } from '../../../src/engine/safety/safety-check.ts';
import { inWords } from '../../in-words.ts';
import { must } from '../plan/builders.ts';

describe('a way to cook', () => {
  const met = (name: LimitNameOf<'cooking'>, stated: string) => {
    const rung = rungMet(FOOD_CODE_2022.limits[name], must(parseHeldTemperature(stated)));
    return rung && rungText(rung, 'F');
  };

  test('is met by as much heat for as long, in the scale it is stated in', () => {
    expect(met('ground or injected meat', '155 °F for 17 s')).toBe('155 °F for 17 s');
    expect(met('ground or injected meat', '155 °F for 16 s')).toBeUndefined();
    expect(met('ground or injected meat', '154.9 °F for 17 s')).toBe(undefined);
    expect(met('ground or injected meat', '150 °F for 1 min')).toBe('150 °F for 1 min');
    expect(met('ground or injected meat', '158 °F for 0 s')).toBe('158 °F');
    expect(met('intact meat and fish', '63 °C for 15 s')).toBe('145 °F for 15 s');
    expect(met('intact meat and fish', '62.9 °C for 15 s')).toBeUndefined();
  });

  test('of no stated time is held for as long as a probe takes to be read, and no longer', () => {
    // 22 s at 155 °F, 34 s at 153 °F, 54 s at 151 °F: a reading takes half a minute.
    expect(met('whole roasts', '155 °F')).toBe('155 °F for 22 s');
    expect(met('whole roasts', '154 °F')).toBeUndefined();
    expect(met('reheating', '165 °F')).toBe('165 °F for 15 s');
  });
});

describe('a limit of a kitchen’s own', () => {
  test.each([
    ['155 °F for 17 s', '155 °F for 17 s', 17],
    ['74 °C', '165.2 °F', 0],
  ])('to cook to, %s', (text, words, seconds) => {
    const rung = must(parseRung(text));
    expect([rungText(rung, 'F'), rung.seconds]).toEqual([words, seconds]);
  });

  test('to cool to, with the time from the beginning', () => {
    const stage = must(parseStage('21 °C within 1 h 30 min'));
    expect([
      stage.temperature.fahrenheit.toFraction(),
      stage.temperature.celsius.toFraction(),
      stage.within,
    ]).toEqual(['349/5', '21', 90]);
    for (const text of [
      '70 °F',
      '70 °F within 2 h within 6 h',
      'hot within 2 h',
      '70 °F within ever',
      'within 2 h',
    ])
      expect(parseStage(text)).toMatchObject({ ok: false, wayOut: expect.stringMatching(/./) });
  });

  test('to hold at, or for a time', () => {
    expect(must(parseLimitTemperature('40 °F')).fahrenheit.toFraction()).toBe('40');
    expect(must(parseLimitTemperature('40 °F')).celsius.toFraction()).toBe('40/9');
    expect(must(parseLimitTime('3 h'))).toBe(180);
    expect([parseLimitTemperature('cold').ok, parseLimitTime('long').ok, parseRung('hot').ok]).toEqual([
      false,
      false,
      false,
    ]);
  });

  test('in days, from one to a month', () => {
    expect(['1 day', '7 days', '31 DAYS', ' 4 days '].map((text) => must(parseLimitDays(text)))).toEqual([
      1, 7, 31, 4,
    ]);
    for (const text of ['0 days', '32 days', '7', 'a week', '7 days or so', 'at most 7 days', '100 days'])
      expect(parseLimitDays(text).ok).toBe(false);
  });
});

test('a limit is cited with its code, its place and its section, as far as there are any', () => {
  const rules = (place: string | undefined, section: string): SafetyRules => ({
    ...FOOD_CODE_2022,
    place,
    limits: { ...FOOD_CODE_2022.limits, poultry: { ...FOOD_CODE_2022.limits.poultry, section } },
  });
  expect(inWords(citation(rules(undefined, '4-2'), 'poultry'))).toBe('FDA Food Code 2022, 4-2');
  expect(inWords(citation(rules('Hill Town', '4-2'), 'poultry'))).toBe(
    'FDA Food Code 2022 as applied in Hill Town, 4-2',
  );
  expect(inWords(citation(rules('Hill Town', ''), 'poultry'))).toBe(
    'FDA Food Code 2022 as applied in Hill Town',
  );
  expect(sectionsOf(rules(undefined, ''), 'poultry', 'cooling', 'cooling', 'date mark')).toBe(
    '3-501.14(A), 3-501.17',
  );
});
