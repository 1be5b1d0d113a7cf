/**
 * What an event's place has to cook with, read from the facts that a proposal writes of its venue (`ovens: none`,
 * `power: 2 × 20 A`, `water: yes`). Undefined is not stated, and never taken for a yes.
 */
export interface VenueKit {
  readonly ovens: number | undefined;
  readonly burners: number | undefined;
  /** Circuits and the amperes of each; an empty list where there is no power. */
  readonly circuits: readonly { readonly count: number; readonly amperes: number }[] | undefined;
  readonly water: boolean | undefined;
  readonly coldSpace: boolean | undefined;
  readonly cover: boolean | undefined;
  /** Whether things are carried up or down steps. */
  readonly stairs: boolean | undefined;
}
