import Fraction from 'fraction.js';
import type { Day } from '../../../engine/calendar/day.ts';
import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { scaleOf } from '../../../engine/measure/temperature.ts';
import { COLD_ROOM, coldLoad } from '../../../engine/plan/days/cold-room.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import { leavesRaw } from '../../../engine/safety/leaves-raw.ts';
import type { PlanRaw } from '../../../exports/form/food.ts';
import { planRaw, rawLast } from '../../../exports/plan/raw.ts';
import { amountText } from '../../../exports/words/amount-text.ts';
import { dateText } from '../../../exports/words/date-text.ts';
import { wholePercentOf } from '../../../exports/words/percent-text.ts';
import { rawMarkText } from '../../../exports/words/raw-mark-text.ts';
import { statementsIn } from '../../../exports/words/statement-text.ts';
import { wordsIn } from '../../../words/words-in.ts';
import type { DayView } from './view.ts';

/** What stands in the cold on a day over all events, and whether the kitchen's cold room holds it. */
export function dayCold(plans: readonly EventPlan[], date: Day, kitchen: Kitchen): DayView['cold'] {
  const say = wordsIn(kitchen.locale);
  const inWords = statementsIn(kitchen.locale);
  const scale = scaleOf(kitchen.measures);
  const room = kitchen.equipment.get(COLD_ROOM);
  const markOf = (raw?: PlanRaw) => (raw ? rawMarkText(raw.mark, say) : '');
  const { foods, kinds, share } = coldLoad(plans, date, kitchen.equipment);
  const uncounted = kinds.filter((kind) => room && !kind.share).map(({ name }) => inWords(name));
  const over = share?.gt(new Fraction(1n)) === true;
  return {
    kinds: kinds.map((kind) => ({
      text: say('plan.counted', { count: kind.count, what: inWords(kind.name) }),
      share: kind.share
        ? say('day.cold-share', { share: wholePercentOf(kind.share), room: room?.name ?? '' })
        : '',
    })),
    foods: plans.flatMap((plan) => {
      const own = foods.filter((food) => food.plan === plan);
      if (own.length === 0) return [];
      return [
        {
          event: plan.input.occasion,
          foods: rawLast(own, ({ recipe }) => leavesRaw(recipe, plan.foodSafety)).map(
            ({ recipe, from, containers, makes }) => ({
              name: recipe.name,
              raw: markOf(planRaw(recipe, plan.foodSafety, scale, say, inWords)),
              standsIn:
                containers.length > 0
                  ? containers
                      .map(({ count, containerName }) =>
                        say('plan.counted', { count, what: inWords(containerName) }),
                      )
                      .join(', ')
                  : amountText(makes, kitchen.measures, 'at-least').printed,
              since:
                from === date
                  ? say('day.made-today')
                  : say('day.since', { day: dateText(from, kitchen.locale) }),
            }),
          ),
        },
      ];
    }),
    full:
      room && share
        ? uncounted.length > 0
          ? say('day.cold-full-uncounted', {
              share: wholePercentOf(share),
              room: room.name,
              containers: uncounted.join(', '),
            })
          : say('day.cold-full', { share: wholePercentOf(share), room: room.name })
        : '',
    finding: over
      ? {
          about: room?.name ?? '',
          what: say('day.cold-over', { share: wholePercentOf(share) }),
          wayOut: say('day.cold-over-way'),
        }
      : null,
  };
}
