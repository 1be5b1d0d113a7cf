import type { Choice } from '../engine/quote/choice.ts';
import { atTable } from '../engine/quote/counts.ts';
import { mainsFor } from '../engine/quote/scaled-choice.ts';
import { billedGuests } from '../offers/event/billed-guests.ts';
import { packageOf } from '../views/client/proposal-choice-sides.ts';
import type { ClientTerms } from '../views/client/terms.ts';

/**
 * What a choice is billed as: itself before it is accepted; after that its guests, but never under the contract's
 * floor, as the kitchen's invoice reckons it.
 */
export function billedChoice(data: ClientTerms, choice: Choice): Choice {
  const { accepted } = data;
  if (!accepted || atTable(choice.guests) >= accepted.floor) return choice;
  const guests = billedGuests(choice.guests, null, accepted.guests, accepted.floor);
  const chosen = packageOf(data, choice.package);
  return { ...choice, guests, mains: mainsFor(chosen, choice.mains, guests) };
}
