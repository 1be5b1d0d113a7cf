import { addDays, type Day } from '../../engine/calendar/day.ts';
import type { TimelineEntry, TimelinePart } from '../../engine/plan/clock/event-timeline.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanTimelineEntry } from '../form/day.ts';
import { clockOf } from '../words/clock-text.ts';
import { timelineWhy } from '../words/clock-why.ts';
import { dateText } from '../words/date-text.ts';

/** What the crew reads for each part of the day. */
const PARTS = {
  cook: 'day.cook',
  pack: 'day.pack',
  load: 'day.load',
  leave: 'day.leave',
  arrive: 'day.arrive',
  'set up': 'day.set-up',
  finish: 'day.finish',
  serve: 'day.serve',
  course: 'clock.course',
  clear: 'day.clear',
  done: 'day.done',
  back: 'clock.back',
  unload: 'clock.unload',
  discard: 'clock.throw-away',
} as const satisfies Readonly<Record<TimelinePart, WordKey>>;

/**
 * A part of the event's day by date and clock; one that runs past midnight keeps the date on which it begins, and says
 * it in words where that is not the event's.
 */
export function planTimeline(
  entries: readonly TimelineEntry[],
  date: Day,
  locale: string,
): PlanTimelineEntry[] {
  const say = wordsIn(locale);
  return entries.map(({ part, begins, ends, why }) => {
    const on = addDays(date, Math.floor(begins / 1440));
    return {
      part,
      what: say(
        PARTS[part],
        why.kind === 'course' ? { course: why.course } : why.kind === 'discard' ? { dish: why.dish } : {},
      ),
      date: on,
      ...(on !== date && { dateText: dateText(on, locale) }),
      begins: clockOf(begins),
      ends: ends === begins ? '' : clockOf(ends),
      why: timelineWhy(why, say),
    };
  });
}
