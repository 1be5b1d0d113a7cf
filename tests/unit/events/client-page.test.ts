import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../../src/check/findings-on.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { proposalCacheKey } from '../../../src/views/client/cache-key.ts';
import type { ProposalPage } from '../../../src/views/client/proposal-page.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import type { ClientTerms } from '../../../src/views/client/terms.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { bookOf, changed, done, EVENT, refusal, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01' as Day;
const LATER = '2027-05-03' as Day;

/** The event's page for its client, as it would be built now, whatever else cannot be read. */
async function pageOf(dir: string, today = TODAY) {
  const { book } = await readBook(dir, offerProblem);
  const [page] = clientSite(book!, today).pages;
  const view = page!.view as ProposalView;
  const dishes = view.packages.flatMap(({ courses }) => courses.flatMap((course) => course.dishes));
  return {
    view,
    source: page!.source as ProposalPage,
    data: JSON.parse(view.answering.data) as ClientTerms,
    /** The dish that now goes by a name. */
    dish: (name: string) => dishes.find((each) => each.name === name)!,
    /** What the filter knows of a dish for a need: `y`, `n` or `u`. */
    suits: (name: string, need: string) =>
      dishes.find((each) => each.name === name)!.needs.suits[view.needs.indexOf(need)],
    /** What the table says of a dish under an allergen. */
    cell: (name: string, allergen: string) => {
      const { allergens, menus } = view.allergenTable;
      const rows = menus.flatMap(({ rows }) => rows);
      return rows.find(({ dish }) => dish === name)?.cells[allergens.indexOf(allergen)]?.says;
    },
  };
}

async function foundOn(dir: string, today = LATER): Promise<string[]> {
  return findingsOn(await bookOf(dir), today)
    .filter(({ code }) => /^(food-facts|substitution)/.test(code))
    .map(({ code, place, what, wayOut }) => `${code} ${place.file}: ${what} — ${wayOut}`);
}

describe('after an ingredient is swapped, the client’s page', () => {
  test('says of the dish what is in it now: marks, allergens, filter, table, form, and what was agreed', async () => {
    const dir = await supperKitchen();
    const before = await pageOf(dir);
    expect([before.suits('Pea pot', 'no sesame'), before.dish('Pea pot').agreed]).toEqual(['y', '']);
    await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'tahini', '--yes');
    const page = await pageOf(dir);
    expect(page.dish('Pea pot').allergens).toBe('Contains sesame.');
    expect(page.suits('Pea pot', 'no sesame')).toBe('n');
    expect(page.cell('Pea pot', 'sesame')).toBe('contains');
    expect(page.dish('Pea pot').agreed).toBe(
      'As agreed: Pea pot (vegan, no gluten), 1 serving per guest. No listed allergen among its ingredients.',
    );
    // What no swap touches is as it was.
    expect(page.dish('Lamb stew')).toEqual(before.dish('Lamb stew'));
    const terms = page.data.terms.packages[0]!.courses[1]!.dishes[1]!;
    expect(terms).toMatchObject({ recipe: 'pea-pot', contains: ['sesame'] });
    // And the page is made again for it.
    expect(proposalCacheKey(page.source)).not.toBe(proposalCacheKey(before.source));
  });

  test('claims no diet any more that the swap has taken, for machines neither', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'lamb-neck', '--yes');
    const { dish, suits, data, view } = await pageOf(dir);
    expect(dish('Pea pot').marks).toEqual(['no gluten']);
    expect(suits('Pea pot', 'vegan')).toBe('n');
    expect(data.needs.find(({ name }) => name === 'vegan')?.suits).toEqual([]);
    expect(view.answering.linkedData).not.toContain('VeganDiet');
  });

  test('drops an allergen that the swap took out, and keeps one that only the offer says', async () => {
    const dir = await supperKitchen(
      changed(
        'ingredients/own.yaml',
        'yogurt: {',
        'oat-cream: { name: Oat cream, from: plant, contains: none, may contain: none }\nyogurt: {',
      ),
    );
    expect((await pageOf(dir)).dish('Bean fritters').allergens).toBe('Contains milk.');
    await done(dir, TODAY, 'substitute', EVENT, 'yogurt', 'oat-cream', '--yes');
    const page = await pageOf(dir);
    expect(page.dish('Bean fritters').allergens).toBe('No listed allergen among its ingredients.');
    expect(page.suits('Bean fritters', 'vegan')).toBe('y');
    // The kitchen edits the recipe so that the milk went before the swap: what was offered stays.
    writeFileSync(
      join(dir, 'ingredients/own.yaml'),
      fileOf(dir, 'ingredients/own.yaml').replace(
        'from: milk, contains: milk',
        'from: plant, contains: none',
      ),
    );
    const edited = await pageOf(dir);
    expect(edited.dish('Bean fritters').allergens).toBe('Contains milk.');
    expect(edited.suits('Bean fritters', 'vegan')).toBe('n');
  });

  test('says “ask us” and claims nothing once the dish cannot be read, with what the swap brought as a warning', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'tahini', '--yes');
    writeFileSync(join(dir, 'recipes/pea-pot.mdx'), '---\nname: Pea pot\nmakes: soon\n---\n');
    const { dish, suits, data } = await pageOf(dir);
    expect(dish('Pea pot').marks).toEqual([]);
    expect(dish('Pea pot').allergens).toContain('Not all of its allergens are known yet: ask us.');
    expect([suits('Pea pot', 'no sesame'), suits('Pea pot', 'no milk'), suits('Pea pot', 'vegan')]).toEqual([
      'n',
      'u',
      'u',
    ]);
    // Nor does the form count it as food for an allergic guest.
    expect(data.needs.find(({ name }) => name === 'milk')?.suits).not.toContain('pea-pot');
  });
});

