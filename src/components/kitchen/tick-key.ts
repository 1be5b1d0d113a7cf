/**
 * Names the line that a tick belongs to, so that it stays with what was done: the line's id, and a digest of the words
 * that say what is to be done. Where a changed plan has other words under the same id, it is another line.
 */
export function tickKey(kind: string, id: string, words: string): string {
  return `${kind} ${id} ${digest(words)}`;
}

/** FNV-1a, 32 bits: it tells two texts of one line apart, and is no safeguard against anybody. */
function digest(words: string): string {
  let hash = 0x811c9dc5;
  for (const sign of words) {
    hash ^= sign.codePointAt(0)!;
    hash = Math.imul(hash, 0x01000193) >>> 0;
  }
  return hash.toString(36);
}
