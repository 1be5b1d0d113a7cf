import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { ServiceStyle } from '../../engine/course/service-style.ts';
import { finishedFoodConversions } from '../../engine/food/finished-food.ts';
import { type Eaten, type EatenEstimate, eatenEstimate } from '../../engine/learning/eaten.ts';
import { convert } from '../../engine/measure/conversions.ts';
import { type DishAtEvent, dishesSoFar } from './dishes-so-far.ts';

/** How sure the interval of a mean is. */
export const EATEN_CONFIDENCE = 0.9;

/** Months of a season, from one to another, both in it; `{ from: 11, to: 2 }` goes over the turn of the year. */
export interface Season {
  readonly from: number;
  readonly to: number;
}

/** Which events speak for a dish: those before a day, those of a season; all where neither is given. */
export interface SoFar {
  readonly before?: Day;
  readonly season?: Season | undefined;
}

/** A dish in its place: how much is eaten of it depends on how it is served and on what stands beside it. */
export interface DishPlace {
  readonly recipe: string;
  readonly style: ServiceStyle;
  readonly packageId: string;
  /** A course of the package, or the add-on that it came with. */
  readonly course: string;
}

/** What all events so far tell of one dish, served one way from one menu. */
export interface EatenDish extends DishPlace {
  /** As the last menu called it. */
  readonly name: string;
  /** The unit of the figures below, each for one guest who came. */
  readonly unit: string;
  readonly events: readonly DishAtEvent[];
  readonly estimate: EatenEstimate;
}

/** What earlier events tell of a dish in its place; undefined where none tells anything. */
export function eatenOf(book: Book, place: DishPlace, { before, season }: SoFar = {}): EatenDish | undefined {
  const events = dishesOf(book).get(keyOf(place)) ?? [];
  return eatenAt(
    book,
    events.filter(
      ({ date }) => (before === undefined || date < before) && (season === undefined || isIn(date, season)),
    ),
  );
}

/** Every dish in every place that something is known of, in the order it was first served. */
export function eatenSoFar(book: Book, soFar: SoFar = {}): EatenDish[] {
  return [...dishesOf(book).values()].flatMap(([first]) => {
    const eaten = first && eatenOf(book, placeOf(first), soFar);
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
  const grouped = GROUPED.get(book) ?? Map.groupBy(dishesSoFar(book), (at) => keyOf(placeOf(at)));
  GROUPED.set(book, grouped);
  return grouped;
}

function placeOf({ dish: { recipe, course }, style, packageId }: DishAtEvent): DishPlace {
  return { recipe, style, packageId, course };
}

function keyOf({ recipe, style, packageId, course }: DishPlace): string {
  return JSON.stringify([recipe, style, packageId, course]);
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
    ...placeOf(last),
    name: last.dish.name,
    unit,
    events: told.map(({ at }) => at),
    estimate: eatenEstimate(
      told.map(({ each }) => each),
      EATEN_CONFIDENCE,
    ),
  };
}
