import Fraction from 'fraction.js';
import type { KitBase, KitItem, KitRule, KitVenue, KitWeather } from '../../kitchen/kit.ts';
import type { Kitchen } from '../../kitchen/kitchen.ts';
import { addQuantities, type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { degreesIn } from '../../measure/temperature.ts';
import type { VenueKit } from '../../menu/venue-kit.ts';
import type { Weather } from '../../menu/weather.ts';
import { countGuests } from '../../quote/counts.ts';
import type { ServedOn } from '../clock/day-clock.ts';
import type { EventPlan } from '../event-plan.ts';
import type { Brought } from './brought.ts';

/** What kit is counted by, for one event. */
export interface KitSetting {
  readonly plan: EventPlan;
  /** The event on its date's clock; undefined where the schedule does not have it. */
  readonly served: ServedOn | undefined;
  /** What is cooked on at the place. */
  readonly brought: readonly Brought[];
  /** Tables of the guest list; undefined while there is none. */
  readonly tables: number | undefined;
}

/** What one rule of an item comes to. */
export interface KitPart {
  readonly rule: KitRule;
  /** How many of its base there are, exact; undefined where nobody has stated it: one is counted. */
  readonly of: Fraction | undefined;
  /** Of ÷ per × amount, exact. */
  readonly comes: Quantity;
}

/** Kit that goes to an event. */
export interface PackedKit {
  readonly item: KitItem;
  /** The sum of its parts, up to a whole unit. */
  readonly count: Quantity;
  readonly parts: readonly KitPart[];
  /** What it goes along for although nobody has stated it of the venue. */
  readonly assumed: readonly KitVenue[];
}

/**
 * The kit that goes to an event, in the order of the kitchen's list. What depends on a fact of the venue goes along unless it is
 * stated that it need not: nobody wants to learn on site that there is no water. What depends on the weather goes along where the
 * proposal states such weather. What its rules come to nothing for stays at home.
 */
export function kitFor({ kit, counts }: Pick<Kitchen, 'kit' | 'counts'>, setting: KitSetting): PackedKit[] {
  const { input } = setting.plan;
  return [...(kit?.values() ?? [])].flatMap((item): PackedKit[] => {
    if (item.styles.length > 0 && !item.styles.includes(input.style)) return [];
    if (item.weather.some((each) => !isPlannedFor(each, input.weather))) return [];
    const holds = item.venue.map((each) => holdsAt(each, input.venueKit));
    if (holds.includes(false)) return [];
    const parts = item.rules.map((rule): KitPart => {
      const of =
        rule.base.kind === 'guest'
          ? ratio(countGuests(input.guests, item.counts ?? counts))
          : countOf(rule.base, setting);
      return { rule, of, comes: timesQuantity(rule.amount, (of ?? ONE).div(rule.per)) };
    });
    const [first, ...others] = parts.map(({ comes }) => comes) as [Quantity, ...Quantity[]];
    const { amount, unit } = others.reduce(addQuantities, first);
    if (amount.n === 0n) return [];
    const assumed = item.venue.filter((_, index) => holds[index] === undefined);
    return [{ item, count: { amount: amount.ceil(), unit }, parts, assumed }];
  });
}

const ONE = new Fraction(1n);

function ratio({ over, under }: { readonly over: bigint; readonly under: bigint }): Fraction {
  return new Fraction(over, under);
}

/** Whether a venue is such that the kit is needed; undefined where nobody has stated it. */
function holdsAt(condition: KitVenue, venue: VenueKit | undefined): boolean | undefined {
  const not = (fact: boolean | undefined) => (fact === undefined ? undefined : !fact);
  switch (condition) {
    case 'water':
      return not(venue?.water);
    case 'power':
      return venue?.circuits && venue.circuits.length === 0;
    case 'cover':
      return not(venue?.cover);
    case 'cold':
      return not(venue?.coldSpace);
    case 'stairs':
      return venue?.stairs;
  }
}

/** Degrees Fahrenheit from which a day counts as hot. */
const HEAT = 80;

function isPlannedFor(each: KitWeather, weather: Weather | undefined): boolean {
  if (each !== 'heat') return weather?.[each] === true;
  return weather?.high !== undefined && degreesIn('F', weather.high).gte(HEAT);
}

/** How many there are of what a rule counts; undefined where nobody has stated it. */
function countOf(base: KitBase, { plan, served, brought, tables }: KitSetting): Fraction | undefined {
  const { input } = plan;
  switch (base.kind) {
    case 'event':
      return ONE;
    case 'staff':
      return whole(input.soldCrew?.reduce((sum, { people }) => sum + people, 0));
    case 'cook':
      return whole(input.placeCooks);
    case 'role':
      return whole(
        input.soldCrew?.filter(({ role }) => role === base.role).reduce((sum, { people }) => sum + people, 0),
      );
    case 'table':
      return whole(tables);
    case 'line':
      return whole(input.lines);
    case 'dish':
      return whole(plan.dishes.filter(({ dish }) => !dish.portions?.apart).length);
    case 'hour': {
      const { arrive, cleared } = served?.clock ?? {};
      return arrive === undefined || cleared === undefined ? undefined : new Fraction(cleared - arrive, 60);
    }
    case 'flame':
      return pieces(brought, ({ burns }) => burns !== undefined);
    case 'plug':
      return pieces(brought, ({ amperes }) => amperes !== undefined);
    case 'equipment':
      return pieces(brought, ({ id }) => id === base.equipment);
    case 'guest':
      throw new Error('guests are counted by whom the item counts');
  }
}

function whole(count: number | undefined): Fraction | undefined {
  return count === undefined ? undefined : new Fraction(count);
}

function pieces(brought: readonly Brought[], is: (equipment: Brought['equipment']) => boolean): Fraction {
  return new Fraction(
    brought.filter(({ equipment }) => is(equipment)).reduce((sum, { count }) => sum + count, 0),
  );
}
