import type { Recipe } from '../food/recipe.ts';
import { citation, DEFERRAL, rungMet, rungText } from './limit.ts';
import { rawFoodIn } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** Food that is kept hotter, longer or warmer than it was made for: hot plants, cold food, food at room temperature. */
export function holdingFindings(recipe: Recipe, setting: SafetySetting): SafetyFinding[] {
  if (recipe.temperatureControl === false) return [];
  return [...hotPlantFood(recipe, setting), ...keptTooLong(recipe, setting), ...roomTooLong(recipe, setting)];
}

function hotPlantFood(recipe: Recipe, { rules, scale }: SafetySetting): SafetyFinding[] {
  const limit = rules.limits['plant food held hot'];
  const { steps, hold } = recipe;
  if (hold !== 'hot' || rawFoodIn(recipe).length > 0) return [];
  if (steps.some(({ cookTo }) => cookTo && rungMet(limit, cookTo))) return [];
  const asked = rungText(limit.rungs[0], scale);
  return [
    {
      code: 'hot-plant-food-low',
      at: ['hold'],
      what: `is held hot, but no step brings it to ${asked}, as ${citation(rules, 'plant food held hot')} requires`,
      wayOut: `write “cook to: ${asked}” or more in the step that heats it, or “temperature control: no” if it is safe without; ${DEFERRAL}`,
    },
  ];
}

function keptTooLong(recipe: Recipe, { rules }: SafetySetting): SafetyFinding[] {
  const { hold, keepsDays } = recipe;
  const { days } = rules.limits['date mark'];
  if (hold !== 'cold' && hold !== 'hot') return [];
  if (keepsDays === undefined || keepsDays <= days) return [];
  return [
    {
      code: 'keeps-too-long',
      at: ['keeps'],
      what: `keeps ${keepsDays} days cold, but ${citation(rules, 'date mark')} allows ${days}, counting the day it is made, for ready-to-eat food that must be kept cold`,
      wayOut: `write ${days} days or fewer, freeze it, or write “temperature control: no” if it does not have to be kept cold; ${DEFERRAL}`,
    },
  ];
}

function roomTooLong(recipe: Recipe, { rules }: SafetySetting): SafetyFinding[] {
  const { hold, keepsDays } = recipe;
  if (hold !== 'room' || keepsDays === undefined) return [];
  const hours = rules.limits['time without control'].within / 60;
  return [
    {
      code: 'room-too-long',
      at: ['hold'],
      what: `keeps ${keepsDays} ${keepsDays === 1 ? 'day' : 'days'} at room temperature, but ${citation(rules, 'time without control')} allows ${hours} h for food that must be kept hot or cold`,
      wayOut: `write “temperature control: no” if it is safe without, like bread or dry spices, or hold it cold or hot; ${DEFERRAL}`,
    },
  ];
}
