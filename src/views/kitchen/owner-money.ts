import type { BrandView } from '../brand/brand-view.ts';
import type { OwnerHoursView } from './owner-hours.ts';
import type { BannerView } from './view.ts';

/** A sum with what it is for and why it is so much. */
export interface MoneyLineView {
  readonly label: string;
  readonly amount: string;
  readonly why: string;
}

/** One count of the table beside the picture. */
export interface MoneyRowView {
  readonly guests: string;
  readonly revenue: string;
  readonly food: string;
  readonly labour: string;
  readonly other: string;
  readonly margin: string;
  /** `planned`, `break-even`; empty for any other. */
  readonly note: string;
}

/** What the picture is drawn from; numbers are for its scale alone, every sum stands beside it as text. */
export interface MarginPictureView {
  readonly points: readonly { readonly guests: number; readonly margin: number }[];
  readonly counts: readonly number[];
  readonly sums: readonly { readonly margin: number; readonly text: string }[];
  readonly planned: { readonly guests: number; readonly margin: number; readonly text: string };
  readonly breakEven: { readonly guests: number; readonly text: string } | null;
  /** What the picture says, for those who do not see it. */
  readonly said: string;
}

/** How the margin moves with the guests. */
export interface MarginView {
  readonly picture: MarginPictureView;
  readonly breakEven: string;
  readonly how: string;
  /** Why the planned count’s margin in here is another than the event’s; empty where it is the same. */
  readonly differs: string;
  readonly rows: readonly MoneyRowView[];
  readonly allRows: readonly MoneyRowView[];
  /** Where more guests bring less, a sentence each; in what is earned, and in what is left of it. */
  readonly revenueFalls: readonly string[];
  readonly marginFalls: readonly string[];
}

/** One event's money, for the owner alone. */
export interface OwnerMoneyView {
  readonly kind: 'owner money';
  readonly brand: BrandView;
  readonly banner: BannerView | null;
  readonly title: string;
  readonly event: string;
  readonly figures: readonly MoneyLineView[];
  readonly revenue: readonly MoneyLineView[];
  readonly earned: string;
  readonly costs: readonly MoneyLineView[];
  readonly spent: string;
  readonly margin: string;
  /** Left out of plans kept before it was told; null where it is not known. */
  readonly hours?: OwnerHoursView | null;
  readonly food: readonly MoneyLineView[];
  /** What has no sum because it is not stated. */
  readonly notSaid: readonly string[];
  /** null where the picture cannot be drawn; the notes say why. */
  readonly curve: MarginView | null;
  readonly notes: readonly string[];
}
