import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { KeptBack } from '../../engine/plan/clock/kept-back.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanKeptBack } from '../form/kept-back.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { amountText } from '../words/amount-text.ts';
import { clockOf } from '../words/clock-text.ts';

/** What is kept back, as the document says it. */
export function planKeptBack(kept: readonly KeptBack[], system: MeasureSystem, say: Say): PlanKeptBack[] {
  return kept.map(({ dish, seconds, late, amount, hold, until, because }) => ({
    dish: dish.dish.name,
    seconds,
    late,
    amount: amountText(amount, system, 'at-least'),
    hold,
    until: until === undefined ? '' : clockOf(until),
    why: say('plan.kept-why', { because }),
  }));
}

/** Where more is kept back than there is to spare, so that guests would find nothing at first. */
export function keptBackFindings(kept: readonly KeptBack[], say: Say): PrepPlanDocument['findings'] {
  return kept
    .filter(({ short }) => short > 0)
    .map(({ dish, seconds, short }) => ({
      about: dish.dish.name,
      what: say('plan.kept-short', { n: seconds, short }),
      wayOut: say('plan.kept-short.way'),
    }));
}
