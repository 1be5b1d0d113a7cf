import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../../src/check/findings-on.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { recordCorrections } from '../../../src/offers/corrections/record-corrections.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { bookOf, done, EVENT, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01' as Day;
const OWN = 'ingredients/own.yaml';
const BEANS = 'white-beans: { name: White beans, from: plant, contains: none';
const TAHINI = 'tahini: { name: Tahini, from: plant, contains: sesame';

function change(dir: string, from: string, to: string): void {
  const text = readFileSync(join(dir, OWN), 'utf8');
  if (!text.includes(from)) throw new Error(`${OWN} has no “${from}”`);
  writeFileSync(join(dir, OWN), text.replace(from, to));
}

/** The beans turn out to hold soy, and a build publishes it; then a slip takes it out of the file again. */
async function publishedThenLost(dir: string, food = BEANS): Promise<void> {
  const soy = food.replace(/contains: (none|sesame)/, 'contains: soy');
  change(dir, food, soy);
  await recordCorrections(dir, await bookOf(dir), TODAY);
  change(dir, soy, food);
}

async function shown(dir: string) {
  const { book } = await readBook(dir, offerProblem);
  const [page] = clientSite(book!, TODAY).pages;
  const view = page!.view as ProposalView;
  const dishes = view.packages.flatMap(({ courses }) => courses.flatMap((course) => course.dishes));
  const findings = findingsOn(book!, TODAY).map(
    ({ code, place, what, wayOut }) => `${code} ${place.file}: ${what} — ${wayOut}`,
  );
  return { dishes, texts: view.since.texts.join('\n'), findings };
}

function recordsIn(dir: string): { dishes: object[] }[] {
  return readdirSync(join(dir, 'corrections'))
    .sort()
    .map((file) => JSON.parse(readFileSync(join(dir, 'corrections', file), 'utf8')));
}

describe('a published correction of a dish that is served instead', () => {
  const swapped = async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'pea-pot', 'bean-pot', '--yes');
    await done(dir, TODAY, 'told', EVENT);
    return dir;
  };

  test('is recorded of the recipe served, once, and stays when the ingredient no longer says it', async () => {
    const dir = await swapped();
    await publishedThenLost(dir);
    expect(recordsIn(dir).map(({ dishes }) => dishes)).toEqual([
      // The fritters are made of the same beans, and nobody swapped them.
      [
        { recipe: 'bean-fritters', dish: 'Bean fritters', contains: ['soy'], mayContain: [], lostMarks: [] },
        {
          recipe: 'pea-pot',
          instead: 'bean-pot',
          dish: 'Bean pot',
          contains: ['soy'],
          mayContain: [],
          lostMarks: [],
        },
      ],
    ]);
    const { dishes, texts, findings } = await shown(dir);
    expect(dishes.find(({ name }) => name === 'Bean pot')?.allergens).toBe('Contains soybeans, sesame.');
    expect(texts).toContain('Bean pot contains soybeans.');
    expect(findings).toContain(
      `correction-kept corrections/${EVENT}-001.json: the page of ${EVENT} says that “Bean pot” contains soy, as published, but the recipe no longer does — if that was removed by mistake, put it back; if the dish is right as it is, delete corrections/${EVENT}-001.json`,
    );
    expect(await recordCorrections(dir, await bookOf(dir), TODAY)).toEqual([]);
  });

  test('stays while the recipe served cannot be read', async () => {
    const dir = await swapped();
    await publishedThenLost(dir);
    writeFileSync(join(dir, 'recipes/bean-pot.mdx'), '---\nname: Bean pot\nmakes: soon\n---\n');
    const { dishes, texts } = await shown(dir);
    expect(dishes.find(({ name }) => name === 'Bean pot')?.allergens).toContain('soybeans');
    expect(texts).toContain('Bean pot contains soybeans.');
    expect(texts).toContain('Bean pot: ask us before eating it');
  });

  test('is said of no other dish once the first is served again', async () => {
    const dir = await swapped();
    await publishedThenLost(dir);
    await done(dir, TODAY, 'substitute', EVENT, 'bean-pot', 'pea-pot', '--yes');
    const { dishes } = await shown(dir);
    expect(dishes.find(({ name }) => name === 'Pea pot')?.allergens).not.toContain('soybeans');
    writeFileSync(join(dir, 'recipes/pea-pot.mdx'), '---\nname: Pea pot\nmakes: soon\n---\n');
    const unread = (await shown(dir)).dishes.find(({ name }) => name === 'Pea pot');
    expect(unread?.allergens).not.toContain('soybeans');
  });

  test('that cannot be read leaves the dish for the kitchen to answer', async () => {
    const dir = await swapped();
    await publishedThenLost(dir);
    writeFileSync(join(dir, `corrections/${EVENT}-001.json`), '{');
    const pot = (await shown(dir)).dishes.find(({ name }) => name === 'Bean pot');
    expect([pot?.marks, pot?.needs.suits]).toEqual([[], expect.not.stringContaining('y')]);
  });
});

describe('a published correction of what was swapped into a dish', () => {
  const swapped = async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'substitute', EVENT, 'split-peas', 'tahini', '--yes');
    return dir;
  };

  test('is recorded with what the dish was made with, and stays when the ingredient no longer says it', async () => {
    const dir = await swapped();
    await publishedThenLost(dir, TAHINI);
    expect(recordsIn(dir)).toMatchObject([
      { dishes: [{ recipe: 'pea-pot', madeWith: ['tahini'], dish: 'Pea pot', contains: ['soy'] }] },
    ]);
    const { dishes, texts } = await shown(dir);
    expect(dishes.find(({ name }) => name === 'Pea pot')?.allergens).toContain('soybeans');
    expect(texts).toContain('Pea pot contains soybeans.');
  });

  test('goes with it when it is swapped out', async () => {
    const dir = await swapped();
    await publishedThenLost(dir, TAHINI);
    await done(dir, TODAY, 'substitute', EVENT, 'tahini', 'white-beans', '--yes');
    const { dishes, texts } = await shown(dir);
    expect(dishes.find(({ name }) => name === 'Pea pot')?.allergens).not.toContain('soybeans');
    expect(texts).not.toContain('Pea pot contains soybeans');
  });
});
