import { createReadStream, existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Readable } from 'node:stream';
import { inboxPath, isInInbox, moveToTaken } from '../../offers/answers/inbox.ts';
import type { Call } from './command.ts';

/** An answer of a client's as it was given to a command. */
export interface AnswerFile {
  readonly text: string;
  /** Where it waits in the inbox; undefined for one that came another way. */
  readonly waits: string | undefined;
}

/** In bytes; a guest list of a thousand rows has a twentieth of it. Of more nothing is kept in memory. */
const LARGEST = 1024 * 1024;

/**
 * Reads an answer: `-` is standard input, `inbox/<name>` is meant from the content folder, as `check` names it, where
 * the caller has no such file; any other path is the caller's. Where it cannot be read or is far too long, the answer
 * is the sentence that says so, naming the file as `shown`.
 */
export async function readAnswerFile(
  call: Pick<Call, 'contentDir'>,
  file: string,
  shown = file,
): Promise<AnswerFile | string> {
  const path = file === '-' ? undefined : answerPath(call, file);
  try {
    const text = await textWithin(path === undefined ? process.stdin : createReadStream(path));
    if (text === undefined) {
      const what = path === undefined ? 'The input' : `The file ${shown}`;
      return `${what} is over a megabyte, too long for a client’s answer or a guest list; check that it is the right one.`;
    }
    return { text, waits: path !== undefined && isInInbox(call.contentDir, path) ? path : undefined };
  } catch {
    return `Can’t read ${shown}: no such file.`;
  }
}

/** The whole of a stream as text; undefined where it is too long, of which the rest is not read. */
async function textWithin(stream: Readable): Promise<string | undefined> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of stream) {
    const bytes = Buffer.from(part as Buffer | string);
    size += bytes.byteLength;
    if (size > LARGEST) return undefined;
    parts.push(bytes);
  }
  return Buffer.concat(parts).toString('utf8');
}

/** The absolute path that a command's word for an answer means. */
export function answerPath({ contentDir }: Pick<Call, 'contentDir'>, file: string): string {
  const { INIT_CWD: callerDir = process.cwd() } = process.env;
  const path = resolve(callerDir, file);
  const named = /^inbox\/[^/]+$/.test(file) && !existsSync(path);
  return named ? inboxPath(contentDir, file) : path;
}

/**
 * What is refused because it was recorded before, and still waits: an earlier run was stopped before it could put it
 * away, which is done now. Says so, exit code 0; undefined where that is not so.
 */
export async function putAwayRecorded(
  call: Pick<Call, 'write' | 'json'>,
  file: AnswerFile | undefined,
  refusal: { readonly what: string },
  recorded: string,
): Promise<0 | undefined> {
  if (file?.waits === undefined || refusal.what !== recorded) return undefined;
  return putAwayTakenBefore(call, file);
}

/** Puts an answer away that was recorded before, and says so. Exit code 0. */
export async function putAwayTakenBefore(
  call: Pick<Call, 'write' | 'json'>,
  file: Pick<AnswerFile, 'waits'>,
): Promise<0> {
  await putAway(file);
  const said = 'It was recorded before; it is now in inbox/taken.';
  call.write(call.json ? JSON.stringify({ takenBefore: true }, null, 2) : said);
  return 0;
}

/** Puts an answer that waited in the inbox with those taken. */
export async function putAway({ waits }: Pick<AnswerFile, 'waits'>): Promise<void> {
  if (waits !== undefined) await moveToTaken(waits);
}
