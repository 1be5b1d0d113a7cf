import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { finishedFoodConversions } from '../engine/food/finished-food.ts';
import { type Eaten, type EatenEstimate, eatenEstimate } from '../engine/learning/eaten.ts';
import { convert } from '../engine/measure/conversions.ts';
import type { ServiceStyle } from '../engine/menu/package.ts';
import { type DishAtEvent, dishesSoFar } from './dishes-so-far.ts';

/** How sure the interval of a mean is. */
export const EATEN_CONFIDENCE = 0.9;

/** Months of a season, from one to another, both in it; `{ from: 11, to: 2 }` goes over the turn of the year. */
export interface Season {
  readonly from: number;
  readonly to: number;
}

/** Which events speak for a dish: those before a day, those of a season; all where neither is said. */
export interface SoFar {
  readonly before?: Day;
  readonly season?: Season | undefined;
}

/** What all events so far tell of one dish, served one way. */
export interface EatenDish {
  readonly recipe: string;
  /** As the last menu called it. */
  readonly name: string;
  readonly style: ServiceStyle;
  /** The unit of the figures below, each for one guest who came. */
  readonly unit: string;
  readonly events: readonly DishAtEvent[];
  readonly estimate: EatenEstimate;
}

/** What earlier events tell of a dish served one way; undefined where none tells anything. */
export function eatenOf(
  book: Book,
  recipe: string,
  style: ServiceStyle,
  { before, season }: SoFar = {},
): EatenDish | undefined {
  const events = dishesOf(book).get(`${recipe} ${style}`) ?? [];
  return eatenAt(
    book,
    events.filter(
      ({ date }) => (before === undefined || date < before) && (season === undefined || isIn(date, season)),
    ),
  );
}

/** Every dish that something is known of, by the way it was served, in the order it was first served. */
export function eatenSoFar(book: Book, soFar: SoFar = {}): EatenDish[] {
  return [...dishesOf(book).values()].flatMap(([first]) => {
    const eaten = first && eatenOf(book, first.dish.recipe, first.style, soFar);
    return eaten ? [eaten] : [];
  });
}

/** Whether a day falls in a season. */
export function isIn(date: Day, { from, to }: Season): boolean {
  const month = Number(date.slice(5, 7));
  return from <= to ? month >= from && month <= to : month >= from || month <= to;
}

const GROUPED = new WeakMap<Book, Map<string, DishAtEvent[]>>();

function dishesOf(book: Book): Map<string, DishAtEvent[]> {
  const grouped =
    GROUPED.get(book) ?? Map.groupBy(dishesSoFar(book), ({ dish, style }) => `${dish.recipe} ${style}`);
  GROUPED.set(book, grouped);
  return grouped;
}

/** Events at which it was carried in a unit that its recipe no longer leads from are left out. */
function eatenAt(book: Book, all: readonly DishAtEvent[]): EatenDish | undefined {
  const last = all.at(-1);
  if (!last) return undefined;
  const { unit } = last.amounts.carried;
  const recipe = book.recipes.get(last.dish.recipe);
  const conversions = recipe ? finishedFoodConversions(recipe) : [];
  const told = all.flatMap((at) => {
    const { eaten, came, back } = at.amounts;
    const amount = came.n === 0n ? undefined : convert(eaten, unit, conversions)?.amount;
    if (!amount) return [];
    // Where nothing came back, more might have been eaten, whether anybody asked for it or not.
    const ranOut = at.dish.ranOut === true || back.amount.n === 0n;
    const each: Eaten = { perGuest: amount.div(came).valueOf(), ranOut };
    return [{ at, each }];
  });
  if (told.length === 0) return undefined;
  return {
    recipe: last.dish.recipe,
    name: last.dish.name,
    style: last.style,
    unit,
    events: told.map(({ at }) => at),
    estimate: eatenEstimate(
      told.map(({ each }) => each),
      EATEN_CONFIDENCE,
    ),
  };
}
