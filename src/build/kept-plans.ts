import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Book } from '../book/book.ts';
import { keptPlanDigest, keptPlanName } from '../book/read/kept-plans.ts';
import type { Day } from '../engine/calendar/day.ts';
import { currentEvent } from '../offers/event/current-event.ts';
import { eventInputOf } from '../offers/event/input-of.ts';
import { withPlace, writeTextOnce } from '../offers/write-once.ts';
import {
  type KeptPlan,
  type PlanAtHand,
  type PlansAtHand,
  readKeptPlan,
} from '../views/kitchen/kept-plan.ts';

/**
 * The last plan that could be made of an event that is still to come, beside its facts: passed over by whoever reads
 * the folder, and replaced at each build. It is what stays while the event cannot be planned, and what becomes the
 * record once the day is over.
 */
function lastPlanFile(contentDir: string, event: string): string {
  return join(contentDir, 'events', event, '.last-plan.json');
}

/** The plans of events that are over, and of those that cannot be planned or read now, where one was kept. */
export function plansAtHand(contentDir: string, book: Book, today: Day): PlansAtHand {
  const held = [...book.held.keys()].flatMap((item) => /^event\/(.+)$/.exec(item)?.[1] ?? []);
  const found = [...new Set([...book.events.keys(), ...held])].flatMap((event): [string, PlanAtHand][] => {
    const current = currentEvent(book, event);
    if (!current.ok) {
      const plan = newest(contentDir, book, event);
      return plan ? [[event, plan]] : [];
    }
    const { date } = current.value.status;
    if (date === null || (date >= today && eventInputOf(book, event).ok)) return [];
    const plan = newest(contentDir, book, event, date);
    return plan ? [[event, plan]] : [];
  });
  return new Map(found);
}

/** The plan that an event was cooked from on a day: the record, else the last that could be made; undefined where there is none. */
export function newest(contentDir: string, book: Book, event: string, date?: Day): PlanAtHand | undefined {
  const records = [...(book.keptPlans.get(event) ?? [])].reverse().map(({ path }) => path);
  const offers = new Set(book.offers.get(event)?.map(({ digest }) => digest));
  for (const path of [...records, lastPlanFile(contentDir, event)]) {
    const text = textOf(path);
    const kept = text === undefined ? undefined : readKeptPlan(text, event);
    if (!kept || text === undefined || (date !== undefined && kept.plan.event.date !== date)) continue;
    // Another kitchen's event of the same name is not this one's.
    if (offers.size > 0 && !offers.has(kept.plan.event.offer.digest)) continue;
    return { digest: keptPlanDigest(text), kept };
  }
  return undefined;
}

/** Without line breaks, which would double what each event takes on the disk: nobody reads it but Salver. */
function keptText(kept: KeptPlan): string {
  return `${JSON.stringify(kept)}\n`;
}

function textOf(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/**
 * Keeps what a build has planned: the last plan of each coming event and, where `today` is the real day and not one
 * that somebody looks ahead to, the record of what is cooked from: on the event's day each plan that differs from the
 * last record, and after it the last plan there was. A record is never replaced. Fails as the file system does.
 */
export async function keepPlans(
  contentDir: string,
  book: Book,
  made: readonly KeptPlan[],
  today: Day,
  isRealDay: boolean,
): Promise<void> {
  for (const kept of made) await replaceLastPlan(contentDir, kept);
  if (!isRealDay) return;
  for (const event of book.events.keys()) {
    const date = dateOf(book, event);
    if (date === undefined || date > today) continue;
    const fresh = date === today ? made.find((each) => each.event === event) : undefined;
    const last = fresh ?? newest(contentDir, book, event, date)?.kept;
    if (last && (fresh || !hasRecord(contentDir, book, event, date)))
      await recordPlan(contentDir, book, last);
  }
}

/** Records what an event was cooked from when its guests were counted: the last plan there is, if none is recorded yet. */
export async function recordLastPlan(contentDir: string, book: Book, event: string): Promise<void> {
  const date = dateOf(book, event);
  if (date === undefined || hasRecord(contentDir, book, event, date)) return;
  const last = newest(contentDir, book, event, date);
  if (last) await recordPlan(contentDir, book, last.kept);
}

function dateOf(book: Book, event: string): Day | undefined {
  const current = currentEvent(book, event);
  return current.ok ? (current.value.status.date ?? undefined) : undefined;
}

function hasRecord(contentDir: string, book: Book, event: string, date: Day): boolean {
  return recordOf(contentDir, book, event, date) !== undefined;
}

function recordOf(contentDir: string, book: Book, event: string, date: Day): string | undefined {
  const paths = (book.keptPlans.get(event) ?? []).map(({ file }) => join(contentDir, file));
  return paths.findLast((path) => readKeptPlan(textOf(path) ?? '', event)?.plan.event.date === date);
}

/** Publishes a plan under the next number, unless the last record of its day says the same. */
async function recordPlan(contentDir: string, book: Book, kept: KeptPlan): Promise<void> {
  const text = keptText(kept);
  const before = recordOf(contentDir, book, kept.event, kept.plan.event.date as Day);
  if (before !== undefined && textOf(before) === text) return;
  const number = (book.keptPlans.get(kept.event)?.length ?? 0) + 1;
  await writeTextOnce(join(contentDir, 'events', kept.event, keptPlanName(number, text)), text);
}

async function replaceLastPlan(contentDir: string, kept: KeptPlan): Promise<void> {
  const file = lastPlanFile(contentDir, kept.event);
  const text = keptText(kept);
  if (textOf(file) === text) return;
  const scratch = join(dirname(file), `.${randomBytes(6).toString('hex')}.tmp`);
  try {
    await mkdir(dirname(file), { recursive: true });
    await writeFile(scratch, text, { flag: 'wx' });
    await rename(scratch, file);
  } catch (error) {
    throw withPlace(error, file);
  } finally {
    await rm(scratch, { force: true });
  }
}
