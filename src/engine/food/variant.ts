import { type Statement, statement } from '../text/statement.ts';
import { allergensKnown } from './allergens-known.ts';
import { allergensOf } from './allergens-of.ts';
import { DIETS } from './diet.ts';
import { dietsOf, ingredientSuits, type Suits } from './diets-of.ts';
import { mayHelp, type Need, needParts, parseNeed, suitsNeed } from './need.ts';
import type { LineItem, Recipe, RecipeChange, RecipeLine } from './recipe.ts';
import { itemId, itemName, withInsteadOf } from './swap-item.ts';
import { ingredientsOf, partsFirst } from './walk.ts';

/** A recipe as it is cooked separately for guests with a need. */
export interface Variant {
  /**
   * With an id of its own that says what is changed (`leek-tart--without-butter`), so that the same changes are
   * one recipe wherever they are asked for, and never one with the recipe they were made to.
   */
  readonly recipe: Recipe;
  /** What is left out, and what is taken instead of what: `without butter`, `corn bread instead of bread`. */
  readonly changes: readonly Statement[];
}

/** Whether a recipe, as it is written, suits a need. Throws where it contains itself. */
export function recipeSuits(recipe: Recipe, need: Need): Suits {
  const { allergens, diets } = factsOf(recipe);
  return suitsNeed(need, allergens, diets);
}

/** Facts of a recipe; a menu is asked for every need, and a recipe, once linked, never changes. */
const known = new WeakMap<Recipe, ReturnType<typeof gatherFacts>>();

function factsOf(recipe: Recipe) {
  const facts = known.get(recipe) ?? gatherFacts(recipe);
  known.set(recipe, facts);
  return facts;
}

function gatherFacts(recipe: Recipe) {
  return {
    allergens: allergensOf(recipe),
    diets: dietsOf(recipe),
    changeable: changesIn(recipe).length > 0,
  };
}

/**
 * The recipe as it can be made for a need that it does not suit as it is: lines left out or swapped as it, and the
 * recipes it is made of, say. Only lines that stand against the need are changed. Undefined where it suits anyway,
 * where nothing can be changed, and where it does not suit for certain even then. Cooked in exact batches, since a
 * few separate portions are not worth a whole one.
 */
export function variantFor(recipe: Recipe, need: Need): Variant | undefined {
  if (!factsOf(recipe).changeable || recipeSuits(recipe, need) === 'yes') return undefined;
  const made = variants.get(recipe) ?? new Map<string, Variant | undefined>();
  variants.set(recipe, made);
  const key = JSON.stringify(need);
  if (!made.has(key)) {
    const changed = changedFor(recipe, need);
    made.set(key, changed && recipeSuits(changed.recipe, need) === 'yes' ? changed : undefined);
  }
  return made.get(key);
}

/** Variants made already, by need: a margin asks for the same ones at many counts. */
const variants = new WeakMap<Recipe, Map<string, Variant | undefined>>();

/** Id of the recipe that a variant is made of; of any other recipe its own. */
export function writtenId(id: string): string {
  return id.split('--')[0] ?? id;
}

/**
 * The recipe with every change made that its cook allows for a need, whether or not that is enough; undefined where
 * none is, or nothing would be left.
 */
export function changedFor(recipe: Recipe, need: Need): Variant | undefined {
  const parts = new Map<string, Variant | undefined>();
  for (const part of partsFirst([recipe])) parts.set(part.id, changed(part, need, parts));
  return parts.get(recipe.id);
}

