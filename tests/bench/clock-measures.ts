import type { Book } from '../../src/book/book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { scheduleOf } from '../../src/engine/plan/clock/schedule.ts';
import type { EventInput } from '../../src/engine/plan/event-input.ts';
import type { EventPlan } from '../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { eventInputOf } from '../../src/offers/event/input-of.ts';
import { atMost, type Measure } from './measure.ts';
import { median, milliseconds, ms } from './timed.ts';

const WARM_UP = 20;
const REPEATS = 41;
const SATURDAY = '2027-06-12' as Day;

/**
 * The hours of one event of fifteen dishes, and of three on one Saturday, each with all its dates, as a multiple of
 * planning one such event. Turn and turn about, so that what the machine does otherwise falls on both.
 */
export function clockMeasures(book: Book): Measure[] {
  const inputs = [...book.events.keys()].flatMap((id) => {
    const input = eventInputOf(book, id);
    return input.ok && input.value.dishes.length === 15 ? [{ ...input.value, date: SATURDAY }] : [];
  });
  const three = inputs.slice(0, 3);
  if (three.length < 3) throw new Error('the kitchen measured has no three events of fifteen dishes');
  const planned = (input: EventInput) => planEvent(input, book.kitchen, book.prices);
  const times = { plan: [] as number[], one: [] as number[], three: [] as number[] };
  for (let turn = 0; turn < WARM_UP + REPEATS; turn += 1) {
    const plans: EventPlan[] = [];
    const plan = milliseconds(() => plans.push(planned(three[turn % 3]!)));
    const others = three.filter((_, index) => index !== turn % 3).map(planned);
    const one = milliseconds(() => allDates(plans, book));
    const saturday = milliseconds(() => allDates([...plans, ...others], book));
    if (turn < WARM_UP) continue;
    times.plan.push(plan);
    times.one.push(one);
    times.three.push(saturday);
  }
  const plan = median(times.plan);
  return [
    atMost(
      'the hours of an event of 15 dishes, all its dates, to planEvent',
      median(times.one) / plan,
      2,
      `${ms(median(times.one))}, planEvent ${ms(plan)}`,
    ),
    atMost(
      'the hours of a Saturday of three such events, to the same',
      median(times.three) / plan,
      6,
      ms(median(times.three)),
    ),
  ];
}

function allDates(plans: readonly EventPlan[], book: Book): void {
  const schedule = scheduleOf(plans, book.kitchen);
  for (const date of new Set(
    plans.flatMap(({ input, days }) => [input.date, ...days.map(({ date }) => date)]),
  ))
    schedule.on(date);
}
