import type { BrandView } from '../brand/brand-view.ts';
import type { QuoteLineView } from '../quote-view.ts';
import type { BannerView } from './view.ts';

/** An event's invoice, for the page and on paper: finished text, nothing to compute. */
export interface InvoiceView {
  readonly kind: 'invoice';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  /** `Wedding supper, Idony Farrowick`. */
  readonly title: string;
  /** The event’s id, by which kitchen and client refer to it. */
  readonly reference: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  /** How the number of guests billed came about. */
  readonly counted: string;
  readonly lines: readonly QuoteLineView[];
  readonly total: string;
  readonly received: readonly {
    readonly on: string;
    readonly method: string;
    /** What it paid: `30 % when accepted`, `refund`. */
    readonly paid: string;
    readonly amount: string;
  }[];
  /** Tips given, in none of the sums; left out where there are none. */
  readonly tips?: readonly { readonly on: string; readonly method: string; readonly amount: string }[];
  /** True: a line is printed on which to write a tip. */
  readonly tipLine: boolean;
  /** `Received in all`, `Received, less refunds`. */
  readonly receivedLabel: string;
  readonly receivedInAll: string;
  /** `Balance`, `Paid in full` or `To be paid back`. */
  readonly balanceLabel: string;
  readonly balance: string;
  readonly due: readonly { readonly label: string; readonly due: string; readonly amount: string }[];
  readonly notes: readonly string[];
  /** Names of the files beside the page, with what they are. */
  readonly files: readonly { readonly file: string; readonly what: string }[];
}
