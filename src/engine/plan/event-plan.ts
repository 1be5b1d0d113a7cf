import type Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import type { AllergenSource } from '../food/allergens-of.ts';
import type { DietClaim } from '../food/diets-of.ts';
import type { Ingredient } from '../food/ingredient.ts';
import type { PackStage, Recipe, RecipeLine, RecipeStep } from '../food/recipe.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { MeasureSystem } from '../measure/units.ts';
import type { Money } from '../money/money.ts';
import type { CourseOdds } from '../odds/course-odds.ts';
import type { DishOdds } from '../odds/dish-odds.ts';
import type { PricedPack } from '../purchase/price-list.ts';
import type { SafetyRules } from '../safety/limit.ts';
import type { Said } from '../text/statement.ts';
import type { PlannedDrink } from './drinks/planned-drink.ts';
import type { EventDish, EventInput } from './event-input.ts';
import type { NeedCoverage } from './servings/coverage.ts';

/**
 * Why a figure is what it is: the links of its chain in order, each a whole statement with its values
 * (`94 guests × 3 oz = 282 oz`).
 */
export type Why = readonly Said[];

export interface PlannedDish {
  readonly dish: EventDish;
  /** Guests counted, children by their weight: exact, may be a fraction. */
  readonly counted: Fraction;
  /** counted × per-guest amount, exact. */
  readonly base: Quantity;
  /** base × (1 + overage), or the helpings of a chosen risk, exact, then up to a whole unit where the unit cannot be split. */
  readonly need: Quantity;
  /** The need in the unit the recipe's batch is counted in, exact. */
  readonly needAsMade: Quantity;
  readonly containers: readonly PlannedContainer[];
  readonly contains: readonly AllergenSource[];
  readonly mayContain: readonly AllergenSource[];
  /** Ingredients whose allergens are not stated, by id. */
  readonly unsaid: readonly string[];
  readonly diets: readonly DietClaim[];
  /** How likely it runs short, where the kitchen says how guests take it. */
  readonly odds?: DishOdds;
  readonly why: Why;
}

export interface PlannedContainer {
  readonly stage: PackStage;
  readonly container: string;
  /** As kitchen.yaml names it. */
  readonly containerName: Said;
  readonly count: number;
  /** How full the last one is, as a share of its working fill, in (0, 1]. */
  readonly lastFull: Fraction;
  /** What each container but the last holds. */
  readonly each: Quantity;
  /** What the last one holds, exact; as much as `each` where food is spread evenly over service lines. */
  readonly last: Quantity;
  readonly why: Why;
}

/** A recipe as it is cooked for the event: every need of it summed first, then rounded to batches once. */
export interface PlannedRecipe {
  readonly recipe: Recipe;
  /** Who needs it and how much: a dish or another recipe, by name. */
  readonly usedBy: readonly { readonly by: string; readonly need: Quantity }[];
  /** Sum of the needs in the batch's unit, exact. */
  readonly need: Quantity;
  /** Batches cooked, rounded as the recipe says. */
  readonly batches: Fraction;
  /** What these batches make. */
  readonly makes: Quantity;
  readonly lines: readonly PlannedLine[];
  readonly why: Why;
}

export interface PlannedLine {
  readonly line: RecipeLine;
  /** line amount × batches, exact, as the recipe writes it (edible portion unless as purchased). */
  readonly amount: Quantity;
}

export interface PlannedPurchase {
  readonly ingredient: Ingredient;
  /** Need as purchased, exact, summed over all recipes in the ingredient's buying unit. */
  readonly need: Quantity;
  readonly usedBy: readonly { readonly recipe: string; readonly need: Quantity; readonly why: Why }[];
  /** Whole packs to buy; empty where no pack on the list covers the need (a finding says so). */
  readonly packs: readonly { readonly pack: PricedPack; readonly count: number; readonly cost: Money }[];
  readonly bought: Quantity | null;
  readonly left: Quantity | null;
  /** Price of the whole packs, each line rounded to the minor unit. */
  readonly cost: Money | null;
  readonly why: Why;
}

export interface PlannedTask {
  readonly recipe: Recipe;
  readonly step: RecipeStep;
  /** Position among the recipe's steps, from 1. */
  readonly number: number;
  readonly batches: Fraction;
  /** Hands-on minutes for these batches (per-batch time counts each begun batch). */
  readonly handsOnMinutes: number;
}

/** One day of work, tasks in the order of their recipes' needs: parts before what they go into. */
export interface PlannedDay {
  readonly date: Day;
  readonly daysBefore: number;
  readonly tasks: readonly PlannedTask[];
}

/** Something the plan tells the crew or the owner; commands give it place and code. */
export interface PlanFinding {
  readonly about: string;
  readonly what: Said;
  readonly wayOut: Said;
}

/** Everything the kitchen needs for one event, in exact values; exports and pages print it. */
export interface EventPlan {
  readonly input: EventInput;
  readonly dishes: readonly PlannedDish[];
  /** What travels beside dishes in containers of its own, a sauce; on no menu, and so none of the dishes. */
  readonly beside: readonly PlannedDish[];
  /** What the crew eats, in containers of its own; for no guest, and so none of the dishes. */
  readonly crewMeals: readonly PlannedDish[];
  /** Courses of which each guest takes one helping of one dish, carried as a whole; most events have none. */
  readonly courseOdds: readonly CourseOdds[];
  /** Its drinks with their ice, plain water last; most events have none. */
  readonly drinks: readonly PlannedDrink[];
  readonly recipes: readonly PlannedRecipe[];
  readonly purchases: readonly PlannedPurchase[];
  /** How the menu feeds each need, said or assumed. */
  readonly coverage: readonly NeedCoverage[];
  readonly days: readonly PlannedDay[];
  readonly foodCost: Money | null;
  readonly findings: readonly PlanFinding[];
  /** The food code it was planned by. */
  readonly foodSafety: SafetyRules;
  /** The measures it is cooked in. */
  readonly measures: MeasureSystem;
}
