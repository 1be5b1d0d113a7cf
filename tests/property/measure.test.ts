import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  type Conversion,
  contradictions,
  convert,
  parseConversion,
} from '../../src/engine/measure/conversions.ts';
import { plural, singular } from '../../src/engine/measure/count-words.ts';
import { durationText, minutes, parseDuration } from '../../src/engine/measure/duration.ts';
import { findUnit } from '../../src/engine/measure/find-unit.ts';
import { parseGuestCount } from '../../src/engine/measure/guest-count.ts';
import { kitchenAmount } from '../../src/engine/measure/kitchen-amount.ts';
import { mixedNumberText } from '../../src/engine/measure/mixed-number.ts';
import { parseQuantity } from '../../src/engine/measure/parse-quantity.ts';
import { forGuests, parsePerGuest, perGuestText } from '../../src/engine/measure/per-guest.ts';
import {
  addQuantities,
  exactText,
  parseExactText,
  type Quantity,
  timesQuantity,
  writtenText,
} from '../../src/engine/measure/quantity.ts';
import { UNITS } from '../../src/engine/measure/units.ts';
import { FRACTION_GLYPHS } from '../../src/engine/measure/vulgar-fractions.ts';
import { understood } from '../unit/measure/understood.ts';

const WORDS = [
  'can',
  'loaf',
  'bunch',
  'half pan',
  'cookie',
  'berry',
  'glass',
  'molasses',
  'slice',
  'crêpe',
  'menu',
];
const unit = fc.constantFrom(...UNITS.keys(), ...WORDS);
const sizedUnit = fc.constantFrom(...[...UNITS.values()].filter((u) => u.kind !== 'count').map((u) => u.id));

/** From a ten-thousandth to a million, simple and awkward fractions alike. */
const amount = fc
  .oneof(
    fc.tuple(fc.bigInt(1n, 400n), fc.constantFrom(1n, 2n, 3n, 4n, 8n)),
    fc.tuple(fc.bigInt(1n, 1_000_000n), fc.bigInt(1n, 10_000n)),
  )
  .map(([n, d]) => new Fraction(n, d));
const quantities = fc.record({ amount, unit }) satisfies fc.Arbitrary<Quantity>;
const systems = fc.constantFrom('us', 'metric');

/** What a printed amount says in the unit it was printed from. */
function readBack(text: string, unitBefore: string): Fraction {
  return convert(understood(parseQuantity(text)), unitBefore, [])!.amount;
}

describe('quantities', () => {
  it('scaled by two are exactly doubled, and halved again the same', () => {
    fc.assert(
      fc.property(quantities, (q) => {
        const doubled = timesQuantity(q, new Fraction(2n));
        expect(exactText(doubled)).toBe(exactText(addQuantities(q, q)));
        expect(exactText(timesQuantity(doubled, new Fraction(1n, 2n)))).toBe(exactText(q));
      }),
    );
  });

  it('in exact text and as a cook writes them read back to the same value', () => {
    fc.assert(
      fc.property(quantities, (q) => {
        expect(understood(parseExactText(exactText(q)))).toEqual(q);
        expect(understood(parseQuantity(exactText(q)))).toEqual(q);
        expect(understood(parseQuantity(writtenText(q)))).toEqual(q);
      }),
    );
  });

  it('of any length of fraction survive their exact text', () => {
    const long = fc.bigInt(1n, 10n ** 90n);
    fc.assert(
      fc.property(long, long, unit, (n, d, u) => {
        const q = { amount: new Fraction(n, d), unit: u };
        expect(understood(parseQuantity(exactText(q)))).toEqual(q);
        expect(understood(parseQuantity(writtenText(q)))).toEqual(q);
      }),
    );
  });
});

