import { Refusal } from '../../build/refusal.ts';

/** What the file system refused, in words, and what to do about it. Every write is whole or not at all. */
const REFUSALS: Readonly<Record<string, string>> = {
  ENOSPC:
    'the disk is full. Your earlier files are unchanged; free some space and run the same command again',
  EDQUOT:
    'your disk quota is used up. Your earlier files are unchanged; free some space and run the same command again',
  EROFS:
    'no folder can be made or changed there; the disk may be read-only. Nothing was changed; choose another folder, or make it writable',
  EACCES:
    'you do not have permission to read or write there. Nothing was changed; fix the folder’s permissions, then run the same command again',
  EPERM:
    'you do not have permission to read or write there. Nothing was changed; fix the folder’s permissions, then run the same command again',
  EMFILE: 'too many files are open on this machine. Close other programs and run the same command again',
  EIO: 'the disk reports an error. Make a backup before anything else, then run the same command again',
};

/** One sentence for what stopped a command without its own words for it: where, what, and the way out. */
export function stoppedSentence(error: unknown): string {
  if (error instanceof Refusal) return `Can’t do that: ${error.what} — ${error.wayOut}.`;
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
