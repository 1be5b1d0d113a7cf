import type { When } from '../calendar/when.ts';
import type { Hold, Recipe } from '../food/recipe.ts';
import { durationText, type Minutes, minutes } from '../measure/duration.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { type Said, type Statement, statement } from '../text/statement.ts';
import type { SafetyRules } from './limit.ts';
import { limitTemperatureText, stagesSaid } from './limit-said.ts';
import { INITIALS, READING, type SafetyCheck, sectionsOf, TIME } from './safety-check.ts';
import { standsWithoutControl } from './time-without-control.ts';
import { travelsAs } from './travels-as.ts';

const ON_THE_DAY: When = { daysBefore: 0, atServing: false };
const AT_SERVING: When = { daysBefore: 0, atServing: true };

/** Food on the line is measured so often, in minutes (common practice, no source). */
const BETWEEN_READINGS = 120;
/** Taken where the length of service is not stated. */
const USUAL_SERVICE = 240;

const WHAT = statement('safety.blank.what');

/** What to measure of one dish from leaving the kitchen to the end of service. */
export function serviceChecks(
  dish: { readonly name: string; readonly recipe: Recipe },
  service: Minutes | undefined,
  rules: SafetyRules,
  scale: TemperatureScale,
): SafetyCheck[] {
  const { recipe, name } = dish;
  if (recipe.temperatureControl === false) return [];
  const shared = { recipe: recipe.id, what: name };
  if (standsWithoutControl(recipe)) {
    const { within } = rules.limits['time without control'];
    return [
      {
        ...shared,
        stage: 'service',
        when: AT_SERVING,
        limit: statement('safety.throw-away-after', { time: durationText(within) }),
        section: sectionsOf(rules, 'time without control'),
        blanks: [statement('safety.blank.left-at'), statement('safety.blank.throw-away-at'), INITIALS],
      },
    ];
  }
  return [
    {
      ...shared,
      ...held(travelsAs(recipe), rules, scale),
      stage: 'transport',
      when: ON_THE_DAY,
      blanks: [statement('safety.blank.leaving'), statement('safety.blank.arriving'), INITIALS],
    },
    {
      ...shared,
      ...held(recipe.hold, rules, scale),
      stage: 'service',
      when: AT_SERVING,
      blanks: [...readingTimes(service), INITIALS],
    },
  ];
}

/** What is done with what is left, once for the event. */
export function endChecks(rules: SafetyRules, scale: TemperatureScale): SafetyCheck[] {
  const { cooling, 'date mark': mark } = rules.limits;
  return [
    {
      stage: 'end of service',
      when: AT_SERVING,
      recipe: '',
      what: statement('safety.left-out'),
      limit: statement('safety.left-out.limit'),
      section: '',
      blanks: [WHAT, TIME, INITIALS],
    },
    {
      stage: 'end of service',
      when: AT_SERVING,
      recipe: '',
      what: statement('safety.left-held'),
      limit: statement('safety.left-held.limit', {
        stages: stagesSaid(cooling, scale),
        days: `${mark.days}`,
      }),
      section: sectionsOf(rules, 'cooling', 'date mark'),
      blanks: [WHAT, READING, TIME, INITIALS],
    },
  ];
}

function held(
  hold: Hold,
  rules: SafetyRules,
  scale: TemperatureScale,
): { limit: Statement; section: string } {
  if (hold === 'frozen') return { limit: statement('safety.frozen'), section: '3-501.11' };
  const name = hold === 'hot' ? 'hot holding' : 'cold holding';
  const temperature = limitTemperatureText(rules.limits[name].temperature, scale);
  return {
    limit: statement(hold === 'hot' ? 'safety.or-above' : 'safety.or-below', { temperature }),
    section: sectionsOf(rules, name),
  };
}

function readingTimes(service: Minutes | undefined): Said[] {
  const times = Math.floor((service ?? USUAL_SERVICE) / BETWEEN_READINGS) + 1;
  return Array.from({ length: times }, (_, index) =>
    index === 0
      ? statement('safety.blank.at-start')
      : statement('safety.blank.after', { time: durationText(minutes(index * BETWEEN_READINGS)) }),
  );
}
