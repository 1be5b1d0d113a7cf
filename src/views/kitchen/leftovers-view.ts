import type { BrandView } from '../brand/brand-view.ts';
import type { BannerView } from './view.ts';

/** One event of a dish: shares are for the picture's scale alone, the text beside says every figure. */
export interface LeftEventView {
  readonly event: string;
  readonly dateText: string;
  readonly occasion: string;
  readonly guests: string;
  /** For each guest who came. */
  readonly planned: string;
  readonly served: string;
  readonly eaten: string;
  readonly back: string;
  /** Where it went; empty where nobody stated it. */
  readonly destiny: string;
  readonly note: string;
  /** Shares of the longest bar. */
  readonly plannedShare: number;
  readonly servedShare: number;
  readonly eatenShare: number;
  /** `ran out at 20:15`, `nothing left`; empty where some was left. */
  readonly out: string;
}

/** A dish served one way, over all events so far. */
export interface LeftDishView {
  /** For links within the page. */
  readonly key: string;
  readonly name: string;
  /** The menu it was served from, and how. */
  readonly menu: string;
  readonly style: string;
  /** Food cost of what came back, over all events; empty where a price is missing. */
  readonly cost: string;
  readonly back: string;
  readonly ranOut: number;
  readonly said: string;
  /** The amount that stands and the one proposed; empty where the menu no longer has the dish. */
  readonly proposal: string;
  readonly events: readonly LeftEventView[];
  /** What the picture shows, for those who do not see it. */
  readonly picture: string;
}

/** What came back and what ran out, for the owner alone. */
export interface LeftoversView {
  readonly kind: 'leftovers';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  /** What was carried home in all, and at how many events. */
  readonly figures: readonly { readonly label: string; readonly amount: string; readonly why: string }[];
  /** By money carried home. */
  readonly dishes: readonly LeftDishView[];
  /** Dishes that ran out, the oftenest first: where each stands above, with a sentence. */
  readonly short: readonly { readonly key: string; readonly name: string; readonly what: string }[];
  readonly notes: readonly string[];
}
