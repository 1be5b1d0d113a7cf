import { instalmentLabel } from '../engine/money/instalments.ts';
import type { Money } from '../engine/money/money.ts';
import type { Offer } from '../schema/offer.ts';
import type { EventStatus } from './event-status.ts';

/** What an event still owes on acceptance, wherever the kitchen lists that instalment; undefined where nothing is due then. */
export function depositDue(
  offer: Pick<Offer, 'terms'>,
  status: Pick<EventStatus, 'payments'>,
): Money | undefined {
  const asked = offer.terms.payments.find((each) => each.due === 'accepted');
  if (!asked) return undefined;
  const label = instalmentLabel(asked, offer.terms.currency, offer.terms.locale);
  return status.payments.find((row) => !row.received && row.label === label)?.amount;
}
