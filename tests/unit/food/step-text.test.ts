import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { parseStepText, stepTextFor } from '../../../src/engine/food/step-text.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';

const scaled = (text: string, batches: string) => stepTextFor(text, new Fraction(batches), exactText);

describe('numbers in the words of a step', () => {
  it('are for one batch and are multiplied by the batches cooked, a bare count up to the next whole one', () => {
    expect(scaled('Fold {40} papers', '1')).toBe('Fold 40 papers');
    expect(scaled('Fold {40} papers', '2.5')).toBe('Fold 100 papers');
    expect(scaled('Fold {40} papers', '31/40')).toBe('Fold 31 papers');
    // A third of 40 is 13⅓: thirteen papers would be one too few.
    expect(scaled('Fold {40} papers', '1/3')).toBe('Fold 14 papers');
    expect(scaled('{1½} trays, {1/2} pot', '1')).toBe('2 trays, 1 pot');
  });

  it('stay exact where they have a unit', () => {
    expect(scaled('add {2 cups} of water and {1 lb 8 oz} of ice', '1/3')).toBe(
      'add 2/3 cup of water and 1/2 lb of ice',
    );
  });

  it('leave all else as it is written', () => {
    expect(scaled('Roast at 375 °F, 40 minutes, 24 to a sheet.', '7')).toBe(
      'Roast at 375 °F, 40 minutes, 24 to a sheet.',
    );
    expect(scaled('', '2')).toBe('');
  });

  it('are refused where a brace is not closed, not opened, nested or holds anything else', () => {
    for (const text of ['{40', '40}', 'a {b} c', '{}', '{ }', '{{4}}', '{4} and }', '{-4}', '{0}', '{4-5}'])
      expect([text, parseStepText(text).ok]).toEqual([text, false]);
    // What `check` has refused is shown as it stands and never guessed at.
    expect(scaled('{some} papers', '3')).toBe('{some} papers');
  });

  it('never come to less than the batches need, nor to a whole one more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 60 }),
        (count, n, d) => {
          const shown = Number(scaled(`{${count}}`, `${n}/${d}`));
          // In whole numbers alone: count × n ÷ d, up.
          expect(shown).toBe(Math.floor((count * n + d - 1) / d));
        },
      ),
    );
  });
});
