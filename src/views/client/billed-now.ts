import type { Day } from '../../engine/calendar/day.ts';
import type { Instalment } from '../../engine/money/instalments.ts';
import { moneyText, noMoney } from '../../engine/money/money.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { atTable, type Guests } from '../../engine/quote/counts.ts';
import type { Charge } from '../../engine/quote/with-charges.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { wordsIn } from '../../words/words-in.ts';

/**
 * What an accepted event's client is billed by what is recorded so far, and what is paid of it. Sums are money text at
 * the minor unit; all of it is plain data, since a page goes to another thread with what it is made from.
 */
export interface BilledNow {
  /** What is cooked: the choice with the counts guaranteed last. */
  readonly planned: Choice;
  /** Who was really served; null until it is recorded. */
  readonly served: Guests | null;
  /** What is billed, which may be for more guests than that. */
  readonly choice: Choice;
  /** What is billed besides; left out where nothing is. */
  readonly charges?: readonly Charge[];
  /** Why other guests are billed than are planned for; empty where they are the same. */
  readonly why: string;
  /** What the accepted choice came to on the day it was accepted. */
  readonly agreedTotal: string;
  readonly total: string;
  /** In the order of the terms. */
  readonly instalments: readonly {
    readonly instalment: Instalment;
    /** null while the event has no day. */
    readonly due: Day | null;
    readonly asked: string;
    readonly paid: string;
    readonly open: string;
  }[];
  /** All that came in, less refunds. */
  readonly received: string;
  /** The total less that; nothing where more came in. */
  readonly open: string;
  /** What came in beyond the total. */
  readonly credit: string;
}

/** An event's bill as it stands; a cancelled one's is that of its last count. */
export function billedNow(status: EventStatus, locale: string): BilledNow {
  const { choice: planned, billed: choice, total, account, accepted } = status;
  const { instalments, received, credit, balance } = account;
  return {
    planned,
    served: status.served,
    choice,
    ...(status.charges.length > 0 && { charges: status.charges }),
    why: atTable(planned.guests) === atTable(choice.guests) ? '' : whyBilled(status, locale),
    agreedTotal: accepted.acceptance.total,
    total: moneyText(total),
    instalments: instalments.map(({ instalment, due, asked, paid, open }) => ({
      instalment,
      due,
      asked: moneyText(asked),
      paid: moneyText(paid),
      open: moneyText(open),
    })),
    received: moneyText(received),
    open: moneyText(balance.amount.isNegative() ? noMoney(balance.currency) : balance),
    credit: moneyText(credit),
  };
}

/** `Billed for 76 guests at the table: 60 guaranteed, and never fewer than 76.` */
function whyBilled({ choice, billed, guarantee, served, floor }: EventStatus, locale: string): string {
  const spoken = {
    billed: atTable(billed.guests),
    n: atTable(choice.guests),
    count: guarantee ? 'guaranteed' : 'accepted',
    floor,
  };
  const say = wordsIn(locale);
  return served
    ? say('terms.billed.served', { ...spoken, served: atTable(served) })
    : say('terms.billed', spoken);
}
