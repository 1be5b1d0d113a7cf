import type { DishCorrection } from '../../offers/corrections/corrections.ts';
import { brandView } from '../brand/brand-view-of.ts';
import type { ProposalPage } from './proposal-page.ts';

/**
 * A cache key: while it is the same, the last build's page is taken over without making its view. So it must hold all
 * that the page is made from, which is its whole source. An issued offer stands in it by its digest, which reading has
 * checked, the brand as it is shown, and the day only where the page says it.
 */
export function proposalCacheKey(page: ProposalPage): string {
  const { content, earlier, issued, look, corrections, today, ...rest } = page;
  return JSON.stringify({
    ...rest,
    issued,
    content: issued ? issued.digest : content,
    earlier: earlier?.digest ?? null,
    brand: brandView(content.kitchen, look),
    corrections,
    today: corrections.some(isDatedToday) ? today : null,
  });
}

/** A correction that its client was not told of stands there with today's day. */
function isDatedToday({ contains, mayContain, lostMarks, unsaid, toldOn }: DishCorrection): boolean {
  const says = contains.length + mayContain.length + lostMarks.length > 0 || unsaid === true;
  return says && toldOn === undefined;
}
