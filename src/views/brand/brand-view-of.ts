import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import { languageOf } from '../../words/languages.ts';
import type { BrandView } from './brand-view.ts';
import { markPath } from './mark-files.ts';

/** The mark's height on a page, in CSS pixels. */
const MARK_HEIGHT = 72;

/**
 * The caterer as pages and sheets show it: names and colour of a kitchen or as an offer froze them, typefaces and
 * mark as the kitchen has them today.
 */
export function brandView(
  kitchen: Omit<OfferContent['kitchen'], 'measures' | 'allergenLaws' | 'timeZone' | 'tellPriceSteps'>,
  { fonts, mark }: Pick<Kitchen, 'fonts' | 'mark'>,
): BrandView {
  return {
    name: kitchen.name,
    town: kitchen.town ?? '',
    email: kitchen.email ?? '',
    phone: kitchen.phone ?? '',
    accent: kitchen.accent,
    fonts,
    mark: mark
      ? {
          path: markPath(mark),
          width: Math.round((MARK_HEIGHT * mark.width) / mark.height),
          height: MARK_HEIGHT,
        }
      : null,
    language: languageOf(kitchen.locale),
    locale: kitchen.locale,
    paper: kitchen.paper,
  };
}
