import { Refusal } from '../build/refusal.ts';

/** What the file system refused, in words, and what to do about it. Every write is whole or not at all. */
const REFUSALS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full. What was there before is as it was; make room and run the same again',
  EDQUOT:
    'your share of the disk is used up. What was there before is as it was; make room and run the same again',
  EROFS:
    'no folder can be made or changed there, as on a disk that can only be read. Nothing was changed; choose another folder, or make it writable',
  EACCES:
    'you may not write or read there. Nothing was changed; see to the rights of the folder, then run the same again',
  EPERM:
    'you may not write or read there. Nothing was changed; see to the rights of the folder, then run the same again',
  EMFILE: 'too many files are open on this machine. Close other programs and run the same again',
  EIO: 'the disk reports a fault. See to a back-up before anything else, then run the same again',
};

/** One sentence for what stopped a command without its own words for it: where, what, and the way out. */
export function stoppedSentence(error: unknown): string {
  if (error instanceof Refusal) return `Not done: ${error.what} — ${error.wayOut}.`;
  const { code = '', syscall, path, dest } = (error ?? {}) as NodeJS.ErrnoException & { dest?: string };
  // Node says that a folder to be made is missing where the disk it would lie on can only be read.
  const known = code === 'ENOENT' && syscall === 'mkdir' ? 'EROFS' : code;
  const refusal = Object.hasOwn(REFUSALS, known) ? REFUSALS[known] : undefined;
  if (refusal) return `Salver stopped${placeOf(dest ?? path)}: ${refusal}.`;
  const message = error instanceof Error ? error.message : String(error);
  return `Salver stopped: ${message.split('\n')[0]}. Run again with SALVER_DEBUG=1 to see where.`;
}

function placeOf(path: string | undefined): string {
  return path === undefined ? '' : ` at ${path}`;
}
