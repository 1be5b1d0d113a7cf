import { beforeAll, describe, expect, test } from 'vitest';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { buffetCards } from '../../../src/views/kitchen/buffet-cards.ts';
import { demoPlans } from '../exports/demo-plans.ts';

describe('the cards beside the dishes', () => {
  let plans: PrepPlanDocument[];
  const of = (id: string) => plans.find(({ event }) => event.id === id)!;

  beforeAll(async () => {
    plans = await demoPlans();
  });

  test('a card says the dish, the strictest mark that holds, and contains and may contain apart', () => {
    const plan = of('brindlemoor-naming-day');
    const cards = buffetCards({ ...plan, event: { ...plan.event, lines: 1 } }, 'en-US');
    expect(cards).toHaveLength(plan.dishes.length);
    expect(cards.find(({ dish }) => dish.startsWith('Sage'))).toEqual({
      dish: 'Sage and apple pork patties',
      changes: '',
      marks: [],
      contains: 'Contains wheat, egg',
      mayContain: 'May contain soybeans, sesame',
      until: '',
    });
    expect(cards.find(({ dish }) => dish.startsWith('Melon'))).toMatchObject({
      marks: ['vegan', 'no gluten-containing ingredient'],
      contains: 'No listed allergen among its ingredients',
      mayContain: '',
    });
  });

  test('portions made apart have a card of their own that says what is changed', () => {
    const cards = buffetCards(of('brindlemoor-naming-day'), 'en-US').filter(
      ({ dish }) => dish === 'Soft potato rolls',
    );
    const [plain, apart] = [...new Set(cards)];
    expect(plain).toMatchObject({ changes: '', contains: 'Contains wheat, egg, milk' });
    expect(apart!.changes).toBe('oat drink instead of whole milk, olive oil instead of butter');
    expect(apart!.contains).not.toContain('milk');
  });

  test('every service line has its own set, and a plated menu none', () => {
    const plan = of('weir-crew-supper');
    expect(buffetCards({ ...plan, event: { ...plan.event, lines: 3 } }, 'en-US')).toHaveLength(
      plan.dishes.length * 3,
    );
    expect(buffetCards({ ...plan, event: { ...plan.event, style: 'plated' } }, 'en-US')).toEqual([]);
  });

  test('where nobody has said what is in a dish, the card never says that nothing is', () => {
    const plan = of('weir-crew-supper');
    const cards = (contains: string[]) =>
      buffetCards({ ...plan, dishes: [{ ...plan.dishes[0]!, contains, unsaid: ['Spice mix'] }] }, 'en-US');
    expect(cards([])[0]!.contains).toBe('We don’t know its allergens: please ask us');
    expect(cards(['milk'])[0]!.contains).toBe(
      'Contains milk; we don’t know all its allergens: please ask us',
    );
  });
});
