import type { PlanChangesDocument } from '../../exports/form/changes.ts';
import type { Figures } from '../../exports/form/text.ts';
import { changesNothing } from '../../exports/plan/changes.ts';
import { columns } from './columns.ts';

/**
 * What a change makes of a plan, its sums as they are read, for a terminal: what comes too late first, then what to add
 * or take back.
 */
export function changesText(changes: PlanChangesDocument): string {
  if (changesNothing(changes)) return 'The plan does not change.';
  const sections = [
    section('Too late for the plan', changes.late),
    table(
      'Packs to add or return',
      changes.packs.map((each) => [each.ingredient, `${each.by} × ${each.pack}`, each.supplier, wasIs(each)]),
    ),
    table('Orders and delivery fees', [
      ...(changes.orders ?? []).map((each) => [each.supplier, orderWords(each), each.by, wasIs(each)]),
      ...(changes.deliveryFees ?? []).map((each) => [each.supplier, 'delivery fee', each.by, wasIs(each)]),
    ]),
    table(
      'Staff',
      (changes.staff ?? []).flatMap((each) => [
        [each.role, 'people', each.by, wasIs(each)],
        [each.role, 'hours', each.hours.by, wasIs(each.hours)],
      ]),
    ),
    table(
      'Dishes',
      changes.dishes.map((each) => [each.dish, each.by, wasIs(each)]),
    ),
    table(
      'Batches',
      changes.batches.map((each) => [each.recipe, each.by, wasIs(each)]),
    ),
    table(
      'Containers, service ware and add-ons',
      changes.packOut.map((each) => [each.item, each.container, each.by, wasIs(each)]),
    ),
    table('Hands-on time', [
      ...changes.days.map((each) => [each.dateText, each.by, wasIs(each)]),
      ...(changes.handsOn.by === '' ? [] : [['All days', changes.handsOn.by, wasIs(changes.handsOn)]]),
    ]),
    table(
      'Payments still open',
      (changes.payments ?? []).map((each) => [each.label, each.due, each.by, wasIs(each)]),
    ),
    table('Money', [
      ...moneyRow('Client’s total', changes.total),
      ...(changes.balance ? moneyRow('Still open in all', changes.balance) : []),
      ...moneyRow('Food in whole packs', changes.foodCost),
    ]),
  ];
  return sections.filter((text) => text !== '').join('\n\n');
}

/** An order that was not there before, one that is dropped, or one that stays. */
function orderWords({ before, after }: Figures): string {
  if (before === '') return 'new order';
  return after === '' ? 'order dropped' : 'order';
}

function moneyRow(label: string, figures: Figures): string[][] {
  return figures.by === '' ? [] : [[label, figures.by, wasIs(figures)]];
}

function wasIs({ before, after }: Figures): string {
  return `${before === '' ? 'none' : before} → ${after === '' ? 'none' : after}`;
}

function section(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `${title}\n${lines.map((line) => `  ${line}`).join('\n')}`;
}

function table(title: string, rows: readonly (readonly string[])[]): string {
  return rows.length === 0 ? '' : section(title, columns(rows).split('\n'));
}
