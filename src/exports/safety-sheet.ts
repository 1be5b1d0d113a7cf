import { addDays, type Day } from '../engine/calendar/day.ts';
import type { TemperatureScale } from '../engine/measure/temperature.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { safetyChecks } from '../engine/plan/safety/checks.ts';
import type { SafetyCheck } from '../engine/safety/safety-check.ts';
import { type Say, wordsIn } from '../words/words-in.ts';
import type { SafetySheetCheck, SafetySheetDocument } from './form/sheets.ts';
import { dateText } from './words/date-text.ts';
import { statementsIn } from './words/statement-text.ts';

/** The food-safety sheet of a plan, temperatures in the scale the kitchen reads. */
export function safetySheet(
  plan: EventPlan,
  scale: TemperatureScale,
  locale: string,
  supplierName: (id: string) => string,
): SafetySheetDocument {
  const say = wordsIn(locale);
  const { edition, place } = plan.foodSafety;
  return {
    edition,
    place: place ?? '',
    defers: say('plan.defers', { defers: say('safety.defers') }),
    checks: safetyChecks(plan, scale, (id) =>
      id === '' ? say('plan.supplier-unknown') : supplierName(id),
    ).map((check) => sheetCheck(check, plan.input.date, locale, say)),
  };
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
