import type Fraction from 'fraction.js';
import type { Minutes } from '../measure/duration.ts';
import {
  degreesIn,
  type HeldTemperature,
  heldTemperatureText,
  type Temperature,
  type TemperatureScale,
} from '../measure/temperature.ts';

/** What each limit is about, by the name that kitchen.yaml uses, and how its figure is made up. */
export const LIMIT_KINDS = {
  receiving: 'temperature',
  'receiving eggs': 'temperature',
  'intact meat and fish': 'cooking',
  'ground or injected meat': 'cooking',
  poultry: 'cooking',
  'stuffed food': 'cooking',
  eggs: 'cooking',
  'eggs to order': 'cooking',
  'whole roasts': 'cooking',
  'plant food held hot': 'cooking',
  reheating: 'cooking',
  'reheating ready-to-eat food': 'cooking',
  'reheating time': 'time',
  cooling: 'cooling',
  'cooling from room temperature': 'cooling',
  'cold holding': 'temperature',
  'hot holding': 'temperature',
  thawing: 'temperature',
  'thawing under water': 'cooling',
  'date mark': 'days',
  'time without control': 'time',
  'time without control, kept cool': 'cooling',
} as const satisfies Record<string, LimitKind>;

type LimitKind = 'temperature' | 'cooking' | 'cooling' | 'time' | 'days';

export type LimitName = keyof typeof LIMIT_KINDS;

/** The names of the limits whose figure is made up in one way. */
export type LimitNameOf<K extends LimitKind> = {
  [N in LimitName]: (typeof LIMIT_KINDS)[N] extends K ? N : never;
}[LimitName];

/**
 * A temperature of a code, in both scales as the code prints them. A code rounds: it puts 68 °C beside 155 °F,
 * which is 154.4 °F. What is written in one scale is therefore held against the code's figure in that scale.
 */
export interface CodeTemperature {
  readonly fahrenheit: Fraction;
  readonly celsius: Fraction;
}

/** One way to cook food enough: at least so hot, for at least so long. */
export interface Rung {
  readonly temperature: CodeTemperature;
  /** Whole seconds; 0 where reaching the temperature is enough. */
  readonly seconds: number;
}

/** One stage: at most so warm, within so long of the beginning. */
export interface Stage {
  readonly temperature: CodeTemperature;
  readonly within: Minutes;
}

interface Figures {
  readonly temperature: { readonly temperature: CodeTemperature };
  /** Ways to cook that are enough, each for itself; the one that codes name first comes first. */
  readonly cooking: { readonly rungs: readonly [Rung, ...Rung[]] };
  readonly cooling: { readonly stages: readonly [Stage, ...Stage[]] };
  readonly time: { readonly within: Minutes };
  readonly days: { readonly days: number };
}

/** A limit and the section of the code that sets it. */
export type LimitOf<K extends LimitKind> = Figures[K] & { readonly section: string };

export type SafetyLimits = { readonly [N in LimitName]: LimitOf<(typeof LIMIT_KINDS)[N]> };

/** The food code that a kitchen works by. */
export interface SafetyRules {
  /** The code and its edition: `FDA Food Code 2022`. */
  readonly edition: string;
  /** Where the code is applied, which may have changed it; undefined where it is not stated. */
  readonly place: string | undefined;
  readonly limits: SafetyLimits;
}

/** A code's temperature in one of its scales. */
export function codeTemperature(temperature: CodeTemperature, scale: TemperatureScale): Temperature {
  return { degrees: scale === 'F' ? temperature.fahrenheit : temperature.celsius, scale };
}

/** Both scales of a temperature, the other one exact. */
export function bothScales(temperature: Temperature): CodeTemperature {
  return { fahrenheit: degreesIn('F', temperature), celsius: degreesIn('C', temperature) };
}

/** One way to cook as a recipe's step writes it: `155 °F for 17 s`. */
export function rungText({ temperature, seconds }: Rung, scale: TemperatureScale): string {
  return heldTemperatureText({ ...codeTemperature(temperature, scale), seconds });
}

/**
 * A time so short that reading a probe takes as long (common practice, no source): a step that names a temperature
 * and no time is taken to be held for it.
 */
const A_READING_SECONDS = 30;

/** The first way to cook that a step's temperature and time meet; undefined where they meet none. */
export function rungMet(limit: LimitOf<'cooking'>, stated: HeldTemperature): Rung | undefined {
  const { seconds = A_READING_SECONDS } = stated;
  return limit.rungs.find(
    (rung) =>
      stated.degrees.gte(codeTemperature(rung.temperature, stated.scale).degrees) && rung.seconds <= seconds,
  );
}
