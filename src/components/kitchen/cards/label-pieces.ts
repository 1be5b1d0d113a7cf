import type { PlanLabel } from '../../../exports/form/sheets.ts';
import { rawMarkText } from '../../../exports/words/raw-mark-text.ts';
import type { Say } from '../../../words/words-in.ts';

/** One label as it is stuck on: a whole one, or a part of one whose ingredients need more than its room. */
export interface LabelPiece {
  readonly label: PlanLabel;
  /** The ingredients on this piece. */
  readonly ingredients: string;
  /**
   * `large` where all of it fits with what is read across the kitchen at 12 points or more; `small` where the words fit
   * only in smaller type, `tiny` where even those that never go on need it.
   */
  readonly size: 'large' | 'normal' | 'small' | 'tiny';
  /** `1 of 2` of one label's pieces; empty where one is enough. */
  readonly part: string;
  /** Whether it goes on from another: then it leaves out what is told there of container and finish. */
  readonly continued: boolean;
  /** Whether it is stuck on a part made ahead, which stays in the kitchen. */
  readonly prep: boolean;
}

/** Room for words on the smaller of the two stocks (4 × 2 in), within its padding; millimetres. */
const room = { width: 94, height: 44 };
const point = 25.4 / 72;
const lineHeight = 1.16;
/** What the frame of a warning takes above and below its words; elsewhere our guess of the lines errs by more. */
const frame = 2;
/** Wide letters of our fonts, as a share of the type size, so that a guess errs to too many lines. */
const letter = { plain: 0.44, capital: 0.52 };
const scales = { large: 1, normal: 1, small: 0.88, tiny: 0.76 } as const;
/** Points of what is read from a step away: as `labels-paper.css` has them. */
const typeSizes = {
  large: { name: 12, longName: 12, raw: 12, packed: 12, contains: 12, ingredients: 7, dates: 8, job: 12 },
  usual: {
    name: 13,
    longName: 10.5,
    raw: 11,
    packed: 9,
    contains: 8.5,
    ingredients: 7.5,
    dates: 8.5,
    job: 7.5,
  },
} as const;
/** A name longer than this is set smaller. */
const LONG_NAME = 48;
/** What has to fit beside the rest of a label, for it to go on without a sticker for every word. */
const LEAST_INGREDIENTS = 'x'.repeat(120);

/** Whether a dish's name is so long that it is set smaller. */
export function isLongName(dish: string): boolean {
  return dish.length > LONG_NAME;
}

/** The use-by as it is printed: a day, or room to write one, with the last day that it may be where one is known. */
export function useByText(
  { useBy, useByLatest }: Pick<PlanLabel, 'useBy' | 'useByLatest'>,
  say: Say,
): string {
  if (useBy !== '') return say('labels.use-by', { day: useBy });
  return useByLatest ? say('labels.use-by-no-later', { day: useByLatest }) : say('labels.use-by-blank');
}

/** What a container is, what is in it and where it goes, in one line; of what goes on from another label only that it is prep. */
export function packedText(
  label: PlanLabel,
  { continued, prep }: Pick<LabelPiece, 'continued' | 'prep'>,
  say: Say,
): string {
  const told = continued ? [] : [label.container, label.amount, label.carrier ?? ''];
  return [prep ? say('labels.prep') : '', ...told].filter((words) => words !== '').join(' · ');
}

/**
 * A label in as few pieces as hold all of it: nothing is ever cut off. Type shrinks once, then the ingredients go on
 * on another label, from one ingredient to the next; every piece says what the dish contains, whether it
 * is raw, until when it may stand out, and the standing caution.
 */
export function labelPieces(label: PlanLabel, caution: string, say: Say, prep = false): LabelPiece[] {
  for (const size of ['large', 'normal', 'small'] as const) {
    if (fits(label, label.ingredients, size, caution, { prep }, say)) {
      return [{ label, ingredients: label.ingredients, size, part: '', continued: false, prep }];
    }
  }
  const size = fits(label, LEAST_INGREDIENTS, 'small', caution, { prep }, say) ? 'small' : 'tiny';
  const pieces: string[] = [];
  let taken = '';
  for (const next of unbroken(label, caution, size, say)) {
    const longer = taken === '' ? next : `${taken} ${next}`;
    if (taken !== '' && !fits(label, longer, size, caution, { prep, continued: pieces.length > 0 }, say)) {
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
    size,
    part: pieces.length === 1 ? '' : say('labels.of', { n: `${index + 1}`, all: `${pieces.length}` }),
    continued: index > 0,
    prep,
  }));
}

/** What stays together on a piece: an ingredient, or the words of one that is too long for any piece. */
function unbroken(label: PlanLabel, caution: string, size: LabelPiece['size'], say: Say): string[] {
  return label.ingredients
    .split(/(?<=,) /)
    .flatMap((ingredient) =>
      fits(label, ingredient, size, caution, {}, say) ? [ingredient] : ingredient.split(' '),
    );
}

function fits(
  label: PlanLabel,
  ingredients: string,
  size: LabelPiece['size'],
  caution: string,
  { continued = false, prep = false }: { readonly continued?: boolean; readonly prep?: boolean },
  say: Say,
): boolean {
  const of = size === 'large' ? typeSizes.large : typeSizes.usual;
  const rows: [text: string, points: number, width: number][] = [
    // The count stands beside the dish's name.
    [`${label.dish} ${label.of}xx`, isLongName(label.dish) ? of.longName : of.name, letter.plain * 1.06],
    [
      label.raw
        ? `${rawMarkText(label.raw.mark, say)} ${say('labels.raw', { what: label.raw.next })}xxxx`
        : '',
      of.raw,
      letter.plain * 1.06,
    ],
    [
      label.throwAwayBy ? `${say('labels.throw-away', { time: label.throwAwayBy })}xxxx` : '',
      of.raw,
      letter.plain * 1.06,
    ],
    [packedText(label, { continued, prep }, say), of.packed, letter.plain],
    [label.goesInto ? say('labels.for-dish', { dish: label.goesInto }) : '', 9, letter.plain * 1.06],
    [label.guests, 9, letter.plain * 1.06],
    [say('labels.contains', { allergens: label.contains.join(', ') }), of.contains, letter.capital],
    [
      label.mayContain.length > 0
        ? say('labels.may-contain', { allergens: label.mayContain.join(', ') })
        : '',
      8.5,
      letter.plain,
    ],
    [
      size === 'large'
        ? say('labels.ingredients', { foods: ingredients })
        : say('labels.ingredients-part', {
            part: say('labels.of', { n: '1', all: '9' }),
            foods: ingredients,
          }),
      of.ingredients,
      letter.plain,
    ],
    [continued ? '' : label.finish, 8, letter.plain],
    [
      `${say('labels.made', { day: label.madeOn })} · ${useByText(label, say)} · ${say('labels.hold', { how: say('lists.hold', { how: label.hold }) })}`,
      of.dates,
      letter.plain * 1.06,
    ],
    [say('labels.job', { job: label.job, day: label.date }), of.job, letter.plain],
    [caution, 6.5, letter.plain],
  ];
  const height = rows.reduce((sum, [text, points, width]) => {
    if (text === '') return sum;
    const em = points * point * scales[size];
    return sum + Math.ceil((text.length * em * width) / room.width) * em * lineHeight + 0.5;
  }, 0);
  const frames = size === 'large' ? frame * (Number(!!label.raw) + Number(!!label.throwAwayBy)) : 0;
  return height + frames <= room.height;
}
