import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { stalePlan } from '../../../src/views/kitchen/stale-plan.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { accepted, must, planOf, secondKitchen } from '../offers/second-kitchen.ts';

const BROTH = 'recipes/strand-broth.mdx';
const CHOWDER = 'recipes/haddock-chowder.mdx';
/** So much broth that one chilling pan doesn't hold it. */
const MORE: Change = [CHOWDER, 'strand-broth: 4 l', 'strand-broth: 8 l'];
const FISH_IN_BROTH: Change = [
  BROTH,
  'onion, peeled: 1.5 kg',
  'onion, peeled: 1.5 kg\n  smoked-haddock: 1 kg',
];

const plan = async (...changes: Change[]) => planOf(accepted(await secondKitchen(...changes)));
const prepOf = async (...changes: Change[]) => (await plan(...changes)).prepLabels;

describe('labels of what is made ahead and waits in the kitchen', () => {
  test('are one for each chilling pan, and together hold what the batches make', async () => {
    const { prepLabels = [], recipes } = await plan(MORE);
    expect(prepLabels.map(({ dish, of, container }) => [dish, of, container])).toEqual([
      ['Strand broth', '1 of 2', 'GN 1/1, 65 mm'],
      ['Strand broth', '2 of 2', 'GN 1/1, 65 mm'],
    ]);
    const litres = prepLabels
      .reduce((sum, { amount }) => sum.add(must(parseQuantity(amount)).amount), new Fraction(0n))
      .valueOf();
    const makes = must(parseQuantity(recipes.find(({ id }) => id === 'strand-broth')?.makes.exact ?? ''));
    expect(litres).toBeCloseTo(makes.amount.valueOf(), 1);
  });

  test('say what it is for, when it was made, how long it keeps and what it contains', async () => {
    // Made on the 19th, two days before, it keeps 4 days, that day counted.
    expect(await prepOf()).toMatchObject([
      {
        dish: 'Strand broth',
        goesInto: 'Smoked haddock chowder',
        job: 'Crew evening, Dunmarrow Lifeboat Crew',
        date: 'Friday, 21 May 2027',
        madeOn: 'Wednesday, 19 May 2027',
        useBy: 'Saturday, 22 May 2027',
        hold: 'cold',
        contains: ['CELERY'],
      },
    ]);
  });

  test('are one for a part whose recipe names no container, with all of it', async () => {
    const labels = await prepOf([BROTH, 'pack: { chill: gn-1-1-65, carry: gn-1-1-100 }\n', '']);
    expect(labels?.map(({ of, container, amount }) => [of, container, amount])).toEqual([
      ['1 of 1', '', '5 l'],
    ]);
  });

  test('wait cold, even where it is held hot once it is served', async () => {
    expect((await prepOf([BROTH, 'hold: cold', 'hold: hot']))?.map(({ hold }) => hold)).toEqual(['cold']);
  });

  test('are none where the part is made on the day that takes it, or only travels beside its dish', async () => {
    expect(await prepOf([BROTH, 'when: 2 days before', 'when: the day before'])).toBeUndefined();
    const beside: Change = [CHOWDER, 'steps:\n', 'beside: strand-broth\nsteps:\n'];
    const serve: Change = [BROTH, 'carry: gn-1-1-100 }', 'carry: gn-1-1-100, serve: gn-1-1-65 }'];
    const along = await plan(beside, serve);
    expect(along.prepLabels).toBeUndefined();
    expect(along.labels.map(({ dish }) => dish)).toContain('Strand broth');
  });

  test('are of the kitchen alone: nothing of it is loaded, and the others stay as they were', async () => {
    const { labels, packOut, returns = [], carriers = [] } = await plan();
    expect(JSON.stringify([labels.map(({ dish }) => dish), packOut, returns, carriers])).not.toContain(
      'Strand broth',
    );
  });

  test('say that it is raw, and to what the recipe that takes it cooks it', async () => {
    const [raw] = (await prepOf(FISH_IN_BROTH)) ?? [];
    expect(raw?.raw).toMatchObject({ mark: 'RAW', next: 'cook to 74 °C' });
    expect(raw?.contains.join()).toMatch(/FISH/);
    const [unknown] = (await prepOf(FISH_IN_BROTH, [CHOWDER, '    cook to: 74 °C\n', ''])) ?? [];
    expect(unknown?.raw?.mark).toBe('TREAT AS RAW');
    const [cooked] =
      (await prepOf(FISH_IN_BROTH, [
        BROTH,
        '    station: range',
        '    station: range\n    cook to: 74 °C',
      ])) ?? [];
    expect(cooked?.dish).toBe('Strand broth');
    expect(cooked?.raw).toBeUndefined();
  });

  test('claim no whole allergen list once the recipe cannot be read', async () => {
    const why = { about: '', what: '', wayOut: '' };
    const stale = (isReadable: boolean, from: Awaited<ReturnType<typeof plan>>) =>
      stalePlan(from, (recipe) => isReadable || recipe !== 'strand-broth', why, wordsIn('en-US')).prepLabels;
    const made = await plan();
    expect(stale(false, made)?.map(({ contains }) => contains)).toEqual([['CELERY', 'NOT ALL KNOWN']]);
    expect(stale(true, made)?.map(({ contains }) => contains)).toEqual([['CELERY']]);
  });
});
