import { describe, expect, it } from 'vitest';
import type { DishRole } from '../../../src/engine/course/dish-role.ts';
import {
  comparedMenus,
  comparedSums,
  pricedSide,
} from '../../../src/views/client/proposal-choice-comparison.ts';
import type { Side } from '../../../src/views/client/proposal-choice-sides.ts';
import {
  crossingsOf,
  differenceWords,
  priceStepWords,
  runsOf,
  runWords,
} from '../../../src/views/client/proposal-choice-words.ts';
import { withRoles } from '../../../src/views/dish-roles.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import { clientData } from './client-data.ts';

const data = clientData();
const say = scriptWordsIn('en-US');
const dollars = { currency: 'USD', locale: 'en-US' };
const side = (menu: string, guests: number, addOns: Record<string, number> = {}): Side => ({
  package: menu,
  guests,
  addOns,
});
const pair = (a: Side, b: Side) => [pricedSide(data, a), pricedSide(data, b)] as const;

describe('two sides compared', () => {
  // By hand, for 64 at the table of whom 4 are children, and 2 vendor meals at 24.00; tax on food 7 %:
  // A: 60 × 42.50 = 2550.00, 4 × 21.25 = 85.00, 48.00 → 2683.00, tax 187.81 → 2870.81
  // B: 60 × 41.00 = 2460.00, 4 × 20.50 = 82.00, 48.00 → 2590.00, tax 181.30 → 2771.30
  it('shows every line with both sums and what B has more or less', () => {
    const { rows } = comparedSums(say, data, pair(side('harvest', 64), side('plated', 64)));
    expect(
      rows.map(({ label, cells, difference }) => [label, cells[0].amount, cells[1].amount, difference]),
    ).toEqual([
      ['Menu, per adult', '$42.50', '$41.00', '−$1.50'],
      ['Adults', '$2,550.00', '$2,460.00', '−$90.00'],
      ['Children', '$85.00', '$82.00', '−$3.00'],
      ['Vendor meals', '$48.00', '$48.00', 'same'],
      ['Tax, 7%', '$187.81', '$181.30', '−$6.51'],
      ['Total', '$2,870.81', '$2,771.30', '−$99.51'],
      ['Per guest, all-inclusive (adults and children)', '$44.86', '$43.30', '−$1.56'],
    ]);
  });

  it('says the difference in a sentence, the cheaper side first', () => {
    expect(comparedSums(say, data, pair(side('harvest', 64), side('plated', 64))).words).toBe(
      'B, Plated supper for 64 guests, costs $99.51 less than A: $2,771.30 versus $2,870.81. Per guest, counting adults and children, that is $44.86 with A and $43.30 with B.',
    );
    const same = pricedSide(data, side('plated', 1000));
    expect(differenceWords(say, dollars, [same, same])).toMatch(/^A and B come to the same total, \$/);
  });

  it('lays a line that only one side has beside a dash, and keeps rows it is told of', () => {
    const sides = pair(side('harvest', 64, { espresso: 1 }), side('plated', 64));
    const { rows } = comparedSums(say, data, sides, new Map([['menu-minimum', 'Minimum-guest charge']]));
    const row = (key: string) => rows.find((each) => each.key === key);
    expect(row('add-on:espresso')).toMatchObject({
      cells: [{ amount: '$390.00' }, { amount: '–' }],
      difference: '−$390.00',
    });
    expect(row('menu-minimum')).toMatchObject({
      cells: [{ amount: '–' }, { amount: '–' }],
      difference: 'same',
    });
  });

  it('names dishes that one menu has and the other lacks, and the courses without a dish for a need', () => {
    const { dishes, coverage } = comparedMenus(say, data, pair(side('harvest', 64), side('plated', 64)));
    expect(dishes).toEqual({ onlyA: ['squash'], onlyB: ['Lamb', 'Torte'], both: ['hake'] });
    expect(coverage).toEqual([
      { label: 'vegan', cells: ['please ask us about Mains', 'nothing in Main, After'] },
      { label: 'allergy: tree nuts', cells: ['please ask us', 'please ask us'] },
    ]);
    // Once it is known what the dishes are.
    const roles = (...each: (DishRole | null)[]) =>
      comparedMenus(say, withRoles(data, [[each], [[], []]]), pair(side('harvest', 64), side('plated', 64)))
        .coverage[0]?.cells[0];
    expect(roles('main', 'main')).toBe('a main in every main course');
    expect(roles('main', 'bread')).toMatch(/^no (main|bread) in Mains$/);
  });
});

describe('where one side becomes cheaper', () => {
  const counts = [10, 11, 12, 13, 14];

  it('is the first count of every further run', () => {
    const runs = runsOf(dollars, counts, [
      ['100.00', '110.00', '120.00', '130.00', '140.00'],
      ['105.00', '112.00', '120.00', '128.00', '135.10'],
    ]);
    expect(runs).toEqual([
      { from: 10, to: 11, less: 'a' },
      { from: 12, to: 12, less: 'same' },
      { from: 13, to: 14, less: 'b' },
    ]);
    expect(crossingsOf(runs)).toEqual([12, 13]);
    expect(runWords(say, runs)).toBe(
      'With the same number of guests, A costs less up to 11 guests; both cost the same at 12; B costs less from 13 on.',
    );
  });

  it('is nowhere where one side costs less throughout', () => {
    const runs = runsOf(dollars, counts, [counts.map(() => '9.99'), counts.map(() => '10.00')]);
    expect(crossingsOf(runs)).toEqual([]);
    expect(runWords(say, runs)).toBe(
      'With the same number of guests, A costs less at every count from 10 to 14 guests.',
    );
  });

  it('is found by the cent, where floats of cents would still be equal', () => {
    const big = '123456789012.34';
    expect(runsOf(dollars, [1], [[big], ['123456789012.35']])[0]?.less).toBe('a');
  });

  it('says at which counts more guests cost less', () => {
    expect(
      priceStepWords(say, dollars, 'Harvest table', counts, ['50.00', '60.00', '55.00', '70.00', '69.99']),
    ).toBe(
      'Harvest table costs less in total for 12 guests than for 11. Harvest table costs less in total for 14 guests than for 13.',
    );
    expect(
      priceStepWords(say, dollars, 'Harvest table', counts, ['1.00', '1.00', '2.00', '3.00', '4.00']),
    ).toBe('');
  });
});
