import type { Ingredient } from '../../engine/food/ingredient.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { PriceList } from '../../engine/purchase/price-list.ts';
import { type RecipeText, recipeSchema } from '../../schema/recipe.ts';
import { checkText } from '../bodies/text.ts';
import type { ContentText } from '../files/content-texts.ts';
import type { Path } from '../files/place-of.ts';
import { hold, type Ledger } from '../ledger.ts';
import { readItem } from '../link/grammar/reading.ts';
import { readLineKey } from '../link/recipe/line-key.ts';
import { DEEPEST, linkRecipe } from '../link/recipe/recipe.ts';
import { readSwaps } from '../link/recipe/recipe-changes.ts';
import { recipeOrder } from '../link/recipe/recipe-order.ts';
import { type DataAndBody, readDataAndBody } from './data-and-body.ts';

/** The recipes and the cook's notes of those whose notes are sound. */
export interface ReadRecipes {
  readonly recipes: Map<string, Recipe>;
  readonly bodies: Map<string, string>;
}

/** Reads all recipes, parts before what they go into. Rings hold back all that is in them and rests on them. */
export function readRecipes(
  ledger: Ledger,
  files: readonly ContentText[],
  pictures: ReadonlySet<string>,
  ingredients: ReadonlyMap<string, Ingredient>,
  prices: PriceList,
  kitchen: Pick<Kitchen, 'stations' | 'stationSkills' | 'containers' | 'crew'>,
): ReadRecipes {
  const recipeIds = new Set(files.map(({ id }) => id));
  const texts = new Map<string, DataAndBody<RecipeText>>();
  for (const file of files) {
    const written = readDataAndBody(ledger, `recipe/${file.id}`, file, recipeSchema);
    if (written) texts.set(file.id, written);
  }
  // An id of both is told at its line as such; taken for a part, it would look like a ring.
  const isFood = (id: string) => ingredients.has(id) || ledger.held.has(`ingredient/${id}`);
  const { order, rings } = recipeOrder(partsOf(texts, recipeIds, isFood));
  tellRings(ledger, texts, rings);
  const recipes = new Map<string, Recipe>();
  const depths = new Map<string, number>();
  for (const id of order) {
    const written = texts.get(id);
    if (!written || ledger.held.has(`recipe/${id}`)) continue;
    const recipe = readItem(ledger, `recipe/${id}`, written.spot, (reading) => {
      const larder = { ingredients, recipes, recipeIds, prices };
      const linked = linkRecipe(reading, id, written.text, larder, kitchen);
      const depth = linked ? depthOf(linked, depths) : 0;
      depths.set(id, depth);
      if (depth <= DEEPEST) return linked;
      const what = `“${id}” has recipes nested ${depth} deep`;
      reading.say(
        'recipe-too-deep',
        ['ingredients'],
        what,
        `${DEEPEST} is the most; join some of them`,
        'key',
      );
      return undefined;
    });
    if (recipe) recipes.set(id, recipe);
  }
  return { recipes: inFileOrder(files, recipes), bodies: readNotes(ledger, files, texts, recipes, pictures) };
}

function partsOf(
  texts: ReadonlyMap<string, DataAndBody<RecipeText>>,
  recipeIds: ReadonlySet<string>,
  isFood: (id: string) => boolean,
): ReadonlyMap<string, readonly string[]> {
  const parts = new Map<string, readonly string[]>();
  for (const [id, { text }] of texts) {
    const swaps = Object.values(text.swap ?? {}).flatMap((words) => readSwaps(words) ?? []);
    const ids = [
      ...Object.keys(text.ingredients).map((key) => readLineKey(key).id),
      ...swaps.map(({ instead }) => instead),
    ];
    parts.set(
      id,
      ids.filter((part) => recipeIds.has(part) && !isFood(part)),
    );
  }
  return parts;
}

/** One finding for each ring, at the line by which its first recipe begins it. */
function tellRings(
  ledger: Ledger,
  texts: ReadonlyMap<string, DataAndBody<RecipeText>>,
  rings: readonly (readonly string[])[],
): void {
  for (const ring of rings) {
    const [first = '', second = first] = ring;
    const written = texts.get(first);
    const way = [...ring, first].join(' → ');
    for (const id of ring) {
      if (id !== first) hold(ledger, `recipe/${id}`, `the loop is: ${way}`);
    }
    if (!written) continue;
    readItem(ledger, `recipe/${first}`, written.spot, (reading) => {
      const what = `the recipe is part of itself: ${way}`;
      reading.say('circular-recipe', pathTo(written.text, second), what, 'remove one of these lines', 'key');
      return undefined;
    });
  }
}

/** Where a recipe calls for a part: its line, else the swap that takes it instead. */
function pathTo({ ingredients, swap = {} }: RecipeText, part: string): Path {
  const line = Object.keys(ingredients).find((each) => readLineKey(each).id === part);
  if (line !== undefined) return ['ingredients', line];
  const swapped = Object.entries(swap).find(([, words]) =>
    readSwaps(words)?.some(({ instead }) => instead === part),
  );
  return ['swap', swapped?.[0] ?? ''];
}

function depthOf(recipe: Recipe, depths: ReadonlyMap<string, number>): number {
  const swaps = (recipe.changes ?? []).flatMap(({ instead }) => instead ?? []);
  const parts = [...recipe.lines.map(({ item }) => item), ...swaps].flatMap((item) =>
    item.kind === 'recipe' ? [item.recipe.id] : [],
  );
  return 1 + Math.max(0, ...parts.map((part) => depths.get(part) ?? 0));
}

function inFileOrder(
  files: readonly ContentText[],
  recipes: ReadonlyMap<string, Recipe>,
): Map<string, Recipe> {
  const ordered = new Map<string, Recipe>();
  for (const { id } of files) {
    const recipe = recipes.get(id);
    if (recipe) ordered.set(id, recipe);
  }
  return ordered;
}

/** The notes hold back no more than themselves: a plan without them still feeds the guests. */
function readNotes(
  ledger: Ledger,
  files: readonly ContentText[],
  texts: ReadonlyMap<string, DataAndBody<RecipeText>>,
  recipes: ReadonlyMap<string, Recipe>,
  pictures: ReadonlySet<string>,
): Map<string, string> {
  const bodies = new Map<string, string>();
  for (const { id, file } of files) {
    const written = texts.get(id);
    if (!written) continue;
    const findings = checkText(file, written.body, 'mdx', pictures);
    ledger.findings.push(...findings);
    const error = findings.find((each) => each.severity === 'error');
    if (error) hold(ledger, `recipe-notes/${id}`, `${error.what} (${file}:${error.place.line})`);
    else if (recipes.has(id)) bodies.set(id, written.body.text);
  }
  return bodies;
}
