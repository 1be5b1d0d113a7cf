import type { OfferContent } from '../offers/offer-content.ts';
import type { BrandView } from './brand-view.ts';

/** The caterer as pages and sheets show it. */
export function brandView(
  kitchen: Omit<OfferContent['kitchen'], 'measures' | 'allergenLaws' | 'timeZone' | 'tellPriceSteps'>,
): BrandView {
  return {
    name: kitchen.name,
    town: kitchen.town ?? '',
    email: kitchen.email ?? '',
    phone: kitchen.phone ?? '',
    accent: kitchen.accent,
    language: kitchen.locale,
    paper: kitchen.paper,
  };
}
