/** What food travels to events in, by kind. */
export interface Vehicle {
  readonly id: string;
  readonly name: string;
  readonly count: number;
}
