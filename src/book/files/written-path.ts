import type { Path } from './place-of.ts';

/**
 * The way to a value as the file writes it. Shorthand is written out before validating (`14 lb` becomes
 * `{ amount: 14 lb }`), so a way may have steps that the file has not: they are passed over. The last step stays,
 * as the place of what is missing is the mapping that should hold it. Where the file has a mapping, a number stands
 * for its entry at that position, from 0: recipe lines are known by their order.
 */
export function writtenPath(data: unknown, path: Path): Path {
  const steps: (string | number)[] = [];
  let at = data;
  for (const [index, named] of path.entries()) {
    const step = entryName(at, named);
    const inside = typeof at === 'object' && at !== null && Object.hasOwn(at, step);
    if (!inside && index < path.length - 1) continue;
    steps.push(step);
    at = inside ? (at as Record<string | number, unknown>)[step] : undefined;
  }
  return steps;
}

function entryName(at: unknown, step: string | number): string | number {
  if (typeof step === 'string' || typeof at !== 'object' || at === null || Array.isArray(at)) return step;
  return Object.keys(at)[step] ?? step;
}
