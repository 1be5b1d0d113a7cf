import Fraction from 'fraction.js';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import { type Appetite, chancesOf, meanHelpings } from '../../odds/appetite.ts';
import { attendanceBy, type StatedAttendance } from '../../odds/attendance.ts';
import { demandOf } from '../../odds/demand.ts';
import type { DishDemand, DishEaters } from '../../odds/dish-demand.ts';
import { atOdds, chanceOfShortage, leastHelpings } from '../../odds/shortage.ts';
import type { Guests } from '../../quote/counts.ts';
import { type Statement, several, statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding, Why } from '../event-plan.ts';
import { guestsSaid, helpingsSaid, percent, plainNumber } from '../figure-text.ts';
import { eatersOf } from './eaters.ts';
import { guestsInParts, helpingOf, helpingUnknown } from './helping-of.ts';

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
  const least = { n: String(oneIn), helpings: helpingsSaid(helpings) };
  const chosen =
    helpings === 0
      ? statement('why.risk-least', least)
      : statement('why.risk-least-fewer', {
          ...least,
          fewer: String(helpings - 1),
          odds: atOdds(chanceOfShortage(chances, helpings - 1)),
        });
  return { eaters, helping, chances, helpings, why: [...why, chosen] };
}

/** Who eats of a dish, where that is not everybody by the appetite. */
export function eatersWhy({ sure, free, cannot }: DishEaters): Why {
  if (sure === 0 && cannot === 0) return [];
  const parts = [
    statement('why.eaters.free', { n: free, count: String(free) }),
    ...(sure > 0 ? [statement('why.eaters.sure', { n: sure, count: String(sure) })] : []),
    ...(cannot > 0 ? [statement('why.eaters.cannot', { count: String(cannot) })] : []),
  ];
  const guests = guestsSaid(new Fraction(BigInt(free + sure + cannot)));
  return [statement('why.eaters', { guests, parts: several('comma', parts) })];
}

/** How guests come, where not all do for certain. */
export function attendanceWhy(stated: StatedAttendance | undefined): Why {
  if (!stated || stated.failToCome.n === 0n) return [];
  const share = percent(stated.failToCome);
  return stated.partyOf === 1
    ? [statement('why.fail-to-come', { share })]
    : [statement('why.fail-to-come-parties', { share, size: String(stated.partyOf) })];
}

function appetiteWhy(appetite: Appetite): Statement {
  const shares = appetite.shares.flatMap((share, helpings) =>
    share.n === 0n
      ? []
      : [statement('why.appetite.share', { share: percent(share), helpings: String(helpings) })],
  );
  const mean = new Fraction(meanHelpings(appetite));
  return statement('why.appetite', { shares: several('comma', shares), mean: plainNumber(mean) });
}
