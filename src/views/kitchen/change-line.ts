/** What has changed under one head, a sentence or two each. */
export interface ChangeGroup {
  readonly about: string;
  readonly lines: readonly string[];
}

/**
 * The line that a difference of two texts makes: `Served at: 18:00. Before: 17:30.` Empty texts stand for nothing
 * said; no line where both are the same.
 */
export function changedLine(label: string, before: string, now: string): string[] {
  if (before === now) return [];
  if (before === '') return [`${label}: ${now}. This is new.`];
  return [now === '' ? `${label}: no longer. Before: ${before}.` : `${label}: ${now}. Before: ${before}.`];
}

/** The lines that two sets of named texts make, in the order of the newer one and then what has left it. */
export function changedLines(
  before: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): string[] {
  return [...new Set([...now.keys(), ...before.keys()])].flatMap((label) =>
    changedLine(label, before.get(label) ?? '', now.get(label) ?? ''),
  );
}

/** What of a list is not in another: what came, or turned about, what went. */
export function notIn(list: readonly string[], other: readonly string[]): string[] {
  return list.filter((each) => !other.includes(each));
}

/** A group, unless nothing is to be said in it; what is said twice is said once. */
export function changeGroup(about: string, lines: readonly string[]): ChangeGroup[] {
  return lines.length === 0 ? [] : [{ about, lines: [...new Set(lines)] }];
}
