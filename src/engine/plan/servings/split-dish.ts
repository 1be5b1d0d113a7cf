import Fraction from 'fraction.js';
import type { Variant } from '../../food/variant.ts';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import { type Several, type Statement, several, statement } from '../../text/statement.ts';
import type { DishPortions, EventDish, NeedGuests } from '../event-input.ts';
import type { Why } from '../event-plan.ts';
import { guestNumber, guestsSaid } from '../figure-text.ts';

/** Guests with a need, and the dish as it is made for them; `variant` is null where they eat it as it is. */
export interface Eaters {
  readonly need: GuestNeed;
  readonly guests: number;
  readonly variant: Variant | null;
}

/** A dish for `total` guests as its portions: what is made separately in entries of its own, the rest as it is. */
export function splitDish(
  dish: EventDish,
  total: Fraction,
  why: Why,
  eaters: readonly Eaters[],
  more: Pick<DishPortions, 'insteadOf' | 'notFor'> = {},
): EventDish[] {
  const apart = Map.groupBy(
    eaters.filter(({ variant }) => variant !== null),
    ({ variant }) => variant?.recipe.id,
  );
  const taken = new Fraction(BigInt([...apart.values()].reduce((all, group) => all + guestsIn(group), 0)));
  const left = total.gt(taken) ? total.sub(taken) : new Fraction(0n);
  const asItIs: EventDish = {
    ...dish,
    portions: {
      guests: left,
      needs: eaters.flatMap(({ need, guests, variant }) => (variant ? [] : [{ need: need.text, guests }])),
      apart: undefined,
      ...more,
      why:
        taken.n === 0n
          ? why
          : [
              ...why,
              statement('why.without-separate', {
                guests: guestsSaid(total),
                count: guestNumber(taken),
                left: guestsSaid(left),
              }),
            ],
    },
  };
  const madeSeparately = [...apart.values()].flatMap((group) => {
    const variant = group[0]?.variant;
    return variant ? [separateDish(dish, variant, group, more)] : [];
  });
  return [...(left.n === 0n ? [] : [asItIs]), ...madeSeparately];
}

function separateDish(
  dish: EventDish,
  { recipe, changes }: Variant,
  group: readonly Eaters[],
  { insteadOf }: Pick<DishPortions, 'insteadOf'>,
): EventDish {
  const guests = new Fraction(BigInt(guestsIn(group)));
  const needs = group.map(({ need, guests: count }): NeedGuests => ({ need: need.text, guests: count }));
  return {
    ...dish,
    recipe,
    portions: {
      guests,
      needs,
      apart: { recipe: dish.recipe.id, changes },
      ...(insteadOf && { insteadOf }),
      why: [
        statement('why.separate', {
          guests: guestsSaid(guests),
          who: needsSaid(group),
          changes: several('comma', changes),
        }),
      ],
    },
  };
}

/** Which needs they have, and how many each: `3 × vegan, 1 × milk`. */
export function needsSaid(eaters: readonly Pick<Eaters, 'need' | 'guests'>[]): Several {
  return several(
    'comma',
    eaters.map(
      ({ need, guests }): Statement => statement('why.need', { guests: String(guests), need: need.text }),
    ),
  );
}

/** How many guests they are. */
export function guestsIn(eaters: readonly Eaters[]): number {
  return eaters.reduce((all, { guests }) => all + guests, 0);
}
