import Fraction from 'fraction.js';
import { FEWEST_DRINKS_AN_HOUR, MOST_DRINKS_AN_HOUR } from '../../../engine/alarm-limits.ts';
import type { DrinksTaken } from '../../../engine/drinks/drink.ts';
import { countedPortion, type DrinkPortion } from '../../../engine/drinks/drink-portion.ts';
import { drinksOver, parseDrinkRate } from '../../../engine/drinks/drink-rate.ts';
import type { DrinkShare } from '../../../engine/drinks/drink-shares.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseHours } from '../../../engine/measure/parse-hours.ts';
import type { Course, Dish, Drinks } from '../../../engine/menu/package.ts';
import { plainNumber } from '../../../engine/plan/figure-text.ts';
import type { Counts } from '../../../engine/quote/counts.ts';
import type { DrinksText } from '../../../schema/drinks.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkExtras, linkWater } from './extras.ts';
import { type LinkedKind, linkKinds } from './kinds.ts';
import { portionOf } from './portions.ts';
import { linkShares } from './shares.ts';

/** Where drinks are written: in a package, or in an add-on, which has no hours and is no course. */
export interface DrinksSetting {
  /** The package's hours as written; undefined where it states none. */
  readonly hours: string | undefined;
  /** Whom the package or add-on counts. */
  readonly counts: Counts;
  readonly recipes: ReadonlyMap<string, Recipe>;
  /** Its name where the drinks state none. */
  readonly name: string | undefined;
}

/** Drinks as a course, and what is served with them and on no menu. */
export interface LinkedDrinks {
  readonly course: Course;
  readonly drinks: Drinks;
}

/**
 * The drinks of a package or an add-on: each kind is a dish with its amount for one guest, the drinks that one takes over
 * all hours times the kind's share times the glass, a child's beside it as a share of an adult's.
 */
export function linkDrinks(
  reading: Reading,
  text: DrinksText,
  setting: DrinksSetting,
): LinkedDrinks | undefined {
  const takes = linkTakes(reading, text, setting.hours);
  const kinds = linkKinds(reading, text, setting.recipes);
  const shares = linkShares(reading, text, kinds, setting.counts);
  const name = text.name ?? setting.name;
  if (name === undefined)
    reading.say(
      'missing-field',
      ['drinks'],
      'the drinks have no name',
      'write for example “name: Drinks”',
      'key',
    );
  if (!takes || !shares || name === undefined) return undefined;
  const dishes = kinds.flatMap((kind, index) => {
    const share = shares[index] as DrinkShare;
    return dishOf(
      kind,
      portionOf(kind.drink.glass, takes, share, !kind.drink.alcohol),
      takes,
      setting.counts,
    );
  });
  const extras = linkExtras(reading, text, kinds, shares, takes, setting);
  const water = linkWater(reading, text, takes, shares[kinds.length], setting.counts);
  return {
    course: { name, choose: null, eachGuest: false, dishes: [...dishes, ...extras] },
    drinks: { course: name, ...(water && { water }) },
  };
}

function linkTakes(reading: Reading, text: DrinksText, usual: string | undefined): DrinksTaken | undefined {
  const written = text.hours ?? usual;
  if (written === undefined)
    reading.say(
      'drinks-no-hours',
      ['drinks'],
      'how long drinks are served is not stated',
      'write for example “hours: 4 hours” under “drinks”',
      'key',
    );
  // A slip in the package's own hours has its finding already.
  const read = written === undefined ? undefined : parseHours(written);
  const hours = read?.ok ? read.value : undefined;
  if (text.hours !== undefined) reading.understand(['drinks', 'hours'], text.hours, parseHours);
  const guest = reading.understand(['drinks', 'per guest'], text['per guest'], parseDrinkRate);
  const child =
    text['per child'] === undefined
      ? guest
      : reading.understand(['drinks', 'per child'], text['per child'], parseDrinkRate);
  if (hours === undefined || !guest || !child) return undefined;
  const served = new Fraction(hours);
  const adult = drinksOver(guest, served);
  tellFarOff(reading, adult.div(served));
  return { adult, child: drinksOver(child, served) };
}

/** No crowd's figure is a law: a look is asked for where no crowd drinks like that. */
function tellFarOff(reading: Reading, anHour: Fraction): void {
  if (anHour.lte(MOST_DRINKS_AN_HOUR) && anHour.gte(FEWEST_DRINKS_AN_HOUR)) return;
  reading.say(
    'drinks-beyond-sense',
    ['drinks', 'per guest'],
    `each guest takes ${plainNumber(anHour)} drinks an hour; crowds take between ${plainNumber(FEWEST_DRINKS_AN_HOUR)} and ${plainNumber(MOST_DRINKS_AN_HOUR)}`,
    'check the amounts and the hours, such as “2 in the first hour, then 1 per hour”',
  );
}

/** A drink's helpings follow from its share and its glass. */
const NO_APPETITE = { appetite: undefined, firstChoice: undefined, helping: undefined, costs: undefined };

function dishOf(
  { recipe, drink, overage, shortOneIn }: LinkedKind,
  portion: DrinkPortion,
  taken: DrinksTaken,
  counts: Counts,
): Dish[] {
  const counted = countedPortion(portion, counts);
  if (!counted) return [];
  const risk = shortOneIn === undefined ? {} : { takeRate: { ...NO_APPETITE, shortOneIn } };
  return [{ recipe, ...counted, overage, role: 'drink', drink: { ...drink, taken }, ...risk }];
}
