import type { When } from '../calendar/when.ts';
import { type Said, type Several, statement } from '../text/statement.ts';
import type { LimitName, SafetyRules } from './limit.ts';

/** Where food is on its way from the delivery to what is left over, in that order. */
export const CHECK_STAGES = [
  'receiving',
  'thawing',
  'cold room',
  'cooking',
  'cooling',
  'reheating',
  'transport',
  'service',
  'end of service',
] as const;

export type CheckStage = (typeof CHECK_STAGES)[number];

/** Something to measure and write down. */
export interface SafetyCheck {
  readonly stage: CheckStage;
  /** When it is due; undefined where a delivery or the use of the food decides. */
  readonly when: When | undefined;
  /** The recipe it is about, by id; empty where it is about none. */
  readonly recipe: string;
  readonly what: Said;
  /** What the code allows: `155 °F for 17 s or above`. */
  readonly limit: Said | Several;
  /** The sections that set it, empty where none does. */
  readonly section: string;
  /** What the crew writes down, in order. */
  readonly blanks: readonly Said[];
}

/** Blanks that most checks have. */
export const READING = statement('safety.blank.reading');
export const TIME = statement('safety.blank.time');
export const INITIALS = statement('safety.blank.initials');
export const STARTED = statement('safety.blank.started');

/** The sections of several limits, each once. */
export function sectionsOf({ limits }: SafetyRules, ...names: readonly LimitName[]): string {
  return [...new Set(names.map((name) => limits[name].section))].filter((each) => each !== '').join(', ');
}
