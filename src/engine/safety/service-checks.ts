import type { When } from '../calendar/when.ts';
import type { Hold, Recipe } from '../food/recipe.ts';
import { durationText, type Minutes, minutes } from '../measure/duration.ts';
import type { TemperatureScale } from '../measure/temperature.ts';
import { stagesText } from './cooling.ts';
import { limitTemperatureText, type SafetyRules } from './limit.ts';
import { type SafetyCheck, sectionsOf } from './safety-check.ts';
import { standsWithoutControl } from './time-without-control.ts';
import { travelsAs } from './travels-as.ts';

const ON_THE_DAY: When = { daysBefore: 0, atServing: false };
const AT_SERVING: When = { daysBefore: 0, atServing: true };

/** Food on the line is measured so often, in minutes (common practice, no source). */
const BETWEEN_READINGS = 120;
/** Taken where nobody has said how long is served. */
const USUAL_SERVICE = 240;

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
        limit: `thrown away ${durationText(within)} after it left hot or cold`,
        section: sectionsOf(rules, 'time without control'),
        blanks: ['left hot or cold at', 'throw away at', 'initials'],
      },
    ];
  }
  return [
    {
      ...shared,
      ...held(travelsAs(recipe), rules, scale),
      stage: 'transport',
      when: ON_THE_DAY,
      blanks: ['leaving', 'arriving', 'initials'],
    },
    {
      ...shared,
      ...held(recipe.hold, rules, scale),
      stage: 'service',
      when: AT_SERVING,
      blanks: [...readingTimes(service), 'initials'],
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
      what: 'Food that guests could reach, or that stood without heat or cold',
      limit: 'thrown away',
      section: '',
      blanks: ['what', 'time', 'initials'],
    },
    {
      stage: 'end of service',
      when: AT_SERVING,
      recipe: '',
      what: 'Food that never left hot or cold',
      limit: `hot food cooled to ${stagesText(cooling, scale)}; dated, and used within ${mark.days} days of the day it was made, that day counted`,
      section: sectionsOf(rules, 'cooling', 'date mark'),
      blanks: ['what', 'reading', 'time', 'initials'],
    },
  ];
}

function held(hold: Hold, rules: SafetyRules, scale: TemperatureScale): { limit: string; section: string } {
  if (hold === 'frozen') return { limit: 'frozen solid', section: '3-501.11' };
  const name = hold === 'hot' ? 'hot holding' : 'cold holding';
  const degrees = limitTemperatureText(rules.limits[name].temperature, scale);
  return {
    limit: hold === 'hot' ? `${degrees} or above` : `${degrees} or below`,
    section: sectionsOf(rules, name),
  };
}

function readingTimes(service: Minutes | undefined): string[] {
  const times = Math.floor((service ?? USUAL_SERVICE) / BETWEEN_READINGS) + 1;
  return Array.from({ length: times }, (_, index) =>
    index === 0 ? 'at the start' : `after ${durationText(minutes(index * BETWEEN_READINGS))}`,
  );
}
