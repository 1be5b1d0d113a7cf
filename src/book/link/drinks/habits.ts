import { type DrinksHabits, USUAL_HABITS } from '../../../engine/drinks/drinks-habits.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import type { Quantity } from '../../../engine/measure/quantity.ts';
import { parseTemperature } from '../../../engine/measure/temperature.ts';
import { unitKind } from '../../../engine/measure/units.ts';
import { notParsed, type Parsed } from '../../../engine/parsed.ts';
import type { DrinksHabitsText } from '../../../schema/drinks.ts';
import type { Path } from '../../files/place-of.ts';
import type { Reading } from '../grammar/reading.ts';

/** How the kitchen plans its drinks; what it does not state is as usual. Whether its foods exist is told by `check`. */
export function linkDrinksHabits(reading: Reading, text: DrinksHabitsText): DrinksHabits {
  const read = <T>(
    path: Path,
    words: string | undefined,
    grammar: (text: string) => Parsed<T>,
    usual: T,
  ): T =>
    (words === undefined ? undefined : reading.understand(['drinks', ...path], words, grammar)) ?? usual;
  const { perGlass, melt, storedAt, hotDay: usual } = USUAL_HABITS;
  const hot = text['hot day'];
  return {
    ...(text.ice !== undefined && { ice: text.ice }),
    ...(text.water !== undefined && { water: text.water }),
    perGlass: read(['ice per glass'], text['ice per glass'], parseWeight, perGlass),
    melt: read(['melt'], text.melt, parseShare, melt),
    storedAt: read(['stored at'], text['stored at'], parseTemperature, storedAt),
    hotDay: {
      from: read(['hot day', 'from'], hot?.from, parseTemperature, usual.from),
      more: read(['hot day', 'more'], hot?.more, parseShare, usual.more),
      melt: read(['hot day', 'melt'], hot?.melt, parseShare, usual.melt),
    },
  };
}

function parseWeight(text: string): Parsed<Quantity> {
  const weight = parseQuantity(text);
  return weight.ok && unitKind(weight.value.unit) !== 'mass'
    ? notParsed(`${text} is not a weight`, 'write it as 4 oz or 120 g')
    : weight;
}
