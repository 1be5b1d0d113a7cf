import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readBook } from '../../../src/check/read-book.ts';
import { recipeFacts } from '../../../src/offers/issue/dish-terms.ts';

/*
 * The allergens and diets of every dish of the demo found a second time, straight from the text of the files, with
 * lists of its own: what each diet forbids is written out here, so that it shares no mistake with the engine.
 */
const root = fileURLToPath(new URL('../../..', import.meta.url));
const content = join(root, 'content');

// biome-ignore lint/suspicious/noExplicitAny: content as it is written, before anything has checked it.
type Text = any;

const words = (text: Text): string[] =>
  (Array.isArray(text) ? text : String(text).split(',')).map((word: string) => word.trim().toLowerCase());

function foods(): Map<string, Text> {
  const all = new Map<string, Text>();
  for (const dir of [join(root, 'src/store-room'), join(content, 'ingredients')])
    for (const file of readdirSync(dir).filter((name) => name.endsWith('.yaml')))
      for (const [id, text] of Object.entries(parse(readFileSync(join(dir, file), 'utf8')) as Text))
        all.set(id, { ...all.get(id), ...(text as Text) });
  return all;
}

function recipes(): Map<string, Text> {
  const files = readdirSync(join(content, 'recipes'));
  return new Map(
    files.map((file) => {
      const [, data = ''] = readFileSync(join(content, 'recipes', file), 'utf8').split(/^---$/m);
      return [file.replace(/\.mdx$/, ''), parse(data)];
    }),
  );
}

const larder = foods();
const written = recipes();

/** Every food in a recipe, to the bottom, without asking twice. */
function bottom(id: string, found = new Set<string>()): Set<string> {
  for (const key of Object.keys(written.get(id).ingredients)) {
    const part = key.split(',')[0]!.trim();
    if (written.has(part)) bottom(part, found);
    else found.add(part);
  }
  return found;
}

const MEAT = ['beef', 'pork', 'lamb', 'poultry', 'game', 'insect', 'gelatin', 'animal rennet'];
const SEA = ['fish', 'crustacean', 'mollusc'];
const GLUTEN = ['wheat', 'spelt', 'khorasan', 'rye', 'barley', 'oats', 'triticale'];

/** By diet: origins and allergens that are not in it. */
const FORBIDDEN: Record<string, { from: string[]; contains: string[] }> = {
  vegetarian: { from: [...MEAT, ...SEA], contains: SEA },
  vegan: { from: [...MEAT, ...SEA, 'milk', 'egg', 'honey'], contains: [...SEA, 'milk', 'egg'] },
  pescatarian: { from: MEAT, contains: [] },
  'no gluten': { from: [], contains: GLUTEN },
  'no pork': { from: ['pork', 'gelatin'], contains: [] },
  'no alcohol': { from: ['alcohol'], contains: [] },
};

function said(id: string, field: string): string[] {
  const text = larder.get(id)?.[field];
  return text === undefined || text === 'none' ? [] : words(text);
}

function suits(id: string, diet: string): boolean {
  const { from, contains } = FORBIDDEN[diet]!;
  return [...bottom(id)].every((food) => {
    const group = (word: string) => word.replace(/\s*\(.*/, '');
    if (said(food, 'from').some((word) => from.includes(word))) return false;
    if (said(food, 'contains').some((word) => contains.includes(group(word)))) return false;
    return diet !== 'no gluten' || !said(food, 'may contain').some((word) => GLUTEN.includes(word));
  });
}

describe('every recipe of the demo', async () => {
  const { book } = await readBook(content);

  test('is walked, all foods said', () => {
    expect([...book!.recipes.keys()].sort()).toEqual([...written.keys()].sort());
    for (const id of written.keys())
      for (const food of bottom(id)) {
        expect([food, larder.get(food)?.contains]).not.toEqual([food, undefined]);
        expect([food, larder.get(food)?.from]).not.toEqual([food, undefined]);
      }
  });

  test.each([...written.keys()])('%s has the allergens and diets that a second walk finds', (id) => {
    const facts = recipeFacts(book!.recipes.get(id)!);
    const contains = new Set([...bottom(id)].flatMap((food) => said(food, 'contains')));
    const may = new Set(
      [...bottom(id)].flatMap((food) => said(food, 'may contain')).filter((word) => !contains.has(word)),
    );
    expect([...facts.contains].sort()).toEqual([...contains].sort());
    expect([...facts.mayContain].sort()).toEqual([...may].sort());
    expect([...facts.marks].sort()).toEqual(
      Object.keys(FORBIDDEN)
        .filter((diet) => suits(id, diet))
        .sort(),
    );
  });

  test('shows the hidden sources: fish in a sauce, rennet in a cheese, celery in a stock', () => {
    const of = (id: string) => recipeFacts(book!.recipes.get(id)!);
    expect(of('cabbage-apple-slaw').contains).toContain('fish (anchovy)');
    expect(of('cabbage-apple-slaw').marks).not.toContain('vegetarian');
    expect(of('leek-and-cheese-tart').marks).not.toContain('vegetarian');
    expect(of('roast-squash-farro').contains).toContain('celery');
  });

  test('can be made for the needs its cook names, and for no others', () => {
    const onRequest = Object.fromEntries(
      [...written.keys()].flatMap((id) => {
        const { onRequest: needs } = recipeFacts(book!.recipes.get(id)!);
        return needs ? [[id, needs]] : [];
      }),
    );
    expect(onRequest).toMatchObject({
      'beet-and-goat-cheese': ['vegan', 'milk', 'tree nuts'],
      'roast-squash-farro': ['celery', 'tree nuts'],
      'smoked-trout-toasts': ['no gluten'],
      'barley-with-mushrooms': ['vegan', 'milk'],
    });
  });
});
