import type { RecipeStep } from '../../food/recipe.ts';
import type { CodeTemperature } from '../../safety/limit.ts';
import type { DayBatch } from '../days/day-batches.ts';
import type { GearLoad } from '../days/loads.ts';
import type { Cooling } from './chill-time.ts';

/** Where work is done: in the kitchen, or at the place of the event with this id. */
export type WorkPlace = 'kitchen' | { readonly event: string };

/** A step of a batch as the clock sees it. Times are whole minutes. */
export interface ClockStep {
  readonly id: string;
  readonly batch: DayBatch;
  readonly step: RecipeStep;
  /** Position among the recipe's steps, from 1. */
  readonly number: number;
  readonly where: WorkPlace;
  /** Hands-on minutes in all, however many share them. */
  readonly handsOn: number;
  /** How many work at it side by side. */
  readonly hands: number;
  /** From its beginning until hands are free. */
  readonly handsFor: number;
  /** What follows without hands, all loads together. */
  readonly unattended: number;
  readonly load: GearLoad | undefined;
  /** Ids of steps that must have ended before it begins. */
  readonly after: readonly string[];
  /** How it gets cold where it is cooled afterward; undefined where it is not. */
  readonly cools: Cooling | undefined;
  /** Wave of service, from 1, and how many there are; undefined where it is done in one go. */
  readonly wave?: { readonly number: number; readonly of: number };
}

/** A step with its hours on a date's clock. */
export interface TimedStep extends ClockStep {
  /** Minutes from midnight; from the beginning of the work where `clock` is false. */
  readonly begins: number;
  readonly handsOff: number;
  readonly ends: number;
  /** When it is cold; undefined where it is not cooled. */
  readonly coldBy: number | undefined;
  /** When it is at the code's first temperature on the way to cold; undefined where there is none. */
  readonly cooledTo: CooledTo | undefined;
  /** False where it is not stated when the crew begins, for work that no event of the day waits for. */
  readonly clock: boolean;
  readonly why: StartReason;
  /** Whether it is on the day's longest chain: a minute lost here is lost for the truck, or for the end of the day. */
  readonly critical: boolean;
}

/** A temperature on the way to cold, and when food is at it, in minutes from midnight. */
export interface CooledTo {
  readonly temperature: CodeTemperature;
  readonly at: number;
}

/** Why a step does not begin later, or, where it is prep for another day, not earlier. */
export type StartReason =
  /** What waits for it, and when that begins. */
  | { readonly kind: 'next'; readonly of: StartNext; readonly at: number }
  /** What it waits for, and when that is done. */
  | { readonly kind: 'after'; readonly recipe: string; readonly number: number; readonly at: number }
  /** What is in use, and by what: from then on for what is done late, until then for what is done early. */
  | {
      readonly kind: 'in use';
      readonly what: 'hands' | 'skill' | 'station' | 'equipment';
      readonly name: string;
      readonly by: InUseBy;
      readonly from?: number;
      readonly until?: number;
    }
  /** The crew comes then, or goes. */
  | { readonly kind: 'crew comes'; readonly at: number }
  | { readonly kind: 'crew goes'; readonly at: number }
  | { readonly kind: 'none' };

/** What a step has to be done for. */
export type StartNext =
  | { readonly kind: 'step'; readonly recipe: string; readonly number: number }
  /** Packed by then; loaded hot, served from then on. */
  | { readonly kind: 'pack' | 'load' | 'serve'; readonly event: string }
  /** Cold by then, and at the code's first temperature before. */
  | { readonly kind: 'cold'; readonly event: string; readonly first: CooledTo | undefined };

/** What has the hands, the bench or the oven that a step would need. */
export type InUseBy =
  | { readonly kind: 'step'; readonly recipe: string }
  | { readonly kind: 'pack' | 'load'; readonly event: string };
