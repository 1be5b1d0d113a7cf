import { describe, expect, it } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { containersFor } from '../../../src/engine/plan/containers.ts';
import { food, kitchen, line, q, recipe } from './builders.ts';

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

  it('never hold more pieces than they have room for', () => {
    const rolls = recipe('rolls', '10 pieces', [line(food('flour'), '1 lb')], { pack: { carry: 'tray' } });
    expect(carried('21 pieces', rolls)?.count).toBe(2);
  });
});
