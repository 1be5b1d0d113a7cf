import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { PlanChangesDocument } from '../../../src/exports/form/changes.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { wholeSite } from '../views/whole-site.ts';
import { bookOf, changed, done, EVENT, factsIn, refusal, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01' as Day;

async function planOf(dir: string): Promise<PrepPlanDocument> {
  const planned = await plannedEvent(await bookOf(dir), EVENT, TODAY);
  if (!planned.ok) throw new Error(planned.what);
  if (!planned.value.plan.ok) throw new Error(planned.value.plan.what);
  return planned.value.plan.value;
}

describe('an ingredient swapped for one event', () => {
  test('shows an allergen that comes with it, who must be told and the cost, before anything is written', async () => {
    const dir = await supperKitchen();
    const shown = await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'white-beans');
    expect(shown).toContain('Not recorded yet: White beans instead of Split peas, for pell-supper only.');
    expect(shown).toContain('Pea pot: no difference');
    expect(shown).toContain('Nothing: no allergen added, no diet lost, no dish replaced.');
    expect(factsIn(dir)).toHaveLength(2);

    const added = JSON.parse(await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'tahini', '--json'));
    expect(added.recorded).toBe(false);
    expect(added.fact).toMatchObject({
      what: 'ingredient',
      from: 'split-peas',
      to: 'tahini',
      contains: ['sesame'],
      dietsLost: [],
      tell: ['Pea pot contains sesame since the change.'],
    });
    // 2.1 batches × 5 lb = 10.5 lb: 11 bags of 1 lb at 9.00 instead of one sack at 30.00.
    expect((added.change as PlanChangesDocument).foodCost).toEqual({
      before: '400.00',
      after: '469.00',
      by: '+69.00',
    });
  });

  test('names a diet that is lost and the guests who relied on it', async () => {
    const dir = await supperKitchen();
    const { fact, needs } = JSON.parse(
      await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'lamb-neck', '--json'),
    );
    expect(fact.dietsLost).toEqual(['vegetarian', 'vegan', 'pescatarian']);
    expect(fact.tell).toEqual(['Pea pot can’t be called vegetarian, vegan, pescatarian.']);
    expect(needs).toEqual(['4 × vegan: Pea pot no longer suits']);
  });

  test('is swapped down to the bottom, in amounts of the old and yields of the new, and stands on top of the plan', async () => {
    const dir = await supperKitchen(
      changed(
        'ingredients/own.yaml',
        'yogurt: {',
        'soy-cream: { name: Soy cream, from: plant, contains: soy, yield: 50 % }\nyogurt: {',
      ),
    );
    await done(dir, TODAY, 'substitute', EVENT, 'yogurt', 'soy-cream', '--yes');
    const plan = await planOf(dir);
    expect(plan.alerts[0]).toMatchObject({ about: 'Soy cream instead of Yogurt' });
    expect(plan.alerts[0]?.what).toContain('NOW CONTAINS SOY.');
    expect(plan.alerts[0]?.what).toContain(
      'The client must be told: Bean fritters contains soy since the change.',
    );
    // 4.2 batches of fritters take 4.2 qt of herb yogurt; half of the soy cream is lost.
    const soy = plan.shopping.find(({ ingredient }) => ingredient === 'soy-cream');
    expect(soy?.need.exact).toBe('42/5 qt');
    expect(plan.shopping.some(({ ingredient }) => ingredient === 'yogurt')).toBe(false);
    const card = plan.recipes.find(({ id }) => id === 'herb-yogurt');
    expect(card?.name).toBe('Herb yogurt (Soy cream instead of Yogurt)');
    expect(card?.lines[0]).toMatchObject({ id: 'soy-cream', note: 'instead of Yogurt' });
    expect(plan.labels[0]?.contains).toEqual(['SOYBEANS']);
    // Nobody else's recipe is touched, and the client reads it on the accepted page.
    expect((await bookOf(dir)).recipes.get('herb-yogurt')?.name).toBe('Herb yogurt');
    const site = await wholeSite(await bookOf(dir), null, TODAY as Parameters<typeof wholeSite>[2]);
    const page = site.pages.find(({ view }) => view.kind === 'proposal')?.view;
    expect(page?.kind === 'proposal' && page.since.texts[0]).toBe(
      'Change, Saturday, May 1, 2027: Bean fritters contains soy since the change.',
    );
  });

  test('is refused while its allergens are unsaid, where no unit is reached, and where nothing calls for it', async () => {
    const dir = await supperKitchen(
      changed('recipes/bean-fritters.mdx', 'makes: 20 pieces', 'makes: [20 pieces, 3 qt]'),
    );
    expect(await refusal(dir, TODAY, 'substitute', EVENT, 'split-peas', 'mystery-paste', '--yes')).toContain(
      'the allergens are not stated for mystery-paste (in Pea pot)',
    );
    // Yogurt is called for in quarts, and nothing says what a quart of beans weighs.
    expect(await refusal(dir, TODAY, 'substitute', EVENT, 'yogurt', 'white-beans', '--yes')).toContain(
      'White beans is sold by the lb, with no conversion to that — add a conversion to white-beans',
    );
    expect(await refusal(dir, TODAY, 'substitute', EVENT, 'split-pees', 'tahini')).toContain(
      'did you mean split-peas?',
    );
    expect(await refusal(dir, TODAY, 'substitute', EVENT, 'split-peas', 'tahina')).toContain(
      'did you mean tahini?',
    );
    expect(await refusal(dir, TODAY, 'substitute', EVENT, 'yogurt', 'bean-fritters')).toContain(
      'contains itself',
    );
    expect(factsIn(dir)).toHaveLength(2);
  });
});

