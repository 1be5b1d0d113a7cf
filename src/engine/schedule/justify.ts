import { type BlockBegins, type Generator, generatorOf } from './generate.ts';
import { mirroredModel } from './mirror-model.ts';
import type { Model } from './model.ts';
import { NONE } from './network.ts';
import { type ListOrder, listByKey, listOrder } from './priority-lists.ts';

/** Schedules that one justification makes. */
export const SCHEDULES_PER_JUSTIFICATION = 2;

/**
 * Double justification of Valls, Ballestín and Quintanilla: everything is moved as late as it can be within the makespan,
 * in descending order of ends, and then as early as it can be, in ascending order of begins.
 */
export type Justify = (begins: BlockBegins) => BlockBegins;

/** Justification for a model. */
export function justificationFor(model: Model, order: ListOrder, generator: Generator): Justify {
  const mirror = mirroredModel(model);
  const backward = generatorOf(mirror);
  const backwardOrder = listOrder(mirror);
  const { size, minutes } = model;
  const flipped = (begins: BlockBegins): Int32Array =>
    begins.map((begin, block) => (begin === NONE ? 0 : -begin - (minutes[block] as number)));
  return (begins) => {
    let end = NONE;
    for (let block = 0; block < size; block++)
      if (begins[block] !== NONE) end = Math.max(end, (begins[block] as number) + (minutes[block] as number));
    const late = backward.run(listByKey(backwardOrder, flipped(begins)), new Int32Array(size).fill(-end));
    return generator.run(listByKey(order, flipped(late)));
  };
}
