import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { PackRule } from '../../../src/engine/food/recipe.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { containersFor } from '../../../src/engine/plan/containers/containers.ts';
import { packedIn } from '../../../src/engine/plan/containers/packed-in.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { allInWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, prices, q, recipe } from './builders.ts';

// A 12 qt tub: 384 fl oz to the brim, 85 % at working fill = 326.4 fl oz.
const { containers } = kitchen([
  ['tub', '384 fl oz', '17/20'],
  ['tray', '20 pieces', '1'],
]);
const soup = recipe('soup', '1 gal', [line(food('leek'), '1 lb')], { pack: { carry: 'tub' } });

function carried(amount: string, of = soup) {
  const [tub] = containersFor(of, q(amount), 1, containers).containers;
  return tub && { count: tub.count, each: exactText(tub.each), last: exactText(tub.last) };
}

describe('containers of a dish', () => {
  it('are filled to the working fill, the last one with what is left', () => {
    expect(carried('500 fl oz')).toEqual({ count: 2, each: '1632/5 fl oz', last: '868/5 fl oz' });
  });

  it('save a last one that would be hardly begun, the others staying below the brim', () => {
    expect(carried('327 fl oz')).toEqual({ count: 1, each: '327 fl oz', last: '327 fl oz' });
    // 342 fl oz is 4.8 % of a tub too much and still under 384; 343 is 5.1 % and takes another tub.
    expect(carried('342 fl oz')?.count).toBe(1);
    expect(carried('343 fl oz')?.count).toBe(2);
    expect(carried('660 fl oz')).toEqual({ count: 2, each: '330 fl oz', last: '330 fl oz' });
  });

  const rolls = (carry: string | PackRule = 'tray', makes: string | string[] = '10 pieces') =>
    recipe('rolls', makes, [line(food('flour'), '1 lb')], { pack: { carry } });

  it('take one piece too many on the last tray, and begin another for two', () => {
    expect(carried('21 pieces', rolls())).toEqual({ count: 1, each: '21 piece', last: '21 piece' });
    expect(carried('22 pieces', rolls())?.count).toBe(2);
    expect(carried('61 pieces', rolls())).toEqual({ count: 3, each: '20 piece', last: '21 piece' });
    // 40 on each tray, as the recipe says: 42 is a twentieth more.
    const forty = { container: 'tray', each: q('40 pieces') };
    expect(carried('41 pieces', rolls(forty))).toEqual({ count: 1, each: '41 piece', last: '41 piece' });
    expect(carried('43 pieces', rolls(forty))?.count).toBe(2);
  });

  it('take what the kitchen says for a container, and nothing where it says 0 %', () => {
    const trays = (over: string) =>
      new Map([['tray', { ...containers.get('tray')!, over: new Fraction(over) }]]);
    const count = (pieces: string, over: string) =>
      containersFor(rolls(), q(pieces), 1, trays(over)).containers[0]?.count;
    expect(count('21 pieces', '0')).toBe(2);
    expect(count('22 pieces', '1/10')).toBe(1);
    expect(count('23 pieces', '1/10')).toBe(2);
  });

  it('take no more servings of what is poured, nor more in what it is chilled in', () => {
    expect(
      carried('21 servings', rolls({ container: 'tray', each: q('20 servings') }, ['20 servings', '1 gal']))
        ?.count,
    ).toBe(2);
    const chilled = recipe('soup', '1 gal', [line(food('leek'), '1 lb')], { pack: { chill: 'tub' } });
    expect(carried('327 fl oz')?.count).toBe(1);
    expect(carried('327 fl oz', chilled)?.count).toBe(2);
  });
});

