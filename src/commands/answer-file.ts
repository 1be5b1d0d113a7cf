import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { text as textOf } from 'node:stream/consumers';
import { inboxPath, isInInbox, moveToTaken } from '../offers/inbox.ts';
import type { Call } from './command.ts';

/** An answer of a client's as it was given to a command. */
export interface AnswerFile {
  readonly text: string;
  /** Where it waits in the inbox; undefined for one that came another way. */
  readonly waits: string | undefined;
}

/**
 * Reads an answer: `-` is standard input, `inbox/<name>` is meant from the content folder, as `check` names it, where
 * the caller has no such file; any other path is the caller's. Undefined where no such file can be read.
 */
export async function readAnswerFile(
  call: Pick<Call, 'contentDir'>,
  file: string,
): Promise<AnswerFile | undefined> {
  if (file === '-') return { text: await textOf(process.stdin), waits: undefined };
  const path = answerPath(call, file);
  try {
    const text = await readFile(path, 'utf8');
    return { text, waits: isInInbox(call.contentDir, path) ? path : undefined };
  } catch {
    return undefined;
  }
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
  call: Pick<Call, 'write'>,
  file: AnswerFile | undefined,
  refusal: { readonly what: string },
  recorded: string,
): Promise<0 | undefined> {
  if (file?.waits === undefined || refusal.what !== recorded) return undefined;
  await putAway(file);
  call.write('It was taken before; it now lies in inbox/taken.');
  return 0;
}

/** Puts an answer that waited in the inbox with those taken. */
export async function putAway({ waits }: Pick<AnswerFile, 'waits'>): Promise<void> {
  if (waits !== undefined) await moveToTaken(waits);
}
