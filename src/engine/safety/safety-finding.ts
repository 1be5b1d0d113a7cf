import type Fraction from 'fraction.js';
import type { TemperatureScale } from '../measure/temperature.ts';
import type { Statement } from '../text/statement.ts';
import type { SafetyRules } from './limit.ts';

/** Something about a recipe that a food code asks otherwise. */
export interface SafetyFinding {
  readonly code:
    | 'cook-to-low'
    | 'cook-to-missing'
    | 'hot-plant-food-low'
    | 'reheat-low'
    | 'reheat-slow'
    | 'cooling-unsaid'
    | 'chill-too-deep'
    | 'chill-too-long'
    | 'chill-first-too-long'
    | 'keeps-too-long'
    | 'room-too-long';
  /** The way to the field of the recipe that it is about, as its file writes it. */
  readonly at: readonly (string | number)[];
  /** A sentence without full stop: `Patties cooks Ground pork to 145 °F, but …`. */
  readonly what: Statement;
  readonly wayOut: Statement;
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
  /** What the recipe is called in a sentence: its name, or its id in quotation marks. */
  readonly called: string;
  readonly containers: ReadonlyMap<string, ChilledIn>;
  /** Whether guests are served the recipe itself; else it goes into others, which may do the cooking. */
  readonly served: boolean;
}
