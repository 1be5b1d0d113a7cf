import Fraction from 'fraction.js';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import { type Appetite, chancesOf, HELPINGS, meanHelpings } from '../../odds/appetite.ts';
import { attendanceBy, type StatedAttendance } from '../../odds/attendance.ts';
import { demandOf } from '../../odds/demand.ts';
import type { DishDemand, DishEaters } from '../../odds/dish-demand.ts';
import { helpingsText } from '../../odds/helpings.ts';
import { riskText } from '../../odds/risk.ts';
import { chanceOfShortage, leastHelpings } from '../../odds/shortage.ts';
import type { Guests } from '../../quote/counts.ts';
import { counted } from '../../text/counted.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding, Why } from '../event-plan.ts';
import { percent, plainNumber } from '../figure-text.ts';
import { eatersOf } from './eaters.ts';
import { guestsInParts, helpingOf, helpingUnknown } from './helping-of.ts';
import { atOdds } from './odds-text.ts';

/**
 * What guests want of a dish by their appetite: who cannot eat it takes none, who has nothing else in the course takes
 * at least one helping, all others as the appetite says. Where a guest counts as a part, or a helping is in a unit that
 * the amount does not reach, there is a finding instead, and the dish keeps its per-guest amount.
 */
export function appetiteDemand(
  dish: EventDish,
  appetite: Appetite,
  dishes: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
  stated: StatedAttendance | undefined,
): DishDemand | PlanFinding {
  const eaters = eatersOf(dish, dishes, guests, needs);
  const helping = helpingOf(dish);
  if (!eaters) return guestsInParts(dish);
  if (!helping) return helpingUnknown(dish);
  const chances = demandOf(chancesOf(appetite), eaters, attendanceBy(stated));
  const oneIn = dish.takeRate?.shortOneIn;
  const helpings = oneIn === undefined ? undefined : leastHelpings(chances, 1 / oneIn);
  const why = [...eatersWhy(eaters), appetiteWhy(appetite), ...attendanceWhy(stated)];
  if (oneIn === undefined || helpings === undefined) return { eaters, helping, chances, helpings, why };
  const fewer =
    helpings === 0
      ? ''
      : `; ${helpings - 1} would run short ${atOdds(chanceOfShortage(chances, helpings - 1))}`;
  const chosen = `${riskText(oneIn)}: ${helpingsText(helpings)}, the least that keep to it${fewer}`;
  return { eaters, helping, chances, helpings, why: [...why, chosen] };
}

/** Who eats of a dish, where that is not everybody by the appetite. */
export function eatersWhy({ sure, free, cannot }: DishEaters): Why {
  if (sure === 0 && cannot === 0) return [];
  const parts = [
    `${free} ${free === 1 ? 'takes' : 'take'} it as they like`,
    ...(sure > 0
      ? [
          `${sure} ${sure === 1 ? 'has' : 'have'} nothing else in this course and ${sure === 1 ? 'takes' : 'take'} at least one helping`,
        ]
      : []),
    ...(cannot > 0 ? [`${cannot} cannot eat it`] : []),
  ];
  return [`${counted(free + sure + cannot, 'guest')}: ${parts.join(', ')}`];
}

/** How guests come, where not all do for certain. */
export function attendanceWhy(stated: StatedAttendance | undefined): Why {
  if (!stated || stated.failToCome.n === 0n) return [];
  const together = stated.partyOf === 1 ? 'each by himself or herself' : `in parties of ${stated.partyOf}`;
  return [`${percent(stated.failToCome)} of the guests fail to come, ${together}`];
}

function appetiteWhy(appetite: Appetite): string {
  const shares = appetite.shares.flatMap((share, helpings) =>
    share.n === 0n ? [] : [`${percent(share)} take ${HELPINGS[helpings]}`],
  );
  const mean = new Fraction(meanHelpings(appetite));
  return `appetite: ${shares.join(', ')}; in the mean ${plainNumber(mean)} of a guest who takes as he or she likes`;
}
