import type { PlanRaw } from './food-document.ts';

export interface PackOutLine {
  readonly group: 'food' | 'service ware' | 'staff' | 'add-ons';
  readonly item: string;
  readonly container: string;
  readonly count: number;
  readonly unit: string;
  readonly hold: string;
  readonly note: string;
  /** As of a dish. Such lines come after all others: raw food goes below and apart from what is ready to eat. */
  readonly raw?: PlanRaw | undefined;
}

export interface PlanLabel {
  readonly dish: string;
  readonly container: string;
  /** `1 of 3` */
  readonly of: string;
  readonly job: string;
  readonly date: string;
  readonly amount: string;
  readonly ingredients: string;
  /** For whom it is made apart or held back, with room for name and table where it is sealed; empty for everybody. */
  readonly guests: string;
  /** In capitals, so that no eye passes over them. */
  readonly contains: readonly string[];
  /** In capitals as well. */
  readonly mayContain: readonly string[];
  readonly madeOn: string;
  /** The last day it may be served, in words; empty where nobody states how long it keeps: it is filled in by hand. */
  readonly useBy: string;
  /** Where that is empty, the day by which the food code or a part of it wants it used in any case, if one is known. */
  readonly useByLatest?: string | undefined;
  readonly hold: string;
  readonly finish: string;
  /** As of a dish. Such labels come after all others. */
  readonly raw?: PlanRaw | undefined;
}
