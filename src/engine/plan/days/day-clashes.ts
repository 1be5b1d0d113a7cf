import type { Equipment } from '../../kitchen/kitchen.ts';

/** Something that is taken up for a time: a pair of hands (`gear` null), or pieces of equipment. */
export interface DayUse {
  readonly what: string;
  readonly gear: Equipment | null;
  /** Minutes. */
  readonly from: number;
  readonly until: number;
  readonly uses: number;
}

/** A time at which more is asked for than there is. */
export interface DayClash {
  readonly gear: Equipment | null;
  readonly from: number;
  readonly until: number;
  /** The most that is asked for at once in that time, and what there is. */
  readonly asked: number;
  readonly has: number;
  readonly what: readonly string[];
}

/**
 * The first of the moves, in minutes, with which work that begins at `from` fits beside what is placed, and the clashes
 * that stay: none, or those of the work where it is, since none of the moves helps. Hands are not counted where
 * nobody has said how many there are.
 */
export function firstFit(
  placed: readonly DayUse[],
  uses: readonly DayUse[],
  from: number,
  moves: readonly number[],
  people: number | undefined,
): { readonly moved: number; readonly clashes: readonly DayClash[] } {
  const at = (move: number) => uses.map((use) => shifted(use, from + move));
  const moved = moves.find((move) => clashesOf(placed, at(move), people).length === 0);
  return moved === undefined
    ? { moved: 0, clashes: clashesOf(placed, at(0), people) }
    : { moved, clashes: [] };
}

function shifted(use: DayUse, by: number): DayUse {
  return { ...use, from: use.from + by, until: use.until + by };
}

/** Where uses that are added to others ask for more than there is; times that touch are one. */
function clashesOf(
  placed: readonly DayUse[],
  added: readonly DayUse[],
  people: number | undefined,
): DayClash[] {
  const kinds = new Map(added.map(({ gear }) => [gear?.id ?? '', gear]));
  return [...kinds.values()].flatMap((gear) => {
    const has = gear ? gear.count : people;
    if (has === undefined) return [];
    const same = ({ gear: other }: DayUse) => (other?.id ?? '') === (gear?.id ?? '');
    const own = added.filter(same);
    const all = [...placed.filter(same), ...own];
    const found: DayClash[] = [];
    const times = [...new Set(all.flatMap((use) => [use.from, use.until]))].sort((a, b) => a - b);
    for (const [index, from] of times.entries()) {
      const until = times[index + 1];
      const at = all.filter((use) => use.from <= from && use.until > from);
      const asked = at.reduce((sum, { uses }) => sum + uses, 0);
      if (until === undefined || asked <= has || !at.some((use) => own.includes(use))) continue;
      const what = at.map((use) => use.what);
      const last = found.at(-1);
      if (last?.until === from) {
        const both = [...new Set([...last.what, ...what])];
        found[found.length - 1] = { ...last, until, asked: Math.max(last.asked, asked), what: both };
      } else found.push({ gear, from, until, asked, has, what: [...new Set(what)] });
    }
    return found;
  });
}
