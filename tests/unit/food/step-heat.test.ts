import { describe, expect, test } from 'vitest';
import { stepHeat } from '../../../src/engine/food/step-heat.ts';
import { temperatureText } from '../../../src/engine/measure/temperature.ts';

const read = (text: string) => {
  const heat = stepHeat(text);
  return heat ? temperatureText(heat) : '';
};

describe('the heat that a step sets an oven to', () => {
  test.each([
    ['Bake at 375 °F until gold, butter the tops.', '375 °F'],
    ['Heat the oven to 425°F; roast the squash in one layer.', '425 °F'],
    ['Bake in rounds at 325 °F, 32 minutes, until the middle reads 160 °F.', '325 °F'],
    ['Bring to 165 °F, then crisp at 400 °F.', '400 °F'],
    ['Backen at 180 °C.', '180 °C'],
    ['Dry at 170 °F with the door ajar.', '170 °F'],
  ])('is read from its words: %s', (text, heat) => {
    expect(read(text)).toBe(heat);
  });

  test.each([
    'Chill below 41 °F at once.',
    'Cool over ice to 70 °F within two hours and 41 °F within six.',
    'Heat through to 165 °F before it goes into a dish.',
    'Keep warm at 140 °F.',
    'Braise for 300 minutes.',
    '',
  ])('is none where it tells what the food reaches or is kept at: %s', (text) => {
    expect(read(text)).toBe('');
  });
});
