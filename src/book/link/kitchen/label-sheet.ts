import type Fraction from 'fraction.js';
import { fitsSheet, LABEL_SHEETS, type LabelSheet } from '../../../engine/kitchen/label-sheet.ts';
import { parseLength } from '../../../engine/kitchen/parse-length.ts';
import { type Parsed, parsed } from '../../../engine/parsed.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import type { Reading } from '../grammar/reading.ts';

type LabelsText = NonNullable<KitchenText['labels']>;

/** The stickers that labels are printed on: the paper's common stock, each measure by itself over it. */
export function linkLabelSheet(
  reading: Reading,
  text: LabelsText | undefined,
  paper: 'letter' | 'a4',
): LabelSheet {
  const stock = LABEL_SHEETS[paper];
  if (!text) return stock;
  const length = (field: keyof LabelsText, parse: (words: string) => Parsed<Fraction>, usual: Fraction) => {
    const words = text[field];
    return words === undefined ? usual : (reading.understand(['labels', field], words, parse) ?? usual);
  };
  const sheet: LabelSheet = {
    ...stock,
    above: length('above', parseMargin, stock.above),
    beside: length('beside', parseMargin, stock.beside),
    between: length('between', parseMargin, stock.between),
    nudge: {
      right: length('nudge right', parseNudge, stock.nudge.right),
      down: length('nudge down', parseNudge, stock.nudge.down),
    },
  };
  if (fitsSheet(sheet)) return sheet;
  reading.say(
    'labels-off-sheet',
    ['labels'],
    `with these margins, labels run off the ${paper === 'a4' ? 'A4' : 'Letter'} sheet, so the usual ones are used`,
    'measure the sheet again; if the printer prints too small, set it to 100 % instead of nudging',
  );
  return stock;
}

const MARGIN = { thing: 'a margin', wayOut: 'write it as 6 mm or 5/32 in' } as const;
const NUDGE = { thing: 'a nudge', wayOut: 'write it as 0.8 mm, or -0.8 mm for the other way' } as const;

function parseMargin(text: string): Parsed<Fraction> {
  return parseLength(text, MARGIN);
}

/** A length with a sign. */
function parseNudge(text: string): Parsed<Fraction> {
  const [, sign = '', length = ''] = /^\s*([-−+]?)(.*)$/su.exec(text) ?? [];
  const read = parseLength(length, NUDGE);
  return read.ok && sign !== '' && sign !== '+' ? parsed(read.value.neg()) : read;
}
