import type { FoodOption } from './food-options.ts';

/** Covers of one half of the foods that are kept from one food to the next. */
const MOST_COVERS = 2 ** 18;
/** Options of one food that are tried in one division into halves; of more, others each time. */
const MOST_OPTIONS = 16;
/** Divisions into halves that are tried. */
const DIVISIONS = 16;
/** Pairs of covers looked at in one division. */
const MOST_PAIRS = 20_000_000;
/** The part of what the order costs above its cheapest covers that one half may use up. */
const SHARE = 0.6;
/** Suppliers by whose sums covers are looked up. */
const MOST_KEYS = 3;
/** Keeps sums of several suppliers in one number; where it mixes two up, they are told from each other afterwards. */
const KEY_BASE = 2 ** 16;

/** An order that is to be made cheaper, in whole numbers as `Weights` counts them. */
export interface JoinedFoods {
  /** The options of each food. */
  readonly options: readonly (readonly FoodOption[])[];
  /** What is spent with each watched supplier must come to this. */
  readonly minimums: readonly number[];
  /** What each step spent beyond a minimum costs. */
  readonly credit: readonly number[];
  /** Excesses, and credits beyond minimums, have to come to less than this. */
  readonly below: number;
  /** Steps that the packs of the known order cost. */
  readonly packsCost: number;
}

/**
 * Looks for an option of each food so that all minimums are reached and little is spent beyond them. Where minimums
 * come to more than the foods cost, nothing is left to save but that, every cover is as good as any other, and what is
 * looked for is one of very many combinations that come to just so much. So the foods are divided into halves, covers
 * of the one are listed by what they spend, and for each cover of the other those are looked up that spend just what
 * it lacks. Only a sample, by counts alone: what is found is an order, what is not found proves nothing.
 */
export function joinHalves(foods: JoinedFoods): readonly FoodOption[] | undefined {
  const { options, credit, packsCost } = foods;
  if (options.length < 2 || credit.every((each) => each === 0)) return undefined;
  const cheapest = options.map((all) =>
    all.reduce((least, { cost }) => Math.min(least, cost), Number.POSITIVE_INFINITY),
  );
  const most = Math.floor(SHARE * (packsCost - cheapest.reduce((a, b) => a + b, 0)));
  const usable = options.map((all, food) =>
    all.filter(({ cost }) => cost - (cheapest[food] as number) <= most).sort((a, b) => a.cost - b.cost),
  );
  let { below } = foods;
  let best: readonly FoodOption[] | undefined;
  for (let division = 0; division < DIVISIONS && below > 0; division += 1) {
    const tried = usable.map((all) => sampleOf(all, division));
    const halves = dividedFoods(options.length, division).map((half) =>
      coversOf(half, tried, cheapest, { ...foods, below, most }),
    );
    const [one, other] = halves as [Covers, Covers];
    const found = joined(one, other, { ...foods, below });
    if (!found) continue;
    below = found.comesTo;
    best = options.map((_, food) => found.picked.get(food) as FoodOption);
  }
  return best;
}

/** As many as are tried at once, evenly from the cheapest to the dearest; others in each division. */
function sampleOf(all: readonly FoodOption[], division: number): readonly FoodOption[] {
  if (all.length <= MOST_OPTIONS) return all;
  const step = all.length / MOST_OPTIONS;
  return Array.from(
    { length: MOST_OPTIONS },
    (_, at) => all[Math.floor((at + division / DIVISIONS) * step)] as FoodOption,
  );
}

/** Two halves of the foods, others for each division: every second of them in an order that each division mixes. */
function dividedFoods(foods: number, division: number): number[][] {
  const place = (food: number) => (food * (2 * division + 3) * 7919) % 10_007;
  const mixed = Array.from({ length: foods }, (_, food) => food).sort((a, b) => place(a) - place(b) || a - b);
  return [0, 1].map((half) => mixed.filter((_, at) => at % 2 === half));
}

/** Covers of some foods side by side, each built from one with a food less. */
interface Covers {
  readonly foods: readonly { readonly food: number; readonly options: readonly FoodOption[] }[];
  /** Of each food: which cover with a food less, and which option. */
  readonly from: readonly { readonly cover: Int32Array; readonly option: Int32Array }[];
  readonly length: number;
  /** By watched supplier. */
  readonly spent: readonly Float64Array[];
  readonly excess: Float64Array;
}

