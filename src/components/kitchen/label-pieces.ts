import type { PlanLabel } from '../../exports/prep-plan-document.ts';

/** One label as it is stuck on: a whole one, or a part of one whose ingredients need more than its room. */
export interface LabelPiece {
  readonly label: PlanLabel;
  /** The ingredients on this piece. */
  readonly ingredients: string;
  /** `small` where the words fit only in smaller type. */
  readonly size: 'normal' | 'small';
  /** `1 of 2` of one label's pieces; empty where one is enough. */
  readonly part: string;
}

/** Room for words on the smaller of the two stocks (4 × 2 in), within its padding; millimetres. */
const room = { width: 94, height: 44 };
const point = 25.4 / 72;
const lineHeight = 1.16;
/** Wide letters of our fonts, as a share of the type size, so that a guess errs to too many lines. */
const letter = { plain: 0.44, capital: 0.52 };
const scales = { normal: 1, small: 0.88 } as const;

/**
 * A label in as few pieces as hold all of it: nothing is ever cut off. Type shrinks once, then the ingredients go on
 * on another label, from one ingredient to the next; every piece says what the dish contains, and
 * the standing caution.
 */
export function labelPieces(label: PlanLabel, caution: string): LabelPiece[] {
  for (const size of ['normal', 'small'] as const) {
    if (fits(label, label.ingredients, size, caution)) {
      return [{ label, ingredients: label.ingredients, size, part: '' }];
    }
  }
  const pieces: string[] = [];
  let taken = '';
  for (const next of unbroken(label, caution)) {
    const longer = taken === '' ? next : `${taken} ${next}`;
    if (taken !== '' && !fits(label, longer, 'small', caution)) {
      pieces.push(taken);
      taken = next;
    } else {
      taken = longer;
    }
  }
  pieces.push(taken);
  return pieces.map((ingredients, index) => ({
    label,
    ingredients,
    size: 'small',
    part: pieces.length === 1 ? '' : `${index + 1} of ${pieces.length}`,
  }));
}

/** What stays together on a piece: an ingredient, or the words of one that is too long for any piece. */
function unbroken(label: PlanLabel, caution: string): string[] {
  return label.ingredients
    .split(/(?<=,) /)
    .flatMap((ingredient) =>
      fits(label, ingredient, 'small', caution) ? [ingredient] : ingredient.split(' '),
    );
}

function fits(label: PlanLabel, ingredients: string, size: LabelPiece['size'], caution: string): boolean {
  const rows: [text: string, points: number, width: number][] = [
    // The count stands beside the dish's name.
    [`${label.dish} ${label.of}xx`, 13, letter.plain * 1.06],
    [`${label.container} · ${label.amount}`, 9, letter.plain],
    [label.guests, 9, letter.plain * 1.06],
    [`contains ${label.contains.join(', ')}`, 8.5, letter.capital],
    [label.mayContain.length > 0 ? `May contain ${label.mayContain.join(', ')}` : '', 8.5, letter.plain],
    [`Ingredients (part 1 of 9): ${ingredients}`, 7.5, letter.plain],
    [label.finish, 8, letter.plain],
    [`Made ${label.madeOn} · Use by ${label.useBy} · Hold ${label.hold}`, 8.5, letter.plain * 1.06],
    [`${label.job}, ${label.date}`, 7.5, letter.plain],
    [caution, 6.5, letter.plain],
  ];
  const height = rows.reduce((sum, [text, points, width]) => {
    if (text === '') return sum;
    const em = points * point * scales[size];
    return sum + Math.ceil((text.length * em * width) / room.width) * em * lineHeight + 0.5;
  }, 0);
  return height <= room.height;
}
