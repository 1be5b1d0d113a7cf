import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type KitItemText, kitListSchema } from '../../schema/kit.ts';
import { openLedger } from '../ledger.ts';
import { formed } from '../link/grammar/form.ts';

const FILE = fileURLToPath(new URL('../../store-room/kit/usual-kit.yaml', import.meta.url));

/** It comes with Salver and is the same at every reading of this process. */
let known: Readonly<Record<string, KitItemText>> | undefined;

/** The kit list that comes with Salver, by id. Throws where it is not well-formed: a programmer's error. */
export function usualKit(): Readonly<Record<string, KitItemText>> {
  known ??= readUsualKit();
  return known;
}

function readUsualKit(): Readonly<Record<string, KitItemText>> {
  const { source, findings } = openLedger().yaml('usual-kit.yaml', readFileSync(FILE, 'utf8'));
  const read = source && findings.length === 0 ? formed(kitListSchema, source.data) : undefined;
  if (!read || !('value' in read)) throw new Error('the usual kit that comes with Salver can’t be read');
  return read.value;
}
