import type { Kitchen } from '../../kitchen/kitchen.ts';
import { durationText, minutes } from '../../measure/duration.ts';
import { displayMoney } from '../../money/display-money.ts';
import { type Money, money } from '../../money/money.ts';
import { type Said, statement } from '../../text/statement.ts';
import type { KitchenHours } from '../clock/kitchen-presence.ts';
import { payFor } from './pay-for.ts';

/** What the kitchen’s own work costs; `amount` is null where the crew’s pay is not stated. */
interface KitchenCost {
  readonly key: string;
  readonly kind: 'labour';
  readonly label: Said;
  readonly amount: Money | null;
  readonly why: Said;
}

type PayingKitchen = Pick<Kitchen, 'crew' | 'currency' | 'locale' | 'day'>;

/** Hands-on work before serving and one person’s packing, at the crew’s pay; null where there is none. */
export function prepCost(
  prepMinutes: number,
  { crew, currency, locale, day }: PayingKitchen,
): KitchenCost | null {
  if (prepMinutes === 0) return null;
  const work = prepMinutes + day.pack;
  const hours = durationText(minutes(work));
  const packing = durationText(minutes(day.pack));
  const line = { key: 'prep', kind: 'labour' as const, label: statement('cost.prep') };
  if (crew?.pay === undefined)
    return { ...line, amount: null, why: statement('cost.prep.not-stated', { hours, packing }) };
  const pay = money(crew.pay, currency);
  const why = statement('cost.prep.hours', { hours, packing, pay: displayMoney(pay, locale) });
  return { ...line, amount: payFor(work, pay), why };
}

/**
 * The crew between its tasks, loading included, as it is at the count planned for: nobody goes home for twenty minutes. At
 * other counts it is the same.
 */
export function betweenCost(
  kitchenHours: KitchenHours | undefined,
  { crew, currency, locale }: PayingKitchen,
): KitchenCost | null {
  const between = kitchenHours ? kitchenHours.there - kitchenHours.work : 0;
  if (!kitchenHours || crew?.pay === undefined || between <= 0) return null;
  const pay = money(crew.pay, currency);
  return {
    key: 'between',
    kind: 'labour',
    label: statement('cost.between'),
    amount: payFor(between, pay),
    why: statement('cost.between.hours', {
      there: durationText(minutes(kitchenHours.there)),
      work: durationText(minutes(kitchenHours.work)),
      between: durationText(minutes(between)),
      pay: displayMoney(pay, locale),
    }),
  };
}
