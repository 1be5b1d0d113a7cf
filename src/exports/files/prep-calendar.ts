import ical from 'ical-generator';
import { Temporal } from 'temporal-polyfill';
import { addDays, type Day } from '../../engine/calendar/day.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanTask, PlanTimelineEntry } from '../form/day.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { planDeadlines } from '../plan/deadlines.ts';
import { textAsRead } from '../words/text-as-read.ts';

/**
 * The event, its tasks and its deadlines as RFC 5545. Tasks and the parts of the event's day have their times in UTC,
 * deadlines and tasks whose hour is not known are all-day entries.
 * UIDs come from event, recipe and step, or from what a deadline is for, so that a second import updates instead of doubling; the stamp is the
 * day the plan was made for, not a clock, so that the same plan gives the same bytes.
 */
export function prepCalendar(
  plan: PrepPlanDocument,
  timeZone: string,
  locale: string,
  today: string,
): string {
  const say = wordsIn(locale);
  const { event } = plan;
  const calendar = ical({
    name: calendarText(say('lists.calendar.name', { event: event.occasion, client: event.client })),
    prodId: '//Salver//Prep plan//EN',
  });
  const stamp = new Date(`${today}T00:00:00Z`);
  const about = say('lists.calendar.event', {
    package: event.package,
    adults: say('lists.calendar.adults', { n: event.guests.adults }),
    children: say('lists.calendar.children', { n: event.guests.children }),
  });
  const courses = plan.timeline.filter(({ part }) => part === 'course');
  for (const entry of plan.timeline) {
    const start = momentOf(entry.date, entry.begins, timeZone);
    // A part that runs past midnight ends on the next day.
    const lastDay = entry.ends < entry.begins ? addDays(entry.date as Day, 1) : entry.date;
    const end = entry.ends === '' ? undefined : momentOf(lastDay, entry.ends, timeZone);
    calendar.createEvent({
      id: `${event.id}.${entry.part.replaceAll(' ', '-')}${numberOf(entry, courses)}@salver`,
      stamp,
      start: new Date(start),
      ...(end !== undefined && { end: new Date(end) }),
      summary: say('lists.calendar.part', { part: entry.what, event: event.occasion }),
      location: event.place,
      description: entry.part === 'serve' ? about : textAsRead(entry.why, locale),
    });
  }
  for (const day of plan.days) {
    for (const task of day.tasks) {
      calendar.createEvent({
        id: `${task.id}@salver`,
        stamp,
        ...hoursOf(day.date, task, timeZone),
        summary: say('lists.calendar.task', { recipe: task.recipeName, step: task.text }),
        description: say('lists.calendar.task-about', {
          station: task.station,
          amount: textAsRead(task.makes, locale),
          time: task.handsOn,
        }),
      });
    }
  }
  for (const { id, date, what } of planDeadlines(plan, say))
    calendar.createEvent({
      id: `${id}@salver`,
      stamp,
      start: new Date(`${date}T00:00:00Z`),
      allDay: true,
      summary: textAsRead(what, locale),
    });
  return calendar.toString();
}

/** Courses are told by their number, which other parts of the day do not need. */
function numberOf(entry: PlanTimelineEntry, courses: readonly PlanTimelineEntry[]): string {
  const at = courses.indexOf(entry);
  return at === -1 ? '' : `-${at + 1}`;
}

/** A task's own hours, as its page has them; all day where they are not known. One that is done past midnight ends then. */
function hoursOf(date: string, { at, until }: PlanTask, timeZone: string) {
  if (until === undefined) return { start: new Date(`${date}T00:00:00Z`), allDay: true };
  const lastDay = until < at ? addDays(date as Day, 1) : date;
  return {
    start: new Date(momentOf(date, at, timeZone)),
    end: new Date(momentOf(lastDay, until, timeZone)),
  };
}

function momentOf(date: string, clock: string, timeZone: string): number {
  return Temporal.PlainDateTime.from(`${date}T${clock}`).toZonedDateTime(timeZone).epochMilliseconds;
}

/** A text as RFC 5545, 3.3.11 writes it. The library does so for entries, not for the calendar's name. */
function calendarText(text: string): string {
  return text.replace(/[\\;,]/g, '\\$&').replace(/\r?\n/g, '\\n');
}
