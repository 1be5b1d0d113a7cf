import { beforeAll, describe, expect, it } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { ingredientsOf } from '../../../src/engine/food/walk.ts';
import { Decimal } from '../../../src/engine/money/decimal.ts';
import { packageCostPerHead } from '../../../src/engine/plan/money/package-cost.ts';
import { packageTiers } from '../../../src/offers/issue/package-tiers.ts';
import { offerState } from '../../../src/offers/offer-state.ts';

const today = '2027-04-26' as Day;
let book: Book;
beforeAll(async () => {
  const read = await readBook('content');
  if (!read.book) throw new Error('the demo kitchen has a Book');
  book = read.book;
});

describe('the demo kitchen', () => {
  it('prices its menus so that food costs 25 to 35 % of them, at any usual count (common practice, no source)', () => {
    const eventDay = '2027-06-19' as Day;
    for (const each of book.packages.values()) {
      const tiers = packageTiers(each, eventDay, book);
      if (!tiers.ok) throw new Error(tiers.what);
      const overage = book.kitchen.overage.get(each.style);
      if (!overage) throw new Error(`no overage for ${each.style}`);
      for (const guests of [40, 60, 90, 120, 150]) {
        const perHead = tiers.value.findLast((tier) => tier.from <= guests)?.perHead ?? '0';
        const cost = packageCostPerHead(each, guests, overage, book.prices, '2027-06-16' as Day);
        expect(cost.unpriced, each.id).toEqual([]);
        const share = cost.amount.div(new Decimal(perHead)).toNumber();
        expect(share, `${each.id} for ${guests}`).toBeGreaterThan(0.25);
        expect(share, `${each.id} for ${guests}`).toBeLessThan(0.35);
      }
    }
  });

  it('has every state that a proposal can be in, two events on one day and a third on the next', () => {
    const states = [...book.proposals.values()].map((proposal) => offerState(book, proposal, today));
    expect(new Set(states)).toEqual(new Set(['draft', 'offered', 'expired', 'withdrawn', 'accepted']));
    const dates = [...book.events.keys()].map((id) => book.proposals.get(id)?.date ?? '').sort();
    expect(dates.filter((date) => date >= today)).toEqual([
      '2027-05-15',
      '2027-05-15',
      '2027-05-16',
      '2027-06-05',
      '2027-06-26',
    ]);
  });

  it('uses at least ninety foods and at least five recipes inside others', () => {
    const recipes = [...book.recipes.values()];
    const foods = new Set(recipes.flatMap((recipe) => ingredientsOf(recipe).map(({ id }) => id)));
    expect(foods.size).toBeGreaterThanOrEqual(90);
    const parts = recipes.flatMap(({ lines }) =>
      lines.flatMap(({ item }) => (item.kind === 'recipe' ? [item.recipe.id] : [])),
    );
    expect(new Set(parts).size).toBeGreaterThanOrEqual(5);
  });
});
