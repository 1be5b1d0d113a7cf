import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Decimal } from '../../src/engine/money/decimal.ts';
import { type Choice, checkChoice } from '../../src/engine/quote/choice.ts';
import type { Counts, Guests } from '../../src/engine/quote/counts.ts';
import { LINE_CLASSES } from '../../src/engine/quote/line-class.ts';
import { type Quote, quote, quoteSums } from '../../src/engine/quote/quote.ts';
import type { PackageTerms, Terms } from '../../src/engine/quote/terms.ts';
import { sampleCourse, sampleDish, samplePackage, sampleTerms } from '../unit/quote/sample-terms.ts';
import { cents, instalments } from './payment-plans.ts';

const price = (most: number) => fc.integer({ min: 1, max: most }).map(cents);
const rate = (most: number) => fc.integer({ min: 0, max: most }).map((parts) => `${parts / 4} %`);
const weight = fc.constantFrom('1', '1/2', '1/3', '2/3', '0.75');
const counts: fc.Arbitrary<Counts> = fc.record(
  { adults: fc.constant('1'), children: weight, vendors: weight, staff: weight },
  { requiredKeys: ['adults'] },
);
const meal = fc.oneof(fc.constant({}), fc.record({ rate: rate(400) }), fc.record({ price: price(6000) }));
const classes = fc.subarray(
  LINE_CLASSES.filter((name) => name !== 'service charge'),
  { minLength: 1 },
);
const guests: fc.Arbitrary<Guests> = fc.record({
  adults: fc.integer({ min: 1, max: 250 }),
  children: fc.nat(40),
  vendors: fc.nat(12),
  staff: fc.nat(12),
});

const tiers = fc
  .tuple(fc.uniqueArray(fc.integer({ min: 2, max: 220 }), { maxLength: 4 }), fc.infiniteStream(price(9000)))
  .map(([starts, prices]) => {
    const from = [1, ...starts.sort((a, b) => a - b)];
    return from.map((start, index) => ({
      from: start,
      to: from[index + 1] === undefined ? null : (from[index + 1] as number) - 1,
      perHead: prices.next().value,
    }));
  });

const packages: fc.Arbitrary<PackageTerms> = fc
  .record({
    tiers,
    tierCounts: counts,
    minimumCounts: fc.option(counts, { nil: undefined }),
    child: meal,
    vendor: meal,
    minimumGuests: fc.constantFrom(0, 0, 20, 60),
    neverLessInAll: fc.boolean(),
  })
  .map((change) =>
    samplePackage({
      ...change,
      courses: [sampleCourse({ dishes: [sampleDish({ supplement: '1.35' })], choose: 1 })],
    }),
  );

const terms: fc.Arbitrary<Terms> = fc
  .record({
    taxBy: fc.constantFrom('invoice' as const, 'line' as const),
    taxIncluded: fc.boolean(),
    rates: fc.array(rate(100), { minLength: 6, maxLength: 6 }),
    chosen: packages,
    addOns: fc.record({ price: price(3000), class: fc.constantFrom(...LINE_CLASSES), counts }),
    staff: fc.record({ rate: price(6000), per: fc.integer({ min: 5, max: 60 }), counts, atLeast: fc.nat(3) }),
    delivery: fc.option(price(30_000).map((sum) => ({ label: 'Delivery', price: sum }))),
    discount: fc.option(
      fc.oneof(
        fc.record({ label: fc.constant('Discount'), rate: rate(400), base: classes }),
        fc.record({ label: fc.constant('Discount'), amount: price(900_000), base: classes }),
      ),
    ),
    serviceCharge: fc.option(
      fc.record({
        label: fc.constant('Service charge'),
        rate: rate(120),
        base: classes,
        afterDiscount: fc.boolean(),
      }),
    ),
    minimumSpend: fc.option(
      fc.record({ amount: price(1_500_000), base: classes, class: fc.constantFrom(...LINE_CLASSES) }),
    ),
    payments: instalments,
  })
  .map(({ taxIncluded, rates, chosen, addOns, staff, ...rest }) => {
    const tax = Object.fromEntries(LINE_CLASSES.map((name, index) => [name, rates[index] ?? '0 %']));
    return sampleTerms({
      ...rest,
      place: { id: 'a', name: 'A', taxIncluded, tax: tax as Terms['place']['tax'] },
      packages: [chosen],
      addOns: [{ id: 'extra', name: 'Extra', per: 'guest', ...addOns }],
      staff: [{ role: 'server', name: 'Servers', hours: '5.5', one: 1, ...staff }],
    });
  });

const choices: fc.Arbitrary<Choice> = guests.map((party) => ({
  package: 'harvest',
  guests: party,
  courses: { Mains: ['squash'] },
  mains: {},
  addOns: { extra: 1 },
  needs: {},
}));

const total = (texts: readonly string[]) =>
  texts.reduce((sum: Decimal, text) => sum.plus(text), new Decimal(0));
