import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { atThePlace } from './day/containers-of.ts';
import type { RunLine } from './view.ts';

/** The event's day in one order of time: its parts, and between them what is done at the place. */
export function runSheet({ event, timeline, days }: PrepPlanDocument): RunLine[] {
  const parts = timeline.map((entry) => ({
    date: entry.date,
    line: {
      part: entry.part,
      begins: entry.begins,
      ends: entry.ends,
      on: entry.dateText ?? '',
      dish: entry.what,
      text: '',
      makes: '',
      heat: '',
      cookTo: '',
      why: entry.why,
      who: '',
    },
  }));
  const tasks = days.flatMap((day) => {
    const away = atThePlace(day);
    return day.tasks.flatMap((task) =>
      away.has(task.id)
        ? [
            {
              date: day.date,
              line: {
                begins: task.at,
                ends: task.until ?? '',
                on: day.date === event.date ? '' : day.dateText,
                dish: task.recipeName,
                text: task.text,
                makes: task.makes,
                heat: task.heat ?? '',
                cookTo: task.cookTo,
                why: '',
                who: task.who ?? '',
              },
            },
          ]
        : [],
    );
  });
  const key = ({ date, line }: { date: string; line: RunLine }) => `${date} ${line.begins}`;
  // Of equals a part of the day comes before the tasks in it; work whose hour is not known (`+1:40`) comes first.
  return [...parts, ...tasks]
    .sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0))
    .map(({ line }) => line);
}
