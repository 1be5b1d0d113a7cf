import { durationText, minutes } from '../../engine/measure/duration.ts';
import type { TimedStep } from '../../engine/plan/clock/clock-step.ts';
import type { ServedOn, Stretch } from '../../engine/plan/clock/day-clock.ts';
import type { Filling } from '../../engine/plan/clock/holding.ts';
import type { Rota } from '../../engine/plan/clock/rota.ts';
import type { Waiting } from '../../engine/plan/clock/waiting.ts';
import type { Keeps } from '../../engine/plan/days/holding-room.ts';
import { type GearLoad, inUseFrom } from '../../engine/plan/days/loads.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanDayPicture } from '../form/day.ts';
import { wholePercentOf } from '../words/percent-text.ts';
import { cookName, pieceName } from '../words/who-text.ts';

/** A step as a picture draws it. */
export interface DrawnStep {
  readonly time: TimedStep;
  /** Its number in the list beside the picture, and the id of its task. */
  readonly number: number;
  readonly id: string;
  /** Name of the row it stands in. */
  readonly row: string;
}

/** Packing or loading for an event, which takes hands but stands in no list of tasks. */
export interface DrawnVan {
  readonly does: string;
  /** Name of the event, where there may be several. */
  readonly event?: string;
  readonly time: Stretch;
  readonly critical: boolean;
  readonly cooks: readonly number[];
}

/** What else than steps is on a picture. */
export interface PictureSetting {
  readonly where: PlanDayPicture['where'];
  /** Rows of stations in their order. */
  readonly order: readonly string[];
  readonly rota: Rota;
  readonly van: readonly DrawnVan[];
  /** What is finished here and waits. */
  readonly waiting: readonly Waiting[];
  /** What keeps food until it is loaded, and what of it does; none on the picture of one event, which has only its own food. */
  readonly holding: readonly DrawnHolding[];
  readonly say: Say;
}

/** Space that keeps food hot or cold. */
export interface DrawnHolding {
  readonly name: string;
  readonly as: Keeps;
  readonly fillings: readonly Filling[];
}

/**
 * A day's work at one place: stations, equipment and people down, time across. What has no hour is counted from the
 * beginning; `steps` are either all by the clock or all without.
 */
export function planPicture(steps: readonly DrawnStep[], setting: PictureSetting): PlanDayPicture {
  const { where, order, rota, van, waiting, holding, say } = setting;
  const clock = steps.every(({ time }) => time.clock);
  const from = Math.min(...steps.map(({ time }) => time.begins));
  const span = Math.max(...steps.map(({ time }) => time.ends)) - from;
  const equipment = equipmentRows(steps, rota, from, say);
  const people = peopleRows(steps, clock ? van : [], rota, from, say);
  const waits = waiting.filter((each) => each.until > each.from);
  return {
    where,
    from: clock ? from : null,
    minutes: span,
    takes: durationText(minutes(span)),
    stations: [...Map.groupBy(steps, ({ row }) => row)]
      .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
      .map(([name, own]) => ({
        name,
        tasks: own
          .map(({ time, number, id }) => ({
            number,
            id,
            begins: time.begins - from,
            handsOff: time.handsOff - from,
            ends: time.ends - from,
            ...(time.critical && { critical: true as const }),
          }))
          .sort(byBeginning),
      })),
    ...(equipment.length > 0 && { equipment }),
    ...(holding.length > 0 && { holding: holding.map((each) => holdingRow(each, from)) }),
    ...(people.length > 0 && { people }),
    ...(waits.length > 0 && {
      waiting: waits.map((each) => ({
        name: each.dish.dish.name,
        as: each.as,
        begins: each.from - from,
        ends: each.until - from,
      })),
    }),
  };
}