const amounts = (priced: Quote) => priced.lines.map((line) => line.amount);
const taxTotal = (priced: Quote) => total(priced.taxes.map((tax) => tax.amount));

it('has lines that sum to the total, with the tax where it is on top, and payments that sum to it too', () => {
  fc.assert(
    fc.property(terms, choices, (given, choice) => {
      expect(checkChoice(given, choice)).toEqual([]);
      const priced = quote(given, choice);
      const onTop = priced.taxIncluded ? new Decimal(0) : taxTotal(priced);
      expect(total(amounts(priced)).plus(onTop).toFixed(2)).toBe(priced.total);
      expect(total(priced.payments.map((payment) => payment.amount)).toFixed(2)).toBe(priced.total);
      expect(total([priced.subtotal, priced.discount, priced.serviceCharge]).plus(onTop).toFixed(2)).toBe(
        priced.total,
      );
      expect(total(priced.lines.map((line) => line.taxable)).toFixed(2)).toBe(
        total(priced.taxes.map((tax) => tax.base)).toFixed(2),
      );
      expect(priced.lines.every((line) => line.key === 'discount' || !line.amount.startsWith('-'))).toBe(
        true,
      );
    }),
  );
});

it('never lets more guests pay less for the menu in all where the package says so', () => {
  const floored = packages.map((chosen) => ({ ...chosen, neverLessInAll: true, courses: [] }));
  const more = fc.record({ adults: fc.nat(30), children: fc.nat(10), vendors: fc.nat(4), staff: fc.nat(4) });
  const menu = (chosen: PackageTerms, party: Guests) =>
    new Decimal(
      quote(sampleTerms({ packages: [chosen] }), {
        package: 'harvest',
        guests: party,
        courses: {},
        mains: {},
        addOns: {},
        needs: {},
      }).subtotal,
    );
  fc.assert(
    fc.property(floored, guests, more, (chosen, party, added) => {
      const larger: Guests = {
        adults: party.adults + added.adults,
        children: party.children + added.children,
        vendors: party.vendors + added.vendors,
        staff: party.staff + added.staff,
      };
      expect(menu(chosen, larger).gte(menu(chosen, party))).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

it('asks with the floor for exactly what some smaller party pays, where guests count as whole', () => {
  const whole: Counts = { adults: '1', children: '1' };
  const small = fc.record({ adults: fc.integer({ min: 1, max: 12 }), children: fc.nat(6) });
  const steps = fc.tuple(price(9000), price(9000)).map(([low, high]) => [
    { from: 1, to: 7, perHead: high },
    { from: 8, to: null, perHead: low },
  ]);
  fc.assert(
    fc.property(small, steps, meal, (party, given, child) => {
      const plain = samplePackage({ tiers: given, tierCounts: whole, child, neverLessInAll: false });
      const menu = (chosen: PackageTerms, adults: number, children: number) =>
        new Decimal(
          quote(sampleTerms({ packages: [chosen] }), {
            package: 'harvest',
            guests: { adults, children, vendors: 0, staff: 0 },
            courses: {},
            mains: {},
            addOns: {},
            needs: {},
          }).subtotal,
        );
      let most = new Decimal(0);
      for (let adults = 0; adults <= party.adults; adults += 1) {
        for (let children = 0; children <= party.children; children += 1) {
          most = Decimal.max(most, menu(plain, adults, children));
        }
      }
      const floored = menu({ ...plain, neverLessInAll: true }, party.adults, party.children);
      expect(floored.toFixed(2)).toBe(most.toFixed(2));
    }),
  );
});

it('charges an exempt client no tax, and less by no more than the tax', () => {
  fc.assert(
    fc.property(terms, choices, (given, choice) => {
      const taxed = quote(given, choice);
      const exempt = quote({ ...given, exempt: true }, choice);
      expect(exempt.taxes).toEqual([]);
      expect(new Decimal(taxed.total).minus(exempt.total).toFixed(2)).toBe(taxTotal(taxed).toFixed(2));
    }),
  );
});

it('leaves the total as it is whatever tax the prices include', () => {
  fc.assert(
    fc.property(terms, choices, rate(100), (given, choice, other) => {
      const included = (tax: Terms['place']['tax']) =>
        quote({ ...given, place: { ...given.place, taxIncluded: true, tax } }, choice);
      const all = Object.fromEntries(LINE_CLASSES.map((name) => [name, other])) as Terms['place']['tax'];
      expect(included(all).total).toBe(included(given.place.tax).total);
    }),
  );
});

it('is the same from terms and choice that went through JSON', () => {
  fc.assert(
    fc.property(terms, choices, (given, choice) => {
      const copy = JSON.parse(JSON.stringify([given, choice])) as [Terms, Choice];
      expect(JSON.stringify(quote(...copy))).toBe(JSON.stringify(quote(given, choice)));
      const { total, perGuest } = quote(given, choice);
      expect(quoteSums(given, choice)).toEqual({ total, perGuest });
    }),
    { numRuns: 30 },
  );
});
