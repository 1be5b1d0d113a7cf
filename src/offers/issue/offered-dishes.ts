import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { dishesOf } from '../../engine/menu/dishes-of.ts';
import type { Dish } from '../../engine/menu/package.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';

/** Every dish a client may come to eat: those of all packages proposed and the food of the add-ons offered. */
export function offeredDishes(
  kitchen: Pick<Kitchen, 'addOns'>,
  proposal: Pick<Proposal, 'packages' | 'addOns' | 'included'>,
): Dish[] {
  const addOns = new Set([...proposal.addOns, ...proposal.included.keys()]);
  return [
    ...proposal.packages.flatMap(dishesOf),
    ...[...addOns].flatMap((id) => kitchen.addOns.get(id)?.dishes ?? []),
  ];
}
