import { describe, expect, test } from 'vitest';
import { coolingOf } from '../../../../src/engine/plan/clock/chill-time.ts';
import { FOOD_CODE_2022 } from '../../../../src/engine/safety/limits.ts';

const [warm, cold] = FOOD_CODE_2022.limits.cooling.stages;

describe('the first stage of cooling, where it is not stated', () => {
  test('is a third, a little more than Newton’s law of cooling gives in a room at 38 °F', () => {
    const left = (degrees: number) => Math.log((135 - 38) / (degrees - 38));
    const share = left(70) / left(41);
    expect(share).toBeGreaterThan(0.3);
    for (const minutes of [60, 95, 120, 180, 240, 360]) {
      const { first } = coolingOf(minutes, FOOD_CODE_2022);
      expect(first).toEqual({ temperature: warm.temperature, minutes: Math.ceil(minutes / 3) });
      expect(first!.minutes).toBeGreaterThanOrEqual(share * minutes);
      // FDA Food Code 3-501.14(A): 2 h.
      expect(first!.minutes).toBeLessThanOrEqual(120);
    }
  });

  test('is as stated, within all of it, and no longer than the code gives', () => {
    expect(coolingOf(240, FOOD_CODE_2022, 90).first?.minutes).toBe(90);
    expect(coolingOf(60, FOOD_CODE_2022, 90).first?.minutes).toBe(60);
    expect(coolingOf(480, FOOD_CODE_2022).first?.minutes).toBe(120);
  });

  test('is none in a code that has no temperature before cold, whatever order another writes its stages in', () => {
    const withStages = (stages: typeof FOOD_CODE_2022.limits.cooling.stages) => ({
      ...FOOD_CODE_2022,
      limits: { ...FOOD_CODE_2022.limits, cooling: { section: '', stages } },
    });
    expect(coolingOf(90, withStages([cold!]))).toEqual({ minutes: 90, first: undefined });
    expect(coolingOf(90, withStages([cold!, warm])).first).toEqual({
      temperature: warm.temperature,
      minutes: 30,
    });
  });
});
