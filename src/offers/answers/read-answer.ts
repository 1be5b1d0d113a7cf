import type { z } from 'zod';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { textProblem } from '../../engine/text/visible-text.ts';
import { issueWords } from '../../schema/issue-words.ts';
import { newerVersion, USE_NEWER } from '../../schema/newer-version.ts';
import { digestOfRecord } from '../digest.ts';
import { textRefusal } from '../text-refusal.ts';

/** The largest answer that is read, in characters; a real one has a few thousand. */
const MOST_CHARACTERS = 65_536;
const TYPE_AGAIN = 'ask the client to type it again on the page and send a new answer';
const ASK_AGAIN = 'ask the client to send the page’s file again, unchanged';

/**
 * A record that the client's page made (`what` it is: acceptance, count change, guest list), in its form, whole and
 * unaltered by its own digest, or why it is none.
 */
export function readAnswer<T extends { readonly digest: string } & Written>(
  text: string,
  schema: z.ZodType<T>,
  what: string,
): Parsed<T> {
  const one = `${/^[aeiou]/.test(what) ? 'an' : 'a'} ${what}`;
  if (text.length > MOST_CHARACTERS) return notParsed(`this file is too long to be ${one}`, ASK_AGAIN);
  let record: unknown;
  try {
    // Some mail programs put a byte order mark in front of what they save.
    record = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return notParsed(`this is not ${one} file: it is not JSON`, ASK_AGAIN);
  }
  const checked = schema.safeParse(record);
  if (!checked.success) {
    const newer = newerVersion(record);
    if (newer) return notParsed(newer, USE_NEWER);
    const wrong = issueWords(checked.error, 'the file');
    return notParsed(`this is not ${one} that Salver knows: ${wrong}`, ASK_AGAIN);
  }
  // Over what was sent as well as over what was read of it, so that no entry passes unseen.
  const whole = [record as object, checked.data].every((each) => digestIs(checked.data.digest, each));
  if (!whole) return notParsed(`this ${what} was altered or damaged after it was made`, ASK_AGAIN);
  const wrong = wrongText(checked.data);
  if (wrong !== undefined) return notParsed(`${wrong} in this ${what}`, TYPE_AGAIN);
  return parsed(checked.data);
}

/** The texts of an answer that a client writes. */
interface Written {
  readonly name?: string;
  readonly note?: string;
  readonly needs?: Readonly<Record<string, number>>;
  readonly choice?: { readonly needs: Readonly<Record<string, number>> };
}

/** What is wrong with a text that the client wrote, which the page would have refused or put right. */
function wrongText({ name = '', note = '', needs, choice }: Written): string | undefined {
  const texts = [
    ['the name', name],
    ['the note', note],
    ...Object.keys({ ...needs, ...choice?.needs }).map((need) => ['the name of a need', need] as const),
  ] as const;
  return texts.flatMap(([what, text]) => {
    const problem = textProblem(text);
    return problem === undefined ? [] : [`${what} ${textRefusal(problem)}`];
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