function coversOf(
  half: readonly number[],
  options: readonly (readonly FoodOption[])[],
  cheapest: readonly number[],
  { minimums, below, most }: Pick<JoinedFoods, 'minimums' | 'below'> & { readonly most: number },
): Covers {
  const foods = half.map((food) => ({ food, options: options[food] as readonly FoodOption[] }));
  const from: { cover: Int32Array; option: Int32Array }[] = [];
  let length = 1;
  let [excess, dearer] = [new Float64Array(1), new Float64Array(1)];
  let spent = minimums.map(() => new Float64Array(1));
  for (const { food, options: own } of foods) {
    const kept = Math.min(length, Math.max(1, Math.floor(MOST_COVERS / own.length)));
    const size = kept * own.length;
    const next = { excess: new Float64Array(size), dearer: new Float64Array(size) };
    const nextSpent = minimums.map(() => new Float64Array(size));
    const step = { cover: new Int32Array(size), option: new Int32Array(size) };
    let at = 0;
    for (let nth = 0; nth < kept; nth += 1) {
      const cover = Math.floor((nth * length) / kept);
      for (let index = 0; index < own.length; index += 1) {
        const option = own[index] as FoodOption;
        next.dearer[at] = (dearer[cover] as number) + option.cost - (cheapest[food] as number);
        next.excess[at] = (excess[cover] as number) + option.excess;
        if ((next.dearer[at] as number) > most || (next.excess[at] as number) >= below) continue;
        for (let s = 0; s < minimums.length; s += 1)
          (nextSpent[s] as Float64Array)[at] =
            ((spent[s] as Float64Array)[cover] as number) + (option.spent[s] as number);
        step.cover[at] = cover;
        step.option[at] = index;
        at += 1;
      }
    }
    length = at;
    ({ excess, dearer } = next);
    spent = nextSpent;
    from.push(step);
  }
  return { foods, from, length, spent, excess };
}

interface Joined {
  readonly comesTo: number;
  readonly picked: ReadonlyMap<number, FoodOption>;
}

/** The two covers that together reach the minimums and come to the least, where that is below what is asked. */
function joined(one: Covers, other: Covers, { minimums, credit, below }: JoinedFoods): Joined | undefined {
  const keys = [...credit.keys()].filter((s) => (credit[s] as number) > 0).slice(0, MOST_KEYS);
  // What is spent just so much beyond what is lacking lies in one of two neighboring drawers of this width.
  const widths = keys.map((s) => Math.floor((below - 1) / (credit[s] as number)) + 1);
  const drawers = new Map<number, number>();
  const further = new Int32Array(other.length).fill(-1);
  for (let at = 0; at < other.length; at += 1) {
    let drawer = 0;
    for (let k = 0; k < keys.length; k += 1) {
      const sum = (other.spent[keys[k] as number] as Float64Array)[at] as number;
      drawer = drawer * KEY_BASE + Math.floor(sum / (widths[k] as number));
    }
    further[at] = drawers.get(drawer) ?? -1;
    drawers.set(drawer, at);
  }
  let [comesTo, first, second, looked] = [below, -1, -1, 0];
  for (let at = 0; at < one.length && looked < MOST_PAIRS; at += 1) {
    for (let side = 0; side < 2 ** keys.length; side += 1) {
      let drawer = 0;
      for (let k = 0; k < keys.length; k += 1) {
        const s = keys[k] as number;
        const lacks = (minimums[s] as number) - ((one.spent[s] as Float64Array)[at] as number);
        const nearest = Math.floor(Math.max(0, lacks) / (widths[k] as number));
        drawer = drawer * KEY_BASE + nearest + ((side >> k) & 1);
      }
      for (let match = drawers.get(drawer) ?? -1; match >= 0; match = further[match] as number) {
        looked += 1;
        const sum = sumOf(one, at, other, match, minimums, credit);
        if (sum >= comesTo) continue;
        comesTo = sum;
        first = at;
        second = match;
      }
    }
  }
  if (first < 0) return undefined;
  return { comesTo, picked: new Map([...pickedOf(one, first), ...pickedOf(other, second)]) };
}

/** Excesses of two covers, and what they spend beyond the minimums by its credits; infinite where they fall short. */
function sumOf(
  one: Covers,
  at: number,
  other: Covers,
  match: number,
  minimums: readonly number[],
  credit: readonly number[],
): number {
  let sum = (one.excess[at] as number) + (other.excess[match] as number);
  for (let s = 0; s < minimums.length; s += 1) {
    const first = (one.spent[s] as Float64Array)[at] as number;
    const over = first + ((other.spent[s] as Float64Array)[match] as number) - (minimums[s] as number);
    if (over < 0) return Number.POSITIVE_INFINITY;
    sum += over * (credit[s] as number);
  }
  return sum;
}

function pickedOf({ foods, from }: Covers, end: number): [number, FoodOption][] {
  const picked: [number, FoodOption][] = [];
  let cover = end;
  for (const [at, { food, options }] of [...foods.entries()].reverse()) {
    const step = from[at] as Covers['from'][number];
    picked.push([food, options[step.option[cover] as number] as FoodOption]);
    cover = step.cover[cover] as number;
  }
  return picked;
}
