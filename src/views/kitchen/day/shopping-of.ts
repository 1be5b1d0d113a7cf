import type { Book } from '../../../book/book.ts';
import type { Day } from '../../../engine/calendar/day.ts';
import { displayMoney } from '../../../engine/money/display-money.ts';
import { compare, type Money, noMoney } from '../../../engine/money/money.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import { planOrders } from '../../../exports/plan/orders.ts';
import { planPurchase } from '../../../exports/plan/shopping.ts';
import { dateText } from '../../../exports/words/date-text.ts';
import { packsText } from '../../../exports/words/packs-text.ts';
import { statementsIn } from '../../../exports/words/statement-text.ts';
import { orderFor } from '../../../solver/order-for.ts';
import { wordsIn } from '../../../words/words-in.ts';
import { orderAsRead } from '../../sums-as-read.ts';
import { plannedTogether } from '../schedule-for.ts';
import { stockFor } from '../stock-for.ts';
import type { DayShopping } from './view.ts';

/**
 * What events buy in one order, and what it saves against an order for each; null for a single event, whose own page
 * has its order. Stock goes to them as it is left by the events before.
 */
export async function dayShopping(
  book: Book,
  plans: readonly EventPlan[],
  today: Day,
): Promise<DayShopping | null> {
  const ordered = plans.toSorted((a, b) =>
    a.input.date < b.input.date ? -1 : a.input.date > b.input.date ? 1 : a.input.id < b.input.id ? -1 : 1,
  );
  const [first] = ordered;
  if (!first || ordered.length < 2) return null;
  const { kitchen, prices, suppliers } = book;
  const { measures, currency, locale, secondSupplierSaves } = kitchen;
  const joint = await orderFor(
    ordered,
    prices,
    stockFor(book, first.input.id, today, plannedTogether(book, today).plans),
    {
      kitchen,
      suppliers,
      secondSupplierSaves,
      today,
    },
  );
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  const nameOf = (id: string) => book.recipes.get(id)?.name ?? id;
  return {
    events: ordered.map(({ input }) => `${input.occasion}, ${dateText(input.date, locale)}`),
    rounds: joint.rounds.map((round) => ({
      lines: round.purchases.map((each) => {
        const { ingredient, name, need, packs, stock, left } = planPurchase(
          each,
          measures,
          currency,
          suppliers,
          nameOf,
          inWords,
        );
        return {
          ingredient,
          name,
          need: need.printed,
          packs: packs.map(({ count, pack, supplierName }) => `${packsText(count, pack)}, ${supplierName}`),
          without:
            stock && each.packs.length === 0 && each.bought ? say('lists.in-stock') : say('lists.no-price'),
          left: left?.printed ?? '',
        };
      }),
      orders: planOrders(round, locale).map((order) => orderAsRead(order, kitchen)),
      goods: round.goods && displayMoney(round.goods, locale),
      fees: displayMoney(round.fees, locale),
      findings: round.findings.map(({ what, wayOut }) => ({ what: inWords(what), wayOut: inWords(wayOut) })),
    })),
    total: joint.total ? displayMoney(joint.total, locale) : '',
    separate: joint.separate ? displayMoney(joint.separate, locale) : '',
    saves: savesText(joint.saves, currency, locale),
  };
}

function savesText(saves: Money | null, currency: string, locale: string): string {
  return saves && compare(saves, noMoney(currency)) > 0 ? displayMoney(saves, locale) : '';
}
