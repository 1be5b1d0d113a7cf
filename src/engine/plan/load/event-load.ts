import Fraction from 'fraction.js';
import type { Container } from '../../kitchen/container.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';
import { degreesIn } from '../../measure/temperature.ts';
import type { ServedOn } from '../clock/day-clock.ts';
import type { EventPlan } from '../event-plan.ts';
import { goesInAt, iceFor, stillAt, USUAL_HOT, USUAL_OUTSIDE } from './carrier-heat.ts';
import {
  type CarriedFood,
  type LoadedCarrier,
  type Loading,
  loadCarriers,
  type TimedFood,
} from './carriers.ts';
import { foodGrams } from './food-weight.ts';
import { neededAt, type PackedFood, packedFood } from './packed-food.ts';

/** A loaded carrier, what it weighs and how it keeps its food. */
export interface WeighedCarrier extends LoadedCarrier {
  /** The food in it, in grams, as far as it is known. */
  readonly foodGrams: Fraction;
  /** Food whose weight nothing tells, by name. */
  readonly unweighed: readonly string[];
  /** Carrier, containers, food and ice, in grams; undefined where any of them is not known. */
  readonly grams: Fraction | undefined;
  /** Ice for cold food; undefined for other food, and where it is no warmer outside than ice. */
  readonly ice: CarrierIce | undefined;
  /** How warm hot food still is when the last of it is needed; undefined for other food, and where its weight is not known. */
  readonly warmth: CarrierWarmth | undefined;
}

export interface CarrierIce {
  /** Exact, with what is to spare. */
  readonly grams: Fraction;
  /** Whole packs of the carrier’s own; undefined where loose ice goes in. */
  readonly packs: number | undefined;
  readonly hours: Fraction;
}

export interface CarrierWarmth {
  /** Degrees Celsius, exact, when the last of it is needed. */
  readonly after: Fraction;
  readonly hours: Fraction;
  /** True: no colder than hot food is held. */
  readonly enough: boolean;
  /** How hot it must go in for that, in degrees Celsius; undefined where nothing short of boiling is enough. */
  readonly goesInAt: Fraction | undefined;
}

/** What of an event goes on the van, how it is packed, and how it keeps. */
export interface EventLoad {
  readonly foods: readonly PackedFood[];
  /** Undefined where the kitchen states no carriers, or the event is not on the clock. */
  readonly loading:
    | (Omit<Loading, 'carriers'> & {
        readonly carriers: readonly WeighedCarrier[];
        /** Cold food in what goes without a carrier, so that no ice is planned for it, where it is warmer outside than cold food is held. */
        readonly uniced: readonly TimedFood[];
      })
    | undefined;
  /** Degrees Celsius around the carriers, and whether the proposal states it. */
  readonly outside: { readonly degrees: Fraction; readonly stated: boolean };
}

/** Works out an event’s load: its food in containers, those in carriers, and for each what it weighs and how it keeps. */
export function eventLoad(
  plan: EventPlan,
  served: ServedOn | undefined,
  { containers, carriers }: Pick<Kitchen, 'containers' | 'carriers'>,
): EventLoad {
  const foods = packedFood(plan, containers);
  const high = plan.input.weather?.high;
  const outside = { degrees: high ? degreesIn('C', high) : USUAL_OUTSIDE, stated: high !== undefined };
  if (!carriers || !served) return { foods, loading: undefined, outside };
  const timed = foods.map((food) => ({ food, neededAt: neededAt(food, served), ...ownShare(food) }));
  // An urn or a rack needs no carrier, nor do cases of bottles, which are in none and too heavy for one.
  const needsNone = ({ food, share }: TimedFood) =>
    containers.get(food.container?.container ?? '')?.onItsOwn === true ||
    (!food.container && share?.gt(1n) === true);
  const loading = loadCarriers(
    timed.filter((each) => !needsNone(each)),
    carriers.values(),
  );
  const setting = {
    containers,
    outside: outside.degrees,
    loaded: served.load.begins,
    hot: plan.foodSafety.limits['hot holding'].temperature.celsius,
  };
  return {
    foods,
    loading: {
      ...loading,
      carriers: loading.carriers.map((each) => weighed(each, setting)),
      uniced: timed.filter(
        (each) =>
          needsNone(each) &&
          each.food.hold === 'cold' &&
          !isDrink(each.food) &&
          outside.degrees.gt(plan.foodSafety.limits['cold holding'].temperature.celsius),
      ),
    },
    outside,
  };
}

/** Drinks have ice of their own. */
function isDrink(food: PackedFood): boolean {
  return food.kind === 'dish' && food.planned.dish.drink !== undefined;
}

