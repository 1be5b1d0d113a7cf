/** In which order recipes can be linked, parts before what they go into, and the rings they form. */
export interface RecipeOrder {
  readonly order: readonly string[];
  /** Each ring once: ids in the order in which each has the next as a part; the last has the first. */
  readonly rings: readonly (readonly string[])[];
}

/**
 * Orders recipes by what they are made of. `parts` gives each recipe the ids of the recipes in its lines. Walks
 * without recursion, since a chain may be longer than the stack.
 */
export function recipeOrder(parts: ReadonlyMap<string, readonly string[]>): RecipeOrder {
  const order: string[] = [];
  const rings: string[][] = [];
  const done = new Set<string>();
  for (const start of parts.keys()) {
    if (done.has(start)) continue;
    const trail: { id: string; next: number }[] = [{ id: start, next: 0 }];
    const open = new Set([start]);
    for (let top = trail.at(-1); top; top = trail.at(-1)) {
      const part = parts.get(top.id)?.[top.next];
      top.next += 1;
      if (part === undefined) {
        trail.pop();
        open.delete(top.id);
        done.add(top.id);
        order.push(top.id);
      } else if (open.has(part)) {
        const ids = trail.map(({ id }) => id);
        rings.push(ids.slice(ids.indexOf(part)));
      } else if (parts.has(part) && !done.has(part)) {
        trail.push({ id: part, next: 0 });
        open.add(part);
      }
    }
  }
  return { order, rings };
}
