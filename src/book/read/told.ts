import { type Told, toldSchema } from '../../schema/told.ts';
import type { ContentText } from '../files/content-texts.ts';
import type { Ledger } from '../ledger.ts';
import { readNumbered } from './numbered.ts';

/**
 * What clients were told, by proposal, in the order written. A record that cannot be read is an error and counts as
 * not told: to tell a client twice harms nobody.
 */
export function readTold(ledger: Ledger, files: readonly ContentText[]): Map<string, Told[]> {
  const holds = (proposal: string) => `what the client of ${proposal} was told`;
  return readNumbered(ledger, files, toldSchema, 'told', holds).records;
}
