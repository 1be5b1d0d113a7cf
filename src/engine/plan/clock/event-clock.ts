import { courseTimes } from '../../course/course-time.ts';
import { type DayTimes, USUAL_SET_UP } from '../../kitchen/day-times.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import { minutes } from '../../measure/duration.ts';
import type { EventInput } from '../event-input.ts';

/** What of an event its clock is worked back from. */
export type ClockedEvent = Pick<EventInput, 'serveAt' | 'style' | 'away' | 'courseTimes' | 'dishes'>;

/** The hours of an event's day that do not depend on what is cooked, in minutes from its midnight. */
export interface EventClock {
  /** The latest that loading may begin and still be done when the truck leaves. */
  readonly load: number;
  readonly leave: number;
  readonly arrive: number;
  readonly serve: number;
  /** When service is over; undefined where its hours are not stated. */
  readonly end: number | undefined;
  /** When all is cleared and the truck leaves for home. */
  readonly cleared: number | undefined;
  /** When it is back at the kitchen. */
  readonly back: number | undefined;
  /** When it is unloaded there. */
  readonly unloaded: number | undefined;
  /** First and last plate of each course, in the order they are served. */
  readonly courses: ReadonlyMap<string, { readonly from: number; readonly until: number }>;
}

/**
 * An event's day worked back from its first plate: set-up, the road, loading; and forward from it: service, clearing,
 * the road home, which takes as long as the way there, unloading. Travel that is not stated takes no time.
 */
export function eventClock(input: ClockedEvent, times: DayTimes): EventClock {
  const { away } = input;
  const serve = minutesOfClock(input.serveAt);
  const arrive = serve - (away?.setUp ?? USUAL_SET_UP);
  const travel = away?.travel ?? 0;
  const leave = arrive - travel;
  const end = away?.service === undefined ? undefined : serve + away.service;
  const cleared = end === undefined ? undefined : end + times.clear;
  const back = cleared === undefined ? undefined : cleared + travel;
  const names = [...new Set(input.dishes.map(({ course }) => course))];
  const usual = courseTimes(
    names.map((name) => ({ name, ...timeOf(input, name) })),
    input.style,
    away?.service,
  );
  return {
    load: leave - times.load,
    leave,
    arrive,
    serve,
    end,
    cleared,
    back,
    unloaded: back === undefined ? undefined : back + times.unload,
    courses: new Map(
      [...usual].map(([name, { after, lasts }]) => [
        name,
        { from: serve + after, until: serve + after + lasts },
      ]),
    ),
  };
}

function timeOf({ courseTimes: stated }: ClockedEvent, name: string) {
  const time = stated?.get(name);
  return time ? { time: { after: minutes(time.after), lasts: minutes(time.lasts) } } : {};
}
