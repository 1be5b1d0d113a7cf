import type { Say } from '../../words/words-in.ts';
import type { PlanRaw } from '../form/food.ts';

/** The mark of food that leaves the kitchen raw, as lists, labels and pages say it. */
export function rawMarkText(mark: PlanRaw['mark'], say: Say): string {
  return say(mark === 'RAW' ? 'labels.raw.mark' : 'labels.raw.mark-treat');
}
