import type { When } from '../calendar/when.ts';
import type { DishRole } from '../course/dish-role.ts';
import type { Minutes } from '../measure/duration.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { HeldTemperature } from '../measure/temperature.ts';
import type { Statement } from '../text/statement.ts';
import type { Ingredient } from './ingredient.ts';

/** How the need of a recipe is rounded to what is cooked. */
export type BatchRule = 'exact' | 'half' | 'whole';

export const HOLDS = ['hot', 'cold', 'frozen', 'room'] as const;

export type Hold = (typeof HOLDS)[number];

/** What a recipe line calls for: a bought food, or what another recipe makes. */
export type LineItem =
  | { readonly kind: 'ingredient'; readonly ingredient: Ingredient }
  | { readonly kind: 'recipe'; readonly recipe: Recipe };

export interface RecipeLine {
  readonly item: LineItem;
  /** The words after the comma (`peeled`), null where the line says none. */
  readonly preparation: string | null;
  /** True where the line says `as purchased`: no yield is applied. */
  readonly asPurchased: boolean;
  /** True where a counted amount is written as trimmed (`8 trimmed heads`): the yield is applied to it. */
  readonly trimmed?: true;
  /** The amount for one batch. */
  readonly amount: Quantity;
  readonly note: string | undefined;
  /** Names of the foods whose place the item takes, the first one first; left out where it is the recipe's own. */
  readonly insteadOf?: readonly string[];
  /** Positions from 0 of the steps that take it, rising; left out where none states it: the first step does (`step-lines.ts`). */
  readonly steps?: readonly number[];
}

/** What a cook does to one item of a recipe for guests who need it: leaves it out, or takes another instead. */
export interface RecipeChange {
  /** Id of the ingredient or recipe that lines of this recipe call for. */
  readonly item: string;
  /** Taken instead, in the same amount; undefined where the item is left out. */
  readonly instead: LineItem | undefined;
  /** The needs it is done for, each as `parseNeed` reads it; checked when the recipe was linked. */
  readonly needs: readonly string[];
}

export interface RecipeStep {
  readonly text: string;
  readonly when: When;
  readonly station: string;
  readonly handsOn: Minutes;
  /** True where `handsOn` is for one batch and follows the batches cooked, else it counts once. */
  readonly handsOnPerBatch: boolean;
  readonly unattended: Minutes;
  /** Temperature to reach, in °F or °C as written, and how long it is held; undefined where none is stated. */
  readonly cookTo: HeldTemperature | undefined;
  /** Where it is done, where that is stated; else `at serving` is at the place and all else in the kitchen (`isAtPlace`). */
  readonly at?: 'kitchen' | 'place';
  /**
   * Least time between its end and the next step, or after the last one until the food is packed or served: rest, cool,
   * set. No hands and no equipment; none where left out.
   */
  readonly rest?: Minutes;
  /** Most time between its end and the beginning of the next step; any where left out. */
  readonly useWithin?: Minutes;
  /** One of those at it in the kitchen has this skill; left out where anybody will do. */
  readonly skill?: string;
  /** True: at the place the first guests may be served while the rest of it still cooks. */
  readonly waves?: boolean;
}

/** Whether a step is done at the event's place and not in the kitchen. */
export function isAtPlace({ at, when }: Pick<RecipeStep, 'at' | 'when'>): boolean {
  return at === undefined ? when.atServing : at === 'place';
}

/**
 * What a recipe does to raw animal food that changes how hot it has to get (FDA Food Code 3-401.11): germs on the
 * outside are carried in, or a whole roast is held for longer at less.
 */
export const COOKED_AS = ['ground', 'injected', 'tenderized', 'stuffed', 'whole roast', 'to order'] as const;

export type CookedAs = (typeof COOKED_AS)[number];

/** How finished food goes into a container: as much as the container holds, or so much in each. */
export interface PackRule {
  readonly container: string;
  /** Amount in each container; undefined = by the container's own capacity. */
  readonly each: Quantity | undefined;
}

/** The three stages of containers: shallow to chill, deep to carry, right for the line to serve. */
export type PackStage = 'chill' | 'carry' | 'serve';

/** What is cooked. */
export interface Recipe {
  readonly id: string;
  readonly name: string;
  /** How it differs from the recipe of that name, until the name itself says so (`recipeCalled`). */
  readonly changed?: readonly Statement[];
  /** Its short word on place cards and tables; undefined where the kitchen gives none (`cardWord`). */
  readonly card?: string | undefined;
  /** What one batch makes; further entries say the same in other units and so convert the finished food. */
  readonly makes: readonly [Quantity, ...Quantity[]];
  readonly batches: BatchRule;
  readonly lines: readonly RecipeLine[];
  /** What may be left out or swapped for a need, in the order written; none where not stated. */
  readonly changes?: readonly RecipeChange[];
  /** Ids of recipes among its lines that travel and are given out beside it, each in its own containers. */
  readonly beside?: readonly string[];
  readonly steps: readonly RecipeStep[];
  readonly keepsDays: number | undefined;
  readonly hold: Hold;
  /** How long the finished dish may wait, held as `hold` states, without losing quality; left out: `usualStands`. */
  readonly stands?: Minutes;
  /** From the end of cooking to cold; left out: by the container it is chilled in (`usualChill`). */
  readonly chill?: Minutes;
  /** The part of `chill` until the first temperature of the food code, 70 °F; left out: a third (`coolingOf`). */
  readonly chillFirst?: Minutes;
  readonly reheat: boolean;
  readonly pack: Readonly<Partial<Record<PackStage, PackRule>>>;
  /** How to finish it at the venue, for the label. */
  readonly finish: string | undefined;
  /** True where it holds raw or undercooked animal food (FDA Food Code 3-603.11 asks for a written notice). */
  readonly containsRaw: boolean;
  /** What is done to raw animal food in it; undefined = pieces as they are, and eggs for more than one order. */
  readonly cookedAs?: CookedAs | undefined;
  /** What it is in a course wherever a package does not state it; undefined = the course tells. */
  readonly role?: DishRole | undefined;
  /** False where the finished food is safe at room temperature, as bread and dry spice are; else it needs heat or cold. */
  readonly temperatureControl?: boolean;
}
