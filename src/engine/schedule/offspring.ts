import type { BlockBegins } from './generate.ts';
import type { Model } from './model.ts';
import { NONE } from './network.ts';
import { crossed, type ListOrder, movedForward, type PriorityList } from './priority-lists.ts';
import type { Random } from './random.ts';

/** Blocks that any child has moved forward by chance, at most. */
const MOVES = 4;

/** Blocks among which the one that costs its mother most is looked for. */
const LOOKED_AT = 3;

export interface Parent {
  readonly list: PriorityList;
  readonly begins: BlockBegins;
}

/**
 * A list made from two good ones: crossed, a few blocks moved forward; `pressed`, one more goes forward that in the
 * mother’s schedule waits long or is left out.
 */
export function childOf(
  model: Model,
  order: ListOrder,
  [mother, father]: readonly [Parent, Parent],
  pressed: boolean,
  random: Random,
): PriorityList {
  const child = crossed(mother.list, father.list, random);
  for (let moves = random.below(MOVES + 1); moves > 0; moves--)
    movedForward(order, child, random.below(model.size), random);
  if (pressed) movedForward(order, child, child.indexOf(costlyBlock(model, mother.begins, random)), random);
  return child;
}

/** Of a few blocks the one that costs most where it is; all waiting counts a little, also where it is free. */
function costlyBlock({ size, base, weight }: Model, begins: BlockBegins, random: Random): number {
  let [costly, most] = [0, -1];
  for (let look = 0; look < LOOKED_AT; look++) {
    const block = random.below(size);
    const begin = begins[block] as number;
    const cost =
      begin === NONE
        ? Number.POSITIVE_INFINITY
        : (begin - (base[block] as number)) * (1 + 4 * (weight[block] as number));
    if (cost > most) [costly, most] = [block, cost];
  }
  return costly;
}
