import type { InvoiceView } from './invoice-view.ts';
import type { BuffetCardsView, DayView, EventView, KitchenView, LabelsView } from './kitchen-view.ts';
import type { LeftoversView } from './leftovers-view.ts';
import type { OwnerMoneyView } from './owner-money.ts';
import type { PlaceCardsView } from './place-cards.ts';
import type { ProposalView } from './proposal-view.ts';

/** What a page shows: plain data, told apart by `kind`. */
export type PageView =
  | ProposalView
  | KitchenView
  | EventView
  | DayView
  | LabelsView
  | BuffetCardsView
  | PlaceCardsView
  | InvoiceView
  | LeftoversView
  | OwnerMoneyView;
