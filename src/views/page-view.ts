import type { ProposalView } from './client/proposal-view.ts';
import type { DayView } from './kitchen/day/view.ts';
import type { InvoiceView } from './kitchen/invoice-view.ts';
import type { LeftoversView } from './kitchen/leftovers-view.ts';
import type { OwnerMoneyView } from './kitchen/owner-money.ts';
import type { PlaceCardsView } from './kitchen/place-cards.ts';
import type { SiteSheetView } from './kitchen/site-sheet-view.ts';
import type { BuffetCardsView, EventView, KitchenView, LabelsView } from './kitchen/view.ts';

/** What a page shows: plain data, distinguished by `kind`. */
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
  | SiteSheetView
  | OwnerMoneyView;
