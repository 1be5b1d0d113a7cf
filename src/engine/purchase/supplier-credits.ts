import { foodCover } from './food-cover.ts';
import { WEIGHT_SCALE, type Weights, weightedCosts } from './food-options.ts';
import type { ModelFood, OrderModel } from './order-model.ts';
import { costOfSuppliers } from './weigh-order.ts';

/** Suppliers that are used, and those of them whose minimum order must be reached. */
export type SupplierChoice = Omit<Weights, 'credit'>;

/**
 * Bounds of the orders of one choice of suppliers, by what is credited to those whose minimum must be reached
 * (Lagrange multipliers): with credits each food is covered by itself, and what that costs less the credits that
 * the minimums take up bounds the whole order. Whole numbers, in `WEIGHT_SCALE` parts of a step.
 */
export class SupplierCredits {
  readonly #model: OrderModel;
  readonly #choice: SupplierChoice;
  readonly #covers = new Map<string, number | undefined>();
  /** Minimums of the watched suppliers, in steps. */
  readonly minimums: readonly number[];
  /** What using the suppliers costs, in steps. */
  readonly fees: number;

  constructor(model: OrderModel, choice: SupplierChoice) {
    this.#model = model;
    this.#choice = choice;
    this.minimums = choice.watched.map((place) => Number(model.suppliers[place]?.minimum ?? 0n));
    this.fees = Number(costOfSuppliers(model, [...choice.used]));
  }

  /**
   * Climbs to the credits with the highest bound, or to one beyond `best` steps, by ever smaller steps: of one supplier, of two with or against each
   * other, and of all, since the bound has ridges along which no single credit leads upwards.
   */
  bestWeights(best: number): Weights {
    let credit = this.#choice.watched.map(() => 0);
    let bound = this.boundBy(credit) ?? Number.POSITIVE_INFINITY;
    const ways = directions(credit.length);
    for (let step = WEIGHT_SCALE / 2; step >= 1 && bound <= best * WEIGHT_SCALE; ) {
      let climbed = false;
      for (const way of ways) {
        const tried = credit.map((each, at) => clamped(each + step * (way[at] as number)));
        const found = this.boundBy(tried) as number;
        if (found <= bound) continue;
        [credit, bound, climbed] = [tried, found, true];
      }
      if (!climbed) step /= 2;
    }
    return { ...this.#choice, credit };
  }

  /** What no order costs less than, in parts of a step; undefined where these suppliers lack a food. */
  boundBy(credit: readonly number[]): number | undefined {
    let bound = this.fees * WEIGHT_SCALE;
    for (const [at, minimum] of this.minimums.entries()) bound += minimum * (credit[at] as number);
    for (const at of this.#model.foods.keys()) {
      const least = this.leastOf(at, credit);
      if (least === undefined) return undefined;
      bound += least;
    }
    return bound;
  }

  /** The cheapest cover of a food by weights; where it is not proven, what it cannot cost less than. */
  leastOf(at: number, credit: readonly number[]): number | undefined {
    const food = this.#model.foods[at] as ModelFood;
    const weighted = weightedCosts(food, { ...this.#choice, credit });
    const key = `${at} ${weighted.join(' ')}`;
    if (!this.#covers.has(key)) {
      const packs = food.packs.map((pack, index) => ({ ...pack, cost: BigInt(weighted[index] ?? 0) }));
      const cover = foodCover({ ...food, packs }, (supplier) => this.#choice.used.has(supplier));
      this.#covers.set(key, cover && Number(cover.cost - cover.gap));
    }
    return this.#covers.get(key);
  }
}

function clamped(credit: number): number {
  return Math.min(WEIGHT_SCALE, Math.max(0, credit));
}

/* Steps of 1 or −1 of one, of two, and of all. */
function directions(length: number): number[][] {
  const none = Array.from({ length }, () => 0);
  const ways = [none.map(() => 1), none.map(() => -1)];
  for (const at of none.keys()) {
    for (const up of [1, -1]) {
      ways.push(none.with(at, up));
      for (let other = at + 1; other < length; other += 1)
        ways.push(none.with(at, up).with(other, up), none.with(at, up).with(other, -up));
    }
  }
  return ways;
}