describe('how full a container is', () => {
  const pieces = (holds: string, fill: string, amount: string) => {
    const trays = kitchen([['tray', holds, fill]]).containers;
    const rolls = recipe('rolls', '10 pieces', [line(food('flour'), '1 lb')], { pack: { carry: 'tray' } });
    const [tray] = containersFor(rolls, q(amount), 1, trays).containers;
    return tray && [tray.count, exactText(tray.each), exactText(tray.last), ...allInWords(tray.why)];
  };

  it('goes by whole pieces, and a tray takes one piece at least', () => {
    // 25 at nine tenths are 22½: 22 lie on each, so that 46 take three trays, which 22½ on each would not.
    expect(pieces('25 pieces', '9/10', '46 pieces')).toEqual([
      3,
      '22 piece',
      '2 piece',
      'tray holds 25 pieces × 90 % fill = 22 pieces',
      '46 pieces ÷ 22 pieces in each ≈ 2.09',
      'rounded up: 3, the last 9 % full',
    ]);
    expect(pieces('1 piece', '1/2', '2 pieces')?.slice(0, 2)).toEqual([2, '1 piece']);
  });

  it('is never nothing: a single piece takes a tray', () => {
    expect(pieces('40 pieces', '1', '1 piece')).toEqual([
      1,
      '40 piece',
      '1 piece',
      'tray holds 40 pieces',
      '1 piece ÷ 40 pieces in each = 0.025',
      'rounded up: 1, the last 3 % full',
    ]);
  });

  it('is told with what was saved: spread over all, or one more on the last', () => {
    const [spread] = containersFor(soup, q('330 fl oz'), 1, containers).containers;
    expect([allInWords(spread?.why).at(-1), spread?.lastFull.toFraction()]).toEqual([
      '1, each filled to 330 fl oz, since so little is not worth one more',
      '1',
    ]);
    expect(pieces('20 pieces', '1', '61 pieces')?.at(-1)).toBe(
      '3, the last with 21 pieces, since so little is not worth one more',
    );
    expect(pieces('20 pieces', '1', '40 pieces')?.slice(3)).toEqual([
      'tray holds 20 pieces',
      '40 pieces ÷ 20 pieces in each = 2',
    ]);
  });

  it('on the table follows from the lines where they are more than it takes, and says nothing of saving', () => {
    const served = recipe('soup', '1 gal', [line(food('leek'), '1 lb')], { pack: { serve: 'tub' } });
    const [tub] = containersFor(served, q('330 fl oz'), 2, containers).containers;
    expect([tub?.count, tub && exactText(tub.each), tub?.lastFull.toFraction()]).toEqual([
      2,
      '165 fl oz',
      '275/544',
    ]);
    expect(allInWords(tub?.why).slice(-1)).toEqual(['2 lines take one each, 51 % full']);
  });
});

describe('what a card says that food is packed in', () => {
  const stock = recipe('stock', '1 gal', [line(food('leek'), '1 lb')], {
    batches: 'whole',
    pack: { chill: 'tub', serve: 'tray' },
  });
  const broth = recipe('broth', '1 gal', [line(stock, '1 gal')], { pack: { carry: 'tub' } });
  const served = (guests: number) => {
    const of = { adults: guests, children: 0, vendors: 0, staff: 0 };
    return planEvent(
      event([dish(broth, '8 fl oz per guest')], { guests: of }),
      kitchen([['tub', '384 fl oz', '17/20']]),
      prices(),
    );
  };
  const packed = (of: typeof broth, makes: string, ...plans: ReturnType<typeof served>[]) =>
    packedIn(
      of,
      q(makes),
      plans.flatMap(({ dishes }) => dishes),
      containers,
    ).map(({ stage, count, containerName }) => `${count} × ${containerName} to ${stage}`);

  it('is for a dish the containers of all events that its batches are for', () => {
    // 50 × 8 fl oz = 400 fl oz in tubs of 326.4: 2. 40 × 8 = 320: 1.
    expect(packed(broth, '6 gal', served(50))).toEqual(['2 × tub to carry']);
    expect(packed(broth, '6 gal', served(50), served(40))).toEqual(['3 × tub to carry']);
  });

  it('is for a part what its batches make, and nothing to serve it from', () => {
    // 4 gal = 512 fl oz ÷ 326.4: 2.
    expect(packed(stock, '4 gal', served(50))).toEqual(['2 × tub to chill']);
    // From a tray it is served only where it is given out beside a dish: then as planned there, and chilled as a part.
    const inTubs = recipe('stock', '1 gal', [line(food('leek'), '1 lb')], {
      pack: { chill: 'tub', serve: 'tub' },
    });
    const tubs = kitchen([['tub', '384 fl oz', '17/20']]);
    const [given] = planEvent(event([dish(inTubs, '8 fl oz per guest')]), tubs, prices()).dishes;
    const beside = packedIn(inTubs, q('4 gal'), [], containers, given ? [given] : []);
    // 100 × 8 fl oz = 800 fl oz ÷ 326.4: 3.
    expect(beside.map(({ stage, count }) => `${count} to ${stage}`)).toEqual(['2 to chill', '3 to serve']);
    expect(packedIn(inTubs, q('4 gal'), [], containers).map(({ stage }) => stage)).toEqual(['chill']);
  });
});
