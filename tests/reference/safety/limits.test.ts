import { describe, expect, it, test } from 'vitest';
import { degreesIn, parseTemperature } from '../../../src/engine/measure/temperature.ts';
import { type LimitName, type LimitNameOf, rungText } from '../../../src/engine/safety/limit.ts';
import { citation, limitTemperatureText } from '../../../src/engine/safety/limit-said.ts';
import { EDITIONS, FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { inWords } from '../../in-words.ts';
import { must } from '../../unit/plan/builders.ts';

/*
 * The text of the code itself was not read. The figures stand in the adoptions by states that keep its wording and in
 * handbooks for food handlers, each named beside its check.
 */
const { limits } = FOOD_CODE_2022;
const cooking = (name: LimitNameOf<'cooking'>) => limits[name].rungs.map((rung) => rungText(rung, 'F'));
const metric = (name: LimitNameOf<'cooking'>) => limits[name].rungs.map((rung) => rungText(rung, 'C'));

describe('cooking, FDA Food Code 3-401.11 to 3-401.13', () => {
  test('intact meat and fish, and eggs for one order: 145 °F (63 °C) for 15 s (Minnesota Rules 4626.0340)', () => {
    expect(cooking('intact meat and fish')).toEqual(['145 °F for 15 s']);
    expect(metric('intact meat and fish')).toEqual(['63 °C for 15 s']);
    expect(cooking('eggs to order')).toEqual(['145 °F for 15 s']);
  });

  test('ground, injected, tenderized meat, and eggs that are held: 155 °F for 17 s, 145 °F for 3 min, 150 °F for 1 min, 158 °F at once (Florida’s adoption of 3-401.11(A)(2), 2017)', () => {
    const ways = ['155 °F for 17 s', '145 °F for 3 min', '150 °F for 1 min', '158 °F'];
    expect(cooking('ground or injected meat')).toEqual(ways);
    expect(cooking('eggs')).toEqual(ways);
  });

  test('15 s instead of 17 s in the edition of 2013 (Minnesota Rules 4626.0340)', () => {
    const older = EDITIONS.find(({ edition }) => edition === 'FDA Food Code 2013');
    expect(rungText(older!.limits['ground or injected meat'].rungs[0], 'F')).toBe('155 °F for 15 s');
    // Maryland COMAR 10.15.03.10.
    expect(rungText(older!.limits.poultry.rungs[0], 'F')).toBe('165 °F for 15 s');
  });

  test('poultry and stuffed food: 165 °F (74 °C), under a second (North Carolina food handlers’ manual)', () => {
    expect(cooking('poultry')).toEqual(['165 °F']);
    expect(metric('stuffed food')).toEqual(['74 °C']);
  });

  test('plants cooked for hot holding: 135 °F (Maryland COMAR 10.15.03.10, Chart 1)', () => {
    expect(cooking('plant food held hot')).toEqual(['135 °F']);
  });

  /*
   * Maryland COMAR 10.15.03.10, Chart 1, °F and °C; the lines it leaves out (149, 153 and 157 °F) from the Vessel
   * Sanitation Program's Operations Manual of 2018, 7.3.4.1, which prints the code's whole table. Times also in 18 AAC
   * 31.232, Table D (Alaska).
   */
  test('whole roasts by their table, which the code prints in tenths of a degree Celsius', () => {
    const MINUTE = 60;
    const table: [string, string, number][] = [
      ['130 °F', '54.4 °C', 112 * MINUTE],
      ['131 °F', '55 °C', 89 * MINUTE],
      ['133 °F', '56.1 °C', 56 * MINUTE],
      ['135 °F', '57.2 °C', 36 * MINUTE],
      ['136 °F', '57.8 °C', 28 * MINUTE],
      ['138 °F', '58.9 °C', 18 * MINUTE],
      ['140 °F', '60 °C', 12 * MINUTE],
      ['142 °F', '61.1 °C', 8 * MINUTE],
      ['144 °F', '62.2 °C', 5 * MINUTE],
      ['145 °F', '62.8 °C', 4 * MINUTE],
      ['147 °F', '63.9 °C', 134],
      ['149 °F', '65 °C', 85],
      ['151 °F', '66.1 °C', 54],
      ['153 °F', '67.2 °C', 34],
      ['155 °F', '68.3 °C', 22],
      ['157 °F', '69.4 °C', 14],
      ['158 °F', '70 °C', 0],
    ];
    const ours = limits['whole roasts'].rungs
      .map(({ temperature, seconds }): [string, string, number] => [
        limitTemperatureText(temperature, 'F'),
        limitTemperatureText(temperature, 'C'),
        seconds,
      ])
      .sort(([a], [b]) => (a < b ? -1 : 1));
    expect(ours).toEqual(table);
    // The hotter, the shorter: a figure mistyped in the table breaks the order.
    const byHeat = ours.map(([, , seconds]) => seconds);
    expect(byHeat).toEqual([...byHeat].sort((a, b) => b - a));
  });
});

describe('after cooking', () => {
  test('heating again: 165 °F for 15 s within 2 h, bought ready-to-eat food 135 °F (Delaware 3-403.11)', () => {
    expect(cooking('reheating')).toEqual(['165 °F for 15 s']);
    expect(cooking('reheating ready-to-eat food')).toEqual(['135 °F']);
    expect(limits['reheating time'].within).toBe(120);
  });

  test('cooling: to 70 °F within 2 h and 41 °F within 6 h in all, from room temperature 4 h (Delaware 3-501.14)', () => {
    const stages = (name: 'cooling' | 'cooling from room temperature') =>
      limits[name].stages.map(({ temperature, within }) => [limitTemperatureText(temperature, 'F'), within]);
    expect(stages('cooling')).toEqual([
      ['70 °F', 120],
      ['41 °F', 360],
    ]);
    expect(stages('cooling from room temperature')).toEqual([['41 °F', 240]]);
  });

  test.each<[LimitName, string, string, string]>([
    ['hot holding', '135 °F', '57 °C', 'Washington WAC 246-215-03525'],
    ['cold holding', '41 °F', '5 °C', 'Washington WAC 246-215-03525'],
    ['receiving', '41 °F', '5 °C', 'Virginia 12VAC5-421-340'],
    ['receiving eggs', '45 °F', '7 °C', 'Virginia 12VAC5-421-340'],
    ['thawing', '41 °F', '5 °C', 'Washington WAC 246-215-03510'],
  ])('%s: %s (%s), %s', (name, fahrenheit, celsius) => {
    const limit = limits[name] as { temperature: Parameters<typeof limitTemperatureText>[0] };
    expect(limitTemperatureText(limit.temperature, 'F')).toBe(fahrenheit);
    expect(limitTemperatureText(limit.temperature, 'C')).toBe(celsius);
  });

  test('seven days, the first one counted (Southern Nevada Health District); 4 h, or 6 h under 70 °F, without control (Wyoming chapter 3, section 62)', () => {
    expect(limits['date mark'].days).toBe(7);
    expect(limits['time without control'].within).toBe(240);
    const [cool] = limits['time without control, kept cool'].stages;
    expect([limitTemperatureText(cool.temperature, 'F'), cool.within]).toEqual(['70 °F', 360]);
  });
});

describe('every limit', () => {
  it('names its edition and section', () => {
    expect(inWords(citation(FOOD_CODE_2022, 'cold holding'))).toBe('FDA Food Code 2022, 3-501.16(A)(2)');
    for (const { section } of Object.values(limits))
      expect(section).toMatch(/^3-\d{3}\.\d{2}(\([A-Z]\))?(\(\d\))?$/);
  });

  it('is printed by the code in both scales, which differ by less than a degree', () => {
    // 155 °F is 68.33… °C, and the code prints 68 °C: less than 155 °F asks, and enough.
    const exact = degreesIn('C', must(parseTemperature('155 °F')));
    expect(exact.toFraction()).toBe('205/3');
    const temperatures = Object.values(limits).flatMap((limit) => [
      ...('rungs' in limit ? limit.rungs.map((each) => each.temperature) : []),
      ...('stages' in limit ? limit.stages.map((each) => each.temperature) : []),
      ...('temperature' in limit ? [limit.temperature] : []),
    ]);
    expect(temperatures.length).toBeGreaterThan(30);
    for (const { fahrenheit, celsius } of temperatures) {
      const difference = degreesIn('C', { degrees: fahrenheit, scale: 'F' }).sub(celsius).abs();
      expect(difference.lt(1n)).toBe(true);
    }
  });
});
