import { describe, expect, test } from 'vitest';
import { packOutCsv } from '../../../src/exports/files/pack-out-csv.ts';
import { correctionsTo } from '../../../src/offers/corrections/corrections.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { accepted, offerOf, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const say = wordsIn('en-US');

const MILK_LEFT_OUT: Change = [
  'recipes/haddock-chowder.mdx',
  'steps:\n',
  'without: { cream: milk, soda-bread: milk }\nswap: { milk: strand-broth for milk, butter: olive-oil for milk }\nsteps:\n',
];
const planFor = async (needs: Record<string, number>) =>
  planOf(accepted(await secondKitchen(MILK_LEFT_OUT), { needs }));

describe('what is made apart', () => {
  test('is in the document, on labels, in alerts and on the pack-out list, each in the same words', async () => {
    const plan = await planFor({ milk: 2, vegan: 1 });
    const [chowder, apart] = plan.dishes;
    expect(apart).toMatchObject({
      apartFrom: 'haddock-chowder',
      needs: [{ need: 'milk', guests: 2 }],
      counted: '2',
    });
    expect(Number(chowder?.counted) + 2).toBe(38);
    expect(apart?.contains).not.toContain('milk');

    const labels = plan.labels.filter(({ dish }) => dish === apart?.name);
    expect(labels.map(({ of, container, guests }) => [of, container, guests])).toEqual([
      ['1 of 2', 'Sealed container', 'Sealed for 2 × milk. Name ____________ Table ____'],
      ['2 of 2', 'Sealed container', 'Sealed for 2 × milk. Name ____________ Table ____'],
    ]);
    expect(plan.labels.find(({ dish }) => dish === chowder?.name)?.contains).toContain('MILK');

    const [alert] = plan.alerts;
    expect(alert).toMatchObject({
      about: '2 × allergy: milk',
      notFor: expect.arrayContaining([chowder?.name]),
    });
    expect(alert?.suits).toContain(`${apart?.name}, made separately`);
    expect(alert?.what).toMatch(/^Plate first, from clean pans/);

    expect(packOutCsv(plan, say)).toContain(`food,"${apart?.name}",Sealed container,2,each,hot,`);
    expect(plan.coverage.map(({ need, whole }) => [need, whole])).toEqual([
      ['milk', expect.anything()],
      ['vegan', expect.anything()],
    ]);
    expect(plan.recipes.map(({ name }) => name)).toContain(apart?.name);
  });

  test('is offered as on request, and withdrawn on the page where it no longer helps', async () => {
    const offer = offerOf(await secondKitchen(MILK_LEFT_OUT));
    const frozen = offer.terms.packages.flatMap(({ courses }) => courses.flatMap(({ dishes }) => dishes));
    expect(frozen.find(({ recipe }) => recipe === 'haddock-chowder')?.onRequest).toEqual(['milk']);
    expect(correctionsTo(offer, await secondKitchen())).toMatchObject([
      { recipe: 'haddock-chowder', contains: [], lostMarks: ['milk on request'] },
    ]);
  });
});
