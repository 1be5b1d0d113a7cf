import Fraction from 'fraction.js';
import type { Kitchen, Rental } from '../../kitchen/kitchen.ts';
import type { BoxSize } from '../../measure/box-size.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { definedFactor } from '../../measure/units.ts';
import type { Vehicle } from '../../menu/vehicle.ts';
import type { EventPlan } from '../event-plan.ts';
import type { Brought, Fuel } from './brought.ts';
import type { EventLoad, WeighedCarrier } from './event-load.ts';
import { foodGrams } from './food-weight.ts';

/** Where a carrier stands: what is needed last goes in first, behind the cab. */
export const ZONES = ['cab', 'middle', 'doors'] as const;

export type Zone = (typeof ZONES)[number];

/** How an event's load fits its vehicle. */
export interface VanLoad {
  readonly vehicle: Vehicle;
  /** All whose weight is known, in grams. */
  readonly grams: Fraction;
  /** What goes along and is not in that, by name. */
  readonly unweighed: readonly string[];
  /** The share of its floor that carriers take, stacked as high as they go, exact; undefined where no size is stated. */
  readonly floor: Fraction | undefined;
  /** Carriers that state no size, by name. */
  readonly unsized: readonly string[];
  /** Vehicles like it, or runs of one, that take what is known; 1 where it fits. */
  readonly runs: number;
  /** What makes it too much. */
  readonly over: readonly ('weight' | 'space')[];
  /** Numbers of the carriers in each zone, in the order in which they are loaded. */
  readonly zones: Readonly<Record<Zone, readonly number[]>>;
}

/** What goes along besides food in its carriers. */
export interface AlsoCarried {
  readonly rentals: readonly { readonly rental: Rental; readonly count: Quantity }[];
  readonly brought: readonly Brought[];
  readonly fuels: readonly Fuel[];
  /** Ice, water and other supplies that are measured, in grams. */
  readonly supplies: Fraction;
  /** What kit is called in a list, where there is some whose weight nobody states. */
  readonly kit: readonly string[];
}

/** Carriers never fill a floor to the last inch: they are strapped, and doors need room. Common practice, no source. */
const USED_FLOOR = new Fraction(85n, 100n);

/**
 * How an event's load fits the vehicle that its proposal names; else the first kind of the kitchen's that takes it in one
 * run, else the one that takes it in the fewest. Undefined where the kitchen states no vehicles or no carriers, or no vehicle
 * of which it is stated what it takes.
 */
export function vanLoad(
  plan: EventPlan,
  load: EventLoad,
  also: AlsoCarried,
  { vehicles, containers }: Pick<Kitchen, 'vehicles' | 'containers'>,
): VanLoad | undefined {
  const { loading } = load;
  if (!loading) return undefined;
  const fleet = plan.input.vehicle ? [plan.input.vehicle] : [...(vehicles?.values() ?? [])];
  const rated = fleet.filter(({ payloadGrams, space }) => payloadGrams ?? space);
  const [grams, unweighed] = weightOf(load, also, containers);
  const tried = rated.map((vehicle) => fitted(vehicle, loading.carriers, grams, unweighed));
  return tried.find(({ runs }) => runs === 1) ?? tried.toSorted((a, b) => a.runs - b.runs)[0];
}

function fitted(
  vehicle: Vehicle,
  carriers: readonly WeighedCarrier[],
  grams: Fraction,
  unweighed: readonly string[],
): VanLoad {
  const { payloadGrams, space } = vehicle;
  const floor = space && floorShare(carriers, space);
  const byWeight = payloadGrams ? runsFor(grams.div(payloadGrams)) : 1;
  const bySpace = floor ? runsFor(floor.div(USED_FLOOR)) : 1;
  return {
    vehicle,
    grams,
    unweighed,
    floor,
    unsized: [...new Set(carriers.filter(({ carrier }) => !carrier.size).map(({ carrier }) => carrier.name))],
    runs: Math.max(byWeight, bySpace),
    over: [...(byWeight > 1 ? (['weight'] as const) : []), ...(bySpace > 1 ? (['space'] as const) : [])],
    zones: zonesOf(carriers),
  };
}

function runsFor(share: Fraction): number {
  return Math.max(1, Number(share.ceil().n));
}

/** The floor that carriers take, each kind stacked by itself as high as the vehicle allows, as a share of the floor. */
function floorShare(carriers: readonly WeighedCarrier[], space: BoxSize): Fraction | undefined {
  const sized = carriers.filter(({ carrier }) => carrier.size);
  if (sized.length === 0) return undefined;
  const area = [...Map.groupBy(sized, ({ carrier }) => carrier)].reduce((sum, [{ size }, same]) => {
    const { length, width, height } = size as BoxSize;
    const high = Math.max(1, Number(space.height.div(height).floor().n));
    return sum.add(length.mul(width).mul(BigInt(Math.ceil(same.length / high))));
  }, new Fraction(0n));
  return area.div(space.length.mul(space.width));
}

/** What is needed first stands at the doors: thirds of the carriers, the last needed behind the cab, raw ones lowest. */
function zonesOf(carriers: readonly WeighedCarrier[]): VanLoad['zones'] {
  const order = [...carriers].reverse().map(({ number, raw }) => ({ number, raw }));
  const third = Math.ceil(order.length / ZONES.length);
  const part = (index: number) =>
    order
      .slice(index * third, (index + 1) * third)
      .sort((a, b) => Number(b.raw) - Number(a.raw))
      .map(({ number }) => number);
  return { cab: part(0), middle: part(1), doors: part(2) };
}

/** What is known to go along, in grams, and what of it nobody has stated the weight of. */
function weightOf(
  { loading, foods }: EventLoad,
  { rentals, brought, fuels, supplies, kit }: AlsoCarried,
  containers: Kitchen['containers'],
): [Fraction, string[]] {
  const unweighed: string[] = [];
  let sum = supplies;
  const add = (name: string, grams: Fraction | undefined) => {
    if (grams) sum = sum.add(grams);
    else unweighed.push(name);
  };
  for (const each of loading?.carriers ?? []) {
    if (each.grams) add('', each.grams);
    else {
      add('', each.foodGrams);
      unweighed.push(each.carrier.name, ...each.unweighed);
    }
  }
  const inCarriers = new Set((loading?.carriers ?? []).flatMap((each) => each.foods.map(({ food }) => food)));
  for (const food of foods) {
    if (inCarriers.has(food)) continue;
    add(food.name, foodGrams(food, food.amount));
    const empty = containers.get(food.container?.container ?? '');
    if (empty) add(empty.name, empty.grams?.mul(BigInt(food.container?.count ?? 0)));
  }
  for (const { rental, count } of rentals) add(rental.name, rental.grams?.mul(count.amount));
  for (const { equipment, count } of brought) add(equipment.name, equipment.grams?.mul(BigInt(count)));
  for (const { name, taken, packed } of fuels) {
    const full = packed
      ? { amount: packed.each.amount.mul(BigInt(packed.count)), unit: packed.each.unit }
      : taken;
    const factor = definedFactor(full.unit, 'g');
    add(name, factor && full.amount.mul(factor));
  }
  unweighed.push(...kit);
  return [sum, [...new Set(unweighed)]];
}
