import type Fraction from 'fraction.js';
import type { Day } from '../../engine/calendar/day.ts';
import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import type { Quantity } from '../../engine/measure/quantity.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { subtract } from '../../engine/money/money.ts';
import { lateChanges } from '../../engine/plan/changes/late-changes.ts';
import { planChanges } from '../../engine/plan/changes/plan-changes.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import { statement } from '../../engine/text/statement.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { PlanChangesDocument } from '../form/changes.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { batchesText } from '../words/batches-text.ts';
import { dateText } from '../words/date-text.ts';
import { statementsIn } from '../words/statement-text.ts';
import { counted, moneyFigures, timed } from './change-figures.ts';
import { orderChanges, paymentChanges, staffChanges } from './changes-bill.ts';

/** One side of a change: the plan, the document made from it, and what the client is billed and has paid. */
export interface PlanSide {
  readonly plan: EventPlan;
  readonly document: Pick<PrepPlanDocument, 'packOut' | 'orders'>;
  readonly status: Pick<EventStatus, 'total' | 'choice' | 'account'>;
}

/** What a change is about, and what the kitchen says for reading it. */
export interface ChangeSetting {
  readonly what: string;
  /** The terms accepted. */
  readonly terms: Terms;
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
  const { system, locale, supplierName, terms } = setting;
  const [was, is] = [before.status, after.status];
  const changes = planChanges(before.plan, after.plan);
  const { foodCost, handsOn } = changes;
  const inWords = statementsIn(locale);
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
      before: was ? batchesText(was.batches, system) : '',
      after: is ? batchesText(is.batches, system) : '',
      by: signed(by, (size) => batchesText(size, system)),
    })),
    packs: changes.packs.map(({ name, pack, ...counts }) => ({
      ingredient: name,
      supplier: supplierName(pack.supplier),
      pack: pack.packText,
      ...counted(counts.before, counts.after),
    })),
    packOut: packOutChanges(before.document.packOut, after.document.packOut, terms),
    ...orderChanges(before.document.orders, after.document.orders, is.total.currency),
    staff: staffChanges(terms, was, is),
    ...paymentChanges(was, is, locale),
    days: changes.days.map(({ date, ...day }) => ({
      date,
      dateText: dateText(date, locale),
      ...timed(day.before, day.after),
    })),
    handsOn: timed(handsOn.before, handsOn.after),
    total: moneyFigures(was.total, is.total, subtract(is.total, was.total)),
    foodCost: moneyFigures(foodCost.before, foodCost.after, foodCost.by),
    late: lateChanges(
      changes,
      before.plan,
      { today: setting.on, orderBy: setting.orderBy },
      supplierName,
    ).map(({ about, what }) => inWords(statement('found.late', { about, what }))),
  };
}

/** True where a change alters nothing of the plan nor of the client's total. */
export function changesNothing(changes: PlanChangesDocument): boolean {
  const { dishes, batches, packs, packOut, days, orders = [], deliveryFees = [], staff = [] } = changes;
  const lists = [dishes, batches, packs, packOut, days, orders, deliveryFees, staff];
  return lists.every((list) => list.length === 0) && changes.total.by === '';
}

/** What goes to the event besides the people who serve, who are in a list of their own with their hours. */
function packOutChanges(
  before: readonly PackOutLine[],
  after: readonly PackOutLine[],
  { staff }: Terms,
): PlanChangesDocument['packOut'] {
  const roles = new Set(staff.map(({ name }) => name));
  const key = ({ group, item, container }: PackOutLine) => [group, item, container].join('\n');
  const sums = (lines: readonly PackOutLine[]) => {
    const found = new Map<string, number>();
    for (const line of lines.filter(({ group, item }) => group !== 'staff' || !roles.has(item)))
      found.set(key(line), (found.get(key(line)) ?? 0) + line.count);
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

function signed(by: Fraction, text: (size: Fraction) => string): string {
  if (by.n === 0n) return '';
  return `${by.s > 0n ? '+' : '−'}${text(by.abs())}`;
}