function changed(
  recipe: Recipe,
  need: Need,
  parts: ReadonlyMap<string, Variant | undefined>,
): Variant | undefined {
  const marks = new Set<string>();
  const changes: Statement[] = [];
  const lines = recipe.lines.flatMap((line): RecipeLine[] => {
    const { item } = line;
    if (itemSuits(item, need) === 'yes') return [line];
    const name = shortName(item);
    const change = changeOf(recipe, item, need);
    if (change?.instead) {
      marks.add(`${itemId(change.instead)}-for-${change.item}`);
      changes.push(statement('dishes.differs.instead', { taken: shortName(change.instead), item: name }));
      return [withInsteadOf(line, change.instead, name)];
    }
    if (change) {
      marks.add(`without-${change.item}`);
      changes.push(statement('dishes.differs.without', { item: name }));
      return [];
    }
    const part = item.kind === 'recipe' ? parts.get(item.recipe.id) : undefined;
    if (!part) return [line];
    marks.add(part.recipe.id);
    changes.push(...part.changes);
    return [{ ...line, item: { kind: 'recipe', recipe: part.recipe } }];
  });
  if (marks.size === 0 || lines.length === 0) return undefined;
  const each = eachOnce(changes);
  return {
    recipe: {
      ...recipe,
      id: `${recipe.id}--${[...marks].join('--')}`,
      changed: each,
      batches: 'exact',
      lines,
      changes: [],
    },
    changes: each,
  };
}

/**
 * The needs, as written, that a recipe does not suit as it is and can be made for: those its changes and its
 * parts' name, and `asked` besides. In the order asked, then written.
 */
export function needsOnRequest(recipe: Recipe, asked: readonly string[] = []): string[] {
  const named = [...new Set([...asked, ...changesIn(recipe).flatMap(({ needs }) => needs)])];
  return named.filter((text) => variantFor(recipe, needOf(text)) !== undefined);
}

/** The same thing may be left out of several parts, and is told once. */
function eachOnce(changes: readonly Statement[]): Statement[] {
  return [...new Map(changes.map((change) => [JSON.stringify(change), change])).values()];
}

/** Every change that a recipe or one of its parts allows. */
export function changesIn(recipe: Recipe): RecipeChange[] {
  return partsFirst([recipe]).flatMap(({ changes }) => changes ?? []);
}

/**
 * Ids of the ingredients that stand against a need in a recipe, down to the bottom: of each thing it asks for all that
 * rule it out, one by a mere warning beside another that contains it too; where none does, all that leave it open.
 */
export function rulingOut(recipe: Recipe, need: Need): string[] {
  const found = needParts(need).flatMap((part) => {
    const suits = recipeSuits(recipe, part);
    if (suits === 'yes') return [];
    return ingredientsOf(recipe)
      .filter((ingredient) => itemSuits({ kind: 'ingredient', ingredient }, part) === suits)
      .map(({ id }) => id);
  });
  return [...new Set(found)];
}

/** The first change of an item that is done for the need, one whose food suits it before others. */
function changeOf(recipe: Recipe, item: LineItem, need: Need): RecipeChange | undefined {
  const allowed = (recipe.changes ?? []).filter(
    (change) => change.item === itemId(item) && change.needs.some((text) => mayHelp(needOf(text), need)),
  );
  return allowed.find(({ instead }) => !instead || itemSuits(instead, need) === 'yes') ?? allowed[0];
}

function itemSuits(item: LineItem, need: Need): Suits {
  if (item.kind === 'recipe') return recipeSuits(item.recipe, need);
  const { id, contains, mayContain } = item.ingredient;
  const sources = (allergens: typeof mayContain) => allergens.map((allergen) => ({ allergen, paths: [] }));
  return suitsNeed(
    need,
    {
      contains: sources(contains ?? []),
      mayContain: sources(mayContain),
      unsaid: allergensKnown(item.ingredient) ? [] : [[id]],
    },
    DIETS.map((diet) => ({ diet, suits: ingredientSuits(item.ingredient, diet), because: [] })),
  );
}

function needOf(text: string): Need {
  const need = parseNeed(text);
  if (!need.ok) throw new Error(`a linked recipe names a need that is none: ${need.what}`);
  return need.value;
}

/** An item inside a sentence, without what follows a comma: `butter` of `Butter, unsalted`. */
function shortName(item: LineItem): string {
  const [name = ''] = itemName(item).split(',');
  return /^\p{Lu}\p{Ll}/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}
