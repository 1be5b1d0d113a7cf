import { isAtPlace, type RecipeLine, type RecipeStep } from '../../../engine/food/recipe.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { durationText } from '../../../engine/measure/duration.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkStep } from './step.ts';
import { linkUses } from './step-uses.ts';

/** The work of a recipe, and its lines with the steps that take them. */
export function linkSteps(
  reading: Reading,
  text: Pick<RecipeText, 'steps' | 'ingredients'>,
  lines: readonly RecipeLine[],
  kitchen: Pick<Kitchen, 'stations' | 'stationSkills' | 'crew'>,
): { readonly steps: RecipeStep[]; readonly lines: RecipeLine[] } {
  const steps = text.steps.map((step, index) => linkStep(reading, ['steps', index], step, kitchen));
  checkPlaces(reading, text.steps, steps);
  checkWaits(reading, steps);
  return { steps: steps.filter((step) => step !== undefined), lines: linkUses(reading, text, lines) };
}

/** Food goes to the place once: nothing is done in the kitchen after it has left. */
function checkPlaces(
  reading: Reading,
  texts: RecipeText['steps'],
  steps: readonly (RecipeStep | undefined)[],
): void {
  const atPlace = steps.findIndex((step) => step !== undefined && isAtPlace(step));
  for (const [index, step] of steps.entries()) {
    if (!step) continue;
    const path = ['steps', index];
    if (step.at === 'place' && step.when.daysBefore > 0) {
      const what = `step ${index + 1} is at the place, but on a day before the event`;
      reading.say('step-place', [...path, 'at'], what, 'write “when: on the day”, or “at: kitchen”');
    }
    if (step.waves && !isAtPlace(step)) {
      const what = `step ${index + 1} has waves, but it is done in the kitchen, where all of it is finished before it leaves`;
      reading.say('step-place', [...path, 'waves'], what, 'write “at: place” in it, or leave “waves” out');
    }
    if (atPlace < 0 || index < atPlace || isAtPlace(step)) continue;
    const stated = step.at !== undefined || steps[atPlace]?.at !== undefined;
    const field = step.at !== undefined ? 'at' : texts[index]?.when === undefined ? 'do' : 'when';
    reading.say(
      stated ? 'step-place' : 'step-order',
      [...path, field],
      `step ${index + 1} is done in the kitchen, but step ${atPlace + 1} before it is done at the place`,
      'write “at: place” in it if it is done there too, or put the steps in the order they are done in',
    );
  }
}

function checkWaits(reading: Reading, steps: readonly (RecipeStep | undefined)[]): void {
  for (const [index, step] of steps.entries()) {
    if (step?.useWithin === undefined) continue;
    const path = ['steps', index, 'use within'];
    const { rest = 0, useWithin } = step;
    if (index === steps.length - 1) {
      const what = `step ${index + 1} has “use within”, which counts to the next step, and it is the last one`;
      const wayOut = `write how long the finished dish may wait as the recipe’s “stands: ${durationText(useWithin)}”`;
      reading.say('step-wait', path, what, wayOut);
    } else if (rest > useWithin) {
      const what = `step ${index + 1} rests for ${durationText(step.rest ?? useWithin)} and has to be used within ${durationText(useWithin)}`;
      reading.say('step-wait', path, what, 'write a shorter “rest”, or a longer “use within”');
    }
  }
}
