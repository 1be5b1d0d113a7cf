import type { BrandView } from '../brand/brand-view.ts';
import type { BannerView } from './view.ts';

/** A question of the visit, with its answer where there is one. */
export interface SiteQuestionView {
  readonly label: string;
  readonly ask: string;
  /** Empty where nobody has asked. */
  readonly answer: string;
  /** Whether yes or no begins the answer. */
  readonly yesNo: boolean;
}

/** What is known of a place, what nobody has asked yet, and the events that come there. */
export interface SiteSheetView {
  readonly kind: 'site sheet';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  readonly id: string;
  readonly name: string;
  readonly address: string;
  /** Its file in the content folder. */
  readonly file: string;
  readonly questions: readonly SiteQuestionView[];
  /** Facts of the author’s own. */
  readonly more: readonly { readonly label: string; readonly answer: string }[];
  /** What nobody has asked, in words. */
  readonly missing: readonly string[];
  readonly photos: readonly { readonly file: string; readonly shows: string }[];
  readonly notes: string;
  readonly events: readonly {
    readonly id: string;
    readonly occasion: string;
    readonly client: string;
    readonly dateText: string;
    /** False where there is no plan to show. */
    readonly planned: boolean;
  }[];
}
