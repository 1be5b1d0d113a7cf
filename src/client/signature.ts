import { textProblem, tidyLine, tidyText } from '../engine/text/visible-text.ts';
import type { FieldProblem } from './choice-in.ts';
import type { Texts } from './form-texts.ts';

/** The form of a mail address that an acceptance may hold; the same as its schema's, which a test compares. */
export const EMAIL_FORM =
  /^(?:[A-Za-z0-9_'+-]+\.)*[A-Za-z0-9_'+-]*[A-Za-z0-9_+-]@(?:[A-Za-z0-9][A-Za-z0-9-]*\.)+[A-Za-z]{2,}$/;

/** Who answers and what they add, fit for the file. */
export interface SignatureText {
  readonly name: string;
  readonly email: string;
  readonly note: string;
}

/** Who answers, from a form's texts, tidied: no file of an answer may hold control characters. */
export function signatureIn(texts: Texts): SignatureText {
  return {
    name: tidyLine(texts.get('name') ?? ''),
    email: (texts.get('email') ?? '').trim(),
    note: tidyText(texts.get('note') ?? ''),
  };
}

/** What is missing of a signature; `asks` names the fields that the form has. */
export function signatureProblems(texts: Texts, asks: readonly string[]): FieldProblem[] {
  const { name, email, note } = signatureIn(texts);
  const problems: FieldProblem[] = [];
  const say = (field: string, wrong: boolean, what: string) => {
    if (wrong && asks.includes(field)) problems.push({ field, what });
  };
  say('name', name === '', 'Write your name.');
  say('name', name.length > 200, 'Write a name of at most 200 characters.');
  say('name', textProblem(name) !== undefined, typeAgain('your name', name));
  say('email', email === '', 'Write your e-mail address, so that we can answer you.');
  say(
    'email',
    email !== '' && (!EMAIL_FORM.test(email) || email.length > 254),
    'Write an e-mail address such as name@example.com.',
  );
  say('note', note.length > 4000, 'Shorten the note to 4,000 characters.');
  say('note', textProblem(note) !== undefined, typeAgain('the note', note));
  say(
    'agreed',
    texts.get('agreed') !== 'on',
    'Tick the box if you agree to the terms; we cannot take an acceptance without.',
  );
  return problems;
}

/** What to do about a text that cannot be taken, and why: `Type your name again: it has …`. */
export function typeAgain(what: string, text: string): string {
  return `Type ${what} again: it ${textProblem(text) ?? 'cannot be read'}.`;
}
