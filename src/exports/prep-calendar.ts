import ical from 'ical-generator';
import { Temporal } from 'temporal-polyfill';
import type { PrepPlanDocument } from './prep-plan-document.ts';

/**
 * The event and its tasks as RFC 5545. Tasks are all-day entries on their day, the service has its time in UTC.
 * UIDs come from event, recipe and step, so that a second import updates instead of doubling; the stamp is the
 * day the plan was made for, not a clock, so that the same plan gives the same bytes.
 */
export function prepCalendar(plan: PrepPlanDocument, timeZone: string, today: string): string {
  const { event } = plan;
  const calendar = ical({
    name: calendarText(`${event.occasion}, ${event.client}`),
    prodId: '//Salver//Prep plan//EN',
  });
  const stamp = new Date(`${today}T00:00:00Z`);
  const serves = Temporal.PlainDateTime.from(`${event.date}T${event.serveAt}`).toZonedDateTime(timeZone);
  calendar.createEvent({
    id: `${event.id}.serve@salver`,
    stamp,
    start: new Date(serves.epochMilliseconds),
    summary: `Serve: ${event.occasion}`,
    location: event.place,
    description: `${event.package}, ${event.guests.adults} adults, ${event.guests.children} children`,
  });
  for (const day of plan.days) {
    for (const task of day.tasks) {
      calendar.createEvent({
        id: `${task.id}@salver`,
        stamp,
        start: new Date(`${day.date}T00:00:00Z`),
        allDay: true,
        summary: `${task.recipeName}: ${task.text}`,
        description: `${task.station}, ${task.makes}, hands-on ${task.handsOn}`,
      });
    }
  }
  return calendar.toString();
}

/** A text as RFC 5545, 3.3.11 writes it. The library does so for entries, not for the calendar's name. */
function calendarText(text: string): string {
  return text.replace(/[\\;,]/g, '\\$&').replace(/\r?\n/g, '\\n');
}
