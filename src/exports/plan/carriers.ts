import Fraction from 'fraction.js';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import { degreesIn, scaleOf } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { USUAL_HOT } from '../../engine/plan/load/carrier-heat.ts';
import type { CarrierLack } from '../../engine/plan/load/carriers-out.ts';
import type { EventLoad, WeighedCarrier } from '../../engine/plan/load/event-load.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanCarrier } from '../form/carriers.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import type { PackOutLine } from '../form/sheets.ts';
import { amountText } from '../words/amount-text.ts';
import { clockOf } from '../words/clock-text.ts';
import type { SayStatement } from '../words/statement-text.ts';
import { poundsUp } from './pounds-up.ts';

/** What carriers are worded with. */
export interface CarrierWords {
  readonly system: MeasureSystem;
  readonly locale: string;
  readonly say: Say;
  readonly inWords: SayStatement;
}

/** What is in each carrier, in the order of their numbers. */
export function planCarriers({ loading, outside }: EventLoad, words: CarrierWords): PlanCarrier[] {
  const { system, say, inWords } = words;
  return (loading?.carriers ?? []).map((each): PlanCarrier => {
    const { ice, warmth, foodGrams } = each;
    const around = {
      outside: degrees(outside.degrees, words),
      stated: outside.stated ? 'yes' : 'no',
      food: weightText(foodGrams, system),
    };
    return {
      number: each.number,
      name: each.carrier.name,
      hold: each.hold,
      raw: each.raw,
      foods: each.foods.map(({ food, count, neededAt }) => ({
        item: food.name,
        container: food.container ? inWords(food.container.containerName) : say('labels.container.own'),
        count,
        needed: clockOf(neededAt),
      })),
      needed: clockOf(each.opened),
      emptied: clockOf(each.emptied),
      weight: each.grams ? poundsUp(each.grams, system) : '',
      foodWeighs: foodGrams.n === 0n ? '' : weightText(foodGrams, system),
      unweighed: [...new Set(each.unweighed)],
      ice: ice
        ? {
            amount: poundsUp(ice.grams, system, HALVES),
            packs: ice.packs ?? null,
            why: say('carriers.ice-why', {
              ...around,
              hours: hoursText(ice.hours),
              by: system === 'us' ? '4 °F' : '2 °C',
              trial: each.carrier.trial ? 'yes' : 'no',
            }),
          }
        : null,
      warmth: warmth
        ? {
            after: degrees(warmth.after, words),
            enough: warmth.enough,
            why: say('carriers.warmth-why', {
              ...around,
              hours: hoursText(warmth.hours),
              from: degrees(USUAL_HOT, words),
              trial: each.carrier.trial ? 'yes' : 'no',
            }),
          }
        : null,
    };
  });
}

/** How many carriers of each kind go along, with their numbers, and the ice for those that are cold. */
export function carrierLines(
  { loading }: EventLoad,
  { system, say }: Pick<CarrierWords, 'system' | 'say'>,
): PackOutLine[] {
  const carriers = loading?.carriers ?? [];
  const line = (item: string, count: number, note: string, usedUp = false): PackOutLine => ({
    group: 'carriers',
    item,
    container: '',
    count,
    unit: say('lists.each'),
    hold: '',
    ...(usedUp && { usedUp }),
    note,
  });
  const numbers = (some: readonly WeighedCarrier[]) =>
    say('carriers.numbers', { n: some.length, numbers: some.map(({ number }) => number).join(', ') });
  const kinds = [...Map.groupBy(carriers, ({ carrier }) => carrier).values()];
  const boxes = kinds.map((same) => line(same[0]!.carrier.name, same.length, numbers(same)));
  const iced = kinds
    .map((same) => same.filter(({ ice }) => ice !== undefined))
    .filter((same) => same.length > 0)
    .map((same) => {
      const pack = same[0]!.carrier.icePackGrams;
      const grams = same.reduce((sum, { ice }) => sum.add(ice?.grams ?? 0n), new Fraction(0n));
      const packs = same.reduce((sum, { ice }) => sum + (ice?.packs ?? 0), 0);
      return pack
        ? line(say('carriers.ice-packs', { each: weightText(pack, system) }), packs, numbers(same))
        : line(
            say('carriers.loose-ice', { amount: poundsUp(grams, system, HALVES) }),
            1,
            numbers(same),
            true,
          );
    });
  return [...boxes, ...iced];
}

/** What does not fit into carriers, and what would not stay hot in them, each with its way out. */
export function carrierFindings(
  { loading, outside }: EventLoad,
  lacks: readonly CarrierLack[],
  words: CarrierWords,
): PrepPlanDocument['findings'] {
  if (!loading) return [];
  const { say, inWords } = words;
  return [
    ...loading.loose.map(({ food }) => ({
      about: food.name,
      what: say('carriers.unfit', {
        dish: food.name,
        container: inWords(food.container?.containerName ?? ''),
        how: food.hold,
      }),
      wayOut: say('carriers.unfit.way', { how: food.hold }),
    })),
    ...loading.uniced.map(({ food, neededAt }) => ({
      about: food.name,
      what: say('carriers.uniced', {
        dish: food.name,
        container: food.container ? inWords(food.container.containerName) : 'none',
        time: clockOf(neededAt),
      }),
      wayOut: say('carriers.uniced.way'),
    })),
    ...lacks.map(({ carrier, taken, others }) => ({
      about: carrier.name,
      what: say('carriers.short', {
        name: carrier.name,
        taken,
        has: carrier.count,
        n: others.length,
        others: others.join(', '),
      }),
      wayOut: say('carriers.short.way', { more: taken - carrier.count }),
    })),
    ...loading.carriers.flatMap(({ number, carrier, warmth, emptied }) =>
      !warmth || warmth.enough
        ? []
        : [
            {
              about: carrier.name,
              what: say('carriers.cools', {
                n: String(number),
                from: degrees(USUAL_HOT, words),
                after: degrees(warmth.after, words),
                time: clockOf(emptied),
                outside: degrees(outside.degrees, words),
              }),
              wayOut: warmth.goesInAt
                ? say('carriers.cools.way-hotter', { at: degreesUp(warmth.goesInAt, words) })
                : say('carriers.cools.way'),
            },
          ],
    ),
  ];
}

/** Ice is weighed out to the half pound or the half kilogram, up. */
const HALVES = 2n;

function weightText(grams: Fraction, system: MeasureSystem): string {
  return amountText({ amount: grams, unit: 'g' }, system, 'at-least').printed;
}

/** Whole degrees in the kitchen’s scale, down: food is never told warmer than it is. */
function degrees(celsius: Fraction, { system }: Pick<CarrierWords, 'system'>): string {
  const scale = scaleOf(system);
  return `${degreesIn(scale, { degrees: celsius, scale: 'C' }).floor().toString()} °${scale}`;
}

function degreesUp(celsius: Fraction, { system }: Pick<CarrierWords, 'system'>): string {
  const scale = scaleOf(system);
  return `${degreesIn(scale, { degrees: celsius, scale: 'C' }).ceil().toString()} °${scale}`;
}

function hoursText(hours: Fraction): string {
  return durationText(minutes(Number(hours.mul(60n).ceil().n)));
}
