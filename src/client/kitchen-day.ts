import { type Day, laterDay, parseDay } from '../engine/calendar/day.ts';

/**
 * Today in the kitchen's time zone by the visitor's clock, but never before the day the offer was issued: a clock
 * that says so is wrong. A zone the browser does not know is taken as its own.
 */
export function kitchenDay(now: Date, timeZone: string, issued: Day | null): Day {
  const today = dayIn(now, timeZone);
  return issued === null ? today : laterDay(today, issued);
}

function dayIn(now: Date, timeZone: string): Day {
  const parts = new Map(
    formatFor(timeZone)
      .formatToParts(now)
      .map(({ type, value }) => [type, value]),
  );
  const day = parseDay(`${parts.get('year')}-${parts.get('month')}-${parts.get('day')}`);
  if (!day.ok) throw new Error(`the clock gives no day: ${day.what}`);
  return day.value;
}

function formatFor(timeZone: string): Intl.DateTimeFormat {
  const fields = {
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    calendar: 'gregory',
    numberingSystem: 'latn',
  } as const;
  try {
    return new Intl.DateTimeFormat('en', { ...fields, timeZone });
  } catch {
    return new Intl.DateTimeFormat('en', fields);
  }
}
