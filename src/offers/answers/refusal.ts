import type { Said } from '../../engine/text/statement.ts';

/** Why an answer of a client's is not taken: a clause without full stop, and what the caterer can do about it. */
export interface Refusal {
  readonly ok: false;
  readonly what: Said;
  readonly wayOut: Said;
}

/** What was made of an answer, or why it is not taken. It becomes words where it is told. */
export type Judged<T> = { readonly ok: true; readonly value: T } | Refusal;

/** An answer that is not taken. */
export function refusal(what: Said, wayOut: Said): Refusal {
  return { ok: false, what, wayOut };
}
