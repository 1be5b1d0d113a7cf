import { Decimal } from 'decimal.js';
import type { Book } from '../../src/book/book.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import { eventInputOf } from '../../src/offers/event-input-of.ts';
import { atMost, type Measure } from './measure.ts';
import { median } from './timed.ts';

const WARM_UP = 100;
const REPEATS = 101;

/** A loop that every machine can be measured by: 1,000 multiplications of decimals. */
function thousandMultiplications(): Decimal {
  let product = new Decimal('1.0000001');
  const by = new Decimal('1.00017');
  for (let step = 0; step < 1000; step += 1) product = product.mul(by);
  return product;
}

/** One quote, and one event's plan without the solver, each against the loop, turn and turn about. */
export function engineMeasures(book: Book): Measure[] {
  const [offer] = [...book.offers.values()].at(0) ?? [];
  const event = [...book.events.keys()].find((id) => fifteenDishes(book, id));
  if (!offer || !event) throw new Error('the kitchen measured has no offer, or no event of fifteen dishes');
  const input = eventInputOf(book, event);
  if (!input.ok) throw new Error(input.what);
  const hundred = { ...input.value, guests: { adults: 100, children: 0, vendors: 0, staff: 0 } };
  const times = { loop: [] as number[], quote: [] as number[], plan: [] as number[] };
  for (let turn = 0; turn < WARM_UP + REPEATS; turn += 1) {
    const loop = milliseconds(thousandMultiplications);
    const quoted = milliseconds(() => quote(offer.terms, offer.proposed));
    const planned = milliseconds(() => planEvent(hundred, book.kitchen, book.prices));
    // The first turns run before the machine code is made.
    if (turn < WARM_UP) continue;
    times.loop.push(loop);
    times.quote.push(quoted);
    times.plan.push(planned);
  }
  const loop = median(times.loop);
  return [
    atMost(
      'one quote, to 1,000 decimal multiplications',
      median(times.quote) / loop,
      1,
      ms(median(times.quote)),
    ),
    atMost(
      'planEvent, 100 guests and 15 dishes, to the same',
      median(times.plan) / loop,
      20,
      `${ms(median(times.plan))}, loop ${ms(loop)}`,
    ),
  ];
}

function fifteenDishes(book: Book, id: string): boolean {
  const input = eventInputOf(book, id);
  return input.ok && input.value.dishes.length === 15;
}

function milliseconds(work: () => unknown): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}

function ms(figure: number): string {
  return `${figure.toFixed(2)} ms`;
}
