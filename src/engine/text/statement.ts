import type { Day } from '../calendar/day.ts';

/**
 * A sentence as data: the message of the catalogues that says it, and what it speaks of. It becomes words where it is
 * shown, in the language of the page (`statementText`); programs read its figures.
 */
export interface Statement {
  /** The message's key, with its area: `why.chosen`. */
  readonly key: string;
  readonly values: Readonly<Record<string, StatementValue>>;
}

/**
 * A name, a figure in data's form (`8 %`, `1.5 lb`), a number that decides between one and many, a count that may reach
 * thousands, a day, a statement inside of this one, or several of them.
 */
export type StatementValue =
  | string
  | number
  | { readonly count: number }
  | { readonly day: Day }
  | Statement
  | Several;

/** Several things in a row: a sum (`a + b`), a list (`a, b`), lines, all of them (`a and b`) or any of them (`a or b`). */
export interface Several {
  readonly by: 'plus' | 'comma' | 'lines' | 'and' | 'or';
  readonly list: readonly (string | Statement)[];
}

/** A sentence that is data, or one that is in words already. */
export type Said = Statement | string;

/** A statement of a message. */
export function statement(key: string, values: Statement['values'] = {}): Statement {
  return { key, values };
}

/** Things in a row. */
export function several(by: Several['by'], list: Several['list']): Several {
  return { by, list };
}
