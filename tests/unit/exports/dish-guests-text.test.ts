import { describe, expect, test } from 'vitest';
import { dishGuestsNumber, dishGuestsText } from '../../../src/exports/words/dish-guests-text.ts';

describe('the guests of a dish', () => {
  test('are whole, or a decimal where some count as part of one, with the mark of the locale', () => {
    const text = (counted: string, locale: string) => dishGuestsText({ counted }, locale);
    expect(['1', '84', '87½', '20 2/5', '1½'].map((each) => text(each, 'en-US'))).toEqual([
      '1 guest',
      '84 guests',
      '87.5 guests',
      '20.4 guests',
      '1.5 guests',
    ]);
    expect([text('87½', 'en-GB'), text('87½', 'de-DE')]).toEqual(['87.5 guests', '87,5 guests']);
    expect(dishGuestsNumber({ counted: '87½' }, 'de-DE')).toBe('87,5');
  });

  test('of a kept plan that says them in another way stay as they are', () => {
    expect(dishGuestsText({ counted: 'all' }, 'en-US')).toBe('all guests');
  });
});