interface Setting {
  readonly containers: ReadonlyMap<string, Container>;
  readonly outside: Fraction;
  /** When loading begins. */
  readonly loaded: number;
  /** What hot food is held at, at least. */
  readonly hot: Fraction;
}

function weighed(loaded: LoadedCarrier, setting: Setting): WeighedCarrier {
  const { carrier, hold, emptied } = loaded;
  const weights = loaded.foods.map((each) => ({ each, grams: gramsIn(each) }));
  const inside = weights.reduce((sum, { grams }) => (grams ? sum.add(grams) : sum), new Fraction(0n));
  const unweighed = weights.flatMap(({ each, grams }) => (grams ? [] : [each.food.name]));
  const hours = new Fraction(Math.max(0, emptied - setting.loaded), 60);
  const around = { grams: inside, hours, outside: setting.outside };
  const ice = hold === 'cold' ? iceOf(loaded, around) : undefined;
  return {
    ...loaded,
    foodGrams: inside,
    unweighed,
    grams: unweighed.length > 0 ? undefined : totalGrams(loaded, inside, ice, setting.containers),
    ice,
    warmth:
      hold === 'hot' && unweighed.length === 0 && inside.n > 0n
        ? warmthOf(carrier, around, setting.hot)
        : undefined,
  };
}

function iceOf({ carrier }: LoadedCarrier, around: Parameters<typeof iceFor>[1]): CarrierIce | undefined {
  const grams = iceFor(carrier, around);
  if (grams.n === 0n) return undefined;
  const pack = carrier.icePackGrams;
  return { grams, packs: pack && Number(grams.div(pack).ceil().n), hours: around.hours };
}

/** Water boils at 100 °C, and nothing is carried so hot: food goes in at 90 °C (194 °F) at the most. Common practice. */
const HOTTEST = new Fraction(90n);

function warmthOf(
  carrier: LoadedCarrier['carrier'],
  around: { grams: Fraction; hours: Fraction; outside: Fraction },
  least: Fraction,
): CarrierWarmth {
  const after = stillAt(carrier, { ...around, at: USUAL_HOT });
  const hotter = goesInAt(carrier, { ...around, least });
  return {
    after,
    hours: around.hours,
    enough: after.gte(least),
    goesInAt: hotter?.lte(HOTTEST) ? hotter : undefined,
  };
}

/** What a carrier takes of small containers by weight, where no kind of the kitchen’s is stated. Common practice. */
const SMALL_THINGS = new Fraction(20_000n);
/** One that weighs less than this share of it takes no room: it goes on top. */
const ON_TOP = new Fraction(1n, 20n);
/** What one takes whose weight nothing tells. */
const UNKNOWN_SHARE = new Fraction(1n, 10n);

/** What a food takes of a carrier in a container of its own that no kitchen.yaml names; nothing for all other food. */
function ownShare(food: PackedFood): { readonly share?: Fraction } {
  const { container } = food;
  if (container && container.container !== 'own') return {};
  const grams = foodGrams(food, container?.each ?? food.amount);
  if (!grams) return { share: UNKNOWN_SHARE };
  const share = grams.div(SMALL_THINGS);
  return { share: share.lt(ON_TOP) ? new Fraction(0n) : share };
}

/** What some of a food’s containers hold, in grams. */
function gramsIn({ food, from, count }: CarriedFood): Fraction | undefined {
  const packed = food.container;
  if (!packed) return foodGrams(food, food.amount);
  const hasLast = from + count === packed.count;
  const full = packed.each.amount.mul(BigInt(hasLast ? count - 1 : count));
  const amount = hasLast ? full.add(packed.last.amount) : full;
  return foodGrams(food, { amount, unit: packed.each.unit });
}

function totalGrams(
  { carrier, foods }: LoadedCarrier,
  inside: Fraction,
  ice: CarrierIce | undefined,
  containers: ReadonlyMap<string, Container>,
): Fraction | undefined {
  if (!carrier.grams) return undefined;
  let sum = carrier.grams.add(inside);
  for (const { food, count } of foods) {
    const kind = containers.get(food.container?.container ?? '');
    // A small container of its own is left out: what it weighs is lost in the rest.
    const empty = kind ? kind.grams : new Fraction(0n);
    if (!empty) return undefined;
    sum = sum.add(empty.mul(BigInt(count)));
  }
  if (!ice) return sum;
  const packs = ice.packs === undefined ? undefined : carrier.icePackGrams?.mul(BigInt(ice.packs));
  return sum.add(packs ?? ice.grams);
}
