import type { ServiceStyle } from '../../engine/course/service-style.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { wordsIn } from '../../words/words-in.ts';

const STYLES: Readonly<Record<ServiceStyle, WordKey>> = {
  plated: 'dishes.style.plated',
  buffet: 'dishes.style.buffet',
  'family style': 'dishes.style.family-style',
  stations: 'dishes.style.stations',
};

/** How a menu is served, as the client reads it; as it is written where it is none that is known. */
export function styleWords(style: ServiceStyle, locale: string): string {
  return Object.hasOwn(STYLES, style) ? wordsIn(locale)(STYLES[style]) : style;
}
