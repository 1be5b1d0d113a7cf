import type { Day } from '../../calendar/day.ts';
import type { EventPlan } from '../event-plan.ts';
import { dayClock } from './day-clock.ts';
import { dayFindings } from './day-findings.ts';
import type { Schedule } from './event-work.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { kitchenRota } from './rota.ts';

/**
 * One schedule for all events: each date on one clock, worked out when it is first asked for and kept. Pages, papers,
 * calendar and sums all ask here, so none has minutes of its own.
 */
export function scheduleOf(plans: readonly EventPlan[], kitchen: ClockKitchen): Schedule {
  const made = new Map<Day, ReturnType<Schedule['on']>>();
  return {
    on(date) {
      const known = made.get(date);
      if (known) return known;
      const working = plans.filter(
        ({ input, days }) => input.date === date || days.some((day) => day.date === date),
      );
      const clock = dayClock(working, date, kitchen);
      const found = { clock, rota: kitchenRota(clock), findings: dayFindings(clock, working, kitchen) };
      made.set(date, found);
      return found;
    },
  };
}
