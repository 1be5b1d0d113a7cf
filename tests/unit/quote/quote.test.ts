import { describe, expect, it } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { quote } from '../../../src/engine/quote/quote.ts';
import { isCalledGratuity } from '../../../src/engine/quote/service-charge.ts';
import type { Terms } from '../../../src/engine/quote/terms.ts';
import { lineWhy } from '../../../src/exports/words/line-words.ts';
import {
  sampleAddOn,
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
  sampleStaff,
  sampleTerms,
} from './sample-terms.ts';

const lines = (terms: Terms, choice: Choice) =>
  quote(terms, choice).lines.map(
    (line) => `${line.key}: ${line.quantity} × ${line.unitPrice} = ${line.amount}`,
  );

describe('a quote', () => {
  it('prices a whole event line by line, in order, as worked by hand', () => {
    const terms = sampleTerms({
      packages: [
        samplePackage({
          courses: [sampleCourse({ dishes: [sampleDish({ supplement: '2.25' })], choose: 1 })],
        }),
      ],
      addOns: [sampleAddOn()],
      staff: [sampleStaff()],
      delivery: { label: 'Delivery', price: '85.00' },
      discount: { label: 'Early booking', rate: '5 %', base: ['food'] },
      serviceCharge: { label: 'Service charge', rate: '20 %', base: ['food', 'drink'], afterDiscount: true },
    });
    const guests = sampleGuests(84, { children: 6, vendors: 4, staff: 9 });
    const choice = sampleChoice(guests, { courses: { Mains: ['squash'] }, addOns: { espresso: 1 } });
    // 90 at the table take the tier of 42.50; half of it is 21.25. Four servers: 90 ÷ 25 = 3.6.
    expect(lines(terms, choice)).toEqual([
      'menu: 84 × 42.50 = 3570.00',
      'menu-children: 6 × 21.25 = 127.50',
      'menu-vendors: 4 × 24.00 = 96.00',
      'supplement:Mains:squash: 90 × 2.25 = 202.50',
      'add-on:espresso: 84 × 6.50 = 546.00',
      'staff:server: 22 × 38.00 = 836.00',
      'delivery: 1 × 85.00 = 85.00',
      // 5 % of 3,996.00
      'discount: 1 × -199.80 = -199.80',
      // 20 % of 3,796.20 + 546.00 = 4,342.20
      'service-charge: 1 × 868.44 = 868.44',
    ]);
    // 7 % of 3,796.20 + 546.00 + 868.44 = 5,210.64
    expect(quote(terms, choice, '2027-04-20' as Day)).toMatchObject({
      subtotal: '5463.00',
      discount: '-199.80',
      serviceCharge: '868.44',
      taxes: [{ rate: '7 %', base: '5210.64', amount: '364.74' }],
      total: '6496.38',
      perGuest: '72.18',
      payments: [
        { instalment: { of: 'rate', rate: '30 %', due: 'accepted' }, due: '2027-04-20', amount: '1948.91' },
        { instalment: { of: 'balance', due: 7 }, due: '2027-05-08', amount: '4547.47' },
      ],
      notes: ['service charge'],
    });
  });

  it('says on each line why it is what it is', () => {
    const terms = sampleTerms({ staff: [sampleStaff()] });
    expect(
      quote(terms, sampleChoice(sampleGuests(60, { children: 1 }))).lines.map((line) => lineWhy(line, terms)),
    ).toEqual([
      '60 adults × $42.50, the price for 50 to 99 guests',
      '1 child × $21.25',
      '1 per 25 guests, 61 adults and children, at least 2 = 3; 3 × 5.5 h × $38.00',
    ]);
  });

  it('bills a party under the minimum for the minimum, and says so', () => {
    const terms = sampleTerms({ packages: [samplePackage({ minimumGuests: 50 })] });
    const priced = quote(terms, sampleChoice(sampleGuests(40, { children: 4 })));
    expect(priced.lines.map((line) => [line.key, line.quantity, line.amount])).toEqual([
      ['menu', '40', '1700.00'],
      ['menu-children', '4', '85.00'],
      ['menu-minimum', '6', '255.00'],
    ]);
    expect(priced.notes).toEqual(['minimum guests']);
  });

  it('counts for the minimum those it says, and bills no part of a guest', () => {
    const minimumCounts = { adults: '1', children: '1/2' };
    const terms = sampleTerms({ packages: [samplePackage({ minimumGuests: 50, minimumCounts })] });
    const short = (children: number) =>
      quote(terms, sampleChoice(sampleGuests(40, { children }))).lines.find(
        (line) => line.key === 'menu-minimum',
      );
    expect([4, 5, 20].map((children) => short(children)?.quantity)).toEqual(['8', '7', undefined]);
  });

  it('makes up what a smaller party would pay, where the package promises it', () => {
    const terms = sampleTerms({ packages: [samplePackage({ neverLessInAll: true })] });
    // 49 × 46.00 = 2,254.00; 50 × 42.50 = 2,125.00.
    expect(lines(terms, sampleChoice(sampleGuests(50)))).toEqual([
      'menu: 50 × 42.50 = 2125.00',
      'menu-floor: 1 × 129.00 = 129.00',
    ]);
    expect(quote(terms, sampleChoice(sampleGuests(50))).lines[1]?.why).toEqual({
      of: 'smaller party',
      sum: '2254.00',
    });
    expect(lines(terms, sampleChoice(sampleGuests(54)))).toEqual(['menu: 54 × 42.50 = 2295.00']);
  });

  it('takes add-ons per guest, per quarter hour, per begun group and flat', () => {
    const terms = sampleTerms({
      addOns: [
        sampleAddOn({ counts: { adults: '1', children: '1/3' } }),
        sampleAddOn({ id: 'hour', per: 'hour', price: '240.00', class: 'labour' }),
        sampleAddOn({ id: 'fruit', per: 'guests', guests: 50, price: '180.00', class: 'food' }),
        sampleAddOn({ id: 'arch', per: 'flat', price: '350.00', class: 'rental' }),
        sampleAddOn({ id: 'unwanted' }),
      ],
    });
    const addOns = { espresso: 1, hour: 1.75, fruit: 1, arch: 1, unwanted: 0 };
    expect(lines(terms, sampleChoice(sampleGuests(51, { children: 1 }), { addOns })).slice(2)).toEqual([
      'add-on:espresso: 51 1/3 × 6.50 = 333.67',
      'add-on:hour: 1 3/4 × 240.00 = 420.00',
      'add-on:fruit: 2 × 180.00 = 360.00',
      'add-on:arch: 1 × 350.00 = 350.00',
    ]);
  });

  it('tops up to the minimum spend before the discount, a package’s own going first', () => {
    const minimumSpend = { amount: '1200.00', base: ['food' as const], class: 'food' as const };
    const terms = sampleTerms({
      packages: [samplePackage({ minimumSpend })],
      minimumSpend: { ...minimumSpend, amount: '9000.00' },
      discount: { label: 'Friend', rate: '10 %', base: ['food'] },
    });
    expect(lines(terms, sampleChoice(sampleGuests(20)))).toEqual([
      'menu: 20 × 46.00 = 920.00',
      'minimum-spend: 1 × 280.00 = 280.00',
      'discount: 1 × -120.00 = -120.00',
    ]);
  });

  it('gives no discount beyond its base', () => {
    const terms = sampleTerms({ discount: { label: 'Gift', amount: '99999.00', base: ['food'] } });
    const priced = quote(terms, sampleChoice(sampleGuests(10)));
    expect([priced.discount, priced.total, priced.taxes]).toEqual(['-460.00', '0.00', []]);
  });

  it('charges supplements by the guests who take a main, and none for dishes not chosen', () => {
    const dishes = [sampleDish({ recipe: 'lamb', supplement: '9.00' }), sampleDish({ recipe: 'barley' })];
    const byGuest = sampleTerms({
      packages: [samplePackage({ courses: [sampleCourse({ choose: null, eachGuest: true, dishes })] })],
    });
    const mains = { Mains: { lamb: 3, barley: 7 } };
    expect(lines(byGuest, sampleChoice(sampleGuests(10), { mains }))[1]).toBe(
      'supplement:Mains:lamb: 3 × 9.00 = 27.00',
    );
    const byChoice = sampleTerms({
      packages: [samplePackage({ courses: [sampleCourse({ choose: 1, dishes })] })],
    });
    expect(lines(byChoice, sampleChoice(sampleGuests(10), { courses: { Mains: ['barley'] } }))).toHaveLength(
      1,
    );
  });

  it('bills staff meals to nobody', () => {
    const terms = sampleTerms();
    const total = (staff: number) => quote(terms, sampleChoice(sampleGuests(30, { staff }))).total;
    expect(total(12)).toBe(total(0));
  });

  it('lets a role serve with the packages it is meant for', () => {
    const staff = [
      sampleStaff({ packages: ['other'] }),
      sampleStaff({ role: 'cook', one: 2, per: 60, atLeast: 0 }),
    ];
    expect(lines(sampleTerms({ staff }), sampleChoice(sampleGuests(61)))[1]).toBe(
      'staff:cook: 16 1/2 × 38.00 = 627.00',
    );
  });

  it('cannot be made of a package that is not in the terms', () => {
    expect(() => quote(sampleTerms(), sampleChoice(sampleGuests(1), { package: '__proto__' }))).toThrow(
      'there is no package "__proto__" in these terms',
    );
  });
});

