import { describe, expect, test } from 'vitest';
import { quote } from '../../../src/engine/quote/quote.ts';
import { offerContent } from '../../../src/offers/issue/offer-content.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { eveningOf, must, secondKitchen } from './second-kitchen.ts';

const PROPOSAL = 'proposals/lifeboat-evening.md';

async function contentOf(...changes: readonly Change[]) {
  const book = await secondKitchen(...changes);
  return must(offerContent(book, eveningOf(book)));
}

describe('the terms of a proposal', () => {
  test('have each role once for every style its packages are served in, at the role’s own hours', async () => {
    const { staff } = (await contentOf()).terms;
    expect(staff.map(({ role, per, hours, packages }) => [role, per, hours, packages])).toEqual([
      ['server', 25, '4', ['chowder-lunch']],
      ['server', 12, '4', ['storm-supper']],
    ]);
    expect(staff[0]?.rate).toBe('27.50');
  });

  test('have the proposal’s hours for the crew where it says some', async () => {
    const content = await contentOf([PROPOSAL, 'lines: 1', 'lines: 1\nhours: 5½ hours']);
    expect(content.terms.staff.map(({ hours }) => hours)).toEqual(['5.5', '5.5']);
    // 425.00 + 18.75 + 8.00 + 2 servers × 5.5 h × 27.50 + 40.00
    expect(quote(content.terms, content.proposed).total).toBe('794.25');
  });

  test('deliver at the place’s price, at the proposal’s own, or not at all', async () => {
    expect((await contentOf()).terms.delivery).toEqual({ label: 'Delivery to Dunmarrow', price: '40.00' });
    const dearer = await contentOf([PROPOSAL, 'lines: 1', 'lines: 1\ndelivery: 65.00']);
    expect(dearer.terms.delivery?.price).toBe('65.00');
    expect(quote(dearer.terms, dearer.proposed).total).toBe('736.75');
    const fetched = await contentOf(['kitchen.yaml', '    delivery: 40.00\n', '']);
    expect(fetched.terms.delivery).toBeNull();
  });

  test('take no tax from a client who is exempt: the tax in the prices is taken out of them', async () => {
    const content = await contentOf([PROPOSAL, '  email: crew@lifeboat.example', '  exempt: yes']);
    expect(content.terms.exempt).toBe(true);
    const priced = quote(content.terms, content.proposed);
    expect(priced.taxes.every(({ amount }) => Number(amount) === 0)).toBe(true);
  });

  test('have the kitchen’s service charge, or the proposal’s instead of it', async () => {
    const charge: Change = [
      'kitchen.yaml',
      'guarantee:',
      'service charge: { rate: 10 %, on: food }\nguarantee:',
    ];
    const kitchens = await contentOf(charge);
    // A tenth of the food: 451.75 × 10 % = 45.175, half-up.
    expect(quote(kitchens.terms, kitchens.proposed).serviceCharge).toBe('45.18');
    const own = await contentOf(charge, [
      PROPOSAL,
      'lines: 1',
      'lines: 1\nservice charge: { rate: 12 %, on: labour }',
    ]);
    expect(own.terms.serviceCharge).toMatchObject({ rate: '12 %', base: ['labour'] });
    expect(quote(own.terms, own.proposed).serviceCharge).toBe('26.40');
  });

  test('name a charge and money off as the kitchen does, else as its language does', async () => {
    const lines = 'lines: 1\nservice charge: 12 %\ndiscount: { amount: 20.00, on: food }';
    const unnamed = await contentOf([PROPOSAL, 'lines: 1', lines]);
    expect(unnamed.terms.serviceCharge?.label).toBe('Service charge');
    expect(unnamed.terms.discount?.label).toBe('Discount');
    const own = await contentOf([
      PROPOSAL,
      'lines: 1',
      lines
        .replace('12 %', '{ rate: 12 %, label: House charge }')
        .replace('amount:', 'label: Early booking, amount:'),
    ]);
    expect(own.terms.serviceCharge?.label).toBe('House charge');
    expect(own.terms.discount?.label).toBe('Early booking');
  });

  test('say of a menu whose price rises who pays which price in the sum that no larger party goes under', async () => {
    const lunch = async (...changes: readonly Change[]) =>
      (await contentOf(...changes)).terms.packages.find(({ id }) => id === 'chowder-lunch');
    expect(await lunch()).not.toHaveProperty('floorTiers');
    const rising: Change = ['packages/chowder-lunch.mdx', '40+: 11.00', '40+: 13.00'];
    expect(await lunch(rising)).toMatchObject({ neverLessInAll: true, floorTiers: 'reached' });
  });

  test('say no cost, pay, overage or supplier', async () => {
    const text = JSON.stringify(await contentOf());
    expect(text).not.toMatch(/17\.00|Strand Stores|strand-stores|overage|"pay"|17\.80|margin/i);
  });
});

describe('what is proposed', () => {
  test('is the author’s choice, and where a course says nothing the first so many dishes', async () => {
    expect((await contentOf()).proposed.courses).toEqual({ Bowls: ['haddock-chowder'] });
    const silent = await contentOf([PROPOSAL, '  chowder-lunch:\n    Bowls: [haddock-chowder]\n', '']);
    expect(silent.proposed.courses).toEqual({ Bowls: ['haddock-chowder'] });
  });

  test('spreads mains evenly where no counts are given, over everybody who eats them', async () => {
    const content = await contentOf([
      PROPOSAL,
      '  storm-supper:\n    Main:\n      haddock-chowder: 29\n      bean-and-leek-stew: 9\n',
      '',
    ]);
    const supper = content.samples.find(({ choice }) => choice.package === 'storm-supper');
    expect(supper?.choice.mains.Main).toEqual({ 'haddock-chowder': 19, 'bean-and-leek-stew': 19 });
  });
});
