/** The food-safety sheet of an event: what to measure when, what the code allows, and room for what was read. */
export interface SafetySheetDocument {
  /** The code and edition that the sections are of: `FDA Food Code 2022`. */
  readonly edition: string;
  /** Where it is applied; empty where nobody has said. */
  readonly place: string;
  /** Who has the last word. */
  readonly defers: string;
  /** In the order of the work. */
  readonly checks: readonly SafetySheetCheck[];
}

export interface SafetySheetCheck {
  /** `receiving`, `thawing`, `cold room`, `cooking`, `cooling`, `reheating`, `transport`, `service`, `end of service`. */
  readonly stage: string;
  /** `2027-05-14`; empty where a delivery or the use of the food decides. */
  readonly date: string;
  /** `Friday, May 14, 2027`, `at serving`, `on delivery`, `before use`. */
  readonly when: string;
  /** Id of the recipe it is about; empty where it is about none. */
  readonly recipe: string;
  readonly what: string;
  readonly limit: string;
  /** Sections of the edition; empty where none sets it. */
  readonly section: string;
  /** What is written down by hand, in order: `reading`, `time`, `initials`. */
  readonly blanks: readonly string[];
}
