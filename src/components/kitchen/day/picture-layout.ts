import type { PlanDayPicture } from '../../../exports/form/day.ts';
import { rowsOf } from './day-scale.ts';

/** Sizes of the picture, in its own units; the browser makes it as wide as there is room. */
export const LEFT = 172;
export const WIDTH = 836;
export const RIGHT = LEFT + WIDTH;
export const ROW = 28;
const HEAD = 28;
/** Room between two groups of rows. */
const GAP = 8;
/** As wide as a bar is drawn at least, so that its number fits. */
const BAR = { two: 22, three: 31 } as const;

type Station = PlanDayPicture['stations'][number];
type Gear = NonNullable<PlanDayPicture['equipment']>[number];
type Holding = NonNullable<PlanDayPicture['holding']>[number];
type Person = NonNullable<PlanDayPicture['people']>[number];
export type Waits = NonNullable<PlanDayPicture['waiting']>[number];

/** One row: one thing after the other. */
interface Row<Item> {
  readonly name: string;
  readonly top: number;
  readonly tasks: readonly Item[];
}

/** Rows under one name: where the first begins, and what stands in each. */
export interface RowGroup<Item> {
  readonly name: string;
  readonly top: number;
  readonly rows: readonly (readonly Item[])[];
}

/** Where everything of a picture stands. */
export interface PictureLayout {
  readonly top: number;
  readonly height: number;
  /** Minutes from one side to the other. */
  readonly across: number;
  /** The least that a bar is wide. */
  readonly bar: number;
  readonly stations: readonly RowGroup<Station['tasks'][number]>[];
  readonly equipment: readonly Row<Gear['tasks'][number]>[];
  readonly holding: readonly (Row<Holding['fillings'][number]> & Pick<Holding, 'as'>)[];
  readonly people: readonly (Row<Person['tasks'][number]> & { readonly more: boolean })[];
  readonly waiting: readonly (RowGroup<Waits> & { readonly as: Waits['as'] })[];
  readonly x: (minute: number) => number;
  readonly wide: (from: number, to: number) => number;
}

const HOLDS = ['hot', 'cold', 'frozen', 'room'] as const;

/** Puts a picture's groups one below the other: stations, equipment, what keeps food, people, and what waits, each kind by itself. */
export function layoutOf(picture: PlanDayPicture): PictureLayout {
  const { equipment = [], holding = [], people = [], waiting = [] } = picture;
  const ends = [...people.flatMap(({ tasks }) => tasks), ...waiting].map((each) => each.ends);
  const across = Math.max(60, picture.minutes, ...ends);
  const x = (minute: number) => LEFT + (minute / across) * WIDTH;
  const numbers = picture.stations.flatMap(({ tasks }) => tasks.map(({ number }) => number));
  const bar = Math.max(0, ...numbers) > 99 ? BAR.three : BAR.two;
  const least = (bar / WIDTH) * across;
  let at = HEAD;
  const grouped = <Item>(name: string, rows: readonly (readonly Item[])[]): RowGroup<Item> => {
    const top = at;
    at += rows.length * ROW + GAP;
    return { name, top, rows };
  };
  return {
    top: HEAD,
    across,
    bar,
    stations: picture.stations.map(({ name, tasks }) => grouped(name, rowsOf(tasks, least))),
    equipment: equipment.map(({ name, tasks }) => ({ ...grouped(name, [tasks]), tasks })),
    holding: holding.map(({ name, as, fillings }) => ({
      ...grouped(name, [fillings]),
      tasks: fillings,
      as,
    })),
    people: people.map(({ name, more, tasks }) => ({
      ...grouped(name, [tasks]),
      tasks,
      more: more === true,
    })),
    waiting: HOLDS.flatMap((as) => {
      const own = waiting.filter((each) => each.as === as).sort((a, b) => a.begins - b.begins);
      const rows = own.map((each) => [each]);
      return own.length === 0 ? [] : [{ ...grouped(as, rows), as }];
    }),
    height: at + 4,
    x,
    wide: (from, to) => Math.max(0, x(to) - x(from)),
  };
}

/** About as wide as a letter in a bar is, and one of a row's name. */
export const LETTER = 7.8;
const NAME_LETTER = 9;

/** A name as it fits left of the picture. */
export function rowName(name: string): string {
  const most = Math.floor(LEFT / NAME_LETTER);
  return name.length > most ? `${name.slice(0, most - 1).trimEnd()}…` : name;
}
