import { type Money, money, noMoney, subtract, sum } from '../../engine/money/money.ts';
import { peopleFor } from '../../engine/quote/staff-lines.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { PlanOrder } from '../form/buying.ts';
import type { PlanChangesDocument } from '../form/changes.ts';
import type { Figures } from '../form/text.ts';
import { dateText } from '../words/date-text.ts';
import { openPaymentLabel } from '../words/open-payment-label.ts';
import { counted, moneyFigures, timed } from './change-figures.ts';

type Bill = Pick<EventStatus, 'choice' | 'account'>;

/** Goods ordered and delivery fees supplier by supplier, where they differ; empty text where nothing is ordered. */
export function orderChanges(
  before: readonly PlanOrder[],
  after: readonly PlanOrder[],
  currency: string,
): Required<Pick<PlanChangesDocument, 'orders' | 'deliveryFees'>> {
  const names = new Map([...after, ...before].map(({ supplier, name }) => [supplier, name]));
  const sums = (figure: 'goods' | 'deliveryFee') =>
    [...names].flatMap(([id, supplier]) => {
      const of = (orders: readonly PlanOrder[]) => ordered(orders, id, figure, currency);
      const figures = ordering(of(before), of(after), currency);
      return figures.by === '' ? [] : [{ supplier, ...figures }];
    });
  return { orders: sums('goods'), deliveryFees: sums('deliveryFee') };
}

/** A sum of all that is ordered from a supplier; null where nothing is. */
function ordered(
  orders: readonly PlanOrder[],
  id: string,
  figure: 'goods' | 'deliveryFee',
  currency: string,
): Money | null {
  const own = orders.filter(({ supplier }) => supplier === id);
  if (own.length === 0) return null;
  return sum(
    own.map((order) => money(order[figure], currency)),
    currency,
  );
}

function ordering(before: Money | null, after: Money | null, currency: string): Figures {
  const nothing = noMoney(currency);
  return moneyFigures(before, after, subtract(after ?? nothing, before ?? nothing));
}

/** The people who serve, by role, with their hours together, where either differs. */
export function staffChanges(
  terms: Terms,
  before: Bill,
  after: Bill,
): Required<PlanChangesDocument>['staff'] {
  return terms.staff.flatMap((role) => {
    const people = ({ choice }: Bill) =>
      role.packages && !role.packages.includes(choice.package) ? 0 : peopleFor(role, choice.guests);
    const [was, is] = [people(before), people(after)];
    if (was === is) return [];
    const minutesEach = Number(role.hours) * 60;
    return [{ role: role.name, ...counted(was, is), hours: timed(was * minutesEach, is * minutesEach) }];
  });
}

/** What is still open of each payment, where it differs, and of all together: the total less what came in. */
export function paymentChanges(
  before: Bill,
  after: Bill,
  locale: string,
): Required<Pick<PlanChangesDocument, 'payments' | 'balance'>> {
  const payments = after.account.instalments.flatMap(({ instalment, due, open }, place) => {
    const was = before.account.instalments[place]?.open ?? null;
    const figures = moneyFigures(was, open, subtract(open, was ?? noMoney(open.currency)));
    return figures.by === ''
      ? []
      : [
          {
            label: openPaymentLabel({ instalment }, { currency: open.currency, locale }),
            due: due === null ? '' : dateText(due, locale),
            ...figures,
          },
        ];
  });
  const [was, is] = [before.account.balance, after.account.balance];
  return { payments, balance: moneyFigures(was, is, subtract(is, was)) };
}
