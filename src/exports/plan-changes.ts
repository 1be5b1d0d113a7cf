import type Fraction from 'fraction.js';
import type { Day } from '../engine/calendar/day.ts';
import { durationText, minutes } from '../engine/measure/duration.ts';
import { kitchenAmount } from '../engine/measure/kitchen-amount.ts';
import type { Quantity } from '../engine/measure/quantity.ts';
import type { MeasureSystem } from '../engine/measure/units.ts';
import { type Money, moneyText, subtract } from '../engine/money/money.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { lateChanges } from '../engine/plan/late-changes.ts';
import { planChanges } from '../engine/plan/plan-changes.ts';
import { batchesText } from './batches-text.ts';
import { dateText } from './date-text.ts';
import type { Figures, PlanChangesDocument } from './plan-changes-document.ts';
import type { PackOutLine } from './plan-sheets-document.ts';
import type { PrepPlanDocument } from './prep-plan-document.ts';

/** One side of a change: the plan, the document made from it, and what the client is billed. */
export interface PlanSide {
  readonly plan: EventPlan;
  readonly document: Pick<PrepPlanDocument, 'packOut'>;
  readonly total: Money;
}

/** What a change is about, and what the kitchen says for reading it. */
export interface ChangeSetting {
  readonly what: string;
  /** The day of the change: what was done and ordered before it is not undone. */
  readonly on: Day;
  readonly orderBy: ReadonlyMap<string, Day>;
  readonly system: MeasureSystem;
  readonly locale: string;
  readonly supplierName: (id: string) => string;
}

/** Two plans of one event compared, in words. */
export function planChangesDocument(
  before: PlanSide,
  after: PlanSide,
  setting: ChangeSetting,
): PlanChangesDocument {
  const { system, locale, supplierName } = setting;
  const changes = planChanges(before.plan, after.plan);
  const { foodCost, handsOn } = changes;
  return {
    what: setting.what,
    on: setting.on,
    dishes: changes.dishes.map(({ course, name, before: was, after: is, by }) => ({
      course,
      dish: name,
      before: was ? amount(was.need, system) : '',
      after: is ? amount(is.need, system) : '',
      by: by ? signed(by.amount, (size) => amount({ amount: size, unit: by.unit }, system)) : '',
    })),
    batches: changes.batches.map(({ recipe, before: was, after: is, by }) => ({
      recipe: recipe.name,
      before: was ? batchesText(was.batches) : '',
      after: is ? batchesText(is.batches) : '',
      by: signed(by, batchesText),
    })),
    packs: changes.packs.map(({ name, pack, ...counts }) => ({
      ingredient: name,
      supplier: supplierName(pack.supplier),
      pack: pack.packText,
      ...counted(counts.before, counts.after),
    })),
    packOut: packOutChanges(before.document.packOut, after.document.packOut),
    days: changes.days.map(({ date, ...day }) => ({
      date,
      dateText: dateText(date, locale),
      ...timed(day.before, day.after),
    })),
    handsOn: timed(handsOn.before, handsOn.after),
    total: moneyFigures(before.total, after.total, subtract(after.total, before.total)),
    foodCost: moneyFigures(foodCost.before, foodCost.after, foodCost.by),
    late: lateChanges(
      changes,
      before.plan,
      { today: setting.on, orderBy: setting.orderBy },
      supplierName,
    ).map(({ about, what }) => `${about}: ${what}.`),
  };
}

/** True where a change alters nothing of the plan nor of the client's total. */
export function changesNothing(changes: PlanChangesDocument): boolean {
  const { dishes, batches, packs, packOut, days, total } = changes;
  return [dishes, batches, packs, packOut, days].every((list) => list.length === 0) && total.by === '';
}

function packOutChanges(
  before: readonly PackOutLine[],
  after: readonly PackOutLine[],
): PlanChangesDocument['packOut'] {
  const key = ({ group, item, container }: PackOutLine) => [group, item, container].join('\n');
  const sums = (lines: readonly PackOutLine[]) => {
    const found = new Map<string, number>();
    for (const line of lines) found.set(key(line), (found.get(key(line)) ?? 0) + line.count);
    return found;
  };
  const [was, is] = [sums(before), sums(after)];
  const distinct = new Map([...after, ...before].map((line) => [key(line), line]));
  return [...distinct].flatMap(([id, { group, item, container }]) => {
    const [had, has] = [was.get(id) ?? 0, is.get(id) ?? 0];
    return had === has ? [] : [{ group, item, container, ...counted(had, has) }];
  });
}

function amount(q: Quantity, system: MeasureSystem): string {
  return kitchenAmount(q, system, 'at-least');
}

function counted(before: number, after: number): Figures {
  const by = after - before;
  const sign = by === 0 ? '' : by > 0 ? `+${by}` : `−${-by}`;
  return { before: String(before), after: String(after), by: sign };
}

function timed(before: number, after: number): Figures {
  const by = after - before;
  const size = durationText(minutes(Math.abs(by)));
  return {
    before: durationText(minutes(before)),
    after: durationText(minutes(after)),
    by: by === 0 ? '' : by > 0 ? `+${size}` : `−${size}`,
  };
}

function moneyFigures(before: Money | null, after: Money | null, by: Money | undefined): Figures {
  const text = by === undefined || by.amount.isZero() ? '' : moneyText(by);
  return {
    before: before ? moneyText(before) : '',
    after: after ? moneyText(after) : '',
    by: text === '' || text.startsWith('-') ? text.replace('-', '−') : `+${text}`,
  };
}

function signed(by: Fraction, text: (size: Fraction) => string): string {
  if (by.n === 0n) return '';
  return `${by.s > 0n ? '+' : '−'}${text(by.abs())}`;
}
