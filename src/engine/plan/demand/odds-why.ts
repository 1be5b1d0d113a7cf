import type { Kitchen } from '../../kitchen/kitchen.ts';
import { displayMoney } from '../../money/display-money.ts';
import { type Money, money } from '../../money/money.ts';
import type { DishOdds, OddsAt } from '../../odds/dish-odds.ts';
import { atOdds } from '../../odds/shortage.ts';
import { statement } from '../../text/statement.ts';
import type { Why } from '../event-plan.ts';
import { helpingsSaid, plainAmount } from '../figure-text.ts';

/**
 * The odds of a dish as statements, from who eats it to what would balance its costs; sums are in the kitchen's
 * currency, as people of its locale write them.
 */
export function oddsWhy(odds: DishOdds, { currency, locale }: Pick<Kitchen, 'currency' | 'locale'>): Why {
  const { demand, planned, cooked, missing, left, more, least, advice } = odds;
  const show = (sum: Money) => displayMoney(sum, locale);
  const oddsAt = (at: OddsAt) => ({ ...amountValues(at), odds: atOdds(at.short) });
  const { firstChoice } = odds;
  return [
    ...demand.why,
    statement('why.expect', {
      n: oneOrMany(odds.expected),
      count: { count: odds.expected },
      helping: plainAmount(demand.helping),
    }),
    statement(firstChoice ? 'why.odds.planned-missed' : 'why.odds.planned', oddsAt(planned)),
    ...(cooked
      ? [statement(firstChoice ? 'why.odds.cooked-missed' : 'why.odds.cooked', oddsAt(cooked))]
      : []),
    statement('why.odds.expect', {
      n: oneOrMany(missing),
      missing: { count: missing },
      left: { count: left },
    }),
    ...more.map((each) => {
      const values = { ...oddsAt(each), more: each.more };
      return each.cost
        ? statement(firstChoice ? 'why.odds.more-cost-missed' : 'why.odds.more-cost', {
            ...values,
            cost: show(each.cost),
          })
        : statement(firstChoice ? 'why.odds.more-missed' : 'why.odds.more', values);
    }),
    ...least.map((each) => statement('why.odds.least', { n: String(each.oneIn), ...amountValues(each) })),
    ...(advice
      ? [
          statement(firstChoice ? 'why.odds.advice-missed' : 'why.odds.advice', {
            ...oddsAt(advice),
            missing: show(money(advice.costs.missing, currency)),
            leftOver: show(money(advice.costs.leftOver, currency)),
          }),
        ]
      : []),
  ];
}

function amountValues({ amount, helpings }: OddsAt) {
  return { amount: plainAmount(amount), helpings: helpingsSaid(helpings) };
}

/** What decides between one and many, of the figure as it is shown. */
function oneOrMany(helpings: number): number {
  return Number(helpings.toFixed(1));
}
