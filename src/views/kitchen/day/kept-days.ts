import type { Book } from '../../../book/book.ts';
import type { Day } from '../../../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { bodyKey } from '../../../offers/issue/body-key.ts';
import type { BrandView } from '../../brand/brand-view.ts';
import type { SitePage } from '../../site.ts';
import { bare, type KeptPlan } from '../kept-plan.ts';
import type { OwnerMoneyView } from '../owner-money.ts';
import type { ShownPlan } from '../shown-plans.ts';
import type { DayView } from './view.ts';

/** The day's paper, beside its page. */
export const DAY_PAPER = 'day.pdf';

/** The file of a day's page. */
export function dayFile(date: string): string {
  return `private/kitchen/days/${date}/index.html`;
}

/** A coming event's plan as a build made it, with all that its pages and papers need. */
export function keptPlan(
  book: Book,
  plan: PrepPlanDocument,
  money: (() => OwnerMoneyView) | undefined,
  days: readonly Pick<SitePage, 'file' | 'view'>[],
  today: Day,
): KeptPlan {
  const own = plan.days.flatMap(({ date }) => {
    const view = days.find(({ file }) => file === dayFile(date))?.view as DayView | undefined;
    return view ? [[date, bare(view)] as const] : [];
  });
  // By their keys, wherever they stand: a day's page has the recipes of all its events.
  const all = JSON.stringify([plan.recipes, own]);
  const notes = [...book.recipeBodies.values()].flatMap((text) => {
    const key = bodyKey(text);
    return key !== '' && all.includes(key) ? [[key, text] as const] : [];
  });
  return {
    version: 1,
    kind: 'plan',
    event: plan.event.id,
    on: today,
    plan,
    notes: Object.fromEntries(notes),
    money: money ? bare(money()) : null,
    days: Object.fromEntries(own),
  };
}

/**
 * The pages of days that no plan of today has, from the plans kept of events that are over: of several that tell of the
 * same day the one with the most events, since a later one was made when an earlier was over already.
 */
export function keptDays(
  shown: readonly ShownPlan[],
  made: ReadonlySet<string>,
  brand: BrandView,
): SitePage[] {
  const days = new Map<string, KeptPlan['days'][string]>();
  for (const { kept, stale } of shown) {
    if (stale !== '') continue;
    for (const [date, view] of Object.entries(kept.days))
      if (!made.has(dayFile(date)) && (days.get(date)?.events.length ?? 0) < view.events.length)
        days.set(date, view);
  }
  return [...days]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, view]) => ({
      file: dayFile(date),
      route: `/kitchen/days/${date}/`,
      view: { ...view, brand, banner: null },
    }));
}
