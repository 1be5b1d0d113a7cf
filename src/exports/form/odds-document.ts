/** How likely dishes run short, as the prep plan says it; left out where no dish says how guests take it. */
export interface PlanOdds {
  /** What the odds rest on and where they end; belongs beside every figure of them. */
  readonly limits: string;
  readonly dishes: readonly PlanDishOdds[];
  /** Courses of which each guest takes one helping of one dish. */
  readonly courses: readonly PlanCourseOdds[];
}

/** An amount and how likely it runs short. */
export interface PlanOddsAt {
  readonly amount: { readonly exact: string; readonly printed: string };
  /** Whole helpings in it. */
  readonly helpings: number;
  /** Chance that more is wanted, decimal text from 0 to 1. */
  readonly chance: string;
  /** The same as a cook says it: `about 1 in 40 events like this`. */
  readonly odds: string;
}

export interface PlanDishOdds {
  readonly course: string;
  readonly name: string;
  readonly recipe: string;
  readonly helping: { readonly exact: string; readonly printed: string };
  /** Helpings to be expected, to one decimal. */
  readonly expected: string;
  /** The chosen risk by which the amount is found; empty where it follows guests, amount and overage. */
  readonly chosen: string;
  /** Whether the odds are those of somebody missing a first choice and taking another dish. */
  readonly firstChoice: boolean;
  readonly planned: PlanOddsAt;
  /** As its batches make it; null where that is no helping more. */
  readonly cooked: PlanOddsAt | null;
  /** Helpings to be expected missing, and coming back, of what is cooked. */
  readonly missing: string;
  readonly left: string;
  /** What somewhat more would do. */
  readonly more: readonly {
    /** `1 helping`, `1 Full pan`, `½ batch`. */
    readonly more: string;
    readonly at: PlanOddsAt;
    /** Money text; empty where the food is not all priced. */
    readonly cost: string;
  }[];
  /** The least amounts that keep some usual risks. */
  readonly least: readonly { readonly risk: string; readonly at: PlanOddsAt }[];
  /** What would balance a missing helping against one left over; null where their costs are not said. */
  readonly advice: {
    readonly at: PlanOddsAt;
    /** What one of each costs, money text. */
    readonly missing: string;
    readonly leftOver: string;
  } | null;
  readonly why: readonly string[];
}

export interface PlanCourseOdds {
  readonly course: string;
  readonly guests: number;
  readonly risk: string;
  /** Helpings of the course as a whole. */
  readonly helpings: number;
  /** Chance that a guest finds none of its dishes. */
  readonly chance: string;
  readonly odds: string;
  /** Helpings if each dish were carried for itself at the same risk. */
  readonly apart: number;
  /** Helpings by the per-guest amounts. */
  readonly byGuest: number;
  readonly why: readonly string[];
}
