import type { z } from 'zod';

/** The first thing that is wrong with a record, as a person says it: where, and what. */
export function issueWords(error: z.core.$ZodError, whole: string): string {
  const [issue] = error.issues;
  const where = issue && issue.path.length > 0 ? issue.path.join('.') : whole;
  if (issue?.code === 'invalid_type' && issue.message.endsWith('received undefined'))
    return `${where} is missing`;
  if (issue?.code === 'too_big') return `${where} ${tooBig(issue)}`;
  const message = (issue?.message ?? '').replace(/^Invalid input: /, '');
  return `${where} is not as it was written: ${message}`;
}

function tooBig({ origin, maximum }: z.core.$ZodIssueTooBig): string {
  if (origin === 'string') return `is longer than ${maximum} characters`;
  return origin === 'array' ? `has more than ${maximum} entries` : `is more than ${maximum}`;
}
