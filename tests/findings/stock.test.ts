import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../src/check/findings-on.ts';
import { readBook } from '../../src/check/read-book.ts';
import { exactText } from '../../src/engine/measure/quantity.ts';
import { day } from '../unit/plan/builders.ts';
import { foundIn } from './found-in.ts';
import { contentWith } from './small-content.ts';

describe('stock.csv', () => {
  test('gives each lot with its last day, whatever the order of its columns', async () => {
    const dir = contentWith({
      'stock.csv': 'Use by,Ingredient,Amount\n2027-06-30,lentils,12 lb\n,lentils,½ cup\n',
    });
    const { book, findings } = await readBook(dir);
    expect(findings).toEqual([]);
    expect(book?.stock.get('lentils')?.map(({ amount, useBy }) => [exactText(amount), useBy])).toEqual([
      ['12 lb', '2027-06-30'],
      ['1/2 cup', undefined],
    ]);
  });

  test('tells of rows that cannot be read or name no food, and keeps the others', async () => {
    const text =
      'ingredient,amount,use by\nhill-chese,1 lb,\nlentils,,\nlentils,2 lb,2027-02-30\nlentils,3 lb,\n';
    expect((await foundIn(contentWith({ 'stock.csv': text }))).split('\n')).toEqual([
      'content/stock.csv:2:1 error unknown-id no ingredient is called “hill-chese” — did you mean hill-cheese?',
      'content/stock.csv:3:2 error not-understood the amount in stock is missing — write it as 12 lb, 3 cans or 2 qt',
      'content/stock.csv:4:3 error not-understood 2027-02-30 does not exist — that month runs from 2027-02-01 to 2027-02-28',
    ]);
    const { book } = await readBook(contentWith({ 'stock.csv': text }));
    expect(book?.stock.get('lentils')?.map(({ amount }) => exactText(amount))).toEqual(['3 lb']);
  });

  test('tells of a missing column', async () => {
    expect(
      (await foundIn(contentWith({ 'stock.csv': 'ingredient,use by\nlentils,\n' }))).split('\n'),
    ).toEqual([
      'content/stock.csv:1:1 error missing-column the stock list has no column “amount” — name it on the first line: ingredient,amount,use by',
    ]);
  });

  test('warns of food past its day from the day after on', async () => {
    const { book } = await readBook(
      contentWith({ 'stock.csv': 'ingredient,amount,use by\nlentils,1 lb,2027-05-14\n' }),
    );
    if (!book) throw new Error('the small kitchen has a Book');
    const codes = (today: string) => findingsOn(book, day(today)).map(({ code }) => code);
    expect(codes('2027-05-14')).not.toContain('stock-past');
    expect(codes('2027-05-15')).toContain('stock-past');
  });
});