describe('kitchen amounts', () => {
  it('on a line are within 2 % of the exact amount', () => {
    fc.assert(
      fc.property(quantities, systems, (q, system) => {
        const shown = readBack(kitchenAmount(q, system, 'line'), q.unit);
        expect(shown.sub(q.amount).abs().mul(50n).lte(q.amount)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('that must suffice are never below the exact amount, nor 2 % above it', () => {
    fc.assert(
      fc.property(quantities, systems, (q, system) => {
        const shown = readBack(kitchenAmount(q, system, 'at-least'), q.unit);
        expect(shown.gte(q.amount)).toBe(true);
        expect(shown.sub(q.amount).mul(50n).lte(q.amount)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('print every amount of up to five cups in quarter teaspoons exactly', () => {
    for (let quarters = 1n; quarters <= 250n; quarters += 1n) {
      const q = { amount: new Fraction(quarters, 4n), unit: 'tsp' };
      expect(readBack(kitchenAmount(q, 'us', 'line'), 'tsp').equals(q.amount)).toBe(true);
    }
  });

  it('name each measure once, from the largest down, in steps a kitchen has', () => {
    const volume = fc.constantFrom('gal', 'qt', 'cup', 'fl oz', 'tbsp', 'tsp', 'ml', 'l');
    const form = new RegExp(
      `^(\\d+ gal)?( ?[1-3] qt)?( ?([1-3]?[¼⅓½⅔¾]|[1-3]) cups?)?( ?[1-3] tbsp)?( ?([12]?[${FRACTION_GLYPHS}]|[12]|([12] )?1?\\d/16|[012]\\.\\d+) tsp)?$`,
      'u',
    );
    fc.assert(
      fc.property(amount, volume, fc.constantFrom('line', 'at-least'), (a, u, rule) => {
        expect(kitchenAmount({ amount: a, unit: u }, 'us', rule)).toMatch(form);
      }),
      { numRuns: 1000 },
    );
  });

  it('end for amounts of any size', () => {
    const wild = fc.tuple(fc.bigInt(1n, 10n ** 40n), fc.bigInt(1n, 10n ** 40n));
    fc.assert(
      fc.property(wild, unit, systems, fc.constantFrom('line', 'at-least'), ([n, d], u, system, rule) => {
        expect(kitchenAmount({ amount: new Fraction(n, d), unit: u }, system, rule)).not.toBe('');
      }),
    );
  });
});

describe('conversions', () => {
  it('there and back are the same', () => {
    fc.assert(
      fc.property(amount, amount, amount, sizedUnit, sizedUnit, (a, b, c, from, to) => {
        const food: Conversion[] = [
          { left: { amount: a, unit: 'can' }, right: { amount: b, unit: 'g' } },
          { left: { amount: c, unit: 'cup' }, right: { amount: a, unit: 'can' } },
        ];
        const q = { amount: c, unit: from };
        expect(convert(convert(q, to, food)!, from, food)).toEqual(q);
      }),
    );
  });

  it('made from one true size for each unit never contradict, and one made false is found', () => {
    const sizes = fc.array(amount, { minLength: 3, maxLength: 6 });
    fc.assert(
      fc.property(sizes, fc.integer({ min: 0 }), (trueSizes, wrong) => {
        const ring = trueSizes.map((size, i): Conversion => {
          const next = (i + 1) % trueSizes.length;
          return {
            left: { amount: trueSizes[next]!, unit: `box ${'abcdef'[i]}x` },
            right: { amount: size, unit: `box ${'abcdef'[next]}x` },
          };
        });
        const exactly = new Fraction(0n);
        expect(contradictions(ring, exactly)).toEqual([]);
        const at = wrong % ring.length;
        const falseRing = ring.map((c, i) =>
          i === at ? { ...c, left: timesQuantity(c.left, new Fraction(3n, 2n)) } : c,
        );
        expect(contradictions(falseRing, exactly)).toHaveLength(1);
      }),
    );
  });
});

describe('per-guest amounts', () => {
  it('are written so that they read back, and add up over groups of guests', () => {
    fc.assert(
      fc.property(quantities, fc.bigInt(1n, 100_000n), amount, amount, (q, guests, some, others) => {
        const perGuest = { amount: q, guests };
        expect(understood(parsePerGuest(perGuestText(perGuest)))).toEqual(perGuest);
        const apart = addQuantities(forGuests(perGuest, some), forGuests(perGuest, others));
        expect(forGuests(perGuest, some.add(others))).toEqual(apart);
      }),
    );
  });
});

describe('the grammars', () => {
  const kitchenText = fc
    .array(
      fc.constantFrom(
        ...[
          '1',
          '2',
          '0',
          '12',
          '½',
          '⅓',
          '/',
          '⁄',
          '.',
          ',',
          '-',
          '–',
          '_',
          ' ',
          '  ',
          'e',
          'x',
          '=',
          '%',
          '#',
          'T',
        ],
        ...[
          ' per ',
          'guest',
          'guests',
          'lb',
          'oz',
          'fl oz',
          'cups',
          'cup',
          'can',
          'h',
          'min',
          'days',
          '\u00a0',
          '\n',
        ],
      ),
      { maxLength: 14 },
    )
    .map((parts) => parts.join(''));
  const anyText = fc.oneof(kitchenText, fc.string({ unit: 'binary', maxLength: 200 }));

  it('never throw, and never read zero or less as an amount', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const q = parseQuantity(text);
        expect(!q.ok || (q.value.amount.n > 0n && q.value.amount.s > 0n)).toBe(true);
        const readings = [
          parsePerGuest,
          parseConversion,
          parseDuration,
          parseGuestCount,
          findUnit,
          parseExactText,
        ];
        for (const read of [q, ...readings.map((parse) => parse(text))]) {
          expect(read.ok || (read.what !== '' && read.wayOut !== '')).toBe(true);
        }
      }),
      { numRuns: 5000 },
    );
  });

  it('lead from one to many of a word and back', () => {
    const word = fc.stringMatching(/^[a-zé]{2,12}$/);
    fc.assert(
      fc.property(fc.oneof(word, fc.constantFrom(...WORDS)), (w) => {
        const one = singular(w);
        expect(singular(one)).toBe(one);
        expect(singular(plural(one))).toBe(one);
      }),
      { numRuns: 2000 },
    );
  });

  it('read every mixed number that is printed', () => {
    fc.assert(
      fc.property(amount, (a) => {
        expect(understood(parseQuantity(mixedNumberText(a))).amount.equals(a)).toBe(true);
      }),
    );
  });

  it('read every duration that is printed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 366 * 1440 }), (n) => {
        expect(understood(parseDuration(durationText(minutes(n))))).toBe(n);
      }),
    );
  });
});
