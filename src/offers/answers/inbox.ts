import { randomBytes } from 'node:crypto';
import { access, link, mkdir, readdir, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { textsOf } from '../../book/files/content-texts.ts';
import { listContent } from '../../book/files/list-content.ts';
import type { Finding } from '../../book/findings/finding.ts';
import type { ClientAnswer } from '../../schema/client-answer.ts';
import { writeOnce } from '../write-once.ts';
import { madeOn, readClientAnswer } from './client-answer.ts';
import { type Judged, refusal } from './refusal.ts';

/** How many answers of clients may wait at once, so that whoever holds a link cannot fill the disk. */
export const MOST_WAITING = { inAll: 1000, ofOneOffer: 20 } as const;

/** What came of putting an answer into the inbox: `known` waits there already, or has been taken. */
export type Put = 'stored' | 'known' | 'too many of this offer' | 'full';

/**
 * Puts a client's answer into the content's inbox as a file of its own, whole or not at all. The same one twice is
 * stored once, also when the first was taken meanwhile. Fails as the file system does.
 */
export async function putInInbox(contentDir: string, answer: ClientAnswer): Promise<Put> {
  if (await isKnown(contentDir, answer)) return 'known';
  const inbox = inboxDir(contentDir);
  const waiting = (await namesIn(inbox)).filter((each) => each.endsWith('.json'));
  if (waiting.length >= MOST_WAITING.inAll) return 'full';
  const ofThisOffer = waiting.filter((each) => each.includes(`-${answer.offer.slice(0, 12)}-`));
  if (ofThisOffer.length >= MOST_WAITING.ofOneOffer) return 'too many of this offer';
  return (await writeOnce(join(inbox, inboxName(answer)), answer)) ? 'stored' : 'known';
}

/** Whether the very same answer came in before: it waits in the inbox, or has been taken from it. */
export async function isKnown(contentDir: string, answer: ClientAnswer): Promise<boolean> {
  const name = inboxName(answer);
  const inbox = inboxDir(contentDir);
  return (await exists(join(inbox, name))) || (await exists(join(inbox, TAKEN, name)));
}

/** The file's name: the day it was made, then which offer, then which answer, by their digests' beginnings. */
export function inboxName(answer: ClientAnswer): string {
  const { offer, digest } = answer;
  return `${madeOn(answer)}-${offer.slice(0, 12)}-${digest.slice(0, 16)}.json`;
}

/** A file of the inbox with the answer in it, or why it is none. */
export interface Waiting {
  /** `inbox/<name>.json`, relative to the content folder. */
  readonly file: string;
  /** As it lies there; empty where it cannot be read. */
  readonly text: string;
  readonly answer: Judged<ClientAnswer>;
}

/** All that waits in the inbox, by file name. */
export function waitingIn(contentDir: string): Waiting[] {
  const findings: Finding[] = [];
  return textsOf(listContent(contentDir), 'inbox', findings).map(({ file, text }) => {
    if (text !== undefined) return { file, text, answer: readClientAnswer(text) };
    const { what = 'it can’t be read', wayOut = '' } =
      findings.find((each) => each.place.file === file) ?? {};
    return { file, text: '', answer: refusal(what, wayOut) };
  });
}

/** Whether a path is that of a file lying in the content's inbox, waiting. */
export function isInInbox(contentDir: string, path: string): boolean {
  return dirname(resolve(path)) === resolve(inboxDir(contentDir));
}

/** The path of a file of the inbox by its name, which may be said as `inbox/<name>.json`, `<name>.json` or `<name>`. */
export function inboxPath(contentDir: string, name: string): string {
  const plain = basename(name);
  return join(inboxDir(contentDir), plain.endsWith('.json') ? plain : `${plain}.json`);
}

/**
 * Puts a file of the inbox with those taken; another of the same name that was taken before is kept beside it.
 * The answer is its new path.
 */
export async function moveToTaken(path: string): Promise<string> {
  const folder = join(dirname(path), TAKEN);
  await mkdir(folder, { recursive: true });
  const first = join(folder, basename(path));
  const target = (await linked(path, first)) ? first : await linkedApart(path, first);
  await rm(path, { force: true });
  return target;
}

const TAKEN = 'taken';

function inboxDir(contentDir: string): string {
  return join(contentDir, 'inbox');
}

async function linkedApart(path: string, taken: string): Promise<string> {
  const apart = taken.replace(/\.json$/, `-${randomBytes(4).toString('hex')}.json`);
  await link(path, apart);
  return apart;
}

async function linked(path: string, target: string): Promise<boolean> {
  return link(path, target).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'EEXIST') return false;
      throw error;
    },
  );
}

async function namesIn(folder: string): Promise<string[]> {
  return readdir(folder).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw error;
  });
}

async function exists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
