import type { Day } from '../../../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { crewCautions } from '../../../exports/words/crew-cautions.ts';
import { dateText } from '../../../exports/words/date-text.ts';
import { type Say, wordsIn } from '../../../words/words-in.ts';
import type { BrandView } from '../../brand/brand-view.ts';
import type { BannerView } from '../view.ts';
import { dayClock } from './clock-of.ts';
import { dayContainers } from './containers-of.ts';
import { dayPaper } from './paper-of.ts';
import { dayPictures } from './pictures-of.ts';
import { dayTasks } from './tasks-of.ts';
import type { DayView } from './view.ts';
import type { DayWorkView } from './work-of.ts';

/** What of a day is calculated over all its events. */
export interface DaySums extends Pick<DayView, 'timeZone' | 'recipes' | 'shopping' | 'crew' | 'cold'> {
  readonly work: DayWorkView;
  /** Ids of the events that buy in the one order that `shopping` is. */
  readonly together: ReadonlySet<string>;
}

/** Everything that a crew needs to know on one day, over all events. */
export function dayView(
  date: Day,
  plans: readonly PrepPlanDocument[],
  stations: ReadonlyMap<string, string>,
  locale: string,
  brand: BrandView,
  banner: BannerView | null,
  { work, together, ...sums }: DaySums,
): DayView {
  const say = wordsIn(locale);
  const working = plans.filter((plan) => plan.days.some((day) => day.date === date));
  const { loads, gear, findings, cookAt, times } = work;
  const { numbers, ...lists } = dayTasks(date, working, stations, sums.recipes, times, loads, locale);
  const pictures = dayPictures(work, stations, numbers, say);
  return {
    kind: 'day',
    brand,
    banner,
    date,
    dateText: dateText(date, locale),
    events: working.map(({ event, timeline }) => ({
      id: event.id,
      occasion: `${event.occasion}, ${event.client}`,
      what:
        event.date === date
          ? servedText(event, timeline, say)
          : say('day.served-on', { day: event.dateText }),
    })),
    clock: dayClock(date, working, cookAt, locale),
    alerts: working.map(({ event, alerts }) => ({ event: event.occasion, alerts })),
    findings: [...staleOf(working, say), ...findings, ...(sums.cold.finding ? [sums.cold.finding] : [])],
    pictures,
    chains: work.chains.map(({ of, event, links }) => ({
      of,
      ...(event !== '' && { event }),
      lines: links.map(({ task, ...line }) => {
        const number = numbers.get(task);
        return { ...line, ...(number !== undefined && { number }) };
      }),
    })),
    ...lists,
    loads,
    gear,
    containers: dayContainers(date, working),
    ...sums,
    cautions: crewCautions(say),
    paper: dayPaper(
      date,
      working,
      plans,
      pictures,
      [...(lists.apart ? [lists.apart] : []), ...lists.stations],
      { shopping: sums.shopping, events: together },
      locale,
    ),
  };
}

/** What is told of a plan that cannot be made again now, by its event. */
function staleOf(plans: readonly PrepPlanDocument[], say: Say): DayView['findings'] {
  const about = say('plan.stale.about');
  return plans.flatMap(({ event, findings }) =>
    findings.flatMap((each) => (each.about === about ? [{ ...each, about: event.occasion }] : [])),
  );
}

/** Every date on which any plan has work, in order. */
export function workDates(plans: readonly PrepPlanDocument[]): Day[] {
  return [...new Set(plans.flatMap((plan) => plan.days.map((day) => day.date as Day)))].sort();
}

function servedText(
  { serveAt }: PrepPlanDocument['event'],
  timeline: PrepPlanDocument['timeline'],
  say: Say,
): string {
  const leave = timeline.find(({ part }) => part === 'leave')?.begins;
  return leave
    ? say('day.leaves-served', { time: leave, served: serveAt })
    : say('day.served-today', { time: serveAt });
}