describe('tax on a quote', () => {
  const mixed = {
    addOns: [sampleAddOn({ id: 'arch', per: 'flat', price: '100.00', class: 'rental' })],
    delivery: { label: 'Delivery', price: '50.00' },
  } as const;
  const choice = sampleChoice(sampleGuests(10), { addOns: { arch: 1 } });

  it('follows each line’s class at the place', () => {
    const priced = quote(sampleTerms(mixed), choice);
    expect(priced.taxes).toEqual([
      { rate: '7 %', base: '460.00', amount: '32.20' },
      { rate: '6 %', base: '100.00', amount: '6.00' },
    ]);
    expect(priced.lines.map((line) => line.taxable)).toEqual(['460.00', '100.00', '0.00']);
    expect(priced.total).toBe('648.20');
  });

  it('differs by invoice and by line as sec. 324 lets it', () => {
    const tiers = [{ from: 1, to: null, perHead: '1.07' }];
    const packages = [samplePackage({ tiers, child: {}, vendor: {} })];
    const three = sampleChoice(sampleGuests(1, { children: 1, vendors: 1 }));
    expect(quote(sampleTerms({ packages, taxBy: 'invoice' }), three).taxes[0]?.amount).toBe('0.22');
    expect(quote(sampleTerms({ packages, taxBy: 'line' }), three).taxes[0]?.amount).toBe('0.21');
  });

  it('is within the total where prices include it, and taken out for an exempt client', () => {
    const place = { ...sampleTerms().place, taxIncluded: true };
    const priced = quote(sampleTerms({ ...mixed, place }), choice);
    // 460 × 7 ÷ 107 = 30.093…; 100 × 6 ÷ 106 = 5.660…
    expect([priced.total, priced.taxes.map((tax) => tax.amount)]).toEqual(['610.00', ['30.09', '5.66']]);
    const exempt = quote(sampleTerms({ ...mixed, place, exempt: true }), choice);
    expect([exempt.total, exempt.taxes]).toEqual(['574.25', []]);
    expect(exempt.lines.at(-1)).toMatchObject({ key: 'tax-exempt', amount: '-35.75' });
  });
});

