import type { QuoteView } from '../quote-view.ts';

/** The quote of a proposal's page: what is offered, and once it is accepted what is billed and paid by now. */
export interface ProposalQuoteView extends QuoteView {
  /** `Your quote`; `Your current total` once something else is billed than was agreed. */
  readonly head: string;
  /** What was agreed, with whom it counted, beside a total that is another by now; else null. */
  readonly agreed: { readonly label: string; readonly amount: string } | null;
  readonly payments: readonly PaymentView[];
  /** What the payments come to, and what is to be paid back; empty before the acceptance. */
  readonly paymentSums: readonly PaymentView[];
}

/** A payment. `paid` and `open` are empty before the acceptance. */
export interface PaymentView {
  readonly label: string;
  /** When it falls due; empty for a sum of several. */
  readonly due: string;
  readonly amount: string;
  readonly paid: string;
  readonly open: string;
}
