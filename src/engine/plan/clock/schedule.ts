import type { Day } from '../../calendar/day.ts';
import type { EventPlan } from '../event-plan.ts';
import { dayClock } from './day-clock.ts';
import { dayFindings } from './day-findings.ts';
import type { Schedule } from './event-work.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { kitchenRota } from './rota.ts';

/** Plans and the one schedule over them. */
export interface Scheduled {
  readonly plans: readonly EventPlan[];
  readonly schedule: Schedule;
}

/**
 * One schedule for all events: each date on one clock, worked out when it is first asked for and kept. Pages, papers,
 * calendar and sums all ask here, so none has minutes of its own. A date with the very same plans as `before` has its clock.
 */
export function scheduleOf(plans: readonly EventPlan[], kitchen: ClockKitchen, before?: Scheduled): Schedule {
  const made = new Map<Day, ReturnType<Schedule['on']>>();
  return {
    on(date) {
      const known = made.get(date);
      if (known) return known;
      const working = workingOn(plans, date);
      const found =
        before && same(working, workingOn(before.plans, date))
          ? before.schedule.on(date)
          : worked(working, date, kitchen);
      made.set(date, found);
      return found;
    },
  };
}

function worked(working: readonly EventPlan[], date: Day, kitchen: ClockKitchen): ReturnType<Schedule['on']> {
  const clock = dayClock(working, date, kitchen);
  return { clock, rota: kitchenRota(clock), findings: dayFindings(clock, working, kitchen) };
}

function workingOn(plans: readonly EventPlan[], date: Day): EventPlan[] {
  return plans.filter(({ input, days }) => input.date === date || days.some((day) => day.date === date));
}

function same(a: readonly EventPlan[], b: readonly EventPlan[]): boolean {
  return a.length === b.length && a.every((plan, at) => plan === b[at]);
}
