/** The dish of the same course that another takes the place of, and for whom. */
export interface InsteadOf {
  /** Id of its recipe. */
  readonly recipe: string;
  /** The needs as written, each as `parseNeed` reads it; undefined = whoever cannot eat that dish. */
  readonly needs?: readonly string[];
}
