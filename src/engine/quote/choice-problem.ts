import type { TextProblem } from '../text/visible-text.ts';
import type { GuestGroup } from './counts.ts';

/**
 * Why a choice cannot be accepted, and where: `guests.adults`, `courses.Salads`. Plain values; the sentence is
 * `problemWords`'s, for page, receiver and commands alike.
 */
export type ChoiceProblem = { readonly path: string } & ProblemFacts;

/** What is wrong, with what a sentence on it speaks of. */
export type ProblemFacts =
  | { readonly of: 'no such menu'; readonly menus: readonly string[] }
  | { readonly of: 'no count of people'; readonly group: GuestGroup; readonly most: number }
  | { readonly of: 'nobody comes' }
  /** More than the menu's prices reach. */
  | { readonly of: 'beyond prices'; readonly menu: string; readonly most: number; readonly guests: number }
  | { readonly of: 'no such course'; readonly menu: string; readonly eachGuest: boolean }
  | { readonly of: 'dish twice'; readonly course: string }
  | { readonly of: 'dish not offered'; readonly course: string; readonly eachGuest: boolean }
  | {
      readonly of: 'dishes to choose';
      readonly course: string;
      readonly due: number;
      readonly chosen: number;
    }
  | { readonly of: 'no count of a dish' }
  | {
      readonly of: 'counts do not add up';
      readonly course: string;
      readonly due: number;
      readonly sum: number;
    }
  | { readonly of: 'no such add-on' }
  | { readonly of: 'no such hours'; readonly addOn: string; readonly most: number }
  | { readonly of: 'more than once'; readonly addOn: string }
  | { readonly of: 'no count of a need'; readonly need: string }
  | { readonly of: 'name of a need'; readonly wrong: TextProblem }
  | {
      readonly of: 'more with a need';
      readonly need: string;
      readonly guests: number;
      readonly people: number;
    }
  /** The caterer's own people are not the client's to set. */
  | { readonly of: 'crew'; readonly recorded: number; readonly given: number }
  /** More guests at the table than may be named without asking. */
  | { readonly of: 'beyond asking'; readonly most: number; readonly guests: number }
  | { readonly of: 'many vendors'; readonly vendors: number; readonly guests: number };
