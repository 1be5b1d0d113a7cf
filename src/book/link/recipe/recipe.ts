import { parseCardWord } from '../../../engine/food/parse-card-word.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseStepText } from '../../../engine/food/step-text.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { parseKeeps } from '../../../engine/kitchen/parse-keeps.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkPackRules } from '../prices/pack-rules.ts';
import { linkChill } from './chill.ts';
import { linkRecipeBeside } from './recipe-beside.ts';
import { linkRecipeChanges } from './recipe-changes.ts';
import { type Larder, linkRecipeLine } from './recipe-line.ts';
import { linkWait } from './step.ts';
import { linkSteps } from './steps.ts';

/** Recipes nested deeper than this in each other are refused: whatever walks them need not fear for its stack. */
export const DEEPEST = 30;

/** A recipe with its parts, all of which are linked already. */
export function linkRecipe(
  reading: Reading,
  id: string,
  text: RecipeText,
  larder: Larder,
  kitchen: Pick<Kitchen, 'stations' | 'stationSkills' | 'containers' | 'crew'>,
): Recipe | undefined {
  const makes = text.makes.flatMap((words, index) => {
    const read = reading.understand(['makes', index], words, parseQuantity);
    return read ? [read] : [];
  });
  const written = Object.entries(text.ingredients).flatMap(([key, line]) => {
    const linked = linkRecipeLine(reading, key, line, larder);
    return linked ? [linked] : [];
  });
  if (Object.keys(text.ingredients).length === 0) {
    reading.say(
      'no-value',
      ['ingredients'],
      '“ingredients” is empty',
      'write at least one line, such as potato, peeled: 14 lb',
    );
  }
  const { steps, lines } = linkSteps(reading, text, written, kitchen);
  const changes = linkRecipeChanges(reading, text, lines, larder);
  const beside = text['served with'] && linkRecipeBeside(reading, text['served with'], lines);
  const stands = linkWait(reading, ['stands'], text.stands);
  const chill = text.chill && linkChill(reading, text.chill);
  if (text.finish !== undefined) reading.understand(['finish'], text.finish, parseStepText);
  const keepsDays =
    text.keeps === undefined ? undefined : reading.understand(['keeps'], text.keeps, parseKeeps);
  const card = text.card === undefined ? undefined : reading.understand(['card'], text.card, parseCardWord);
  const pack = linkPackRules(reading, text.pack, kitchen.containers);
  const [batch, ...others] = makes;
  return (
    batch && {
      id,
      name: text.name,
      card,
      makes: [batch, ...others],
      batches: text.batches ?? 'exact',
      lines,
      changes,
      ...(beside && { beside }),
      steps,
      keepsDays,
      hold: text.hold,
      ...(stands !== undefined && { stands }),
      ...chill,
      reheat: text.reheat === 'yes',
      pack,
      finish: text.finish,
      containsRaw: text['contains raw'] === 'yes',
      cookedAs: text['cooked as'],
      ...(text.role && { role: text.role }),
      temperatureControl: text['temperature control'] !== 'no',
    }
  );
}
