import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { refusal, understood } from './understood.ts';

const exact = (text: string): string => exactText(understood(parseQuantity(text)));

describe('an amount as a cook writes it', () => {
  it.each([
    ['1 1/2 cups', '3/2 cup'],
    ['1-1/2 cups', '3/2 cup'],
    ['1½ cups', '3/2 cup'],
    ['1 ½ cups', '3/2 cup'],
    ['1  1/2   cups', '3/2 cup'],
    ['999999999999 g', '999999999999 g'],
    ['½ lb', '1/2 lb'],
    ['1⁄2 lb', '1/2 lb'],
    ['3∕4 tsp', '3/4 tsp'],
    ['2.5 kg', '5/2 kg'],
    ['.1 g', '1/10 g'],
    ['500g', '500 g'],
    ['3/2 oz', '3/2 oz'],
    ['  2\u00a0fl. oz. ', '2 fl oz'],
    ['3 each', '3 each'],
    ['12', '12 each'],
    ['10 loaves', '10 loaf'],
    ['2 hotel pans', '2 hotel pan'],
    ['2 crêpes', '2 crêpe'],
    ['14 lb 10 oz', '117/8 lb'],
    ['1 gal 2 qt 1 cup', '25/16 gal'],
    ['1 tbsp 1½ tsp', '3/2 tbsp'],
    ['2 dozen 3 each', '9/4 dozen'],
    ['25/16 gal', '25/16 gal'],
  ])('reads %s as exactly %s', (text, value) => {
    expect(exact(text)).toBe(value);
  });

  it('keeps tenths exact where binary numbers do not', () => {
    const { amount } = understood(parseQuantity('0.1 kg'));
    expect(amount.add(understood(parseQuantity('0.2 kg')).amount).equals('3/10')).toBe(true);
  });

  it.each([
    ['', 'the amount is empty — write a number and a unit, such as 2 cups'],
    ['-2 cups', '"-2" is negative — write an amount above zero'],
    ['−½ cup', '"−" is negative — write an amount above zero'],
    ['0 lb', '"0 lb" is zero — write an amount above zero, or leave the line out'],
    ['0 lb 0 oz', '"0 lb 0 oz" is zero — write an amount above zero, or leave the line out'],
    ['1_000 g', '"1_000" has an underscore — write 1000'],
    ['1e3 g', '"1e3" has an exponent — write all its digits'],
    ['0x10 g', '"0x10" is not a kitchen number — write it in ordinary digits'],
    ['0o14', '"0o14" is not a kitchen number — write it in ordinary digits'],
    ['1,000 g', '"1,000" has a comma — write 1000'],
    ['1,500 g', '"1,500" has a comma — write 1500, or 1.500 if the comma is a decimal point'],
    ['1,5 kg', '"1,5" has a decimal comma — write 1.5'],
    ['1 000 g', '"1 000" has a space between its digits — write 1000'],
    ['1/0 cup', '"1/0" divides by zero — write a fraction such as 1/2'],
    ['1 3/2 cups', '"1 3/2" has a fraction that is not less than one — write a mixed number such as 1 1/2'],
    ['1 2/2 cups', '"1 2/2" has a fraction that is not less than one — write a mixed number such as 1 1/2'],
    ['1.2.3 g', '"1.2.3 g" does not start with one number — write it as 2, 2.5, 1/2 or 1 1/2'],
    ['1234567890123 g', '"1234567890123" has more than 12 digits — write a number a kitchen would use'],
    ['1000000000000 g', '"1000000000000" has more than 12 digits — write a number a kitchen would use'],
    ['cups', '"cups" does not start with a number — write the number first, such as 2 or 1 1/2'],
    ['2 %', '"%" is not a unit — write a unit such as lb, cups, each or cans'],
    ['1-2 cups', '"1-2 cups" is a range — write one amount, the one to buy and cook'],
    ['2 to 3 cups', '"2 to 3 cups" is a range — write one amount, the one to buy and cook'],
    ['1 lb 2 cups', '"1 lb 2 cups" adds a volume (cup) to a weight (lb) — write it in one kind of unit'],
    [
      '1 loaf 3 pieces',
      '"1 loaf 3 pieces" adds a count (piece) to a count (loaf) — write it in one kind of unit',
    ],
    ['10 oz 2 lb', '"10 oz 2 lb" has lb after oz — write each unit once, largest first, such as 2 lb 4 oz'],
    [
      '1 cup 1 cup',
      '"1 cup 1 cup" has cup after cup — write each unit once, largest first, such as 2 lb 4 oz',
    ],
    ['2 lb 4', '"4" has a number without a unit — write a unit after each number, such as 2 lb 4 oz'],
    [
      '3 oz per guest',
      '"oz per guest" is not a unit: "per" does not belong in it — write only a number and a unit',
    ],
  ])('refuses "%s" and says what to write', (text, words) => {
    expect(refusal(parseQuantity(text))).toBe(words);
  });

  it('refuses a text longer than any amount without reading it', () => {
    expect(refusal(parseQuantity(`${'1 lb '.repeat(1e5)}`))).toContain('is too long for an amount');
  });
});
