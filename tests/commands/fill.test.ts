import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { describe, expect, test } from 'vitest';
import { missingFacts } from '../../src/check/missing-facts.ts';
import { readBook } from '../../src/check/read-book.ts';
import { fillIn } from '../../src/commands/fill.ts';
import { copyOf, pictureOf } from './kitchen-copy.ts';
import { run } from './run.ts';

const RECIPE = 'recipes/strand-broth.mdx';
const OWN = 'ingredients/own.yaml';

/** The second kitchen with two goods of which something is missing, and one recipe that uses them. */
function unfinished(): string {
  const dir = copyOf(undefined, [
    [RECIPE, 'ingredients:\n', 'ingredients:\n  dulse-paste, rinsed: 10 g\n  harbour-sauce: 10 g\n'],
  ]);
  const file = join(dir, OWN);
  writeMore(
    file,
    `# Bought at the quay; the label is on the tin.
dulse-paste:
  from: plant # seaweed
  yields: { drained: 55 % }
harbour-sauce:
  name: Harbour sauce
`,
  );
  return dir;
}

function writeMore(file: string, more: string): void {
  writeFileSync(file, `${readFileSync(file, 'utf8').trimEnd()}\n${more}`);
}

async function fill(dir: string, typed: string, brokenOff = false) {
  const { book } = await readBook(dir);
  if (!book) throw new Error('no book');
  const input = new PassThrough();
  const output = new PassThrough();
  input.write(typed);
  if (brokenOff) input.end();
  const written = await fillIn(book, dir, missingFacts(book), { input, output });
  output.end();
  return { written, shown: await text(output) };
}

describe('fill', () => {
  test('lists what is missing where there is no terminal, and is not done', async () => {
    const dir = unfinished();
    const before = pictureOf(dir);
    const { code, out } = await run(dir, 'fill');
    expect(code).toBe(1);
    expect(out).toBe(
      `dulse-paste: contains (which allergens does it contain)
dulse-paste: may contain (which allergens does its label warn of)
dulse-paste: yield (what share is left when rinsed)
harbour-sauce: contains (which allergens does it contain)
harbour-sauce: may contain (which allergens does its label warn of)
harbour-sauce: from (what does it come from)
6 facts are missing. Run fill in a terminal to answer.
`,
    );
    expect((await run(dir, 'fill', '--list')).code).toBe(0);
    expect(JSON.parse((await run(dir, 'fill', '--list', '--json')).out)).toHaveLength(6);
    expect(pictureOf(dir)).toEqual(before);
  });

  test('asks one thing after another until the answer will do, and leaves nothing unknown', async () => {
    const dir = unfinished();
    const before = readFileSync(join(dir, OWN), 'utf8');
    const { written, shown } = await fill(
      dir,
      'none\nnone\n70 %\nfish\nfish (anchovy), Wheat\nsesame\nfish, plant\n',
    );
    expect(written).toBe(6);
    expect(shown).toContain('Harbour sauce: which allergens does it contain? (none, milk, egg,');
    expect(shown).toContain('“fish” does not name the kind of fish; write the kind in parentheses');
    expect(readFileSync(join(dir, OWN), 'utf8')).toBe(
      before
        .replace(
          '{ drained: 55 % }\n',
          '{ drained: 55 % }\n  contains: none\n  may contain: none\n  yield: 70 %\n',
        )
        .replace(
          'name: Harbour sauce\n',
          'name: Harbour sauce\n  contains: fish (anchovy), wheat\n  may contain: sesame\n  from: fish, plant\n',
        ),
    );
    // Two origins make it a compound good, whose label is asked for next.
    expect((await run(dir, 'fill', '--list')).out).toContain(
      'harbour-sauce: parts (what ingredients does its label list)',
    );
  });

  test('keeps every answer given before it is broken off, and an empty one stays unknown', async () => {
    const dir = unfinished();
    const { written } = await fill(dir, 'celery\n\n', true);
    expect(written).toBe(1);
    const { book } = await readBook(dir);
    expect(book?.ingredients.get('dulse-paste')?.contains).toEqual([{ group: 'celery', kind: null }]);
    expect(book?.ingredients.get('dulse-paste')?.warningsSaid).toBeUndefined();
    expect(readdirSync(join(dir, 'ingredients')).filter((name) => name.includes('tmp'))).toEqual([]);
  });

  test('never writes into the store-room: an entry of the caterer’s own goes over it', async () => {
    const dir = unfinished();
    const { book } = await readBook(dir);
    const carrot = book?.ingredients.get('carrot');
    if (!book || !carrot) throw new Error('the store-room has no carrot');
    const unsaid = new Map(book.ingredients).set('carrot', { ...carrot, contains: undefined });
    const [fact] = missingFacts({ ...book, ingredients: unsaid }).filter(
      ({ ingredient }) => ingredient === 'carrot',
    );
    const input = new PassThrough();
    input.end('celery\n');
    await fillIn(book, dir, fact ? [fact] : [], { input, output: new PassThrough() });
    expect(readFileSync(join(dir, OWN), 'utf8')).toMatch(/\ncarrot:\n {2}contains: celery\n$/);
    const after = (await readBook(dir)).book?.ingredients.get('carrot');
    expect(after?.contains).toEqual([{ group: 'celery', kind: null }]);
    expect(after?.yields).toEqual(carrot.yields);
  });

  test('has nothing to ask in a kitchen that has said everything', async () => {
    const { code, out } = await run(copyOf(), 'fill');
    expect([code, out]).toEqual([0, 'The ingredients in use have all their facts.\n']);
  });
});
