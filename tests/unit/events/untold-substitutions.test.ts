import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingsOn } from '../../../src/check/findings-on.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { run } from '../../commands/run.ts';
import { changed, done, EVENT, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01' as Day;
const PROPOSAL = 'proposals/pell-supper.md';

/** What `check` says of substitutions nobody was told of, as `severity code number: rest`. */
async function untold(dir: string): Promise<string[]> {
  const { book } = await readBook(dir, offerProblem);
  return findingsOn(book!, TODAY)
    .filter(({ code }) => code.startsWith('substitution-'))
    .map(({ severity, code, place, what, wayOut }) => {
      const number = /\/(\d+)-substitution\.json$/.exec(place.file)?.[1];
      return `${severity} ${code} ${number}: ${what.split('must be told: ')[1]} — ${wayOut}`;
    });
}

async function kinds(dir: string): Promise<string[]> {
  return (await untold(dir)).map((each) => each.split(':')[0]!);
}

const swap = (dir: string, from: string, to: string) =>
  done(dir, TODAY, 'substitute', EVENT, from, to, '--yes');

describe('a substitution that its client was not told of is', () => {
  test('an error while it brings an allergen to guests on record, who are named, until `told`', async () => {
    const dir = await supperKitchen(changed(PROPOSAL, 'milk: 2', 'sesame: 2'));
    await swap(dir, 'pea-pot', 'bean-pot');
    expect(await untold(dir)).toEqual([
      'error substitution-allergen-untold 003: Bean pot is served instead of Pea pot. Bean pot contains sesame, which Pea pot did not. It is not for these guests: 2 × sesame — tell Tamsin Pell at once, and give these guests another dish; the page already shows it; then run: told pell-supper',
    ]);
    expect((await run(dir, 'check', '--today', TODAY)).code).toBe(1);
    await done(dir, TODAY, 'told', EVENT);
    expect(await untold(dir)).toEqual([]);
    expect((await run(dir, 'check', '--today', TODAY)).code).toBe(0);
  });

  test('an error while it brings an allergen at all: who is not on record rests on what was offered', async () => {
    const dir = await supperKitchen();
    await swap(dir, 'split-peas', 'tahini');
    expect(await untold(dir)).toEqual([
      'error substitution-allergen-untold 003: Pea pot contains sesame since the change — tell Tamsin Pell; the page already shows it; then run: told pell-supper',
    ]);
  });

  test('an error for a mere warning of traces', async () => {
    const dir = await supperKitchen(
      changed(
        'ingredients/own.yaml',
        'bouillon: {',
        'lentils: { name: Lentils, from: plant, contains: none, may contain: mustard }\nbouillon: {',
      ),
    );
    await swap(dir, 'split-peas', 'lentils');
    expect(await kinds(dir)).toEqual(['error substitution-allergen-untold 003']);
  });

  test('an error once a diet that guests on record keep is lost, and no more than a warning where none does', async () => {
    const dir = await supperKitchen();
    await swap(dir, 'split-peas', 'lamb-neck');
    expect((await untold(dir))[0]).toContain('It is not for these guests: 4 × vegan — ');
    expect(await kinds(dir)).toEqual(['error substitution-allergen-untold 003']);
    const other = await supperKitchen(changed(PROPOSAL, 'milk: 2, vegan: 4', 'milk: 2'));
    await swap(other, 'split-peas', 'lamb-neck');
    expect(await kinds(other)).toEqual(['warning substitution-untold 003']);
  });

  test('no error any longer once the dish is served no more, or what came in was swapped out', async () => {
    const dir = await supperKitchen();
    await swap(dir, 'pea-pot', 'bean-pot');
    await swap(dir, 'bean-pot', 'pea-pot');
    expect(await kinds(dir)).toEqual(['warning substitution-untold 003', 'warning substitution-untold 004']);
    const other = await supperKitchen();
    await swap(other, 'split-peas', 'tahini');
    await swap(other, 'tahini', 'white-beans');
    expect(await kinds(other)).toEqual(['warning substitution-untold 003']);
  });

  test('an error while the dish cannot be read, since nobody can say that the allergen is out', async () => {
    const dir = await supperKitchen();
    await swap(dir, 'pea-pot', 'bean-pot');
    writeFileSync(join(dir, 'recipes/bean-pot.mdx'), '---\nname: Bean pot\nmakes: soon\n---\n');
    expect(await kinds(dir)).toEqual(['error substitution-allergen-untold 003']);
  });

  test('told of a guest on the list who takes the dish, and not of one who takes another', async () => {
    const dir = await supperKitchen();
    const file = join(dir, 'list.csv');
    writeFileSync(
      file,
      'name,table,main,need\nAda Lund,1,Pea pot,sesame\nBo Lund,1,Lamb stew,sesame\nCy Lund,1,Pea pot,\n',
    );
    await done(dir, TODAY, 'guests', EVENT, '--from', file);
    await swap(dir, 'pea-pot', 'bean-pot');
    expect((await untold(dir))[0]).toContain('It is not for these guests: Ada Lund (sesame) — ');
  });

  test('no harm to a guest for whom the dish is made separately', async () => {
    const dir = await supperKitchen({
      ...changed(PROPOSAL, 'milk: 2', 'sesame: 2'),
      ...changed('recipes/bean-pot.mdx', 'steps:', 'without: { tahini: sesame }\nsteps:'),
    });
    await swap(dir, 'pea-pot', 'bean-pot');
    expect((await untold(dir))[0]).not.toContain('not for these guests');
    expect(await kinds(dir)).toEqual(['error substitution-allergen-untold 003']);
  });
});
