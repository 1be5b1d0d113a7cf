import { CATALOGUE, type FindingCode } from './catalogue.ts';
import type { Severity } from './severity.ts';

/** Where in the content a finding points, so that an editor can jump there. */
export interface Place {
  /** Path relative to the content folder, forward slashes. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1; in CSV the number of the field. */
  readonly column: number;
}

/** Something the author is told: where, what, and the way out. */
export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  readonly place: Place;
  /** What is wrong, with the values, no full stop. */
  readonly what: string;
  /** What to write or do instead, no full stop. */
  readonly wayOut: string;
  /** Words at the place that `check --rewrite` can put others in the place of. */
  readonly rewrite?: { readonly from: string; readonly to: string };
}

/** A finding, its severity taken from the catalogue. `what` and `wayOut` carry no full stop. */
export function finding(code: FindingCode, place: Place, what: string, wayOut: string): Finding {
  return { code, severity: CATALOGUE[code].severity, place, what, wayOut };
}
