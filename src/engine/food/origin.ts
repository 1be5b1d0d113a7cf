import { notParsed, type Parsed, parsed } from '../parsed.ts';

/**
 * What a food comes from, as far as the diets need to know it (ISO 23662:2021 tells vegetarian food by
 * the animal it comes from, processing aids included).
 */
export const ORIGINS = [
  'plant',
  'fungus',
  'mineral',
  'water',
  'microbe',
  'milk',
  'egg',
  'honey',
  'fish',
  'crustacean',
  'mollusc',
  'beef',
  'pork',
  'lamb',
  'poultry',
  'game',
  'insect',
  'animal rennet',
  'gelatin',
  'alcohol',
] as const;

export type Origin = (typeof ORIGINS)[number];

/** One origin word as a content file writes it. Fails on any other word, naming those there are. */
export function parseOrigin(text: string): Parsed<Origin> {
  const word = text.trim().toLowerCase();
  const origin = ORIGINS.find((known) => known === word);
  return origin === undefined
    ? notParsed(`“${text}” is not a food origin that Salver knows`, `write one of ${ORIGINS.join(', ')}`)
    : parsed(origin);
}
