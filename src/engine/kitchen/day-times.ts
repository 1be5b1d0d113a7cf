/** How long the parts of an event's day take that no recipe knows of, in minutes. */
export interface DayTimes {
  readonly pack: number;
  readonly load: number;
  readonly clear: number;
  /** Back at the kitchen. */
  readonly unload: number;
}

/** What a kitchen takes where its file does not say: common practice, no source. */
export const USUAL_DAY: DayTimes = { pack: 60, load: 30, clear: 75, unload: 30 };

/** From arriving to serving, in minutes, where neither the proposal nor the kitchen states it: common practice, no source. */
export const USUAL_SET_UP = 90;
