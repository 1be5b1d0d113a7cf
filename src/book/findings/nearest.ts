/**
 * The known word that a mistyped one most likely meant: the one with the fewest single-letter slips
 * (insertions, deletions, substitutions), and none when even that takes more than a third of its letters
 * (at least two slips are always forgiven). Ties fall to the first. A word of more than 80 letters is nobody's slip.
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  if (word.length > 80) return undefined;
  let best: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const slips = slipsBetween(word.toLowerCase(), candidate.toLowerCase());
    if (slips < fewest && slips <= Math.max(2, Math.floor(candidate.length / 3))) {
      best = candidate;
      fewest = slips;
    }
  }
  return best;
}

/** Levenshtein distance by rows. */
function slipsBetween(from: string, to: string): number {
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const substitution = above[column - 1]! + (from[row - 1] === to[column - 1] ? 0 : 1);
      current.push(Math.min(substitution, above[column]! + 1, current[column - 1]! + 1));
    }
    above = current;
  }
  return above[to.length]!;
}
