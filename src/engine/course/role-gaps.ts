import type { DishRole } from './dish-role.ts';

/** A dish of a course as a guest with a need finds it: to eat as it is or made for them, not to eat, or unknown. */
export interface DishForNeed {
  readonly name: string;
  /** Undefined where nothing tells it. */
  readonly role: DishRole | undefined;
  readonly feeds: boolean;
}

/** What a course lacks for guests with a need. */
export interface RoleGaps {
  /** True where they can eat nothing of it. */
  readonly nothing: boolean;
  /** Roles the course has for others and not for them. */
  readonly missing: readonly DishRole[];
  /** Names of the dishes whose role is unknown and decides whether they lack something. */
  readonly asked: readonly string[];
}

/**
 * What a course lacks for guests with a need, role by role: whatever it has for others it must have for them. A sauce
 * goes over a dish, so it feeds nobody and nobody lacks it, unless the course has nothing else. A dish of unknown role
 * neither stands in for another nor is stood in for: its role is asked for where it would decide. Where each guest
 * takes one dish (`oneEach`), any of them will do.
 */
export function roleGaps(dishes: readonly DishForNeed[], oneEach = false): RoleGaps {
  const food = dishes.filter(({ role }) => role !== 'sauce');
  const counted = food.length > 0 ? food : dishes;
  const feeding = counted.filter(({ feeds }) => feeds);
  if (feeding.length === 0) return { nothing: true, missing: [], asked: [] };
  if (oneEach) return { nothing: false, missing: [], asked: [] };
  const others = counted.filter(({ feeds }) => !feeds);
  const lacking = others.flatMap(({ role }) =>
    role !== undefined && feeding.every((dish) => dish.role !== role) ? [role] : [],
  );
  const unknown = (each: readonly DishForNeed[]) => each.filter(({ role }) => role === undefined);
  const [open, could] = [unknown(others), unknown(feeding)];
  const asked = open.length > 0 ? [...open, ...could] : lacking.length > 0 ? could : [];
  return {
    nothing: false,
    missing: could.length > 0 ? [] : [...new Set(lacking)],
    asked: asked.map(({ name }) => name),
  };
}

/** Whether a course has everything for them that it has for others. */
export function hasAll({ nothing, missing, asked }: RoleGaps): boolean {
  return !nothing && missing.length === 0 && asked.length === 0;
}
