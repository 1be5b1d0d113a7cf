import type { InvoiceView } from './invoice-view.ts';
import type { DayView, EventView, KitchenView, LabelsView } from './kitchen-view.ts';
import type { ProposalView } from './proposal-view.ts';

/** What a page shows: plain data, told apart by `kind`. */
export type PageView = ProposalView | KitchenView | EventView | DayView | LabelsView | InvoiceView;
