import { changesNothing } from '../exports/plan-changes.ts';
import type { Figures, PlanChangesDocument } from '../exports/plan-changes-document.ts';
import { columns } from './columns.ts';

/**
 * What a change makes of a plan, its sums as they are read, for a terminal: what comes too late first, then what to add
 * or take back.
 */
export function changesText(changes: PlanChangesDocument): string {
  if (changesNothing(changes)) return 'Nothing of the plan changes.';
  const sections = [
    section('Too late to be done as planned', changes.late),
    table(
      'Packs to add or take back',
      changes.packs.map((each) => [each.ingredient, `${each.by} × ${each.pack}`, each.supplier, wasIs(each)]),
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
      'Containers, service ware and staff',
      changes.packOut.map((each) => [each.item, each.container, each.by, wasIs(each)]),
    ),
    table('Hands-on time', [
      ...changes.days.map((each) => [each.dateText, each.by, wasIs(each)]),
      ...(changes.handsOn.by === '' ? [] : [['All days', changes.handsOn.by, wasIs(changes.handsOn)]]),
    ]),
    table('Money', [
      ...moneyRow('Client’s total', changes.total),
      ...moneyRow('Food in whole packs', changes.foodCost),
    ]),
  ];
  return sections.filter((text) => text !== '').join('\n\n');
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
