import { type Conversion, unitsAlong } from '../measure/conversions.ts';
import { unitKind } from '../measure/units.ts';
import type { RecipeLine } from './recipe.ts';

/**
 * Pieces that a cook makes of a bought food, by the last word of their name: so many of them weigh what is left after
 * trimming. Every other count is of the food as it is bought: each, heads, bunches, ears, bulbs, eggs, loaves, sheets,
 * cans and other packs. Common practice, no source; the store-room's weights follow the same table.
 */
const MADE_READY_PIECES: ReadonlySet<string> = new Set([
  'baton',
  'chop',
  'chunk',
  'clove',
  'coin',
  'cube',
  'curl',
  'cutlet',
  'disk',
  'fillet',
  'floret',
  'frond',
  'half',
  'leaf',
  'medallion',
  'petal',
  'portion',
  'quarter',
  'rib',
  'ribbon',
  'ring',
  'round',
  'section',
  'segment',
  'serving',
  'shaving',
  'slice',
  'spear',
  'sprig',
  'stalk',
  'steak',
  'strip',
  'supreme',
  'tip',
  'wedge',
]);

/** Whether a unit counts food as it is bought: a whole piece or a pack, no weight, volume or made-ready piece. */
export function isWholePiece(unit: string): boolean {
  return unitKind(unit) === 'count' && !MADE_READY_PIECES.has(unit.slice(unit.lastIndexOf(' ') + 1));
}

/** Whether a recipe line's amount is of the food as bought, so that nothing more is bought for its trim. */
export function isAsBought({ amount, asPurchased, trimmed }: AmountOfLine): boolean {
  return asPurchased || (!trimmed && isWholePiece(amount.unit));
}

/** What of a recipe line says whether its amount is of the food as bought. */
export type AmountOfLine = Pick<RecipeLine, 'amount' | 'asPurchased' | 'trimmed'>;

/**
 * Whether a line's amount must be divided by the share left to be bought in a unit. It must wherever the way there
 * goes by a weight or volume of the food made ready: 20 cloves by their weight. A made-ready piece counted into a
 * whole one loses nothing: 24 cloves of a head of 12 are 2 heads, and what is sold by the slice is bought by it.
 */
export function losesTrim(line: AmountOfLine, unit: string, conversions: readonly Conversion[]): boolean {
  if (line.trimmed) return true;
  if (line.asPurchased) return false;
  let madeReady = false;
  for (const [at, each] of [line.amount.unit, ...unitsAlong(line.amount.unit, unit, conversions)].entries()) {
    const measured = unitKind(each) !== 'count';
    if (measured && (madeReady || at === 0)) return true;
    if (!measured) madeReady = !isWholePiece(each);
  }
  return false;
}
