import type { PlanChangesDocument } from '../../exports/form/changes.ts';
import type { Figures } from '../../exports/form/text.ts';
import { changesNothing } from '../../exports/plan/changes.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { columns } from './columns.ts';

/**
 * What a change makes of a plan, its sums as they are read, for a terminal: what comes too late first, then what to add
 * or take back.
 */
export function changesText(changes: PlanChangesDocument, locale: string): string {
  const say = wordsIn(locale);
  const wasIs = (figures: Figures) => wasIsText(figures, say);
  if (changesNothing(changes)) return say('terminal.no-change');
  const sections = [
    section(say('terminal.too-late'), changes.late),
    table(
      say('plan.packs-change'),
      changes.packs.map((each) => [each.ingredient, `${each.by} × ${each.pack}`, each.supplier, wasIs(each)]),
    ),
    table(say('terminal.orders-fees'), [
      ...(changes.orders ?? []).map((each) => [each.supplier, orderWords(each, say), each.by, wasIs(each)]),
      ...(changes.deliveryFees ?? []).map((each) => [
        each.supplier,
        say('terminal.fee'),
        each.by,
        wasIs(each),
      ]),
    ]),
    table(
      say('plan.staff'),
      (changes.staff ?? []).flatMap((each) => [
        [each.role, say('terminal.people'), each.by, wasIs(each)],
        [each.role, say('terminal.hours'), each.hours.by, wasIs(each.hours)],
      ]),
    ),
    table(
      say('plan.dishes'),
      changes.dishes.map((each) => [each.dish, each.by, wasIs(each)]),
    ),
    table(
      say('plan.batches'),
      changes.batches.map((each) => [each.recipe, each.by, wasIs(each)]),
    ),
    table(
      say('terminal.to-take'),
      changes.packOut.map((each) => [each.item, each.container, each.by, wasIs(each)]),
    ),
    table(say('plan.hands-on'), [
      ...changes.days.map((each) => [each.dateText, each.by, wasIs(each)]),
      ...(changes.handsOn.by === ''
        ? []
        : [[say('terminal.all-days'), changes.handsOn.by, wasIs(changes.handsOn)]]),
    ]),
    table(
      say('plan.payments'),
      (changes.payments ?? []).map((each) => [each.label, each.due, each.by, wasIs(each)]),
    ),
    table(say('terminal.money'), [
      ...moneyRow(say('plan.total'), changes.total, say),
      ...(changes.balance ? moneyRow(say('plan.still-open'), changes.balance, say) : []),
      ...moneyRow(say('plan.food'), changes.foodCost, say),
    ]),
  ];
  return sections.filter((text) => text !== '').join('\n\n');
}

/** An order that was not there before, one that is dropped, or one that stays. */
function orderWords({ before, after }: Figures, say: Say): string {
  if (before === '') return say('terminal.order-new');
  return after === '' ? say('terminal.order-dropped') : say('terminal.order');
}

function moneyRow(label: string, figures: Figures, say: Say): string[][] {
  return figures.by === '' ? [] : [[label, figures.by, wasIsText(figures, say)]];
}

function wasIsText({ before, after }: Figures, say: Say): string {
  const read = (figure: string) => (figure === '' ? say('terminal.none') : figure);
  return say('terminal.was-is', { before: read(before), after: read(after) });
}

function section(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `${title}\n${lines.map((line) => `  ${line}`).join('\n')}`;
}

function table(title: string, rows: readonly (readonly string[])[]): string {
  return rows.length === 0 ? '' : section(title, columns(rows).split('\n'));
}
