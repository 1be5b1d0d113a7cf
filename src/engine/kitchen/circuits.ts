/** A piece of equipment that draws current. */
export interface DrawingPiece {
  readonly name: string;
  /** In amperes, above 0. */
  readonly amperes: number;
}

/**
 * The pieces for which no circuit is left when each is put on one of them: the largest first, each on the first circuit
 * that still carries it (first fit decreasing). Fewer circuits might do in another order, so this is a warning's
 * question and not an electrician's answer.
 */
export function piecesOffCircuit(
  pieces: readonly DrawingPiece[],
  circuits: readonly { readonly count: number; readonly amperes: number }[],
): DrawingPiece[] {
  const left = circuits.flatMap(({ count, amperes }) => Array.from({ length: count }, () => amperes));
  const largestFirst = [...pieces].sort((a, b) => b.amperes - a.amperes || (a.name < b.name ? -1 : 1));
  return largestFirst.filter(({ amperes }) => {
    const circuit = left.findIndex((free) => free >= amperes);
    if (circuit < 0) return true;
    left[circuit] = (left[circuit] ?? 0) - amperes;
    return false;
  });
}
