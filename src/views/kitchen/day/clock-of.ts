import type { Day } from '../../../engine/calendar/day.ts';
import type { PlanTimelineEntry } from '../../../exports/form/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { clockOf } from '../../../exports/words/clock-text.ts';
import { allOf } from '../../../exports/words/statement-text.ts';
import { wordsIn } from '../../../words/words-in.ts';

/**
 * The day of all events served on a date by one clock, each part with its occasion; empty where none is. Cooking begins
 * for all of them at `cookAt`, minutes from midnight.
 */
export function dayClock(
  date: Day,
  plans: readonly PrepPlanDocument[],
  cookAt: number | null,
  locale: string,
): PlanTimelineEntry[] {
  const say = wordsIn(locale);
  const served = plans.filter(({ event }) => event.date === date);
  const parts = served.flatMap(({ event, timeline }) =>
    timeline
      .filter(({ part }) => part !== 'cook')
      .map((entry) => ({ ...entry, what: say('day.part-for', { part: entry.what, event: event.occasion }) })),
  );
  const cook: PlanTimelineEntry[] =
    cookAt === null || served.length === 0
      ? []
      : [
          {
            part: 'cook',
            what: say('day.cook-for', {
              events: allOf(
                served.map(({ event }) => event.occasion),
                locale,
              ),
            }),
            date,
            begins: clockOf(cookAt),
            ends: '',
            why: say('day.times-beside'),
          },
        ];
  const order = ({ date: on, begins }: PlanTimelineEntry) => `${on} ${begins}`;
  return [...cook, ...parts].sort((a, b) => (order(a) < order(b) ? -1 : order(a) > order(b) ? 1 : 0));
}
