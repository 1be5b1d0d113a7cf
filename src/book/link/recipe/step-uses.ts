import type { RecipeLine } from '../../../engine/food/recipe.ts';
import { itemId, itemName } from '../../../engine/food/swap-item.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';
import { preparationWords } from './line-key.ts';

/**
 * The lines with the steps that take them, as `uses` names them: by the line’s id, by its whole key, or by words of its
 * id that no other line has (`goat cheese` of `fresh-goat-cheese`). A name that is no line’s, or leaves open which it
 * is, is an error; a line that no step names is told, and goes into the first step. Where no step has `uses`, the lines
 * stay as they are.
 */
export function linkUses(
  reading: Reading,
  text: Pick<RecipeText, 'steps' | 'ingredients'>,
  lines: readonly RecipeLine[],
): RecipeLine[] {
  if (text.steps.every(({ uses }) => uses === undefined)) return [...lines];
  const taken = new Map<RecipeLine, number[]>();
  let clear = true;
  for (const [index, { uses = [] }] of text.steps.entries()) {
    for (const [at, name] of uses.entries()) {
      const named = linesNamed(reading, ['steps', index, 'uses', at], name, lines, text.ingredients);
      clear &&= named.length > 0;
      for (const line of named) {
        const steps = taken.get(line) ?? [];
        if (!steps.includes(index)) taken.set(line, [...steps, index]);
      }
    }
  }
  for (const line of lines) {
    // A name that is no line's may be meant for this one.
    if (!clear || taken.has(line)) continue;
    const key = Object.keys(text.ingredients).find((each) => isCalled(line, each));
    const what = `some steps state what they use, but none uses “${key ?? itemId(line.item)}”, so it is taken for the first step`;
    reading.say(
      'line-not-used',
      ['ingredients', key ?? ''],
      what,
      'name it in the “uses” of the step that takes it',
      'key',
    );
  }
  return lines.map((line) => ({ ...line, steps: taken.get(line) ?? [0] }));
}

function linesNamed(
  reading: Reading,
  path: readonly (string | number)[],
  name: string,
  lines: readonly RecipeLine[],
  written: RecipeText['ingredients'],
): readonly RecipeLine[] {
  const exact = lines.filter((line) => isCalled(line, name));
  if (exact.length > 0) return exact;
  const wanted = wordsIn(name);
  const near = lines.filter((line) => {
    const has = wordsIn(itemId(line.item));
    return wanted.length > 0 && wanted.every((word) => has.includes(word));
  });
  const ids = [...new Set(near.map(({ item }) => itemId(item)))];
  if (ids.length === 1) return near;
  // A line that cannot be read has a finding of its own, and may be the one that is meant.
  if (lines.length < Object.keys(written).length) {
    reading.spoil(`a line of the recipe can’t be read (${reading.placeOf(path).file})`);
    return [];
  }
  const known = lines.map(({ item }) => itemId(item));
  if (ids.length > 1) {
    const what = `“${name}” could be ${ids.join(' or ')}`;
    reading.say('not-understood', path, what, 'write which of them this step takes');
  } else {
    const what = `no line of this recipe is called “${name}”`;
    const near = suggestion(reading.ledger, name, known);
    reading.say('unknown-id', path, what, near ?? 'write the name of one of its lines, or add the line');
  }
  return [];
}

/** Whether a line is meant by its id, its food’s name, or its whole key with the preparation. */
function isCalled({ item, preparation, asPurchased }: RecipeLine, name: string): boolean {
  const words = preparationWords(name);
  const id = itemId(item);
  if (words === id || words.replaceAll(' ', '-') === id || words === preparationWords(itemName(item)))
    return true;
  const [first = '', ...rest] = words.split(',').map((part) => part.trim());
  const prepared = [
    ...(preparation === null ? [] : preparation.split(', ')),
    ...(asPurchased ? ['as purchased'] : []),
  ];
  return first === id && rest.length > 0 && rest.slice().sort().join() === prepared.sort().join();
}

function wordsIn(name: string): string[] {
  return preparationWords(name)
    .split(/[ -]/)
    .filter((word) => word !== '');
}
