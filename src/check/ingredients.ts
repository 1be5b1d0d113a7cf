import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import type { Path } from '../book/files/place-of.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import type { Ingredient } from '../engine/food/ingredient.ts';
import type { LineItem } from '../engine/food/recipe.ts';
import { itemId } from '../engine/food/swap-item.ts';
import { isTapWater } from '../engine/food/tap-water.ts';
import { contradictions, conversionPath, conversionText } from '../engine/measure/conversions.ts';

/** Published cup weights are rounded: two ways that differ by less say the same. */
const TOLERANCE = new Fraction(1n, 20n);

/** Facts not stated of foods that recipes use, and facts stated in two ways that disagree. */
export function checkIngredients(book: Book): Finding[] {
  const uses = usesByIngredient(book);
  // A list that could not be read may have the price: then prices are not reported.
  const pricesKnown = ![...book.held.keys()].some((key) => key.startsWith('prices/'));
  return [...book.ingredients.values()].flatMap((ingredient) => {
    const [first, ...others] = uses.get(ingredient.id) ?? [];
    const own = disagreeing(book, ingredient);
    if (!first) return own;
    return [
      ...own,
      ...unsaid(book, ingredient),
      ...(pricesKnown ? unpriced(book, ingredient, first) : []),
      ...outOfReach(book, ingredient, [first, ...others]),
    ];
  });
}

function unsaid(book: Book, { id, contains, from }: Ingredient): Finding[] {
  const findings: Finding[] = [];
  if (contains === undefined) {
    const what = `the allergens of “${id}” are not stated, so no offer with it can be issued`;
    const wayOut = 'read its label and write “contains:” with its allergens, or “contains: none”';
    findings.push(findingAt(book, 'allergens-unsaid', `ingredient/${id}`, [], what, wayOut, 'key'));
  }
  if (from === undefined) {
    const what = `what “${id}” comes from is not stated, so no dish with it claims a diet`;
    const wayOut = 'write “from:” with plant, milk, fish and so on';
    findings.push(findingAt(book, 'origin-unsaid', `ingredient/${id}`, [], what, wayOut, 'key'));
  }
  return findings;
}

function unpriced(book: Book, ingredient: Ingredient, { recipe, path }: Use): Finding[] {
  const { id } = ingredient;
  if (book.prices.has(id) || isTapWater(ingredient)) return [];
  const what = `no price list has “${id}”, so costs leave it out`;
  const wayOut = 'add it to a file in prices/';
  return [findingAt(book, 'not-priced', `recipe/${recipe}`, path, what, wayOut, 'key')];
}

function disagreeing(book: Book, { id, conversions }: Ingredient): Finding[] {
  if (!isOwn(book, id)) return [];
  return contradictions(conversions, TOLERANCE).map(({ conversion, route }) => {
    const index = conversions.indexOf(conversion);
    const others = route.map((each) => `“${conversionText(each)}”`).join(' and ');
    const what = `“${conversionText(conversion)}” of ${id} does not match ${others}`;
    const wayOut = 'weigh or measure it again, and keep the one that is right';
    return findingAt(book, 'conversions-disagree', `ingredient/${id}`, ['conversions', index], what, wayOut);
  });
}

/** Packs that some line of the food cannot be turned into are never bought for that line. */
function outOfReach(book: Book, { id, conversions }: Ingredient, uses: readonly Use[]): Finding[] {
  const packUnits = new Set((book.prices.get(id) ?? []).map((pack) => pack.contents.unit));
  return [...packUnits].flatMap((packUnit) => {
    const far = uses.find(({ unit }) => conversionPath(unit, packUnit, conversions) === undefined);
    if (far === undefined) return [];
    const what = `“${id}” is also sold by the ${packUnit}, but there is no conversion from ${far.unit}, so those packs are never bought for this`;
    const wayOut = `add a conversion to ${id}, such as “1 ${far.unit} = … ${packUnit}”`;
    return [findingAt(book, 'pack-not-reached', `recipe/${far.recipe}`, far.path, what, wayOut)];
  });
}

/** Whether the caterer's own files tell of an ingredient; the store-room's figures are checked where they are kept. */
function isOwn(book: Book, id: string): boolean {
  return book.placeOf(`ingredient/${id}`)?.file.startsWith('ingredients/') === true;
}

/** A recipe line that uses an ingredient, or takes it for a need. */
interface Use {
  readonly recipe: string;
  /** Where in the recipe. */
  readonly path: Path;
  readonly unit: string;
}

function usesByIngredient(book: Book): ReadonlyMap<string, readonly Use[]> {
  const uses = new Map<string, Use[]>();
  const add = (item: LineItem, use: Use): void => {
    if (item.kind !== 'ingredient') return;
    const known = uses.get(item.ingredient.id);
    if (known) known.push(use);
    else uses.set(item.ingredient.id, [use]);
  };
  for (const { id: recipe, lines, changes = [] } of book.recipes.values()) {
    for (const [line, { item, amount }] of lines.entries())
      add(item, { recipe, path: ['ingredients', line], unit: amount.unit });
    for (const { item, instead } of changes)
      for (const line of lines)
        if (instead && itemId(line.item) === item)
          add(instead, { recipe, path: ['swap', item], unit: line.amount.unit });
  }
  return uses;
}
