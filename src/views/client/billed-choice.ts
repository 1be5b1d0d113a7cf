import type { Choice } from '../../engine/quote/choice.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { mainsFor } from '../../engine/quote/scaled-choice.ts';
import { billedGuests } from '../../offers/event/billed-guests.ts';
import type { ScriptSay } from '../../words/script-words.ts';
import { packageOf } from './proposal-choice-sides.ts';
import type { ClientTerms } from './terms.ts';

/** What a choice is billed as, and why where that is for more guests than it names; empty where it is not. */
export interface BilledChoice {
  readonly choice: Choice;
  readonly why: string;
}

/**
 * What a choice is billed as: itself before it is accepted; after that its guests, but never under the contract's
 * floor, as the kitchen's invoice has it.
 */
export function billedChoice(say: ScriptSay, data: ClientTerms, choice: Choice): BilledChoice {
  const { accepted } = data;
  if (!accepted || atTable(choice.guests) >= accepted.floor) return { choice, why: '' };
  const guests = billedGuests(choice.guests, null, accepted.guests, accepted.floor);
  const chosen = packageOf(data, choice.package);
  return {
    choice: { ...choice, guests, mains: mainsFor(chosen, choice.mains, guests) },
    why: say('sum.billed', { n: atTable(guests) }),
  };
}