describe('a service charge', () => {
  it('may be taken before the discount', () => {
    const serviceCharge = {
      label: 'Service charge',
      rate: '20 %',
      base: ['food' as const],
      afterDiscount: false,
    };
    const discount = { label: 'Friend', rate: '50 %', base: ['food' as const] };
    expect(
      quote(sampleTerms({ serviceCharge, discount }), sampleChoice(sampleGuests(10))).serviceCharge,
    ).toBe('92.00');
  });

  it('is never called a gratuity or a tip', () => {
    for (const label of ['Gratuity 20 %', 'Service gratuities', 'Tip', 'tips'])
      expect(isCalledGratuity(label)).toBe(true);
    for (const label of ['Service charge', 'Multiple stations', 'Tipi hire'])
      expect(isCalledGratuity(label)).toBe(false);
  });
});

describe('a line of nothing', () => {
  it('is left out: an add-on, a role or a supplement for nobody, a discount and a charge on nothing', () => {
    const terms = sampleTerms({
      packages: [
        samplePackage({
          courses: [sampleCourse({ choose: 1, dishes: [sampleDish({ supplement: '2.00' })] })],
        }),
      ],
      addOns: [sampleAddOn({ counts: { children: '1' } })],
      staff: [sampleStaff({ counts: { children: '1' }, atLeast: 0 })],
      discount: { label: 'Friend', rate: '10 %', base: ['drink'] },
      serviceCharge: { label: 'Service charge', rate: '20 %', base: ['drink'], afterDiscount: true },
    });
    const priced = quote(terms, sampleChoice(sampleGuests(10), { addOns: { espresso: 1 } }));
    expect(priced.lines.map(({ key }) => key)).toEqual(['menu']);
    expect([priced.discount, priced.serviceCharge, priced.notes]).toEqual(['0.00', '0.00', []]);
  });

  it('is the tax taken out for an exempt client where nothing is taxed', () => {
    const { place } = sampleTerms();
    const tax = Object.fromEntries(Object.keys(place.tax).map((name) => [name, '0 %'])) as typeof place.tax;
    const terms = sampleTerms({ exempt: true, place: { ...place, taxIncluded: true, tax } });
    expect(lines(terms, sampleChoice(sampleGuests(10)))).toEqual(['menu: 10 × 46.00 = 460.00']);
  });
});

it('a note says who pays no tax, else that it is within the prices', () => {
  const place = { ...sampleTerms().place, taxIncluded: true };
  const notes = (change: Partial<Terms>) => quote(sampleTerms(change), sampleChoice(sampleGuests(10))).notes;
  expect(notes({ exempt: true, place })).toEqual(['exempt']);
  expect(notes({ exempt: true })).toEqual(['exempt']);
  expect(notes({ place })).toEqual(['tax included']);
  expect(notes({})).toEqual([]);
});

it('a smaller party is filled with parts of guests where children count as halves', () => {
  const packages = [
    samplePackage({
      tiers: [
        { from: 1, to: 9, perHead: '10.00' },
        { from: 10, to: null, perHead: '8.00' },
      ],
      tierCounts: { adults: '1', children: '1/2' },
      child: {},
      neverLessInAll: true,
    }),
  ];
  // Short of ten there is room for 4 children, who take 2, and for 7 1/2 adults: 11 1/2 × 10.00. All pay 13 × 8.00.
  expect(lines(sampleTerms({ packages }), sampleChoice(sampleGuests(9, { children: 4 })))).toEqual([
    'menu: 9 × 8.00 = 72.00',
    'menu-children: 4 × 8.00 = 32.00',
    'menu-floor: 1 × 11.00 = 11.00',
  ]);
});
