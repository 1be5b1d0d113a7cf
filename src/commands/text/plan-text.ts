import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { alertText } from '../../exports/plan/alerts.ts';
import { dishGuestsNumber } from '../../exports/words/dish-guests-text.ts';
import { wordsIn } from '../../words/words-in.ts';
import { columns } from './columns.ts';

/** A prep plan, its sums as they are read, for a terminal: what to cook, to buy and to do, and what to beware of. */
export function planText(plan: PrepPlanDocument, locale: string): string {
  const say = wordsIn(locale);
  const { event } = plan;
  const { adults, children, vendors, staff } = event.guests;
  const sections = [
    say('terminal.title', {
      event: event.occasion,
      client: event.client,
      state: say('event.state-words', { state: event.state }),
      date: event.dateText,
      time: event.serveAt,
      place: event.place,
      menu: event.package,
      style: say('event.style', { style: event.style }),
      guests: say('terminal.guests', {
        adults: say('terminal.adults', { n: adults }),
        children: say('terminal.children', { n: children }),
        vendors: say('terminal.vendors', { n: vendors }),
        staff: say('terminal.staff', { n: staff }),
      }),
    }),
    list(
      say('terminal.alerts'),
      plan.alerts.map((alert) => alertText(alert, say)),
    ),
    table(say('terminal.dishes'), [
      [
        say('terminal.dish'),
        say('terminal.for-guests'),
        say('terminal.each'),
        say('terminal.extra'),
        say('terminal.need'),
        say('terminal.carried-in'),
      ],
      ...plan.dishes.map((dish) => [
        dish.name,
        dishGuestsNumber(dish, locale),
        dish.perGuest,
        dish.overage,
        dish.need.printed,
        dish.containers
          .filter(({ stage }) => stage === 'carry')
          .map(({ count, name }) => `${count} × ${name}`)
          .join(', '),
      ]),
    ]),
    table(say('terminal.recipes'), [
      [say('terminal.recipe'), say('terminal.batches'), say('terminal.makes'), say('terminal.keeps')],
      ...plan.recipes.map(({ name, batches, makes, keeps }) => [name, batches, makes.printed, keeps]),
    ]),
    table(say('terminal.shopping'), [
      [
        say('terminal.buy'),
        say('terminal.need'),
        say('terminal.packs'),
        say('terminal.from'),
        say('terminal.cost'),
        say('terminal.left'),
      ],
      ...plan.shopping.flatMap((each) =>
        each.packs.length === 0
          ? [[each.name, each.need.printed, each.bought ? say('terminal.in-stock') : '', '', '', '']]
          : each.packs.map(({ count, pack, supplierName, cost }, index) => [
              index === 0 ? each.name : '',
              index === 0 ? each.need.printed : '',
              `${count} × ${pack}`,
              supplierName,
              cost,
              index === 0 ? (each.left?.printed ?? '') : '',
            ]),
      ),
      [say('terminal.food-packs'), '', '', '', plan.foodCost ?? say('terminal.not-priced'), ''],
      [say('terminal.food-used'), '', '', '', plan.foodUsed ?? say('terminal.not-priced'), ''],
      [say('terminal.delivery'), '', '', '', plan.deliveryFees, ''],
    ]),
    table(say('terminal.orders'), [
      [
        say('terminal.order-from'),
        say('terminal.order-by'),
        say('terminal.delivered-on'),
        say('terminal.goods'),
        say('terminal.delivery-fee'),
        say('terminal.total'),
        say('terminal.below-minimum'),
      ],
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
      table(say('terminal.day', { date: day.dateText, when: day.when, time: day.handsOn }), [
        ...day.tasks.map((task) => [
          task.until === undefined ? task.at : `${task.at}–${task.until}`,
          task.station,
          task.recipeName,
          task.makes,
          task.handsOn,
          task.text,
        ]),
      ]),
    ),
    list(
      say('terminal.check-first'),
      plan.findings.map(({ about, what, wayOut }) => say('terminal.finding', { about, what, way: wayOut })),
    ),
    list(say('terminal.cautions'), plan.cautions),
  ];
  return sections.filter((section) => section !== '').join('\n\n');
}

function list(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `${title}\n${lines.map((line) => `  ${line}`).join('\n')}`;
}

function table(title: string, rows: readonly (readonly string[])[]): string {
  return rows.length === 0 ? '' : list(title, columns(rows).split('\n'));
}
