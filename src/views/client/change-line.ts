import type { Say } from '../../words/words-in.ts';

/** What has changed under one head, a sentence or two each. */
export interface ChangeGroup {
  readonly about: string;
  readonly lines: readonly string[];
}

/**
 * The line that a difference of two texts makes: `Served at: 18:00 (was 17:30).` Empty texts stand for nothing; no line
 * where both are the same.
 */
export function changedLine(say: Say, what: string, before: string, now: string): string[] {
  if (before === now) return [];
  if (before === '') return [say('changes.line.new', { what, now })];
  return [
    now === '' ? say('changes.line.gone', { what, before }) : say('changes.line', { what, now, before }),
  ];
}

/** The lines that two sets of named texts make, in the order of the newer one and then what has left it. */
export function changedLines(
  say: Say,
  before: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): string[] {
  return [...new Set([...now.keys(), ...before.keys()])].flatMap((label) =>
    changedLine(say, label, before.get(label) ?? '', now.get(label) ?? ''),
  );
}

/** What of a list is not in another: what came, or turned about, what went. */
export function notIn(list: readonly string[], other: readonly string[]): string[] {
  return list.filter((each) => !other.includes(each));
}

/** A group, unless it is empty; a line that comes twice is shown once. */
export function changeGroup(about: string, lines: readonly string[]): ChangeGroup[] {
  return lines.length === 0 ? [] : [{ about, lines: [...new Set(lines)] }];
}
