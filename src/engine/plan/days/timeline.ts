import type { DayTimes } from '../../kitchen/day-times.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import { durationText, minutes } from '../../measure/duration.ts';
import type { TimeAway } from '../../safety/time-without-control.ts';

/** From arriving to serving where neither the proposal nor the kitchen says: common practice, no source. */
export const USUAL_SET_UP = 90;

export const TIMELINE_PARTS = [
  'cook',
  'pack',
  'load',
  'leave',
  'arrive',
  'set up',
  'finish',
  'serve',
  'clear',
  'done',
] as const;

export type TimelinePart = (typeof TIMELINE_PARTS)[number];

/** A part of the event's day. */
export interface TimelineEntry {
  readonly part: TimelinePart;
  /** Minutes from the midnight with which the event's day begins; below 0 on the day before. */
  readonly begins: number;
  /** As `begins`; the same for a moment such as leaving. */
  readonly ends: number;
  readonly why: string;
}

/** What the day is worked back from. */
export interface TimelineInput {
  /** HH:MM */
  readonly serveAt: string;
  readonly away: TimeAway | undefined;
  readonly times: DayTimes;
  /** What the day's work in the kitchen takes from first to last. */
  readonly kitchenSpan: number;
  /** What is done at the place: from first to last by one pair of hands a station, and hands-on in all. */
  readonly placeSpan: number;
  readonly placeHandsOn: number;
}

/**
 * The day worked back from the time of serving: what has to be ready by then is set up and finished at the place
 * after arriving, before that driven, loaded, packed and cooked. Then forward: served, cleared. Parts that nobody has
 * given a time take the usual one and say so; travel that is not said takes none, and serving without its hours ends
 * the list.
 */
export function timelineOf(input: TimelineInput): TimelineEntry[] {
  const { times, away, kitchenSpan, placeSpan, placeHandsOn } = input;
  const serve = minutesOfClock(input.serveAt);
  const setUp = away?.setUp ?? USUAL_SET_UP;
  const travel = away?.travel ?? 0;
  const arrive = serve - setUp;
  const leave = arrive - travel;
  const load = leave - times.load;
  const pack = load - times.pack;
  const entries: TimelineEntry[] = [];
  const add = (part: TimelinePart, begins: number, ends: number, why: string) =>
    entries.push({ part, begins, ends, why });
  if (kitchenSpan > 0)
    add('cook', pack - kitchenSpan, pack, `${text(kitchenSpan)} of kitchen work, to finish before packing`);
  add('pack', pack, load, `${text(times.pack)} before loading`);
  add('load', load, leave, `${text(times.load)} before leaving`);
  add(
    'leave',
    leave,
    leave,
    away?.travel === undefined
      ? 'travel time is not stated, so none is planned'
      : `${text(travel)} of travel`,
  );
  add('arrive', arrive, arrive, `${text(setUp)} before serving`);
  add(
    'set up',
    arrive,
    serve,
    away?.setUp === undefined ? `${text(setUp)}, the usual time; set-up time is not stated` : text(setUp),
  );
  if (placeSpan > 0) {
    const takes = Math.min(placeSpan, setUp);
    add('finish', serve - takes, serve, finishWhy(placeHandsOn, takes));
  }
  if (away?.service === undefined) {
    add('serve', serve, serve, 'service time is not stated');
    return entries;
  }
  const end = serve + away.service;
  add('serve', serve, end, text(away.service));
  add('clear', end, end + times.clear, text(times.clear));
  add('done', end + times.clear, end + times.clear, 'everything is back on the truck');
  return entries;
}

function finishWhy(handsOn: number, within: number): string {
  const people = Math.ceil(handsOn / within);
  return `${text(handsOn)} of work in ${text(within)}: needs ${people} ${people === 1 ? 'person' : 'people'}`;
}

function text(length: number): string {
  return durationText(minutes(length));
}
