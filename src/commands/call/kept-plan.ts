import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Book } from '../../book/book.ts';
import { newest } from '../../build/kept-plans.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { CarriedDish } from '../../engine/learning/carried-dish.ts';
import { type Parsed, parsed } from '../../engine/parsed.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { carriedDishes } from '../../exports/plan/carried-dishes.ts';
import { currentEvent } from '../../offers/event/current-event.ts';
import type { LeftoversFact } from '../../schema/event-fact.ts';
import { plannedEvent } from '../../views/kitchen/planned-event.ts';

/** What went out to an event, and what says so. */
export interface SentOut {
  readonly plan: LeftoversFact['plan'];
  readonly dishes: readonly CarriedDish[];
}

/**
 * What went out to an event: by the plan kept among its facts, else the one that an output keeps from its day, else one
 * made from the recipes of today. Fails where there is neither.
 */
export async function sentOut(
  contentDir: string,
  outDir: string,
  book: Book,
  event: string,
  today: Day,
): Promise<Parsed<SentOut>> {
  const current = currentEvent(book, event);
  const record = current.ok && newest(contentDir, book, event, current.value.status.lastDate)?.kept.plan;
  if (record) return parsed({ plan: 'kept', dishes: carriedDishes(record) });
  const kept = await keptDishes(
    join(outDir, 'private/kitchen/events', event, 'prep-plan.json'),
    new Set(book.offers.get(event)?.map(({ digest }) => digest)),
  );
  if (kept) return parsed({ plan: 'kept', dishes: kept });
  const planned = await plannedEvent(book, event, today);
  if (!planned.ok) return planned;
  const { plan } = planned.value;
  return plan.ok ? parsed({ plan: 'made anew', dishes: carriedDishes(plan.value) }) : plan;
}

/** Undefined where there is no such file, none that can be read as a plan, or one of another kitchen's event. */
async function keptDishes(file: string, offers: ReadonlySet<string>): Promise<CarriedDish[] | undefined> {
  try {
    const plan = JSON.parse(await readFile(file, 'utf8')) as PrepPlanDocument;
    return plan.version === 1 && offers.has(plan.event.offer.digest) ? carriedDishes(plan) : undefined;
  } catch {
    return undefined;
  }
}
