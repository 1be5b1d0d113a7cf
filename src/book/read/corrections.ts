import { correctionSchema, type PublishedCorrection } from '../../schema/correction.ts';
import type { ContentText } from '../files/content-texts.ts';
import { hold, type Ledger } from '../ledger.ts';
import { readNumbered, type WrittenIn } from './numbered.ts';

/**
 * The corrections that clients' pages have shown, by proposal, in the order written. Where one cannot be read, nobody
 * knows what the page showed of which dish: the proposal's corrections are held back, so that all its dishes say “ask us”.
 */
export function readCorrections(
  ledger: Ledger,
  files: readonly ContentText[],
): Map<string, (PublishedCorrection & WrittenIn)[]> {
  const holds = (proposal: string) => `corrections of ${proposal}`;
  const { records, lost } = readNumbered(ledger, files, correctionSchema, 'corrections', holds);
  for (const [proposal, reason] of lost) hold(ledger, `corrections/${proposal}`, reason);
  return records;
}
