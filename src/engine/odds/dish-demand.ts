import type { Quantity } from '../measure/quantity.ts';
import type { Said } from '../text/statement.ts';
import type { Chances } from './chances.ts';
import type { Eaters } from './demand.ts';

/** Who of the guests counted for a dish eats of it. Whole guests. */
export interface DishEaters extends Eaters {
  /** Who cannot eat it, by the needs the client stated. */
  readonly cannot: number;
}

/** What guests will want of a dish, and what is carried for it where a risk was chosen. */
export interface DishDemand {
  readonly eaters: DishEaters;
  /** One helping in the unit of the per-guest amount. */
  readonly helping: Quantity;
  /** The chances of how many helpings all of them want together. */
  readonly chances: Chances;
  /** Helpings to carry by the chosen risk; undefined = by per-guest amount and overage. */
  readonly helpings: number | undefined;
  /** Who wants how much, and how the helpings come about. */
  readonly why: readonly Said[];
}
