import { counted } from '../../engine/text/counted.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { alertText } from '../../exports/plan/alerts.ts';
import { wordsIn } from '../../words/words-in.ts';
import { columns } from './columns.ts';

/** A prep plan, its sums as they are read, for a terminal: what to cook, to buy and to do, and what to beware of. */
export function planText(plan: PrepPlanDocument, locale: string): string {
  const say = wordsIn(locale);
  const { event } = plan;
  const { adults, children, vendors, staff } = event.guests;
  const sections = [
    `${event.occasion}, ${event.client} (${event.state})\n${event.dateText}, served at ${event.serveAt}, ${event.place}\n${event.package}, ${event.style}: ${counted(adults, 'adult')}, ${counted(children, 'child', 'children')}, ${counted(vendors, 'vendor')}, ${staff} staff`,
    list(
      'Dietary alerts',
      plan.alerts.map((alert) => alertText(alert, say)),
    ),
    table('Dishes', [
      ['dish', 'guests', 'each', 'over', 'need', 'carried in'],
      ...plan.dishes.map((dish) => [
        dish.name,
        dish.counted,
        dish.perGuest,
        dish.overage,
        dish.need.printed,
        dish.containers
          .filter(({ stage }) => stage === 'carry')
          .map(({ count, name }) => `${count} × ${name}`)
          .join(', '),
      ]),
    ]),
    table('Recipes', [
      ['recipe', 'batches', 'makes', 'keeps'],
      ...plan.recipes.map(({ name, batches, makes, keeps }) => [name, batches, makes.printed, keeps]),
    ]),
    table('Shopping', [
      ['buy', 'need', 'packs', 'from', 'cost', 'left over'],
      ...plan.shopping.flatMap((each) =>
        each.packs.length === 0
          ? [[each.name, each.need.printed, each.bought ? 'in stock' : '', '', '', '']]
          : each.packs.map(({ count, pack, supplierName, cost }, index) => [
              index === 0 ? each.name : '',
              index === 0 ? each.need.printed : '',
              `${count} × ${pack}`,
              supplierName,
              cost,
              index === 0 ? (each.left?.printed ?? '') : '',
            ]),
      ),
      ['Food, whole packs', '', '', '', plan.foodCost ?? 'not all priced', ''],
      ['Food used, at pack prices', '', '', '', plan.foodUsed ?? 'not all priced', ''],
      ['Delivery', '', '', '', plan.deliveryFees, ''],
    ]),
    table('Orders', [
      ['order from', 'by', 'delivered on', 'goods', 'delivery', 'total', 'below its minimum'],
      ...plan.orders.map((order) => [
        order.name,
        order.orderByText,
        order.deliverOnText,
        order.goods,
        order.deliveryFee,
        order.total,
        order.short,
      ]),
    ]),
    ...plan.days.map((day) =>
      table(`${day.dateText} (${day.when}), hands-on ${day.handsOn}`, [
        ...day.tasks.map((task) => [task.station, task.recipeName, task.makes, task.handsOn, task.text]),
      ]),
    ),
    list(
      'Check these first',
      plan.findings.map(({ about, what, wayOut }) => `${about}: ${what} — ${wayOut}`),
    ),
    list('Cautions', plan.cautions),
  ];
  return sections.filter((section) => section !== '').join('\n\n');
}

function list(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `${title}\n${lines.map((line) => `  ${line}`).join('\n')}`;
}

function table(title: string, rows: readonly (readonly string[])[]): string {
  return rows.length === 0 ? '' : list(title, columns(rows).split('\n'));
}
