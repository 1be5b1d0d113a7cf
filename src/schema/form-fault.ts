import type { z } from 'zod';

/** The first thing that is wrong with a record: where, its path or empty text for the whole, and what. */
export type FormFault = { readonly where: string } & (
  | { readonly kind: 'missing' }
  | { readonly kind: 'long' | 'many' | 'more'; readonly most: number }
  | { readonly kind: 'other'; readonly message: string }
);

/** What a failed check of a record's form comes to, for whoever words it. */
export function formFault({ issues: [issue] }: z.core.$ZodError): FormFault {
  const where = issue?.path.join('.') ?? '';
  if (issue?.code === 'invalid_type' && issue.message.endsWith('received undefined'))
    return { where, kind: 'missing' };
  if (issue?.code === 'too_big') return { where, kind: tooBig(issue), most: Number(issue.maximum) };
  return { where, kind: 'other', message: (issue?.message ?? '').replace(/^Invalid input: /, '') };
}

function tooBig({ origin }: z.core.$ZodIssueTooBig): 'long' | 'many' | 'more' {
  if (origin === 'string') return 'long';
  return origin === 'array' ? 'many' : 'more';
}
