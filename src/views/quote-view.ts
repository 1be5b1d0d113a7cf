/** What a choice costs, as the client reads it. */
export interface QuoteView {
  readonly caption: string;
  readonly lines: readonly QuoteLineView[];
  readonly total: string;
  readonly perGuest: string;
  /** With whom it divides by: `Per guest, all-inclusive (96 adults and children)`. */
  readonly perGuestLabel: string;
  readonly notes: readonly string[];
  readonly payments: readonly { readonly label: string; readonly due: string; readonly amount: string }[];
}

/** One line of it. */
export interface QuoteLineView {
  readonly label: string;
  readonly quantity: string;
  readonly unitPrice: string;
  readonly amount: string;
  readonly kind: 'line' | 'sum' | 'tax' | 'discount' | 'charge';
}
