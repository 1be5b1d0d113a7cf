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
    `${amountText(at)}, ${odds.firstChoice ? 'is missed by somebody' : 'runs short'} ${atOdds(at.short)}`;
  return [
    ...demand.why,
    `${counted(expectedText(odds.expected), 'helping')} ${expectedText(odds.expected) === '1' ? 'is' : 'are'} to be expected, one helping being ${plainAmount(demand.helping)}`,
    `planned: ${oddsAt(planned)}`,
    ...(cooked ? [`as its batches make it: ${oddsAt(cooked)}`] : []),
    `of that ${counted(expectedText(missing), 'helping')} ${expectedText(missing) === '1' ? 'is' : 'are'} to be expected missing, and ${expectedText(left)} to come back`,
    ...more.map(
      (each) =>
        `with ${each.more} more: ${oddsAt(each)}${each.cost ? `, for ${show(each.cost)} of food` : ''}`,
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
