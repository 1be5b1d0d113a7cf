import type { Quantity } from '../measure/quantity.ts';
import type { Money } from '../money/money.ts';
import type { Said } from '../text/statement.ts';
import type { DishDemand } from './dish-demand.ts';
import type { HelpingCosts } from './take-rate.ts';

/** An amount of a dish and how likely it runs short. */
export interface OddsAt {
  /** In the unit of the per-guest amount, whole where that cannot be split. */
  readonly amount: Quantity;
  /** Whole helpings in it. */
  readonly helpings: number;
  /** Chance that more helpings are wanted. */
  readonly short: number;
}

/** What somewhat more than is cooked would do. */
export interface OddsMore extends OddsAt {
  /** `1 helping`, `1 Full pan`, `½ batch`. */
  readonly more: Said;
  /** What that much more food costs at the rate of its packs; null where it is not all priced. */
  readonly cost: Money | null;
}

/** How likely a dish runs short, and what would change it. */
export interface DishOdds {
  readonly demand: DishDemand;
  /** Whether the chances are those of somebody missing a first choice and taking another dish of the course. */
  readonly firstChoice: boolean;
  /** Helpings wanted, to be expected. */
  readonly expected: number;
  /** As planned, before batches are rounded. */
  readonly planned: OddsAt;
  /** As its batches make it; null where that is no helping more. */
  readonly cooked: OddsAt | null;
  /** Helpings to be expected that are missing and that come back, of what is cooked. */
  readonly missing: number;
  readonly left: number;
  readonly more: readonly OddsMore[];
  /** The least amounts for some usual risks, the larger first; none of a first choice, which its course decides. */
  readonly least: readonly (OddsAt & { readonly oneIn: number })[];
  /** The amount that balances a missing helping against one left over; null where their costs are not stated. Advice. */
  readonly advice: (OddsAt & { readonly costs: HelpingCosts }) | null;
}
