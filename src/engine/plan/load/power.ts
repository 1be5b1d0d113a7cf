import type { VenueKit } from '../../menu/venue-kit.ts';
import type { Brought } from './brought.ts';

/** One piece of equipment that draws current at an event's place, and when. */
export interface PoweredPiece {
  readonly name: string;
  /** In amperes, above 0. */
  readonly amperes: number;
  /** Minutes from the date’s midnight. */
  readonly from: number;
  readonly until: number;
}

/** A circuit of the venue and what is plugged into it. */
export interface LoadedCircuit {
  /** What it carries, in amperes. */
  readonly amperes: number;
  readonly pieces: readonly PoweredPiece[];
  /** The most that is drawn from it at once, in amperes. */
  readonly most: number;
  /**
   * True: it would carry too little if what runs three hours or longer counted at 125 %, as the National Electrical Code has it
   * for wires and breakers (NFPA 70, 210.19(A) and 210.20(A); from memory).
   */
  readonly lasting: boolean;
}

/** The current an event draws, against what the venue has. */
export interface PowerPlan {
  /** False: nobody has stated the venue’s circuits. */
  readonly stated: boolean;
  readonly circuits: readonly LoadedCircuit[];
  /** What finds no circuit that carries it as long as it is lit. */
  readonly off: readonly PoweredPiece[];
  /** The most that all of it draws at once, in amperes. */
  readonly most: number;
  /** The most that those off a circuit draw at once: a generator of so many amperes carries them. */
  readonly lacking: number;
}

/** How many tries are made to find every piece a circuit; then the pieces are placed largest first. */
const TRIES = 20_000;
const LASTING_MINUTES = 180;

/**
 * Puts each piece that draws current on one circuit, where it stays as long as it is lit; what is lit at the same time adds up.
 * The largest go first, each on the first circuit that carries it; where that leaves some over, other ways are tried before any is
 * said to be off. Undefined where nothing draws current.
 */
export function powerPlan(
  brought: readonly Brought[],
  circuits: VenueKit['circuits'],
): PowerPlan | undefined {
  const pieces = brought
    .flatMap(({ equipment: { name, amperes }, count, lit }) =>
      amperes === undefined
        ? []
        : Array.from({ length: count }, () => ({
            name,
            amperes,
            from: lit.from,
            // Work whose time nobody has stated still draws current.
            until: Math.max(lit.until, lit.from + 1),
          })),
    )
    .sort((a, b) => b.amperes - a.amperes || a.from - b.from || (a.name < b.name ? -1 : 1));
  if (pieces.length === 0) return undefined;
  const carry = (circuits ?? []).flatMap(({ count, amperes }) =>
    Array.from({ length: count }, () => amperes),
  );
  const greedy = placedFirstFit(pieces, carry);
  const placed = greedy.off.length === 0 ? greedy : (placedAll(pieces, carry) ?? greedy);
  return {
    stated: circuits !== undefined,
    circuits: carry.map((amperes, index): LoadedCircuit => {
      const on = placed.on[index] ?? [];
      return { amperes, pieces: on, most: mostAtOnce(on), lasting: mostAtOnce(on, lastingWeight) > amperes };
    }),
    off: placed.off,
    most: mostAtOnce(pieces),
    lacking: mostAtOnce(placed.off),
  };
}

interface Placed {
  /** By circuit. */
  readonly on: readonly (readonly PoweredPiece[])[];
  readonly off: readonly PoweredPiece[];
}

function placedFirstFit(pieces: readonly PoweredPiece[], carry: readonly number[]): Placed {
  const on: PoweredPiece[][] = carry.map(() => []);
  const off = pieces.filter((piece) => {
    const circuit = on.findIndex((there, index) => mostAtOnce([...there, piece]) <= (carry[index] ?? 0));
    on[circuit]?.push(piece);
    return circuit < 0;
  });
  return { on, off };
}

/** Every piece on a circuit; undefined where no way was found within the tries. */
function placedAll(pieces: readonly PoweredPiece[], carry: readonly number[]): Placed | undefined {
  const on: PoweredPiece[][] = carry.map(() => []);
  let tries = 0;
  const place = (next: number): boolean => {
    const piece = pieces[next];
    if (!piece) return true;
    return on.some((there, index) => {
      tries += 1;
      if (tries > TRIES || mostAtOnce([...there, piece]) > (carry[index] ?? 0)) return false;
      there.push(piece);
      if (place(next + 1)) return true;
      there.pop();
      return false;
    });
  };
  return place(0) ? { on, off: [] } : undefined;
}

/** The most amperes that pieces draw at any minute, exact to a thousandth. */
function mostAtOnce(
  pieces: readonly PoweredPiece[],
  weight: (piece: PoweredPiece) => number = (piece) => thousandths(piece),
): number {
  const sums = pieces.map(({ from }) =>
    pieces
      .filter((other) => other.from <= from && from < other.until)
      .reduce((sum, other) => sum + weight(other), 0),
  );
  return Math.max(0, ...sums) / 1000;
}

function thousandths({ amperes }: PoweredPiece): number {
  return Math.round(amperes * 1000);
}

function lastingWeight(piece: PoweredPiece): number {
  return piece.until - piece.from < LASTING_MINUTES ? thousandths(piece) : (thousandths(piece) * 5) / 4;
}
