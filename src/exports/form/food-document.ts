/** A figure twice: exact for programs, printed for people. */
export interface AmountText {
  readonly exact: string;
  readonly printed: string;
}

/** What earlier events, served the same way, tell of a dish; amounts are for each guest who came, empty where nobody can say. */
export interface PlanEarlier {
  readonly events: number;
  /** At how many of them nothing was left, so that more might have been eaten. */
  readonly nothingLeft: number;
  /** The mean, and where it lies with the confidence that `said` names. */
  readonly mean: string;
  readonly from: string;
  readonly to: string;
  readonly atLeast: string;
  /** All of it in a sentence without full stop. */
  readonly said: string;
}

/** What is said of food that leaves the kitchen raw. */
export interface PlanRaw {
  /** `RAW`; `TREAT AS RAW` where no step says that it is cooked. */
  readonly mark: 'RAW' | 'TREAT AS RAW';
  /** What becomes of it at the place: `cook to 155 °F for 17 s`. */
  readonly next: string;
  /** What the food code asks, where, and who decides. */
  readonly source: string;
}

export interface PlanDish {
  readonly course: string;
  readonly name: string;
  readonly recipe: string;
  /** The recipe that these portions are made apart from; empty for a dish as it is. */
  readonly apartFrom: string;
  /** How they differ: `without butter`; empty for a dish as it is. */
  readonly changes: readonly string[];
  /** Of the guests counted, those with a need that it suits. */
  readonly needs: readonly { readonly need: string; readonly guests: number }[];
  readonly counted: string;
  readonly perGuest: string;
  readonly overage: string;
  readonly need: AmountText;
  readonly asMade: AmountText;
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Allergen and the ways it comes in, in names from the dish down. */
  readonly allergenPaths: readonly { readonly allergen: string; readonly paths: readonly string[] }[];
  /** The same for what labels warn of. */
  readonly mayContainPaths: readonly { readonly allergen: string; readonly paths: readonly string[] }[];
  readonly unsaid: readonly string[];
  readonly diets: readonly {
    readonly diet: string;
    readonly suits: 'yes' | 'no' | 'unknown';
    readonly because: readonly string[];
  }[];
  /** Set where it leaves the kitchen raw; left out where it is ready, and in plans made before this was said. */
  readonly raw?: PlanRaw | undefined;
  /** What earlier events tell of it; left out where none does. */
  readonly earlier?: PlanEarlier | undefined;
  readonly containers: readonly PlanContainer[];
  readonly why: readonly string[];
}

export interface PlanContainer {
  readonly stage: string;
  readonly container: string;
  readonly name: string;
  readonly count: number;
  readonly each: AmountText;
  /** How full the last one is, whole percent of its working fill. */
  readonly lastFull: string;
  readonly why: readonly string[];
}

export interface PlanRecipe {
  readonly id: string;
  readonly name: string;
  readonly usedBy: readonly { readonly by: string; readonly need: AmountText }[];
  readonly need: AmountText;
  readonly batches: string;
  readonly makes: AmountText;
  readonly hold: string;
  readonly keeps: string;
  readonly finish: string;
  /** What it is packed in; left out in plans made before this was said. */
  readonly packed?: readonly { readonly stage: string; readonly what: string }[] | undefined;
  /** Key of the cook's notes among the rendered bodies; empty where there are none. */
  readonly notes: string;
  readonly lines: readonly {
    readonly kind: 'ingredient' | 'recipe';
    readonly id: string;
    readonly name: string;
    readonly preparation: string;
    readonly amount: AmountText;
    readonly note: string;
    readonly allergens: readonly string[];
  }[];
  readonly steps: readonly PlanStep[];
  readonly contains: readonly string[];
  readonly why: readonly string[];
}

export interface PlanStep {
  readonly number: number;
  readonly text: string;
  readonly when: string;
  readonly station: string;
  readonly handsOn: string;
  readonly handsOnMinutes: number;
  readonly unattended: string;
  readonly cookTo: string;
}
