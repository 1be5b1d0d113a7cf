import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import type { SafetySheetCheck } from '../../../exports/form/sheets.ts';

/**
 * The working day on whose paper a check of food safety stands: that of its work in the kitchen. Undefined for what is
 * measured on delivery, on the road, at the place or when food is used, which the event's own paper has.
 */
export function dayOfCheck({ days }: Pick<PrepPlanDocument, 'days'>, check: SafetySheetCheck) {
  const { stage, date, when } = check;
  if (stage === 'transport') return undefined;
  // What is done at serving says so in place of its day.
  return days.find((day) => day.date === date && day.dateText === when)?.date;
}
