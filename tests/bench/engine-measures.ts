import { Decimal } from 'decimal.js';
import Fraction from 'fraction.js';
import type { Book } from '../../src/book/book.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import { eventInputOf } from '../../src/offers/event/input-of.ts';
import { atMost, type Measure } from './measure.ts';
import { median, milliseconds, ms } from './timed.ts';

/** How guests take every dish of the plan with odds. */
const EATEN = { shares: [new Fraction(1n, 5n), new Fraction(11n, 20n), new Fraction(1n, 4n)] };

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
  const { shares } = EATEN;
  const none = { firstChoice: undefined, helping: undefined };
  const costs = { missing: '3.00', leftOver: '1.00' };
  const takeRate = { ...none, appetite: { shares }, shortOneIn: 50, costs };
  const withOdds = { ...hundred, dishes: hundred.dishes.map((dish) => ({ ...dish, takeRate })) };
  const times = {
    loop: [] as number[],
    quote: [] as number[],
    plan: [] as number[],
    odds: [] as number[],
  };
  for (let turn = 0; turn < WARM_UP + REPEATS; turn += 1) {
    const loop = milliseconds(thousandMultiplications);
    const quoted = milliseconds(() => quote(offer.terms, offer.proposed));
    const planned = milliseconds(() => planEvent(hundred, book.kitchen, book.prices));
    const withRisk = milliseconds(() => planEvent(withOdds, book.kitchen, book.prices));
    // The first turns run before the machine code is made.
    if (turn < WARM_UP) continue;
    times.loop.push(loop);
    times.quote.push(quoted);
    times.plan.push(planned);
    times.odds.push(withRisk);
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
    atMost(
      'the same with an appetite, a chosen risk and advice for every dish',
      median(times.odds) / loop,
      20,
      ms(median(times.odds)),
    ),
  ];
}

function fifteenDishes(book: Book, id: string): boolean {
  const input = eventInputOf(book, id);
  return input.ok && input.value.dishes.length === 15;
}
