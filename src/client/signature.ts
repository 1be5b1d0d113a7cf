import { textProblem, tidyLine, tidyText } from '../engine/text/visible-text.ts';
import type { FieldProblem } from './choice-in.ts';
import type { Texts } from './form-texts.ts';
import { say } from './words.ts';

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
  const ask = (field: string, wrong: boolean, what: string) => {
    if (wrong && asks.includes(field)) problems.push({ field, what });
  };
  const [hiddenName, hiddenNote] = [textProblem(name), textProblem(note)];
  ask('name', name === '', say('ask.name'));
  ask('name', name.length > 200, say('ask.name-shorter'));
  if (hiddenName) ask('name', true, say('ask.name-again', hiddenName));
  ask('email', email === '', say('ask.email'));
  ask('email', email !== '' && (!EMAIL_FORM.test(email) || email.length > 254), say('ask.email-form'));
  ask('note', note.length > 4000, say('ask.note-shorter'));
  if (hiddenNote) ask('note', true, say('ask.note-again', hiddenNote));
  ask('agreed', texts.get('agreed') !== 'on', say('ask.agreed'));
  return problems;
}
