import ical from 'ical-generator';
import { Temporal } from 'temporal-polyfill';
import { addDays, type Day } from '../../engine/calendar/day.ts';
import { counted } from '../../engine/text/counted.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { planDeadlines } from '../plan/deadlines.ts';
import { textAsRead } from '../words/text-as-read.ts';

/**
 * The event, its tasks and its deadlines as RFC 5545. Tasks and deadlines are all-day entries on their day, the parts of
 * the event's day have their times in UTC.
 * UIDs come from event, recipe and step, or from what a deadline is for, so that a second import updates instead of doubling; the stamp is the
 * day the plan was made for, not a clock, so that the same plan gives the same bytes.
 */
export function prepCalendar(
  plan: PrepPlanDocument,
  timeZone: string,
  locale: string,
  today: string,
): string {
  const { event } = plan;
  const calendar = ical({
    name: calendarText(`${event.occasion}, ${event.client}`),
    prodId: '//Salver//Prep plan//EN',
  });
  const stamp = new Date(`${today}T00:00:00Z`);
  const about = `${event.package}, ${counted(event.guests.adults, 'adult')}, ${counted(event.guests.children, 'child', 'children')}`;
  for (const entry of plan.timeline) {
    const start = momentOf(entry.date, entry.begins, timeZone);
    // A part that runs past midnight ends on the next day.
    const lastDay = entry.ends < entry.begins ? addDays(entry.date as Day, 1) : entry.date;
    const end = entry.ends === '' ? undefined : momentOf(lastDay, entry.ends, timeZone);
    calendar.createEvent({
      id: `${event.id}.${entry.part.replaceAll(' ', '-')}@salver`,
      stamp,
      start: new Date(start),
      ...(end !== undefined && { end: new Date(end) }),
      summary: `${entry.what}: ${event.occasion}`,
      location: event.place,
      description: entry.part === 'serve' ? about : textAsRead(entry.why, locale),
    });
  }
  for (const day of plan.days) {
    for (const task of day.tasks) {
      calendar.createEvent({
        id: `${task.id}@salver`,
        stamp,
        start: new Date(`${day.date}T00:00:00Z`),
        allDay: true,
        summary: `${task.recipeName}: ${task.text}`,
        description: `${task.station}, ${textAsRead(task.makes, locale)}, hands-on ${task.handsOn}`,
      });
    }
  }
  for (const { id, date, what } of planDeadlines(plan))
    calendar.createEvent({
      id: `${id}@salver`,
      stamp,
      start: new Date(`${date}T00:00:00Z`),
      allDay: true,
      summary: textAsRead(what, locale),
    });
  return calendar.toString();
}

function momentOf(date: string, clock: string, timeZone: string): number {
  return Temporal.PlainDateTime.from(`${date}T${clock}`).toZonedDateTime(timeZone).epochMilliseconds;
}

/** A text as RFC 5545, 3.3.11 writes it. The library does so for entries, not for the calendar's name. */
function calendarText(text: string): string {
  return text.replace(/[\\;,]/g, '\\$&').replace(/\r?\n/g, '\\n');
}
