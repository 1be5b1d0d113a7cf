import Fraction from 'fraction.js';
import type { PackStage } from '../../food/recipe.ts';
import type { Equipment } from '../../kitchen/kitchen.ts';
import type { PlannedContainer } from '../event-plan.ts';

export type Keeps = 'hot' | 'cold';

/** How many of each container all equipment together keeps hot, or cold, by the container's id. */
export type HoldingRoom = ReadonlyMap<string, number>;

/** Containers that wait in equipment, and the part that they take up of all that there is: more than 1 where it is too much. */
export interface HeldContainers {
  readonly containers: readonly PlannedContainer[];
  readonly share: Fraction;
}

/** Food waits in what it travels in, else in what it is served or was chilled in. */
const WAITS_IN: readonly PackStage[] = ['carry', 'serve', 'chill'];

/** What keeps finished food hot, or cold, until it is loaded; none where the kitchen does not state it. */
export function keepersOf<T extends Pick<Equipment, 'keeps'>>(
  equipment: ReadonlyMap<string, T>,
  keeps: Keeps,
): T[] {
  return [...equipment.values()].filter((gear) => gear.keeps === keeps);
}

export function holdingRoom(equipment: ReadonlyMap<string, Equipment>, keeps: Keeps): HoldingRoom {
  const room = new Map<string, number>();
  for (const { count, holds } of keepersOf(equipment, keeps))
    for (const { container, count: each } of holds)
      room.set(container, (room.get(container) ?? 0) + count * each);
  return room;
}

/**
 * What of a dish's containers takes up room, and how much. All equipment is one space, half full where half as many
 * containers stand in it as all of it holds; what none of it holds is not counted.
 */
export function heldContainers(packed: readonly PlannedContainer[], room: HoldingRoom): HeldContainers {
  const fits = ({ container, count }: PlannedContainer) => count > 0 && (room.get(container) ?? 0) > 0;
  const stage = WAITS_IN.find((each) => packed.some((one) => one.stage === each && fits(one)));
  const containers = packed.filter((one) => one.stage === stage && fits(one));
  const share = containers.reduce(
    (sum, { container, count }) => sum.add(new Fraction(BigInt(count), BigInt(room.get(container) ?? 1))),
    new Fraction(0n),
  );
  return { containers, share };
}
