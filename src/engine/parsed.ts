/**
 * What a grammar makes of a text: the value it means, or why it means nothing and what to write instead.
 * Grammars never throw on bad text, so that a reader can collect every problem in one run.
 */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly what: string; readonly wayOut: string };

/** A text that was understood. */
export function parsed<T>(value: T): Parsed<T> {
  return { ok: true, value };
}

/** A text that was not: `what` is wrong with it, as a sentence without full stop, and what to write. */
export function notParsed<T>(what: string, wayOut: string): Parsed<T> {
  return { ok: false, what, wayOut };
}
