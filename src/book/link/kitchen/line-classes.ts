import { LINE_CLASSES, type LineClass } from '../../../engine/quote/line-class.ts';
import type { Path } from '../../files/place-of.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';

/** Classes of lines by their words; those nobody names default to food and drink. */
export function linkLineClasses(
  reading: Reading,
  path: Path,
  words: readonly string[] | undefined,
): LineClass[] {
  if (words === undefined) return ['food', 'drink'];
  return words.flatMap((word, index) => {
    const known = LINE_CLASSES.find((each) => each === word.toLowerCase());
    if (known !== undefined) return [known];
    const wayOut = suggestion(reading.ledger, word, LINE_CLASSES) ?? `choose from ${LINE_CLASSES.join(', ')}`;
    reading.say('unknown-word', [...path, index], `“${word}” is not a class of lines`, wayOut);
    return [];
  });
}
