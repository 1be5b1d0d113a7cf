import Fraction from 'fraction.js';
import type { Hold } from '../../food/recipe.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import { forGuests } from '../../measure/per-guest.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { EventPlan, PlannedDish } from '../event-plan.ts';
import type { EventClock } from './event-clock.ts';
import type { EventWork } from './event-work.ts';
import { thrownAway } from './throw-away.ts';

/** What of a dish is kept back at the place for second helpings and late guests. */
export interface KeptBack {
  readonly dish: PlannedDish;
  /** Whole portions, for second helpings and for late guests. */
  readonly seconds: number;
  readonly late: number;
  /** What they come to by the amount for one guest. */
  readonly amount: Quantity;
  readonly hold: Hold;
  /** Minutes from the midnight of the event's day; undefined where nobody can say. */
  readonly until: number | undefined;
  /** What ends it. */
  readonly because: 'age' | 'stands' | 'asked';
  /** Guests for whom nothing is out at first, since more is kept back for second helpings than there is to spare. */
  readonly short: number;
}

/**
 * What is kept back of each dish that guests get as it is: a share of what is planned, up to whole portions, and one for
 * each guest who comes late. It is kept until service is over or the late guests have come, but never longer than it may
 * be: until it has to be thrown away, or, for what is not cooked in waves, as long as its quality stands.
 */
export function keptBack(
  plan: EventPlan,
  { waiting, throwAways }: Pick<EventWork, 'waiting' | 'throwAways'>,
  { serve, end }: Pick<EventClock, 'serve' | 'end'>,
): KeptBack[] {
  const { keepBack } = plan.input;
  if (!keepBack) return [];
  const asked = keepBack.share || !keepBack.late ? end : lateMinute(keepBack.late.until, serve);
  return plan.dishes
    .filter(({ dish, counted }) => !dish.portions?.apart && !dish.drink && !dish.extra && counted.n > 0n)
    .map((planned): KeptBack => {
      const { dish, counted, need } = planned;
      const seconds = Number((keepBack.share ?? new Fraction(0n)).mul(counted).ceil().n);
      const late = Math.min(keepBack.late?.guests ?? 0, Number(counted.floor().n));
      const one = forGuests(dish.perGuest, new Fraction(1n));
      const own = waiting.find((each) => each.dish === planned);
      const waves = dish.recipe.steps.some((step) => step.waves);
      const ends = [
        { because: 'age' as const, at: thrownAway(throwAways, dish.recipe)?.by },
        {
          because: 'stands' as const,
          at: own?.stands === undefined || waves ? undefined : own.from + own.stands,
        },
        { because: 'asked' as const, at: asked },
      ].filter((each): each is { because: KeptBack['because']; at: number } => each.at !== undefined);
      const [first] = ends.toSorted((a, b) => a.at - b.at);
      const out = need.amount.div(one.amount).sub(BigInt(seconds));
      return {
        dish: planned,
        seconds,
        late,
        amount: { ...one, amount: one.amount.mul(BigInt(seconds + late)) },
        hold: dish.recipe.hold,
        until: first?.at,
        because: first?.because ?? 'asked',
        short: keepBack.inAddition ? 0 : Math.max(0, Number(counted.sub(out).ceil().n)),
      };
    });
}

/** A time before serving is one after midnight. */
function lateMinute(until: string, serve: number): number {
  const minute = minutesOfClock(until);
  return minute < serve ? minute + 1440 : minute;
}
