import type { OrderModel } from '../engine/purchase/order-model.ts';
import type { OrderCounts } from '../engine/purchase/weigh-order.ts';

/** A row `from ≤ Σ value × column ≤ to`. */
export interface ProgramRow {
  readonly from: number;
  readonly to: number;
  readonly terms: readonly (readonly [column: number, value: number])[];
}

/** The order's model in floating-point numbers, as the solver takes it; all columns are whole numbers from 0. */
export interface OrderProgram {
  /** The most of each column. */
  readonly upper: number[];
  readonly rows: ProgramRow[];
  /** Cost of each column in steps. */
  readonly cost: number[];
  /** What the cost lacks: the charge of a further supplier is laid on the first one too. */
  readonly offset: number;
  /** Columns by food and pack. */
  readonly packs: readonly (readonly number[])[];
  /** A column for each supplier: 1 where it is used. */
  readonly used: readonly number[];
  /** A column for each supplier that has a minimum order: 1 where it is not reached. */
  readonly below: readonly number[];
}

/** Needs beyond this are divided out of their row, so that the solver's tolerance stays far below one measure. */
const LARGE = 1_000_000;

/**
 * Writes a model as rows and columns:
 * - each need is covered; each pack is bought only from a supplier that is used;
 * - what is bought of a supplier that is used comes to its minimum, or the supplier counts as below it;
 * - of a food that spoils no more is left over than the strictest of its packs in use allows.
 */
export function orderProgram(model: OrderModel): OrderProgram {
  const upper: number[] = [];
  const cost: number[] = [];
  const rows: ProgramRow[] = [];
  const column = (most: number, price: number): number => {
    cost.push(price);
    return upper.push(most) - 1;
  };
  const packs = model.foods.map((food) =>
    food.packs.map((pack) => column(Number(pack.most), Number(pack.cost))),
  );
  const used = model.suppliers.map(({ fee }) => column(1, Number(fee + model.further)));
  const below: number[] = [];
  for (const [at, { minimum }] of model.suppliers.entries()) {
    if (minimum <= 0n) continue;
    const short = column(1, 0);
    below.push(short);
    const goods = model.foods.flatMap((food, index) =>
      food.packs.flatMap((pack, place): [number, number][] =>
        pack.supplier === at ? [[packs[index]?.[place] as number, Number(pack.cost)]] : [],
      ),
    );
    const least = Number(minimum);
    rows.push({
      from: 0,
      to: Number.POSITIVE_INFINITY,
      terms: [...goods, [used[at] as number, -least], [short, least]],
    });
  }
  for (const [index, food] of model.foods.entries()) {
    const scale = food.need > LARGE ? Number(food.need) : 1;
    const columns = packs[index] ?? [];
    const held = food.packs.map(({ size }, at): [number, number] => [
      columns[at] as number,
      Number(size) / scale,
    ]);
    const need = Number(food.need) / scale;
    const rooms = food.packs.map(({ room }) => (room === undefined ? undefined : Number(room) / scale));
    const widest = Math.max(...rooms.map((room) => room ?? Number.POSITIVE_INFINITY));
    rows.push({ from: need, to: need + widest, terms: held });
    for (const [at, pack] of food.packs.entries()) {
      const bought = columns[at] as number;
      const seller = used[pack.supplier] as number;
      const most = Number(pack.most);
      const room = rooms[at];
      const strict = room !== undefined && room < widest;
      const gate = strict ? column(1, 0) : seller;
      rows.push({
        from: Number.NEGATIVE_INFINITY,
        to: 0,
        terms: [
          [bought, 1],
          [gate, -most],
        ],
      });
      if (!strict) continue;
      rows.push({
        from: Number.NEGATIVE_INFINITY,
        to: 0,
        terms: [
          [gate, 1],
          [seller, -1],
        ],
      });
      rows.push({
        from: Number.NEGATIVE_INFINITY,
        to: need + widest,
        terms: [...held, [gate, widest - room]],
      });
    }
  }
  return { upper, rows, cost, offset: -Number(model.further), packs, used, below };
}

/** The counts that a solution of the program stands for: each column to the nearest whole number. */
export function countsOf(program: OrderProgram, values: ArrayLike<number>): OrderCounts {
  return program.packs.map((columns) => columns.map((column) => Math.round(values[column] ?? 0)));
}
