import { notParsed, type Parsed, parsed } from '../parsed.ts';

/**
 * The most gluten that food called gluten-free may have, in milligrams a kilogram (parts per million): below 20 in the
 * United States (21 CFR 101.91 (a) (3)), 20 at most in the European Union (Implementing Regulation 828/2014, Annex).
 */
export const GLUTEN_FREE_LIMIT = 20;

const STATEMENT = /^tested below (\d{1,2}(?:\.\d)?) (?:mg\/kg|ppm)$/;
const WAY_OUT = 'write tested below 20 mg/kg if a laboratory tests your dishes to that, or leave it out';

/**
 * Reads a kitchen's statement that its dishes without gluten-containing ingredients are tested: `tested below 20 mg/kg`.
 * The amount as text. Refused above the limit, where nobody may say gluten-free.
 */
export function parseGlutenTested(text: string): Parsed<string> {
  const amount = STATEMENT.exec(text.trim())?.[1];
  if (amount === undefined)
    return notParsed(`“${text}” does not state the level that dishes are tested to`, WAY_OUT);
  if (Number(amount) > GLUTEN_FREE_LIMIT)
    return notParsed(`${amount} mg/kg is above the legal limit of ${GLUTEN_FREE_LIMIT} mg/kg`, WAY_OUT);
  return parsed(`${amount} mg/kg`);
}
