import Fraction from 'fraction.js';
import type { Equipment } from '../../kitchen/kitchen.ts';
import { venueCount } from '../../kitchen/place-gear.ts';
import { durationText, minutes } from '../../measure/duration.ts';
import { addQuantities, type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { definedFactor, unitKind } from '../../measure/units.ts';
import { statement } from '../../text/statement.ts';
import type { TimedStep } from '../clock/clock-step.ts';
import type { ServedOn } from '../clock/day-clock.ts';
import type { Why } from '../event-plan.ts';
import { comesTo, percent, plainAmount } from '../figure-text.ts';

/** Equipment of the kitchen’s that goes to an event, and how long it is lit there. */
export interface Brought {
  readonly equipment: Equipment;
  readonly count: number;
  /** Minutes from the date’s midnight, from lighting until its last use there ends. */
  readonly lit: { readonly from: number; readonly until: number };
}

/** A fuel that goes along for what is brought. */
export interface Fuel {
  readonly name: string;
  /** Pieces × hours lit × what one burns, exact. */
  readonly burned: Quantity;
  /** The same with what is taken along to spare, exact. */
  readonly taken: Quantity;
  /**
   * What it is bought in and how many of them that is, up to whole ones and at least one for each piece that burns it, since
   * a cylinder feeds one: common practice, no source. Undefined where that is not stated.
   */
  readonly packed: { readonly each: Quantity; readonly count: number } | undefined;
  readonly why: Why;
}

/** Taken along beyond what the clock needs: wind, cold and a late start burn more. Common practice, no source. */
const SPARE = new Fraction(1n, 4n);

/**
 * What the kitchen brings for the work at an event’s place: of each kind that travels as many as are in use at once, the
 * venue’s own left out; all there are of what states no capacity. Where the venue has enough, none.
 */
export function broughtTo(
  { plan, place }: Pick<ServedOn, 'plan' | 'place'>,
  equipment: ReadonlyMap<string, Equipment>,
): Brought[] {
  return [...equipment.values()].flatMap((gear): Brought[] => {
    if (!gear.travels) return [];
    const work = place.steps.filter(({ step }) => step.station === gear.station);
    const uses = work.filter(({ load }) => load?.equipment.id === gear.id);
    const times = uses.length > 0 ? uses : work.filter(({ load }) => load === undefined);
    if (times.length === 0) return [];
    const there = venueCount(gear, plan.input.venueKit) ?? 0;
    const needed = uses.length > 0 ? mostAtOnce(uses) : gear.count;
    const count = Math.min(gear.count, needed - there);
    return count <= 0 ? [] : [{ equipment: gear, count, lit: litFor(gear, times) }];
  });
}

/** The most of it that is in use at any minute. */
function mostAtOnce(uses: readonly TimedStep[]): number {
  return Math.max(
    ...uses.map(({ begins }) =>
      uses
        .filter((other) => other.begins <= begins && begins < other.ends)
        .reduce((sum, { load }) => sum + (load?.uses ?? 1), 0),
    ),
  );
}

function litFor({ heats }: Equipment, steps: readonly TimedStep[]): Brought['lit'] {
  return {
    from: Math.min(...steps.map(({ begins }) => begins)) - (heats ?? 0),
    until: Math.max(...steps.map(({ ends }) => ends)),
  };
}

/** The fuels for what is brought, by name: what all of it burns while it is lit and a quarter more. */
export function fuelsFor(brought: readonly Brought[]): Fuel[] {
  const burning = brought.flatMap(({ equipment: { name, burns, fuelIn }, count, lit }) =>
    burns
      ? [
          {
            fuel: burns.fuel,
            fuelIn,
            count,
            gear: name,
            hours: durationText(minutes(lit.until - lit.from)),
            rate: burns.perHour,
            amount: timesQuantity(burns.perHour, new Fraction(count * (lit.until - lit.from), 60)),
          },
        ]
      : [],
  );
  const kindOf = ({ unit }: Quantity) => (unitKind(unit) === 'count' ? unit : unitKind(unit));
  const fuels = Map.groupBy(burning, ({ fuel, amount }) => `${fuel}\n${kindOf(amount)}`);
  return [...fuels.values()].map((same) => {
    const [first, ...others] = same as [(typeof same)[number]];
    const burned = others.reduce(
      (sum, { amount }) => addQuantities(sum, inUnit(amount, sum.unit) ?? amount),
      first.amount,
    );
    const taken = timesQuantity(burned, SPARE.add(1n));
    const each = same.find(({ fuelIn }) => fuelIn)?.fuelIn;
    const inEach = each && inUnit(taken, each.unit);
    const pieces = same.reduce((sum, { count }) => sum + count, 0);
    const packed = inEach && {
      each,
      count: Math.max(pieces, Number(inEach.amount.div(each.amount).ceil().n)),
    };
    return {
      name: first.fuel,
      burned,
      taken,
      packed,
      why: [
        ...same.map(({ gear, count, hours, rate, amount }) =>
          statement('why.fuel.burned', {
            n: count,
            gear,
            hours,
            rate: plainAmount(rate),
            result: comesTo(amount),
          }),
        ),
        statement('why.fuel.spare', {
          amount: plainAmount(burned),
          share: percent(SPARE),
          result: comesTo(taken),
        }),
        ...(packed
          ? [
              statement('why.fuel.packed', {
                amount: plainAmount(taken),
                each: plainAmount(packed.each),
                pieces,
                n: packed.count,
              }),
            ]
          : []),
      ],
    };
  });
}

function inUnit({ amount, unit }: Quantity, to: string): Quantity | undefined {
  const factor = definedFactor(unit, to);
  return factor && { amount: amount.mul(factor), unit: to };
}
