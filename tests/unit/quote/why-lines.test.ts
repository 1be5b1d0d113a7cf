import { expect, it } from 'vitest';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { quote } from '../../../src/engine/quote/quote.ts';
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

const whys = (terms: Terms, choice: Choice) =>
  Object.fromEntries(quote(terms, choice).lines.map((line) => [line.key, lineWhy(line, terms)]));

it('each line of a whole event says in words how its amount came about', () => {
  const terms = sampleTerms({
    packages: [
      samplePackage({
        courses: [sampleCourse({ dishes: [sampleDish({ supplement: '2.25' })], choose: null })],
      }),
    ],
    addOns: [
      sampleAddOn(),
      sampleAddOn({ id: 'hour', per: 'hour', price: '240.00', class: 'labour' }),
      sampleAddOn({ id: 'fruit', per: 'guests', guests: 50, price: '180.00', class: 'food' }),
      sampleAddOn({ id: 'arch', per: 'flat', price: '350.00', class: 'rental' }),
    ],
    staff: [sampleStaff(), sampleStaff({ role: 'cook', per: 60, atLeast: 0 })],
    delivery: { label: 'Delivery', price: '85.00' },
    discount: { label: 'Early booking', rate: '5 %', base: ['food'] },
    minimumSpend: { amount: '9000.00', base: ['food', 'drink'], class: 'food' },
    serviceCharge: { label: 'Service charge', rate: '20 %', base: ['food', 'drink'], afterDiscount: true },
  });
  const addOns = { espresso: 1, hour: 1.75, fruit: 1, arch: 1 };
  expect(whys(terms, sampleChoice(sampleGuests(84, { children: 6, vendors: 4 }), { addOns }))).toEqual({
    menu: '84 adults × $42.50, the price for 50 to 99 guests',
    'menu-children': '6 children × $21.25',
    'menu-vendors': '4 vendor meals × $24.00',
    'supplement:Mains:squash': '90 × $2.25 on top of the menu',
    'add-on:espresso': '84 adults × $6.50',
    'add-on:hour': '1 3/4 h × $240.00',
    'add-on:fruit': '84 adults, 1 per 50 = 2 × $180.00',
    'add-on:arch': '$350.00, flat price',
    'staff:server': '1 per 25 guests, 90 adults and children, at least 2 = 4; 4 × 5.5 h × $38.00',
    'staff:cook': '1 per 60 guests, 90 adults and children = 2; 2 × 5.5 h × $38.00',
    delivery: '$85.00 to Maren Falls',
    // 3,570.00 + 127.50 + 96.00 + 202.50 + 546.00 + 360.00 = 4,902.00
    'minimum-spend': 'the minimum for food, drink is $9,000.00; the lines above come to $4,902.00',
    // 4,356.00 + 4,098.00 of food, that to the minimum included
    discount: '5 % of $8,454.00 for food',
    // 8,454.00 − 422.70 + 546.00
    'service-charge': '20 % of $8,577.30 for food, drink, after the discount',
  });
});

it('one of a kind is told in the singular, and a price without steps names none', () => {
  const tiers = [{ from: 1, to: null, perHead: '46.00' }];
  const one = sampleChoice(sampleGuests(1, { children: 1, vendors: 1 }));
  expect(whys(sampleTerms({ packages: [samplePackage({ tiers })] }), one)).toEqual({
    menu: '1 adult × $46.00',
    'menu-children': '1 child × $23.00',
    'menu-vendors': '1 vendor meal × $24.00',
  });
  expect(whys(sampleTerms(), sampleChoice(sampleGuests(120))).menu).toBe(
    '120 adults × $39.00, the price for 100 guests and more',
  );
});

it('a discount of a sum, a charge before the discount and tax taken out say so', () => {
  const place = { ...sampleTerms().place, taxIncluded: true };
  const terms = sampleTerms({
    discount: { label: 'Gift', amount: '60.00', base: ['food', 'rental'] },
    serviceCharge: { label: 'Service charge', rate: '20 %', base: ['food'], afterDiscount: false },
    place,
    exempt: true,
  });
  const { menu, ...others } = whys(terms, sampleChoice(sampleGuests(10)));
  expect(menu).toBe('10 adults × $46.00, the price for 1 to 49 guests');
  expect(others).toEqual({
    discount: 'off food, rental',
    'service-charge': '20 % of $460.00 for food',
    'tax-exempt': 'the prices above include tax, and this client pays none',
  });
  // Without a discount there is nothing for a charge to come after.
  const after = { label: 'Service charge', rate: '20 %', base: ['food' as const], afterDiscount: true };
  expect(whys(sampleTerms({ serviceCharge: after }), sampleChoice(sampleGuests(10)))['service-charge']).toBe(
    '20 % of $460.00 for food',
  );
});