describe('after a dish is swapped, the client’s page', () => {
  test('shows the dish that is served, in the place of the one agreed, and beside it what was agreed', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    const { dish, suits, cell, data, view } = await pageOf(dir);
    expect(dish('Pea pot')).toBeUndefined();
    expect(dish('Bean pot')).toMatchObject({ chosenBy: '21 guests', allergens: 'Contains sesame.' });
    expect(dish('Bean pot').agreed).toMatch(
      /^As agreed: Pea pot \(vegan, no gluten\), 1 serving per guest\./,
    );
    expect([suits('Bean pot', 'no sesame'), cell('Bean pot', 'sesame')]).toEqual(['n', 'contains']);
    // The count is still given under the recipe accepted, by the new name.
    expect(data.terms.packages[0]!.courses[1]!.dishes[1]).toMatchObject({
      recipe: 'pea-pot',
      name: 'Bean pot',
    });
    expect(view.answering.change?.menus[0]?.courses[0]?.dishes[1]).toMatchObject({
      name: 'Bean pot',
      value: '21',
    });
    // The offer as data stays what was agreed.
    const { files } = clientSite(await bookOf(dir), TODAY);
    const offer = String(files.find(({ file }) => file.endsWith('offer.json'))?.content);
    expect([offer.includes('Pea pot'), offer.includes('Bean pot')]).toEqual([true, false]);
  });

  test('takes a guest list by either name of the dish', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    const file = join(dir, 'list.csv');
    writeFileSync(file, 'name,table,main,need\nAda Lund,1,Bean pot,\nBo Lund,1,Pea pot,\nCy Lund,1,bean,\n');
    const { fact } = JSON.parse(await done(dir, TODAY, 'guests', EVENT, '--from', file, '--json'));
    expect(fact.guests.map((each: { mains: object }) => each.mains)).toEqual(
      Array.from({ length: 3 }, () => ({ Main: 'pea-pot' })),
    );
  });
});

describe('telling the client of a substitution', () => {
  test('is asked for until it is recorded, and then stands on the plan with its day', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    expect(await foundOn(dir)).toEqual([
      `substitution-allergen-untold events/${EVENT}/003-substitution.json: the client of the event pell-supper on 2027-05-15 must be told: Bean pot is served instead of Pea pot. Bean pot contains sesame, which Pea pot did not — tell Tamsin Pell; the page already shows it; then run: told pell-supper`,
    ]);
    expect(await refusal(dir, TODAY, 'told', EVENT, '--on', '2027-04-30')).toContain(
      'Friday, April 30, 2027 is before the substitution of Saturday, May 1, 2027',
    );
    expect(await done(dir, TODAY, 'told', EVENT)).toBe(
      'Recorded: Tamsin Pell was told on 2027-05-01 of Bean pot instead of pea-pot.\n',
    );
    expect(await foundOn(dir)).toEqual([]);
    const planned = await plannedEvent(await bookOf(dir), EVENT, TODAY);
    const plan = planned.ok && planned.value.plan.ok ? planned.value.plan.value : undefined;
    expect(plan?.alerts[0]?.what).toContain(
      'The client was told on Saturday, May 1, 2027: Bean pot is served',
    );
    expect(plan?.alerts[0]?.what).not.toContain('must be told');
    expect(await refusal(dir, TODAY, 'told', EVENT)).toContain('has already been told of everything');
  });

  test('opens anew for the next substitution, the same one made again too', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    await done(dir, TODAY, 'told', EVENT);
    await done(dir, TODAY, 'substitute', EVENT, 'bean-pot', 'pea-pot', '--yes');
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    expect((await foundOn(dir)).map((each) => each.split(':')[0])).toEqual([
      `substitution-untold events/${EVENT}/004-substitution.json`,
      `substitution-allergen-untold events/${EVENT}/005-substitution.json`,
    ]);
    await done(dir, TODAY, 'told', EVENT);
    expect(await foundOn(dir)).toEqual([]);
  });

  test('opens anew for what is found out later of the dish that came', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    await done(dir, TODAY, 'told', EVENT);
    const own = fileOf(dir, 'ingredients/own.yaml');
    const beans = 'white-beans: { name: White beans, from: plant, contains: none';
    writeFileSync(join(dir, 'ingredients/own.yaml'), own.replace(beans, beans.replace('none', 'soy')));
    expect(await foundOn(dir)).toContainEqual(
      expect.stringMatching(
        /^food-facts-changed ingredients\/own\.yaml: the event pell-supper on 2027-05-15 has “Bean pot”, which now contains soy; its client was told something else — /,
      ),
    );
    const { view, dish } = await pageOf(dir, LATER);
    expect(dish('Bean pot').allergens).toContain('soybeans');
    expect(view.since.texts).toContain(
      'Correction, Monday, May 3, 2027: Bean pot contains soybeans. This was not known when the dish was changed.',
    );
    await done(dir, LATER, 'told', EVENT);
    expect((await foundOn(dir)).filter((each) => !each.startsWith('food-facts-told'))).toEqual([]);
  });

  test('says nothing of an allergen found in a dish that is no longer served', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    await done(dir, TODAY, 'told', EVENT);
    const own = fileOf(dir, 'ingredients/own.yaml');
    const peas = 'split-peas: { name: Split peas, from: plant, contains: none';
    writeFileSync(join(dir, 'ingredients/own.yaml'), own.replace(peas, peas.replace('none', 'celery')));
    expect(await foundOn(dir)).toEqual([]);
    expect((await pageOf(dir)).view.since.texts.join(' ')).not.toContain('celery');
  });
});

function fileOf(dir: string, file: string): string {
  return readFileSync(join(dir, file), 'utf8');
}