describe('a dish swapped for one event', () => {
  test('is told to the client, keeps its guests and its amount by the head, and may be swapped again', async () => {
    const dir = await supperKitchen();
    const said = JSON.parse(
      await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes', '--json'),
    );
    expect(said.fact).toMatchObject({
      what: 'dish',
      perGuest: '1 serving per guest',
      contains: ['sesame'],
      tell: ['Bean pot is served instead of Pea pot. Bean pot contains sesame, which Pea pot did not.'],
    });
    const plan = await planOf(dir);
    const dish = plan.dishes.find(({ recipe }) => recipe === 'bean-pot');
    expect(dish).toMatchObject({
      course: 'Main',
      name: 'Bean pot',
      counted: '21',
      need: { exact: '21 serving' },
    });
    // 2.1 batches take 10.5 lb, the fritters 8.4 lb: 18.9 lb of beans.
    expect(plan.shopping.find(({ ingredient }) => ingredient === 'white-beans')?.need.exact).toBe(
      '189/10 lb',
    );
    await done(dir, TODAY, 'substitute', EVENT, 'bean-pot', 'pea-pot', '--yes');
    expect((await planOf(dir)).dishes.map(({ recipe }) => recipe)).toEqual([
      'bean-fritters',
      'lamb-stew',
      'pea-pot',
    ]);
  });

  test('mends a dish whose recipe is gone, and follows a later count', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '92');
    const plan = await planOf(dir);
    // 21 of 84 are 23 of 92.
    expect(plan.dishes.find(({ recipe }) => recipe === 'bean-pot')?.counted).toBe('23');
    const book = await bookOf(dir);
    const without = { ...book, recipes: new Map([...book.recipes].filter(([id]) => id !== 'pea-pot')) };
    const planned = await plannedEvent(without, EVENT, TODAY);
    expect(planned.ok && planned.value.plan.ok).toBe(true);
  });

  test('asks for an amount where nothing says how much each guest gets', async () => {
    const dir = await supperKitchen(changed('recipes/bean-pot.mdx', 'makes: 10 servings', 'makes: 2 gal'));
    expect(await refusal(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot')).toContain(
      'how much Bean pot each guest gets is not stated — add --amount, as in --amount "1 gal per guest"',
    );
    const said = await done(
      dir,
      TODAY,
      'substitute',
      EVENT,
      'pea-pot',
      'bean-pot',
      '--amount',
      '8 fl oz per guest',
      '--yes',
      '--json',
    );
    expect(JSON.parse(said).fact.perGuest).toBe('8 fl oz per guest');
  });
});
