import { addDays, type Day } from '../engine/calendar/day.ts';
import type { TemperatureScale } from '../engine/measure/temperature.ts';
import { type ThrowAway, thrownAway } from '../engine/plan/clock/throw-away.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { safetyChecks } from '../engine/plan/safety/checks.ts';
import type { SafetyCheck } from '../engine/safety/safety-check.ts';
import { type Say, wordsIn } from '../words/words-in.ts';
import type { SafetySheetCheck, SafetySheetDocument } from './form/sheets.ts';
import { clockOf } from './words/clock-text.ts';
import { dateText } from './words/date-text.ts';
import { statementsIn } from './words/statement-text.ts';

/** The food-safety sheet of a plan, temperatures in the scale the kitchen reads. */
export function safetySheet(
  plan: EventPlan,
  scale: TemperatureScale,
  locale: string,
  supplierName: (id: string) => string,
  throwAways: readonly ThrowAway[] = [],
): SafetySheetDocument {
  const say = wordsIn(locale);
  const { edition, place } = plan.foodSafety;
  return {
    edition,
    place: place ?? '',
    defers: say('plan.defers', { defers: say('safety.defers') }),
    checks: safetyChecks(plan, scale, (id) =>
      id === '' ? say('plan.supplier-unknown') : supplierName(id),
    ).map((check) => timed(sheetCheck(check, plan.input.date, locale, say), throwAways, say)),
  };
}

/** Food that time alone keeps safe, with its time in the plan. */
function timed(check: SafetySheetCheck, throwAways: readonly ThrowAway[], say: Say): SafetySheetCheck {
  const food = check.stage === 'service' && thrownAway(throwAways, { id: check.recipe });
  if (!food) return check;
  const spoken = { limit: check.limit, left: clockOf(food.left), by: clockOf(food.by) };
  return { ...check, limit: say('plan.throw-away-check', spoken) };
}

function sheetCheck(
  { when, ...of }: SafetyCheck,
  eventDate: Day,
  locale: string,
  say: Say,
): SafetySheetCheck {
  const inWords = statementsIn(locale);
  const check = {
    ...of,
    what: inWords(of.what),
    limit: inWords(of.limit),
    blanks: of.blanks.map(inWords),
  };
  if (!when) {
    const time = check.stage === 'receiving' ? say('plan.on-delivery') : say('plan.before-use');
    return { ...check, date: '', when: time };
  }
  const date = addDays(eventDate, -when.daysBefore);
  return { ...check, date, when: when.atServing ? say('plan.at-serving') : dateText(date, locale) };
}
