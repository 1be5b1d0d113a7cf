import Fraction from 'fraction.js';
import { convertFinishedFood } from '../../../engine/food/finished-food.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import { parsePerGuest } from '../../../engine/measure/per-guest.ts';
import type { Dish } from '../../../engine/menu/package.ts';
import { looksLikeRisk } from '../../../engine/odds/risk.ts';
import { type Counts, parseCounts } from '../../../engine/quote/counts.ts';
import type { DishText } from '../../../schema/dish.ts';
import { MOST_DISHES } from '../../../schema/terms.ts';
import type { Path } from '../../files/place-of.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';
import { linkInsteadOf } from './instead-of.ts';
import { linkTakeRate } from './take-rate.ts';

/** The dishes of a course or an add-on, each under its recipe's id; those with an error are left out. */
export function linkDishes(
  reading: Reading,
  path: Path,
  texts: Readonly<Record<string, DishText>>,
  counts: Counts,
  recipes: ReadonlyMap<string, Recipe>,
  currency: string,
): Dish[] {
  const count = Object.keys(texts).length;
  if (count > MOST_DISHES) {
    const what = `${count} dishes are listed together, but an offer can have at most ${MOST_DISHES} in one course or add-on`;
    reading.say('too-long', path, what, 'move some of them to another course or add-on');
  }
  return Object.entries(texts).flatMap(([id, text]) => {
    const dish = linkDish(reading, [...path, id], id, text, counts, recipes, currency);
    return dish ? [dish] : [];
  });
}

function linkDish(
  reading: Reading,
  path: Path,
  id: string,
  text: DishText,
  defaultCounts: Counts,
  recipes: ReadonlyMap<string, Recipe>,
  currency: string,
): Dish | undefined {
  const perGuest = reading.understand([...path, 'amount'], text.amount, parsePerGuest);
  const overage =
    text.overage === undefined || looksLikeRisk(text.overage)
      ? undefined
      : reading.understand([...path, 'overage'], text.overage, parseShare);
  const counts =
    text.counts === undefined
      ? defaultCounts
      : reading.understand([...path, 'counts'], text.counts, parseCounts);
  const insteadOf = linkInsteadOf(reading, path, text);
  const others = linkOthers(reading, path, text) ?? (insteadOf && new Fraction(0n));
  const recipe = lookUp(reading, 'recipe', id, recipes, path, 'key');
  if (!perGuest || !counts || !recipe) return undefined;
  if (!convertFinishedFood(recipe, perGuest.amount, recipe.makes[0].unit)) {
    const units = [...new Set(recipe.makes.map((each) => each.unit))].join(', ');
    const what = `“${id}” is served by the ${perGuest.amount.unit}, but its recipe makes ${units}`;
    const wayOut = `write the amount in ${units}, or add to the recipe’s “makes” what a batch is in ${perGuest.amount.unit}`;
    reading.say('unit-not-made', [...path, 'amount'], what, wayOut);
  }
  const takeRate = linkTakeRate(reading, path, text, recipe, perGuest, currency);
  return {
    recipe,
    perGuest,
    overage,
    counts,
    ...(text.role && { role: text.role }),
    ...(others === undefined ? {} : { others }),
    ...(insteadOf && { insteadOf }),
    ...onlyForEaters(text['cooked for']),
    ...(takeRate === undefined ? {} : { takeRate }),
  };
}

/** For whom food is cooked, as a kitchen, a package and a dish each may say it. */
export function onlyForEaters(text: DishText['cooked for']): Pick<Dish, 'onlyForEaters'> {
  return text === undefined ? {} : { onlyForEaters: text === 'those who can eat it' };
}

function linkOthers(reading: Reading, path: Path, text: DishText): Dish['others'] {
  const { others } = text;
  const heldBack = text['held back'] === 'yes';
  if (others === undefined) return heldBack ? new Fraction(0n) : undefined;
  if (heldBack) {
    const what = 'the dish is held back, but other guests are planned to take it';
    reading.say('not-understood', [...path, 'others'], what, 'keep one of the two');
  }
  return reading.understand([...path, 'others'], others, parseShare);
}
