import Fraction from 'fraction.js';
import { minutes } from '../measure/duration.ts';
import type { CodeTemperature, Rung, SafetyLimits, SafetyRules, Stage } from './limit.ts';

/*
 * The FDA Food Code's limits, each with its section. The code's own text was not read: the figures were read in the
 * adoptions by states that keep its wording, which are named beside them. Local codes differ, and rule.
 */

const [SECOND, MINUTE] = [1, 60];

/**
 * Whole roasts of beef, corned beef, lamb, pork and ham, the one table that the code prints in tenths of a degree
 * Celsius: 54 °C is less than the 54.4 °C it asks. Read in COMAR 10.15.03.10 and, where that leaves lines out, in the
 * Vessel Sanitation Program's Operations Manual of 2018, 7.3.4.1, both after the edition of 2013.
 */
const WHOLE_ROASTS: readonly [Rung, ...Rung[]] = [
  rung(145, '62.8', 4 * MINUTE),
  rung(130, '54.4', 112 * MINUTE),
  rung(131, '55', 89 * MINUTE),
  rung(133, '56.1', 56 * MINUTE),
  rung(135, '57.2', 36 * MINUTE),
  rung(136, '57.8', 28 * MINUTE),
  rung(138, '58.9', 18 * MINUTE),
  rung(140, '60', 12 * MINUTE),
  rung(142, '61.1', 8 * MINUTE),
  rung(144, '62.2', 5 * MINUTE),
  rung(147, '63.9', 134 * SECOND),
  rung(149, '65', 85 * SECOND),
  rung(151, '66.1', 54 * SECOND),
  rung(153, '67.2', 34 * SECOND),
  rung(155, '68.3', 22 * SECOND),
  rung(157, '69.4', 14 * SECOND),
  rung(158, '70', 0),
];

const COLD = temperature(41, 5);
const HOT = temperature(135, 57);

/** Limits in which the editions of 2017 and 2022 agree (2022 from memory where it is not read in an adoption). */
const LIMITS: SafetyLimits = {
  // Virginia 12VAC5-421-340; Washington WAC 246-215-03235.
  receiving: { section: '3-202.11(A)', temperature: COLD },
  'receiving eggs': { section: '3-202.11(C)', temperature: temperature(45, 7) },
  // 145 °F and what falls under it: Minnesota 4626.0340. 17 s: Florida's adoption of the edition of 2017.
  'intact meat and fish': { section: '3-401.11(A)(1)', rungs: [rung(145, 63, 15 * SECOND)] },
  'ground or injected meat': {
    section: '3-401.11(A)(2)',
    rungs: [rung(155, 68, 17 * SECOND), rung(145, 63, 3 * MINUTE), rung(150, 66, MINUTE), rung(158, 70, 0)],
  },
  // Under a second since 2017: a handbook for North Carolina's food handlers.
  poultry: { section: '3-401.11(A)(3)', rungs: [rung(165, 74, 0)] },
  'stuffed food': { section: '3-401.11(A)(3)', rungs: [rung(165, 74, 0)] },
  eggs: {
    section: '3-401.11(A)(2)',
    rungs: [rung(155, 68, 17 * SECOND), rung(145, 63, 3 * MINUTE), rung(150, 66, MINUTE), rung(158, 70, 0)],
  },
  'eggs to order': { section: '3-401.11(A)(1)', rungs: [rung(145, 63, 15 * SECOND)] },
  'whole roasts': { section: '3-401.11(B)', rungs: WHOLE_ROASTS },
  // COMAR 10.15.03.10: fruits and vegetables cooked for hot holding.
  'plant food held hot': { section: '3-401.13', rungs: [rung(135, 57, 0)] },
  // Delaware 3-403.11, paragraphs (A), (C) and (D).
  reheating: { section: '3-403.11(A)', rungs: [rung(165, 74, 15 * SECOND)] },
  'reheating ready-to-eat food': { section: '3-403.11(C)', rungs: [rung(135, 57, 0)] },
  'reheating time': { section: '3-403.11(D)', within: minutes(120) },
  // Delaware 3-501.14(A) and (B).
  cooling: { section: '3-501.14(A)', stages: [stage(temperature(70, 21), 2), stage(COLD, 6)] },
  'cooling from room temperature': { section: '3-501.14(B)', stages: [stage(COLD, 4)] },
  // WAC 246-215-03525.
  'cold holding': { section: '3-501.16(A)(2)', temperature: COLD },
  'hot holding': { section: '3-501.16(A)(1)', temperature: HOT },
  // WAC 246-215-03510: the water at 70 °F or below, raw food above 41 °F for no more than 4 hours.
  thawing: { section: '3-501.13(A)', temperature: COLD },
  'thawing under water': { section: '3-501.13(B)', stages: [stage(temperature(70, 21), 4)] },
  // Minnesota 4626.0400; Southern Nevada Health District.
  'date mark': { section: '3-501.17', days: 7 },
  // WAC 246-215-03530; Georgia 511-6-1-.04(6)(i) and Wyoming chapter 3, section 62.
  'time without control': { section: '3-501.19(B)', within: minutes(240) },
  'time without control, kept cool': { section: '3-501.19(C)', stages: [stage(temperature(70, 21), 6)] },
};

/** The rules of a kitchen that says nothing else. */
export const FOOD_CODE_2022: SafetyRules = {
  edition: 'FDA Food Code 2022',
  place: undefined,
  limits: LIMITS,
};

const FOOD_CODE_2017: SafetyRules = { edition: 'FDA Food Code 2017', place: undefined, limits: LIMITS };

/** The edition of 2013: 15 seconds where later ones ask 17 or none. Minnesota 4626.0340; 165 °F: COMAR 10.15.03.10. */
const FOOD_CODE_2013: SafetyRules = {
  edition: 'FDA Food Code 2013',
  place: undefined,
  limits: {
    ...LIMITS,
    'ground or injected meat': {
      section: '3-401.11(A)(2)',
      rungs: [rung(155, 68, 15 * SECOND), rung(145, 63, 3 * MINUTE), rung(150, 66, MINUTE), rung(158, 70, 0)],
    },
    eggs: {
      section: '3-401.11(A)(2)',
      rungs: [rung(155, 68, 15 * SECOND), rung(145, 63, 3 * MINUTE), rung(150, 66, MINUTE), rung(158, 70, 0)],
    },
    poultry: { section: '3-401.11(A)(3)', rungs: [rung(165, 74, 15 * SECOND)] },
    'stuffed food': { section: '3-401.11(A)(3)', rungs: [rung(165, 74, 15 * SECOND)] },
  },
};

/** The editions whose figures come with Salver, the newest first. */
export const EDITIONS: readonly SafetyRules[] = [FOOD_CODE_2022, FOOD_CODE_2017, FOOD_CODE_2013];

function temperature(fahrenheit: number, celsius: number | string): CodeTemperature {
  return { fahrenheit: new Fraction(`${fahrenheit}`), celsius: new Fraction(`${celsius}`) };
}

function rung(fahrenheit: number, celsius: number | string, seconds: number): Rung {
  return { temperature: temperature(fahrenheit, celsius), seconds };
}

function stage(at: CodeTemperature, hours: number): Stage {
  return { temperature: at, within: minutes(hours * 60) };
}
