import type { Money } from '../../engine/money/money.ts';
import type { Offer } from '../../schema/offer.ts';
import type { EventStatus } from './status.ts';

/** What an event still owes on acceptance, wherever the kitchen lists that instalment; undefined where nothing is due then. */
export function depositDue(
  offer: Pick<Offer, 'terms'>,
  status: Pick<EventStatus, 'account'>,
): Money | undefined {
  const place = offer.terms.payments.findIndex((each) => each.due === 'accepted');
  const open = status.account.instalments[place]?.open;
  return open?.amount.gt(0) ? open : undefined;
}
