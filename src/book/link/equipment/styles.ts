import { SERVICE_STYLES, type ServiceStyle } from '../../../engine/course/service-style.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';

/** The service styles that an entry's `for` names; an unknown one is told. */
export function linkStyles(reading: Reading, words: readonly string[] | undefined): ServiceStyle[] {
  return (words ?? []).flatMap((word, index) => {
    const known = SERVICE_STYLES.find((each) => each === word.toLowerCase());
    if (known !== undefined) return [known];
    const wayOut =
      suggestion(reading.ledger, word, SERVICE_STYLES) ?? `choose from ${SERVICE_STYLES.join(', ')}`;
    reading.say('unknown-word', ['for', index], `“${word}” is not a service style`, wayOut);
    return [];
  });
}
