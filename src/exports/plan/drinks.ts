import type Fraction from 'fraction.js';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { temperatureText } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { drinkCounts, plannedIce } from '../../engine/plan/drinks/drinks-plan.ts';
import { pounds } from '../../engine/plan/drinks/planned-drink.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { plainAmount } from '../../engine/plan/figure-text.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanDrinks } from '../form/drinks.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { amountText } from '../words/amount-text.ts';
import { statementsIn } from '../words/statement-text.ts';

/** What guests drink, as the document says it; undefined for an event without drinks. */
export function planDrinks(
  { drinks, input }: Pick<EventPlan, 'drinks' | 'input'>,
  { measures, locale }: Pick<Kitchen, 'measures' | 'locale'>,
): PlanDrinks | undefined {
  if (!input.drinks || drinks.length === 0) return undefined;
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  const ice = plannedIce(drinks, input.drinks);
  const { high, hotDay } = input.drinks;
  const alcohol = drinks.some(({ dish }) => dish?.drink?.alcohol);
  return {
    high: high ? temperatureText(high) : '',
    hot: hotDay !== undefined,
    total: Number(drinkCounts(drinks).all.ceil().n),
    kinds: drinks.map(({ dish, drink, drinks: taken, carried, iceInGlasses, iceInTubs, why }) => ({
      name: dish?.name ?? say('plan.drinks-water'),
      recipe: dish?.recipe.id ?? '',
      drinks: Number(taken.ceil().n),
      glass: plainAmount(drink.glass),
      amount: amountText(carried, measures, 'at-least'),
      ...iceFor(iceInGlasses.add(iceInTubs), measures),
      why: why.map(inWords),
    })),
    ice: ice
      ? {
          inGlasses: amountText(ice.inGlasses, measures, 'at-least'),
          inTubs: amountText(ice.inTubs, measures, 'at-least'),
          total: amountText(ice.total, measures, 'at-least'),
          ...(input.drinks.ice && { ingredient: input.drinks.ice.id }),
          why: ice.why.map(inWords),
        }
      : null,
    cautions: alcohol ? [say('cautions.alcohol.law'), say('cautions.alcohol.free')] : [],
  };
}

function iceFor(amount: Fraction, measures: MeasureSystem): Pick<PlanDrinks['kinds'][number], 'ice'> {
  return amount.n === 0n ? {} : { ice: amountText(pounds(amount), measures, 'at-least') };
}

/** Where plain water comes from: it is bought, or the place is stated to have some or none. */
function waterAt({ drinks, venueKit }: EventPlan['input']): 'bought' | 'yes' | 'no' | 'unknown' {
  if (drinks?.habits.water !== undefined) return 'bought';
  if (venueKit?.water === undefined) return 'unknown';
  return venueKit.water ? 'yes' : 'no';
}

/** Plain water and ice on the pack-out list: neither is a dish, so no container or label names them. */
export function drinkLines(
  { drinks, input }: Pick<EventPlan, 'drinks' | 'input'>,
  { measures, locale }: Pick<Kitchen, 'measures' | 'locale'>,
): PackOutLine[] {
  if (!input.drinks) return [];
  const say = wordsIn(locale);
  const ice = plannedIce(drinks, input.drinks);
  const line = (item: string, note: string, usedUp = false): PackOutLine => ({
    group: 'service ware',
    item,
    container: '',
    count: 1,
    unit: say('lists.each'),
    hold: '',
    ...(usedUp && { usedUp }),
    note,
  });
  const printed = (amount: Parameters<typeof amountText>[0]) =>
    amountText(amount, measures, 'at-least').printed;
  return [
    ...drinks.flatMap(({ dish, carried }) =>
      dish
        ? []
        : [
            line(
              say('lists.water', { amount: printed(carried) }),
              say('lists.water-note', { water: waterAt(input) }),
            ),
          ],
    ),
    ...(ice
      ? [
          line(
            say('lists.ice', { amount: printed(ice.total) }),
            say('lists.ice-note', { glasses: printed(ice.inGlasses), tubs: printed(ice.inTubs) }),
            true,
          ),
        ]
      : []),
  ];
}
