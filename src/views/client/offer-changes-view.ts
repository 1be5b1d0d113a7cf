import { dateText } from '../../exports/words/date-text.ts';
import type { OfferContent } from '../../offers/issue/offer-content.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import type { Offer } from '../../schema/offer.ts';
import { wordsIn } from '../../words/words-in.ts';
import { offerChanges } from './offer-changes.ts';
import { totalChange } from './offer-changes-choice.ts';
import type { OfferChangesView } from './proposal-view.ts';

/** The most lines that stand open above the letter. */
const MOST_OPEN = 8;

/**
 * What differs from the revision before. Null for a first revision, and once there is nothing left to decide: what
 * was accepted or withdrawn is not told by what it once was.
 */
export function changesView({
  content,
  earlier,
  state,
}: {
  readonly content: OfferContent;
  readonly earlier: Offer | null;
  readonly state: OfferState;
}): OfferChangesView | null {
  if (!earlier || (state !== 'offered' && state !== 'expired')) return null;
  const { locale } = content.terms;
  const groups = offerChanges(earlier, content);
  const lines = groups.reduce((count, group) => count + group.lines.length, 0);
  return {
    head: wordsIn(locale)('changes.head', {
      revision: earlier.revision,
      date: dateText(earlier.issued, locale),
    }),
    total: totalChange(earlier, content),
    groups,
    isLong: lines > MOST_OPEN,
  };
}
