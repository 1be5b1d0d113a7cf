/**
 * Why a choice cannot be accepted, and where: `guests.adults`, `courses.Salads`. What is wrong is a code, which also names
 * the sentence on it in the catalogue of words, and the values that the sentence speaks of: page, receiver and commands say
 * the same one (`problemWords`).
 */
export interface ChoiceProblem {
  readonly path: string;
  readonly code: ProblemCode;
  readonly values: Readonly<Record<string, string | number>>;
}

export type ProblemCode =
  | 'problem.no-menu'
  /** No whole number of people of a group. */
  | 'problem.people'
  | 'problem.nobody'
  /** More guests than the menu's prices reach. */
  | 'problem.prices'
  | 'problem.no-course'
  | 'problem.twice'
  | 'problem.no-dish'
  | 'problem.choose'
  | 'ask.number'
  | 'problem.too-few'
  | 'problem.too-many'
  | 'problem.no-add-on'
  | 'problem.hours'
  /** More than one of an add-on that is taken or not. */
  | 'problem.taken'
  | 'ask.need-count'
  /** The name of a need has signs that nobody sees. */
  | 'ask.need-again'
  /** More guests with a need than come. */
  | 'problem.need-guests'
  /** The caterer's own people are not the client's to set. */
  | 'problem.crew'
  /** More guests at the table than may be named without asking. */
  | 'problem.asking'
  | 'problem.vendors';

/** A problem at a place of a choice. */
export function problemAt(
  path: string,
  code: ProblemCode,
  values: ChoiceProblem['values'] = {},
): ChoiceProblem {
  return { path, code, values };
}
