import type { Recipe } from '../food/recipe.ts';
import { statement } from '../text/statement.ts';
import { rungMet, rungText } from './limit.ts';
import { citation, DEFERS, rungSaid } from './limit-said.ts';
import { rawFoodIn } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** Food that is kept hotter, longer or warmer than it was made for: hot plants, cold food, food at room temperature. */
export function holdingFindings(recipe: Recipe, setting: SafetySetting): SafetyFinding[] {
  if (recipe.temperatureControl === false) return [];
  return [...hotPlantFood(recipe, setting), ...keptTooLong(recipe, setting), ...roomTooLong(recipe, setting)];
}

function hotPlantFood(recipe: Recipe, { rules, scale, called }: SafetySetting): SafetyFinding[] {
  const limit = rules.limits['plant food held hot'];
  const { steps, hold } = recipe;
  if (hold !== 'hot' || rawFoodIn(recipe).length > 0) return [];
  if (steps.some(({ cookTo }) => cookTo && rungMet(limit, cookTo))) return [];
  const [rung] = limit.rungs;
  return [
    {
      code: 'hot-plant-food-low',
      at: ['hold'],
      what: statement('safety.hot-plant-food-low', {
        recipe: called,
        asked: rungSaid(rung, scale),
        source: citation(rules, 'plant food held hot'),
      }),
      wayOut: statement('safety.hot-plant-food-low.way', { write: rungText(rung, scale), defers: DEFERS }),
    },
  ];
}

function keptTooLong(recipe: Recipe, { rules, called }: SafetySetting): SafetyFinding[] {
  const { hold, keepsDays } = recipe;
  const { days } = rules.limits['date mark'];
  if (hold !== 'cold' && hold !== 'hot') return [];
  if (keepsDays === undefined || keepsDays <= days) return [];
  return [
    {
      code: 'keeps-too-long',
      at: ['keeps'],
      what: statement('safety.keeps-too-long', {
        recipe: called,
        n: `${keepsDays}`,
        source: citation(rules, 'date mark'),
        days: `${days}`,
      }),
      wayOut: statement('safety.keeps-too-long.way', { days: `${days}`, defers: DEFERS }),
    },
  ];
}

function roomTooLong(recipe: Recipe, { rules, called }: SafetySetting): SafetyFinding[] {
  const { hold, keepsDays } = recipe;
  if (hold !== 'room' || keepsDays === undefined) return [];
  const hours = rules.limits['time without control'].within / 60;
  return [
    {
      code: 'room-too-long',
      at: ['hold'],
      what: statement('safety.room-too-long', {
        recipe: called,
        n: keepsDays,
        source: citation(rules, 'time without control'),
        hours: `${hours}`,
      }),
      wayOut: statement('safety.room-too-long.way', { defers: DEFERS }),
    },
  ];
}
