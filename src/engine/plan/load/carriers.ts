import Fraction from 'fraction.js';
import type { Hold } from '../../food/recipe.ts';
import type { Carrier } from '../../kitchen/carrier.ts';
import type { PackedFood } from './packed-food.ts';

/** Food on the van with the time at which it is needed, in minutes from the midnight of the event's date. */
export interface TimedFood {
  readonly food: PackedFood;
  readonly neededAt: number;
  /** What one container of it takes of any carrier, where its kind is not one of the kitchen’s. */
  readonly share?: Fraction;
}

/** Some of a food's containers in one carrier: `count` of them from the one with this index on. */
export interface CarriedFood extends TimedFood {
  readonly from: number;
  readonly count: number;
}

/** One carrier with what is in it. */
export interface LoadedCarrier {
  /** 1 for what is needed first, on through all kinds of carriers. */
  readonly number: number;
  readonly carrier: Carrier;
  readonly hold: Hold;
  /** True: raw food alone, which stands below what is ready to eat and is loaded so. */
  readonly raw: boolean;
  /** What is needed first comes first. */
  readonly foods: readonly CarriedFood[];
  /** When something in it is first needed, and when the last is. */
  readonly opened: number;
  readonly emptied: number;
}

/** How an event's food goes into its carriers. */
export interface Loading {
  readonly carriers: readonly LoadedCarrier[];
  /** Food in containers that no carrier takes, and food in none. */
  readonly loose: readonly TimedFood[];
}

/**
 * Puts containers into carriers: by how the food travels, raw food never with ready food, what is needed first in the
 * lowest numbers, and each into the first carrier with room left. A carrier that holds five of one pan or ten of another
 * holds two of one and six of the other. A new one is of the kind that takes the most of that container among those that
 * are left, so that few go along.
 */
export function loadCarriers(foods: readonly TimedFood[], kinds: Iterable<Carrier>): Loading {
  const all = [...kinds];
  const open: Open[] = [];
  const loose: TimedFood[] = [];
  const order = foods.map((each, index) => ({ ...each, index }));
  order.sort((a, b) => a.neededAt - b.neededAt || a.index - b.index);
  for (const { index: _, ...timed } of order) {
    const fitting = kindsFor(timed, all);
    if (fitting.length === 0) loose.push(timed);
    else
      for (let index = 0; index < (timed.food.container?.count ?? 1); index++)
        place(timed, index, fitting, open);
  }
  const carriers = [...open]
    .sort((a, b) => openedAt(a) - openedAt(b))
    .map((each, index): LoadedCarrier => {
      const last = each.foods.at(-1) as CarriedFood;
      const { carrier, hold, raw, foods: inside } = each;
      return {
        number: index + 1,
        carrier,
        hold,
        raw,
        foods: inside,
        opened: openedAt(each),
        emptied: last.neededAt,
      };
    });
  return { carriers, loose };
}

/** A carrier while it is filled. */
interface Open {
  readonly carrier: Carrier;
  readonly hold: Hold;
  readonly raw: boolean;
  readonly foods: CarriedFood[];
  /** How much of it is full, as a share. */
  full: Fraction;
}

/** A kind of carrier for a food, and what one of its containers takes of it. */
interface Fitting {
  readonly carrier: Carrier;
  readonly share: Fraction;
}

/** The kinds of carriers that keep a food as it travels and hold its container, the roomiest first. */
function kindsFor({ food, share }: TimedFood, kinds: readonly Carrier[]): Fitting[] {
  return kinds
    .filter((carrier) => carrier.for.includes(food.hold))
    .flatMap((carrier) => {
      // What fills more than one in a container of its own gets one to itself.
      if (share) return [{ carrier, share: share.gt(1n) ? new Fraction(1n) : share }];
      const held = carrier.holds.find(({ container }) => container === food.container?.container);
      return held ? [{ carrier, share: new Fraction(1n, BigInt(held.count)) }] : [];
    })
    .sort((a, b) => a.share.compare(b.share));
}

function place(
  { food, neededAt }: TimedFood,
  index: number,
  fitting: readonly Fitting[],
  open: Open[],
): void {
  const raw = food.raw !== undefined;
  const shareOf = (carrier: Carrier) => fitting.find((each) => each.carrier === carrier)?.share;
  const roomy = open.find(
    (each) =>
      each.hold === food.hold && each.raw === raw && shareOf(each.carrier)?.add(each.full).lte(1n) === true,
  );
  const left = ({ carrier }: Fitting) =>
    open.filter((each) => each.carrier === carrier).length < carrier.count;
  const { carrier } = (fitting.find(left) ?? fitting[0]) as Fitting;
  const into: Open = roomy ?? { carrier, hold: food.hold, raw, foods: [], full: new Fraction(0n) };
  if (!roomy) open.push(into);
  into.full = into.full.add(shareOf(into.carrier) as Fraction);
  const last = into.foods.at(-1);
  if (last?.food === food && last.from + last.count === index)
    into.foods[into.foods.length - 1] = { ...last, count: last.count + 1 };
  else into.foods.push({ food, neededAt, from: index, count: 1 });
}

function openedAt({ foods }: Open): number {
  return Math.min(...foods.map(({ neededAt }) => neededAt));
}
