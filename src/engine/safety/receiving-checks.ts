import type { Ingredient } from '../food/ingredient.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { limitTemperatureText, type SafetyRules } from './limit.ts';
import { isRawAnimalFood } from './raw-food.ts';
import { type SafetyCheck, sectionsOf } from './safety-check.ts';

/** Food that comes with one delivery. */
export interface Delivery {
  readonly supplierName: string;
  readonly foods: readonly Ingredient[];
}

const BLANKS = ['reading', 'time', 'initials'];

/** Frozen food has to arrive frozen, and shellfish keep the tags of their harvest (FDA Food Code; the latter memory). */
const FROZEN_SECTION = '3-202.11(E)';
const TAGS_SECTION = '3-203.12';

/** What to measure when food is delivered: chilled food, raw eggs, frozen food, and the tags of live shellfish. */
export function receivingChecks(
  deliveries: readonly Delivery[],
  rules: SafetyRules,
  scale: TemperatureScale,
): SafetyCheck[] {
  const { receiving, 'receiving eggs': eggs } = rules.limits;
  return deliveries.flatMap(({ supplierName, foods }) => {
    const check = (of: readonly Ingredient[], limit: string, section: string, blanks = BLANKS) =>
      of.length === 0
        ? []
        : [
            {
              stage: 'receiving' as const,
              when: undefined,
              recipe: '',
              what: `${supplierName}: ${of.map(({ name }) => name).join('; ')}`,
              limit,
              section,
              blanks,
            },
          ];
    return [
      ...check(
        foods.filter((food) => arrives(food) === 'chilled'),
        `${limitTemperatureText(receiving.temperature, scale)} or below`,
        sectionsOf(rules, 'receiving'),
      ),
      ...check(
        foods.filter((food) => arrives(food) === 'eggs'),
        `air of ${limitTemperatureText(eggs.temperature, scale)} or below`,
        sectionsOf(rules, 'receiving eggs'),
      ),
      ...check(
        foods.filter((food) => arrives(food) === 'frozen'),
        'frozen solid, no sign of thawing',
        FROZEN_SECTION,
      ),
      ...check(
        foods.filter(isShellstock),
        'tag on each container, kept with the day it was served',
        TAGS_SECTION,
        ['number of the tag', 'kept until', 'initials'],
      ),
    ];
  });
}

function arrives(food: Ingredient): 'chilled' | 'eggs' | 'frozen' | undefined {
  if (food.storage === 'frozen') return 'frozen';
  if (isRawAnimalFood(food) && food.from?.every((origin) => origin === 'egg')) return 'eggs';
  if (isRawAnimalFood(food)) return 'chilled';
  const { storage } = food;
  const mustStayCold =
    storage === 'chilled' ? !isWholeProduce(food) : storage === undefined && isOfAnimals(food);
  return mustStayCold ? 'chilled' : undefined;
}

/**
 * Whole produce is chilled to stay crisp, not to be safe; what is made of several things, of animals, or of what nobody
 * has stated, is taken to need it.
 */
function isWholeProduce({ from, parts }: Ingredient): boolean {
  return (
    parts === undefined &&
    from !== undefined &&
    from.every((origin) => origin === 'plant' || origin === 'fungus')
  );
}

/** Milk, and animal food that is ready to eat or not: where nobody states how it is kept, it is taken to need the cold. */
function isOfAnimals(food: Ingredient): boolean {
  return food.from?.includes('milk') === true || isRawAnimalFood({ ...food, soldAs: undefined });
}

function isShellstock(food: Ingredient): boolean {
  return isRawAnimalFood(food) && food.from?.includes('mollusc') === true && food.storage !== 'frozen';
}
