import type { Day } from '../../calendar/day.ts';
import type { EventPlan } from '../event-plan.ts';
import type { DayClock } from './day-clock.ts';
import type { Schedule } from './event-work.ts';
import type { Rota } from './rota.ts';

/** What the kitchen’s crew gives to an event, in minutes of all its cooks and days together. */
export interface KitchenHours {
  /** From each cook’s first task of a day to the last, between tasks included. */
  readonly there: number;
  /** Hands-on and packing, which is paid for as work. */
  readonly work: number;
}

/** One date on the clock, with who does what. */
interface Worked {
  readonly clock: Pick<DayClock, 'date' | 'steps' | 'served'>;
  readonly rota: Pick<Rota, 'cooks' | 'packs' | 'loads'>;
}

/**
 * The kitchen’s hours of an event over all its dates: a cook is called in for the first task of a day and stays until the
 * last, loading included (common practice, no source). Where a date works for several events, its hours are shared in
 * proportion to their own hands-on, packing and loading minutes, to whole minutes that add up. Undefined where it is not
 * known who works when.
 */
export function kitchenHours({ input, days }: EventPlan, schedule: Schedule): KitchenHours | undefined {
  const dates = [...new Set([...days.map(({ date }) => date), input.date])];
  const shares = dates.flatMap((date) => {
    const own = hoursOn(schedule.on(date)).get(input.id);
    return own ? [own] : [];
  });
  if (shares.length === 0) return undefined;
  return {
    there: shares.reduce((sum, { there }) => sum + there, 0),
    work: shares.reduce((sum, { work }) => sum + work, 0),
  };
}

/** The hours of one date by event; none where nobody is named for its work. */
export function hoursOn({ clock, rota }: Worked): Map<string, KitchenHours> {
  const all = presenceOf(clock, rota);
  const found = new Map<string, KitchenHours>();
  if (all === 0) return found;
  const own = workOf(clock);
  const total = [...own.values()].reduce((sum, { work, load }) => sum + work + load, 0);
  let [so, given] = [0, 0];
  for (const [event, { work, load }] of [...own].sort(([a], [b]) => (a < b ? -1 : 1))) {
    so += work + load;
    const until = Math.floor((all * so) / total);
    found.set(event, { there: until - given, work });
    given = until;
  }
  return found;
}

/** Minutes of all cooks of a date, each from the first task to the last. */
function presenceOf({ steps, served }: Worked['clock'], { cooks, packs, loads }: Worked['rota']): number {
  const spans = new Map<number, { from: number; until: number }>();
  const add = (who: readonly number[] = [], from: number, until: number) => {
    for (const cook of who) {
      const known = spans.get(cook);
      spans.set(cook, {
        from: Math.min(from, known?.from ?? from),
        until: Math.max(until, known?.until ?? until),
      });
    }
  };
  for (const { id, clock, begins, handsOff, handsFor } of steps)
    if (clock && handsFor > 0) add(cooks.get(id), begins, handsOff);
  for (const { plan, pack, load } of served) {
    add(packs.get(plan.input.id), pack.begins, pack.ends);
    add(loads.get(plan.input.id), load.begins, load.ends);
  }
  return [...spans.values()].reduce((sum, { from, until }) => sum + until - from, 0);
}

/** What each event asks of a date’s hands. */
function workOf({ date, steps, served }: Worked['clock']): Map<string, { work: number; load: number }> {
  const own = new Map<string, { work: number; load: number }>();
  const add = (event: string, work: number, load: number) => {
    const known = own.get(event) ?? { work: 0, load: 0 };
    own.set(event, { work: known.work + work, load: known.load + load });
  };
  for (const { batch, number } of steps)
    for (const { plan } of batch.events)
      add(
        plan.input.id,
        handsOnOf(plan, date, (task) => task.recipe === batch.recipe && task.number === number),
        0,
      );
  for (const { plan, pack, load } of served)
    add(plan.input.id, pack.ends - pack.begins, load.ends - load.begins);
  return own;
}

type Task = EventPlan['days'][number]['tasks'][number];

function handsOnOf({ days }: Pick<EventPlan, 'days'>, date: Day, is: (task: Task) => boolean): number {
  return days
    .filter((day) => day.date === date)
    .flatMap(({ tasks }) => tasks.filter(is))
    .reduce((sum, { handsOnMinutes }) => sum + handsOnMinutes, 0);
}
