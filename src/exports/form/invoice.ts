import type { Guests } from '../../engine/quote/counts.ts';
import type { QuoteLine, QuoteTax } from '../../engine/quote/quote.ts';

/** A line of a quote for programs and for people who read a document of it: with its label and its why in words. */
export interface WordedLine extends Omit<QuoteLine, 'name' | 'why'> {
  readonly label: string;
  readonly why: string;
}

/**
 * `invoice.json`: what an event's client is billed for, has paid and still owes, by what is recorded so far. Sums
 * are text at the currency's minor unit.
 */
export interface InvoiceDocument {
  readonly version: 1;
  readonly kind: 'invoice';
  readonly event: {
    readonly id: string;
    readonly occasion: string;
    readonly client: string;
    readonly date: string;
    readonly place: string;
    readonly package: string;
    readonly state: string;
  };
  readonly offer: { readonly revision: number; readonly digest: string; readonly acceptedOn: string };
  /** The day of the last thing recorded for the event. */
  readonly asOf: string;
  readonly counts: {
    readonly accepted: Guests;
    /** The accepted count where none has been guaranteed. */
    readonly guaranteed: Guests;
    /** null until it is recorded. */
    readonly served: Guests | null;
    /** The fewest guests at the table that are billed. */
    readonly floor: number;
    readonly billed: Guests;
    readonly why: string;
  };
  readonly currency: string;
  readonly lines: readonly WordedLine[];
  readonly taxes: readonly QuoteTax[];
  /** True where the taxes are within the lines. */
  readonly taxIncluded: boolean;
  readonly total: string;
  /** What came in; a negative amount is a refund. */
  readonly received: readonly {
    readonly on: string;
    readonly amount: string;
    readonly method: string;
    /** The instalments it went into; less than the amount where some was refunded or is to be paid back. */
    readonly paid: readonly { readonly label: string; readonly amount: string }[];
  }[];
  /** Tips for the crew, in none of the sums; left out where there are none. */
  readonly tips?: readonly { readonly on: string; readonly amount: string; readonly method: string }[];
  /** Refunds taken off. */
  readonly receivedInAll: string;
  /** Total less what was received; negative where money is to be paid back. */
  readonly balance: string;
  /** What is still to be paid, or paid back where negative, and when; sums to the balance. `due` is empty while unknown. */
  readonly due: readonly { readonly label: string; readonly due: string; readonly amount: string }[];
  readonly notes: readonly string[];
}