/** Each piece of equipment with what is in it, and how full that makes it. */
function equipmentRows(
  steps: readonly DrawnStep[],
  rota: Rota,
  from: number,
  say: Say,
): NonNullable<PlanDayPicture['equipment']> {
  const uses = steps.flatMap(({ time, number, id }) =>
    usesOf(time, rota).map(({ load, piece, index, begins, ends }) => {
      const { equipment, containers, each, loads } = load;
      return {
        equipment,
        piece,
        task: {
          number,
          id,
          begins: begins - from,
          ends: ends - from,
          ...(containers && {
            holds: Math.max(0, Math.min(each, containers.count - index * each)),
            of: each,
          }),
          ...(loads > 1 && { loads }),
        },
      };
    }),
  );
  return [...Map.groupBy(uses, ({ equipment }) => equipment).values()].flatMap((own) =>
    [...Map.groupBy(own, ({ piece }) => piece)]
      .sort(([a], [b]) => a - b)
      .map(([piece, tasks]) => ({
        name: pieceName(tasks[0]?.equipment.name ?? '', piece, tasks[0]?.equipment.count ?? 1, say),
        tasks: tasks.map(({ task }) => task).sort(byBeginning),
      })),
  );
}

/** The pieces that a step's food is in: cooking, and while it is chilled. */
function usesOf(time: TimedStep, { pieces, chillers }: Rota) {
  const { id, load, cools, begins, ends, coldBy } = time;
  const each = (of: GearLoad | undefined, own: Rota['pieces'], begins: number, ends: number) =>
    (of ? (own.get(id) ?? []) : []).map((piece, index) => ({
      load: of as GearLoad,
      piece,
      index,
      begins,
      ends,
    }));
  return [
    ...each(load, pieces, begins + inUseFrom(time), ends),
    ...each(cools?.chiller, chillers, ends, coldBy ?? ends),
  ];
}

/** How full what keeps food is, stretch by stretch. */
function holdingRow(
  { name, as, fillings }: DrawnHolding,
  from: number,
): NonNullable<PlanDayPicture['holding']>[number] {
  return {
    name,
    as,
    fillings: fillings.map((each) => {
      const share = wholePercentOf(each.share);
      return {
        begins: each.from - from,
        ends: each.until - from,
        percent: Number.parseInt(share, 10),
        share,
      };
    }),
  };
}

/** Each cook with what they have their hands on. */
function peopleRows(
  steps: readonly DrawnStep[],
  van: readonly DrawnVan[],
  { cooks, people, skills }: Rota,
  from: number,
  say: Say,
): NonNullable<PlanDayPicture['people']> {
  const busy = [
    ...steps.flatMap(({ time, number, id }) =>
      (cooks.get(time.id) ?? []).map((cook) => ({
        cook,
        task: { number, id, begins: time.begins - from, ends: time.handsOff - from },
      })),
    ),
    ...van.flatMap(({ does, event, time, critical, cooks: who }) =>
      who.map((cook) => ({
        cook,
        task: {
          does,
          ...(event !== undefined && { event }),
          begins: time.begins - from,
          ends: time.ends - from,
          ...(critical && { critical: true as const }),
        },
      })),
    ),
  ];
  return [...Map.groupBy(busy, ({ cook }) => cook)]
    .sort(([a], [b]) => a - b)
    .map(([cook, tasks]) => ({
      name: cookName(cook, skills.get(cook) ?? [], say),
      ...(cook > people && { more: true as const }),
      tasks: tasks.map(({ task }) => task).sort(byBeginning),
    }));
}

function byBeginning(a: { readonly begins: number }, b: { readonly begins: number }): number {
  return a.begins - b.begins;
}

/** An event's packing and loading as the rows of those who do it show them. */
export function vanOf(
  event: string,
  { pack, load }: Pick<ServedOn, 'pack' | 'load'>,
  { packs, loads }: Rota,
  say: Say,
): DrawnVan[] {
  return [
    { does: say('day.pack'), time: pack, critical: pack.critical, cooks: packs.get(event) ?? [] },
    { does: say('day.load'), time: load, critical: load.critical, cooks: loads.get(event) ?? [] },
  ];
}
