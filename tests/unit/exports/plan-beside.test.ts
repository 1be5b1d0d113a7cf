import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { type Change, copyOf, SECOND_KITCHEN } from '../../commands/kitchen-copy.ts';
import { accepted, must, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const beside = (id: string): Change => ['recipes/haddock-chowder.mdx', 'steps:\n', `beside: ${id}\nsteps:\n`];
const JUG: Change = [
  'recipes/strand-broth.mdx',
  'carry: gn-1-1-100 }',
  'carry: gn-1-1-100, serve: gn-1-1-65 }',
];

describe('a part that is given out beside its dish', () => {
  test('has its own lines on the pack-out list, its own labels, and is measured on the way and at service', async () => {
    const within = await planOf(accepted(await secondKitchen()));
    expect(within.packOut.map(({ item }) => item)).not.toContain('Strand broth');
    const plan = await planOf(accepted(await secondKitchen(beside('strand-broth'), JUG)));
    const lines = plan.packOut.filter(({ item, note }) => `${item} ${note}`.includes('Strand broth'));
    expect(lines).toMatchObject([
      {
        group: 'food',
        item: 'Strand broth',
        container: 'GN 1/1, 100 mm',
        count: 1,
        hold: 'cold',
        note: 'Served with Smoked haddock chowder',
      },
      { group: 'service ware', item: 'GN 1/1, 65 mm', count: 1, note: 'Strand broth' },
    ]);
    expect(plan.recipes.find(({ name }) => name === 'Strand broth')?.packed).toContainEqual({
      stage: 'serve',
      what: '1 × GN 1/1, 65 mm',
    });
    // 14.098 l of chowder are 14.098 ÷ 14 batches, each with 4 l of broth: 4.028 l.
    const labels = plan.labels.filter(({ dish }) => dish === 'Strand broth');
    expect(labels.map(({ of, contains }) => [of, contains])).toEqual([['1 of 1', ['CELERY']]]);
    expect(must(parseQuantity(labels[0]?.amount ?? '')).amount.valueOf()).toBeCloseTo(4.03, 1);
    const stages = plan.safetySheet.checks.filter(({ what }) => what === 'Strand broth');
    expect(new Set(stages.map(({ stage }) => stage))).toEqual(new Set(['cooling', 'transport', 'service']));
    expect(plan.dishes.map(({ name }) => name)).toEqual(within.dishes.map(({ name }) => name));
    expect(plan.shopping).toEqual(within.shopping);
  });

  test('has to be a recipe that a line calls for', async () => {
    for (const id of ['cream', 'stand-broth']) {
      const { findings } = await readBook(copyOf(SECOND_KITCHEN, [beside(id)]));
      expect(findings.map(({ what }) => what)).toContain(`no line of this recipe uses a recipe “${id}”`);
    }
  });
});
