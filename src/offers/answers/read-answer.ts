import type { z } from 'zod';
import { type Statement, statement } from '../../engine/text/statement.ts';
import { textProblem } from '../../engine/text/visible-text.ts';
import type { ClientAnswer } from '../../schema/client-answer.ts';
import { type FormFault, formFault } from '../../schema/form-fault.ts';
import { READ_VERSION, versionAbove } from '../../schema/newer-version.ts';
import { digestOfRecord } from '../digest.ts';
import { textRefusal } from '../text-refusal.ts';
import { type Judged, refusal } from './refusal.ts';

/** The largest answer that is read, in characters; a real one has a few thousand. */
const MOST_CHARACTERS = 65_536;

/** The kind of an answer as messages know it. */
export function spokenKind(kind: ClientAnswer['kind']): 'acceptance' | 'count' | 'list' {
  return kind === 'acceptance' ? kind : kind === 'count change' ? 'count' : 'list';
}

/** A record that the client's page made, in its form, whole and unaltered by its own digest, or why it is none. */
export function readAnswer<T extends ClientAnswer>(
  text: string,
  schema: z.ZodType<T>,
  of: T['kind'],
): Judged<T> {
  const kind = spokenKind(of);
  const unread = (what: Statement) => refusal(what, statement('answers.unread.way'));
  if (text.length > MOST_CHARACTERS) return unread(statement('answers.too-long', { kind }));
  let record: unknown;
  try {
    // Some mail programs put a byte order mark in front of what they save.
    record = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return unread(statement('answers.not-json', { kind }));
  }
  const checked = schema.safeParse(record);
  if (!checked.success) {
    const version = versionAbove(record);
    if (version !== undefined)
      return refusal(
        statement('answers.newer', { version: `${version}`, read: `${READ_VERSION}` }),
        statement('answers.newer.way'),
      );
    const wrong = faultStatement(formFault(checked.error));
    return unread(statement('answers.form', { kind, wrong }));
  }
  // Over what was sent as well as over what was read of it, so that no entry passes unseen.
  const whole = [record as object, checked.data].every((each) => digestIs(checked.data.digest, each));
  if (!whole) return unread(statement('answers.altered', { kind }));
  const problem = wrongText(checked.data as Written);
  if (problem) return refusal(statement('answers.text', { kind, problem }), statement('answers.text.way'));
  return { ok: true, value: checked.data };
}

function faultStatement(fault: FormFault): Statement {
  const where = fault.where || statement('answers.fault.file');
  switch (fault.kind) {
    case 'missing':
      return statement('answers.fault.missing', { where });
    case 'long':
      return statement('answers.fault.long', { where, most: { count: fault.most } });
    case 'many':
      return statement('answers.fault.many', { where, most: { count: fault.most } });
    case 'more':
      return statement('answers.fault.more', { where, most: { count: fault.most } });
    case 'other':
      return statement('answers.fault.other', { where, message: fault.message });
  }
}

/** The texts of an answer that a client writes. */
interface Written {
  readonly name?: string;
  readonly note?: string;
  readonly needs?: Readonly<Record<string, number>>;
  readonly choice?: { readonly needs: Readonly<Record<string, number>> };
}

/** What is wrong with a text that the client wrote, which the page would have refused or put right. */
function wrongText({ name = '', note = '', needs, choice }: Written): Statement | undefined {
  const texts = [
    ['name', name] as const,
    ['note', note] as const,
    ...Object.keys({ ...needs, ...choice?.needs }).map((need) => ['need’s name', need] as const),
  ];
  return texts.flatMap(([which, text]) => {
    const problem = textProblem(text);
    return problem === undefined ? [] : [textRefusal(which, problem)];
  })[0];
}

/** Whether a record has this digest. One with half a sign in a text, as damage leaves it, has none. */
function digestIs(digest: string, record: object): boolean {
  try {
    return digestOfRecord(record) === digest;
  } catch {
    return false;
  }
}
