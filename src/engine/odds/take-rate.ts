import type Fraction from 'fraction.js';
import type { Quantity } from '../measure/quantity.ts';
import type { Appetite } from './appetite.ts';

/**
 * What a kitchen knows of how guests take a dish, and what it makes of it. A dish has an appetite or a share of first
 * choices, never both.
 */
export interface TakeRate {
  /** How many helpings guests take, where they help themselves to as much as they like. */
  readonly appetite: Appetite | undefined;
  /** Share of the guests who take it first, in a course of which each takes one helping of one dish. */
  readonly firstChoice: Fraction | undefined;
  /** One helping; undefined = the amount for one guest. */
  readonly helping: Quantity | undefined;
  /**
   * The amount is the least with which the dish, or the course as a whole, runs short at most at one event in so
   * many; undefined = per-guest amount and overage.
   */
  readonly shortOneIn: number | undefined;
  /** What one missing helping and one left over cost the kitchen, where both are stated. */
  readonly costs: HelpingCosts | undefined;
}

/** Both money text in the kitchen's currency, exact, not below 0 and not both nothing. */
export interface HelpingCosts {
  readonly missing: string;
  readonly leftOver: string;
}
