import type { Ingredient } from '../food/ingredient.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { type Said, statement } from '../text/statement.ts';
import type { SafetyRules } from './limit.ts';
import { limitTemperatureText } from './limit-said.ts';
import { isRawAnimalFood } from './raw-food.ts';
import { INITIALS, READING, type SafetyCheck, sectionsOf, TIME } from './safety-check.ts';

/** Food that comes with one delivery. */
export interface Delivery {
  readonly supplierName: string;
  readonly foods: readonly Ingredient[];
}

const BLANKS: readonly Said[] = [READING, TIME, INITIALS];

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
    const check = (of: readonly Ingredient[], limit: Said, section: string, blanks = BLANKS) =>
      of.length === 0
        ? []
        : [
            {
              stage: 'receiving' as const,
              when: undefined,
              recipe: '',
              what: statement('safety.delivery', {
                supplier: supplierName,
                foods: of.map(({ name }) => name).join('; '),
              }),
              limit,
              section,
              blanks,
            },
          ];
    return [
      ...check(
        foods.filter((food) => arrives(food) === 'chilled'),
        statement('safety.or-below', { temperature: limitTemperatureText(receiving.temperature, scale) }),
        sectionsOf(rules, 'receiving'),
      ),
      ...check(
        foods.filter((food) => arrives(food) === 'eggs'),
        statement('safety.delivery.eggs', { temperature: limitTemperatureText(eggs.temperature, scale) }),
        sectionsOf(rules, 'receiving eggs'),
      ),
      ...check(
        foods.filter((food) => arrives(food) === 'frozen'),
        statement('safety.delivery.frozen'),
        FROZEN_SECTION,
      ),
      ...check(foods.filter(isShellstock), statement('safety.delivery.tags'), TAGS_SECTION, [
        statement('safety.blank.tag'),
        statement('safety.blank.kept-until'),
        INITIALS,
      ]),
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
