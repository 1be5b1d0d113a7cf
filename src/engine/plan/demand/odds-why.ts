import type { Kitchen } from '../../kitchen/kitchen.ts';
import { displayMoney } from '../../money/display-money.ts';
import { type Money, money } from '../../money/money.ts';
import type { DishOdds, OddsAt } from '../../odds/dish-odds.ts';
import { helpingsText } from '../../odds/helpings.ts';
import { riskText } from '../../odds/risk.ts';
import { counted } from '../../text/counted.ts';
import type { Why } from '../event-plan.ts';
import { plainAmount } from '../figure-text.ts';
import { atOdds, expectedText } from './odds-text.ts';

/**
 * The odds of a dish as statements, from who eats it to what would balance its costs; sums are in the kitchen's
 * currency, as people of its locale write them.
 */
export function oddsWhy(odds: DishOdds, { currency, locale }: Pick<Kitchen, 'currency' | 'locale'>): Why {
  const { demand, planned, cooked, missing, left, more, least, advice } = odds;
  const show = (sum: Money) => displayMoney(sum, locale);
  const oddsAt = (at: OddsAt) =>
    `${amountText(at)}, ${odds.firstChoice ? 'is missed by someone' : 'runs short'} ${atOdds(at.short)}`;
  return [
    ...demand.why,
    `expect ${counted(expectedText(odds.expected), 'helping')} of ${plainAmount(demand.helping)}`,
    `planned: ${oddsAt(planned)}`,
    ...(cooked ? [`as the batches come out: ${oddsAt(cooked)}`] : []),
    `with that, expect ${counted(expectedText(missing), 'helping')} short and ${expectedText(left)} left over`,
    ...more.map(
      (each) => `with ${each.more} more: ${oddsAt(each)}${each.cost ? `, costs ${show(each.cost)}` : ''}`,
    ),
    ...least.map((each) => `${riskText(each.oneIn)}: ${amountText(each)}`),
    ...(advice
      ? [
          `advice: ${oddsAt(advice)}, balances ${show(money(advice.costs.missing, currency))} for a missing helping against ${show(money(advice.costs.leftOver, currency))} for one left over`,
        ]
      : []),
  ];
}

function amountText({ amount, helpings }: OddsAt): string {
  return `${plainAmount(amount)}, ${helpingsText(helpings)}`;
}
