import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { forGuests, parsePerGuest, perGuestText } from '../../../src/engine/measure/per-guest.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { refusal, understood } from './understood.ts';

describe('a per-guest amount', () => {
  it.each([
    ['3 fl oz per guest', '3 fl oz per guest'],
    ['1 shoulder per 8 guests', '1 shoulder per 8 guests'],
    ['1 tin per 18 guests', '1 tin per 18 guests'],
    ['1 server per 30 people', '1 server per 30 guests'],
    ['1 per 6 guests', '1 each per 6 guests'],
    ['½ lb per person', '½ lb per guest'],
    ['2 pieces per head', '2 pieces per guest'],
    ['1 lb 3 oz PER 3 Guests', '1 3/16 lb per 3 guests'],
  ])('reads %s and writes it as %s', (text, written) => {
    const read = understood(parsePerGuest(text));
    expect(perGuestText(read)).toBe(written);
    expect(understood(parsePerGuest(written))).toEqual(read);
  });

  it('needs exactly its share for any number of guests', () => {
    const need = (text: string, guests: string) =>
      exactText(forGuests(understood(parsePerGuest(text)), new Fraction(guests)));
    expect(need('1 shoulder per 8 guests', '90')).toBe('45/4 shoulder');
    expect(need('3 fl oz per guest', '0')).toBe('0 fl oz');
    expect(need('⅓ cup per guest', '7/2')).toBe('7/6 cup');
  });

  it.each([
    ['2 fl oz', 'does not give an amount and the guests it is for'],
    ['2 fl oz per', 'does not give an amount and the guests it is for'],
    ['2 fl oz per 25', 'does not give an amount and the guests it is for'],
    ['2 fl oz per hour', 'does not give an amount and the guests it is for'],
    ['per guest', 'does not give an amount and the guests it is for'],
    ['1 can per 0 guests', 'is for no guests'],
    ['1 can per 2.5 guests', '"2.5" is not a number of guests'],
    ['1 can per 1,000 guests', '"1,000" is not a number of guests'],
    ['0 cans per guest', '"0 cans" is zero'],
    ['1 cup per guest per guest', '"per" does not belong'],
  ])('refuses "%s"', (text, words) => {
    expect(refusal(parsePerGuest(text))).toContain(words);
  });
});
