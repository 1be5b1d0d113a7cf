import { type PerGuest, parsePerGuest } from '../../engine/measure/per-guest.ts';

/** A per-guest amount of a checked record. */
export function amountOf(text: string): PerGuest {
  const amount = parsePerGuest(text);
  if (!amount.ok) throw new Error(`a checked record holds an amount that is none: ${amount.what}`);
  return amount.value;
}
