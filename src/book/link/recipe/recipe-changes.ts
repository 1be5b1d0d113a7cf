import { NEED_WORDS, parseNeed } from '../../../engine/food/need.ts';
import type { RecipeChange, RecipeLine } from '../../../engine/food/recipe.ts';
import { itemId } from '../../../engine/food/swap-item.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import type { Path } from '../../files/place-of.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';
import { checkUnit, type Larder, lineItem } from './recipe-line.ts';

/** One way of swapping an item: what is taken instead, and for which needs. */
export interface SwapText {
  readonly instead: string;
  readonly needs: readonly string[];
}

/** Splits `corn-bread for no gluten, wheat; rice for celery` into its parts; undefined where it has another form. */
export function readSwaps(text: string): SwapText[] | undefined {
  const swaps = text.split(';').map((each) => {
    const [, instead, needs] = /^\s*(\S+)\s+for\s+(.+)$/.exec(each) ?? [];
    return instead === undefined || needs === undefined ? undefined : { instead, needs: wordsOf(needs) };
  });
  return swaps.some((each) => each === undefined) ? undefined : (swaps as SwapText[]);
}

/**
 * What may be left out or swapped in a recipe, its swaps first: a dish with something else instead is nearer to
 * what was ordered. An item that no line calls for, a need or food nobody knows, and a swap in a unit that leads
 * nowhere are findings. Whether a change really helps is told by the whole Book.
 */
export function linkRecipeChanges(
  reading: Reading,
  text: Pick<RecipeText, 'swap' | 'without' | 'ingredients'>,
  lines: readonly RecipeLine[],
  larder: Larder,
): RecipeChange[] {
  return [...linkSwaps(reading, text, lines, larder), ...linkLeftOut(reading, text, lines)];
}

function linkSwaps(
  reading: Reading,
  text: Pick<RecipeText, 'swap' | 'ingredients'>,
  lines: readonly RecipeLine[],
  larder: Larder,
): RecipeChange[] {
  return Object.entries(text.swap ?? {}).flatMap(([item, words]) => {
    const path = ['swap', item];
    const swapped = linesOf(reading, path, item, lines, text.ingredients);
    const swaps = readSwaps(words);
    if (!swaps) {
      const what = `“${words}” does not name the substitute and the need it is for`;
      reading.say('not-understood', path, what, 'write it as corn-bread for no gluten');
    }
    return (swaps ?? []).flatMap((swap) => {
      const instead = lineItem(reading, path, swap.instead, larder, 'value');
      const needs = linkNeeds(reading, path, swap.needs);
      if (!instead) return [];
      for (const { amount } of swapped) checkUnit(reading, path, amount, instead, larder.prices);
      return [{ item, instead, needs }];
    });
  });
}

function linkLeftOut(
  reading: Reading,
  text: Pick<RecipeText, 'without' | 'ingredients'>,
  lines: readonly RecipeLine[],
): RecipeChange[] {
  return Object.entries(text.without ?? {}).map(([item, words]) => {
    const path = ['without', item];
    linesOf(reading, path, item, lines, text.ingredients);
    return { item, instead: undefined, needs: linkNeeds(reading, path, wordsOf(words)) };
  });
}

/** The lines that call for an item; none is a finding, unless its line has one of its own. */
function linesOf(
  reading: Reading,
  path: Path,
  item: string,
  lines: readonly RecipeLine[],
  written: RecipeText['ingredients'],
): RecipeLine[] {
  const found = lines.filter((line) => itemId(line.item) === item);
  if (found.length > 0 || lines.length < Object.keys(written).length) return found;
  const known = lines.map((line) => itemId(line.item));
  const wayOut =
    suggestion(reading.ledger, item, known) ?? 'write the id of an ingredient or recipe from its lines';
  reading.say('unknown-id', path, `no line of this recipe uses “${item}”`, wayOut, 'key');
  return found;
}

/** Needs as written, each told of where Salver does not know it. */
export function linkNeeds(reading: Reading, path: Path, words: readonly string[]): string[] {
  return words.flatMap((word) => {
    const need = parseNeed(word);
    if (need.ok) return [word];
    const near = suggestion(reading.ledger, word, NEED_WORDS);
    reading.say('not-understood', path, need.what, near ?? need.wayOut);
    return [];
  });
}

/** The words of a list with commas, as needs are compared: lower case, one space. */
export function wordsOf(text: string): string[] {
  return text.split(',').flatMap((word) => {
    const need = word.trim().toLowerCase().replace(/\s+/g, ' ');
    return need === '' ? [] : [need];
  });
}
