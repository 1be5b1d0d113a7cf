import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { dateText } from '../../exports/words/date-text.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import type { KeptPlan, PlansAtHand } from './kept-plan.ts';
import type { PlannedEvent } from './planned-event.ts';
import { stalePlan } from './stale-plan.ts';
import type { BannerView } from './view.ts';

/** A kept plan as its pages and papers show it. */
export interface ShownPlan {
  readonly id: string;
  readonly kept: KeptPlan;
  readonly plan: PrepPlanDocument;
  /** Since when the plan cannot be made again, and why; empty for that of an event that is over. */
  readonly stale: string;
}

/**
 * The kept plans that are shown on a day: as they were of events that are over, and of those that are still to come,
 * which cannot be planned or read now, with what is broken.
 */
export function shownPlans(
  book: Book,
  coming: readonly PlannedEvent[],
  plans: PlansAtHand,
  today: Day,
): ShownPlan[] {
  const say = wordsIn(book.kitchen.locale);
  return [...plans].flatMap(([id, { kept }]): ShownPlan[] => {
    const planned = coming.find((each) => each.id === id);
    if (planned?.plan.ok) return [];
    if (kept.plan.event.date < today) return [{ id, kept, plan: kept.plan, stale: '' }];
    const problem =
      planned && !planned.plan.ok
        ? planned.plan
        : {
            what: unusable(id, book.held.get(`event/${id}`), say),
            wayOut: say('plan.stale.event.way'),
          };
    const since = { day: dateText(kept.on, book.kitchen.locale), why: problem.what };
    const finding = {
      about: say('plan.stale.about'),
      what: say('plan.stale.what', since),
      wayOut: problem.wayOut,
    };
    const plan = stalePlan(kept.plan, (recipe) => book.recipes.has(recipe), finding, say);
    const stale = say('plan.stale', since);
    return [{ id, kept, plan, stale }];
  });
}

function unusable(event: string, why: string | undefined, say: Say): string {
  return why === undefined
    ? say('plan.stale.event-unread', { event })
    : say('plan.stale.event', { event, why });
}

/** The banner of a plan that cannot be made again now, with what else stands above the pages. */
export function staleBanner(stale: string, banner: BannerView | null): BannerView | null {
  return stale === '' ? null : { errors: 0, lines: [], waiting: [], ...banner, stale };
}
