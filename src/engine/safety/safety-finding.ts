import type Fraction from 'fraction.js';
import type { TemperatureScale } from '../measure/temperature.ts';
import type { SafetyRules } from './limit.ts';

/** Something about a recipe that a food code asks otherwise. It begins in the middle of a sentence about it. */
export interface SafetyFinding {
  readonly code:
    | 'cook-to-low'
    | 'cook-to-missing'
    | 'hot-plant-food-low'
    | 'reheat-low'
    | 'cooling-unsaid'
    | 'chill-too-deep'
    | 'chill-too-long'
    | 'keeps-too-long'
    | 'room-too-long';
  /** The way to the field of the recipe that it is about, as its file writes it. */
  readonly at: readonly (string | number)[];
  /** What follows the recipe's name: `cooks Ground pork to 145 °F, and …`. */
  readonly what: string;
  readonly wayOut: string;
}

/** What of a container says how deep food cools in it. */
export interface ChilledIn {
  readonly id: string;
  /** Inside depth in inches; undefined where not stated. */
  readonly depthInches?: Fraction | undefined;
  /** Working fill as a share of it. */
  readonly fill: Fraction;
}

/** What judging a recipe needs to know besides it. */
export interface SafetySetting {
  readonly rules: SafetyRules;
  readonly scale: TemperatureScale;
  readonly containers: ReadonlyMap<string, ChilledIn>;
  /** Whether guests are served the recipe itself; else it goes into others, which may do the cooking. */
  readonly served: boolean;
}
