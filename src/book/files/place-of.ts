import type { Place } from '../findings/finding.ts';

/** The way to a value inside a file's data: keys of mappings, positions in lists (from 0). */
export type Path = readonly (string | number)[];

/** Data read from a file, and where each part of it stands. */
export interface Source {
  /** Path relative to the content folder, forward slashes. */
  readonly file: string;
  /** Texts, lists of data, and mappings as objects without prototype. No null, no number, no boolean. */
  readonly data: unknown;
  /**
   * Where the key or the value (default) at the path stands. What is missing is placed at the key of the
   * nearest mapping that should have held it; what lies inside a text (a text that stands for a mapping or a
   * list) is placed at the text.
   */
  placeOf(path: Path, part?: 'key' | 'value'): Place;
  /**
   * Whether reading has already told the author about this path or something it lies in, which is then missing
   * from the data: one slip, one finding.
   */
  isReported(path: Path): boolean;
}

/** A node of the tree of positions: where a value stands, and its children with their keys' positions. */
export interface Spot {
  readonly at: Place;
  /** Where the key stands; for list items and the document the same as `at`. */
  readonly key: Place;
  readonly children: Map<string | number, Spot> | undefined;
  /** A finding was given for this value, and the data does not hold it. */
  readonly reported: boolean;
}

/** See `Source.placeOf`. */
export function placeOf(root: Spot, path: Path, part: 'key' | 'value' = 'value'): Place {
  let spot = root;
  for (const step of path) {
    const child = spot.children?.get(step);
    if (!child) return spot.children ? spot.key : spot.at;
    spot = child;
  }
  return part === 'key' ? spot.key : spot.at;
}

/** See `Source.isReported`. */
export function isReported(root: Spot, path: Path): boolean {
  let spot: Spot | undefined = root;
  for (const step of path) {
    if (spot.reported) return true;
    spot = spot.children?.get(step);
    if (!spot) return false;
  }
  return spot.reported;
}
