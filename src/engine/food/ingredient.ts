import type Fraction from 'fraction.js';
import type { Conversion } from '../measure/conversions.ts';
import type { Allergen } from './allergen.ts';
import type { Origin } from './origin.ts';

export type Storage = 'dry' | 'chilled' | 'frozen';

/** In what state animal food comes, as far as it changes how hot it has to get; whole raw pieces have no word. */
export const SOLD_AS = ['ready to eat', 'ground', 'injected', 'tenderized', 'stuffed'] as const;

export type SoldAs = (typeof SOLD_AS)[number];

/** What is bought: a food, the facts about it that safety and quantities rest on. */
export interface Ingredient {
  readonly id: string;
  readonly name: string;
  /** What it comes from; undefined where it is not stated, and then no diet is ever claimed for it. */
  readonly from: readonly Origin[] | undefined;
  /** Allergens it contains; empty where the file says `none`, undefined where it is not stated. */
  readonly contains: readonly Allergen[] | undefined;
  readonly mayContain: readonly Allergen[];
  /** True where what its label warns of is stated, `none` included. */
  readonly warningsSaid?: true;
  readonly conversions: readonly Conversion[];
  /** Share left (edible portion ÷ as purchased) for a preparation not listed in `yields`; undefined = nothing is lost. */
  readonly yield: Fraction | undefined;
  /** Share left by preparation, in the words of recipe lines. */
  readonly yields: ReadonlyMap<string, Fraction>;
  /** Whole days it keeps as bought; undefined where not stated. */
  readonly keepsDays: number | undefined;
  readonly storage: Storage | undefined;
  /** `ready to eat` where it needs no cooking: cured, smoked, canned, pasteurized, rendered. */
  readonly soldAs?: SoldAs | undefined;
  /** The parts or the label of a compound bought food, as text. */
  readonly parts: string | undefined;
  /** The pack the caterer insists on buying. */
  readonly pinned: { readonly supplier: string; readonly pack: string } | undefined;
  readonly source: string | undefined;
}
