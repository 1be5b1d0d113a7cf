import { addDays, type Day } from '../engine/calendar/day.ts';
import type { TemperatureScale } from '../engine/measure/temperature.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { safetyChecks } from '../engine/plan/safety/checks.ts';
import { DEFERRAL } from '../engine/safety/limit.ts';
import type { SafetyCheck } from '../engine/safety/safety-check.ts';
import type { SafetySheetCheck, SafetySheetDocument } from './form/sheets.ts';
import { dateText } from './words/date-text.ts';

/** The food-safety sheet of a plan, temperatures in the scale the kitchen reads. */
export function safetySheet(
  plan: EventPlan,
  scale: TemperatureScale,
  locale: string,
  supplierName: (id: string) => string,
): SafetySheetDocument {
  const { edition, place } = plan.foodSafety;
  return {
    edition,
    place: place ?? '',
    defers: `Where this sheet and the local rules differ, ${DEFERRAL}.`,
    checks: safetyChecks(plan, scale, supplierName).map((check) =>
      sheetCheck(check, plan.input.date, locale),
    ),
  };
}

function sheetCheck({ when, ...check }: SafetyCheck, eventDate: Day, locale: string): SafetySheetCheck {
  if (!when) {
    const time = check.stage === 'receiving' ? 'on delivery' : 'before use';
    return { ...check, date: '', when: time };
  }
  const date = addDays(eventDate, -when.daysBefore);
  return { ...check, date, when: when.atServing ? 'at serving' : dateText(date, locale) };
}
