import { type Instalment, instalmentLabel } from '../../../src/engine/money/instalments.ts';

/** What an open payment is part of, as content writes it: `$1,500.00 when accepted`. */
export function instalmentText(instalment: Instalment | null, currency = 'USD', locale = 'en-US'): string {
  return instalment === null ? 'to be paid back' : instalmentLabel(instalment, currency, locale);
}
