import type { Day } from '../../../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { packsText } from '../../../exports/words/packs-text.ts';
import type { DayPaper, DayShopping } from './view.ts';

/**
 * What each supplier brings on a day: by the events' own orders, or by the one order that takes the place of those of
 * `together`, with what is asked of each food on delivery.
 */
export function dayDeliveries(
  date: Day,
  plans: readonly PrepPlanDocument[],
  shopping: DayShopping | null,
  together: ReadonlySet<string>,
): DayPaper['deliveries'] {
  const limits = new Map(
    plans.flatMap(({ safetySheet }) =>
      safetySheet.checks.flatMap(({ stage, what, limit }) =>
        stage === 'receiving' ? foodsOf(what, limit) : [],
      ),
    ),
  );
  const own = plans.flatMap(({ event, orders, shopping: foods }) =>
    together.has(event.id)
      ? []
      : orders.flatMap(({ supplier, name, deliverOn }) =>
          deliverOn === date
            ? foods.flatMap((food) => {
                const packs = food.packs.filter((pack) => pack.supplier === supplier);
                return packs.length === 0
                  ? []
                  : [
                      {
                        supplier: name,
                        event: event.occasion,
                        name: food.name,
                        packs: packs.map(({ count, pack }) => packsText(count, pack)).join('; '),
                      },
                    ];
              })
            : [],
        ),
  );
  const joint = (shopping?.rounds ?? []).flatMap(({ orders, lines }) =>
    orders.flatMap(({ name, deliverOn }) =>
      deliverOn === date
        ? lines.flatMap((line) => {
            const packs = line.packs.filter((pack) => pack.endsWith(`, ${name}`));
            return packs.length === 0
              ? []
              : [
                  {
                    supplier: name,
                    event: shopping?.events.join('; ') ?? '',
                    name: line.name,
                    packs: packs.map((pack) => pack.slice(0, -`, ${name}`.length)).join('; '),
                  },
                ];
          })
        : [],
    ),
  );
  return [...Map.groupBy([...joint, ...own], ({ supplier }) => supplier)].map(([supplier, lines]) => ({
    supplier,
    events: [...new Set(lines.map(({ event }) => event))],
    lines: lines.map(({ name, packs }) => ({ name, packs, limit: limits.get(name) ?? '' })),
  }));
}

/** The foods of a check on delivery, `Supplier: Cream; Butter`, each with what is asked of it. */
function foodsOf(what: string, limit: string): [food: string, limit: string][] {
  return what
    .slice(what.indexOf(': ') + 2)
    .split('; ')
    .map((food) => [food, limit]);
}
