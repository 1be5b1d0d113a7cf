import { letterHtml } from '../book/render-letter.ts';
import type { Day } from '../engine/calendar/day.ts';
import { daysBeforeText } from '../engine/calendar/offset.ts';
import type { Kitchen } from '../engine/kitchen/kitchen.ts';
import type { Choice } from '../engine/quote/choice.ts';
import { CLIENT_CAUTIONS } from '../engine/safety/cautions.ts';
import { dateText } from '../exports/date-text.ts';
import { bodyKey } from '../offers/body-key.ts';
import { correctedDish, type DishCorrection } from '../offers/corrections.ts';
import { shortDigest } from '../offers/digest.ts';
import { offeredFood } from '../offers/dish-terms.ts';
import type { OfferContent } from '../offers/offer-content.ts';
import type { OfferState } from '../offers/offer-state.ts';
import { proposalAddress } from '../offers/proposal-address.ts';
import { columnsFor } from './allergen-columns.ts';
import { allergenTable } from './allergen-table-of.ts';
import { brandView } from './brand-view-of.ts';
import type { AcceptedCounts } from './client-terms.ts';
import { comparisonView } from './comparison-view-of.ts';
import { legendFor } from './diet-marks.ts';
import type { EventChange } from './event-changes-of.ts';
import { needLabels } from './need-filter-of.ts';
import { names, packageView } from './package-view-of.ts';
import { proposalChoiceView } from './proposal-choice-of.ts';
import type { ProposalView } from './proposal-view.ts';
import { guestsText, quoteView } from './quote-view-of.ts';

/** What a proposal's page is made from: a draft's content or an issued offer, and where it stands. */
export interface ProposalPage {
  readonly content: OfferContent;
  /** What is live of the brand: typefaces and mark. */
  readonly look: Pick<Kitchen, 'fonts' | 'mark'>;
  readonly state: OfferState;
  /** Null for a draft. */
  readonly issued: { readonly revision: number; readonly digest: string; readonly on: Day } | null;
  readonly corrections: readonly DishCorrection[];
  /** The choice accepted and when; null before. */
  readonly accepted: { readonly choice: Choice; readonly on: Day } | null;
  /** What has changed since the acceptance that the client is told: dishes and allergens, the day. */
  readonly changes: readonly EventChange[];
  /** The counts that the client may change from the page; null before the deposit is in and after the event is off. */
  readonly counts: AcceptedCounts | null;
  readonly today: Day;
  /** Where the kitchen's public site is served; undefined where it has not said. */
  readonly site?: string;
}

/** What every sheet says of the state, so that a sheet by itself is never taken for an open offer. */
const SHEET_STATES: Readonly<Record<OfferState, string>> = {
  draft: 'Draft, not an offer',
  offered: '',
  expired: 'Expired',
  withdrawn: 'Withdrawn',
  accepted: 'Accepted',
};

/** A proposal's page and PDF as finished text. */
export function proposalView(page: ProposalPage): ProposalView {
  const { content, issued, accepted, corrections } = page;
  const { terms, kitchen } = content;
  const choice = accepted?.choice ?? content.proposed;
  const dishes = [...offeredFood(terms).values()].map((dish) => correctedDish(dish, corrections));
  const columns = columnsFor(kitchen.allergenLaws, dishes);
  const packages = terms.packages.map((chosen) =>
    packageView(chosen, {
      terms,
      laws: kitchen.allergenLaws,
      corrections,
      columns,
      choice:
        choice.package === chosen.id
          ? choice
          : content.samples.find((each) => each.choice.package === chosen.id)?.choice,
      proposed: choice.package === chosen.id,
      story: bodyKey(content.stories[chosen.id] ?? ''),
    }),
  );
  return {
    kind: 'proposal',
    brand: brandView(kitchen, page.look),
    state: page.state,
    stateText: stateText(page),
    sheetMarks: {
      state: SHEET_STATES[page.state],
      offer: issued ? `Offer, revision ${issued.revision}, digest ${shortDigest(issued.digest)}` : '',
    },
    address: page.site === undefined ? '' : proposalAddress(page.site, content.link),
    title: content.occasion,
    client: content.client.name,
    facts: factsOf(page, choice),
    revision: issued?.revision ?? null,
    digest: issued?.digest ?? '',
    shortDigest: issued ? shortDigest(issued.digest) : '',
    corrections: [
      ...page.changes.map(({ on, text }) => `Change, ${dateText(on, terms.locale)}: ${text}`),
      ...corrections.map((each) => correctionText(each, page)),
    ],
    notices: content.notices,
    letterHtml: letterHtml(content.letter),
    packages,
    legend: legendFor(
      packages.flatMap((each) =>
        each.courses.flatMap((course) => course.dishes.flatMap((dish) => dish.marks)),
      ),
    ),
    needs: needLabels(columns),
    allergenTable: allergenTable(terms, kitchen.allergenLaws, corrections),
    quote: quoteView(terms, choice, accepted?.on ?? null),
    comparison: comparisonView(content),
    termsHtml: letterHtml(content.legal),
    terms: termsOf(page),
    acceptance: acceptanceOf(page),
    cautions: CLIENT_CAUTIONS,
    answering: proposalChoiceView(page),
  };
}

function stateText({ state, content, issued, accepted }: ProposalPage): string {
  const { locale } = content.terms;
  const revision = issued ? `Offer, revision ${issued.revision} of ${dateText(issued.on, locale)}` : '';
  switch (state) {
    case 'draft':
      return 'Draft: not an offer yet. Prices and menus may change, and it cannot be accepted.';
    case 'offered':
      return `${revision}, valid until ${dateText(content.validUntil, locale)}.`;
    case 'expired':
      return `${revision}. It was valid until ${dateText(content.validUntil, locale)} and can no longer be accepted; please ask us for a new one.`;
    case 'withdrawn':
      return 'This proposal was withdrawn and cannot be accepted. Please write to us if you have questions.';
    case 'accepted':
      return accepted ? `${revision}, accepted on ${dateText(accepted.on, locale)}.` : revision;
  }
}

function factsOf({ content }: ProposalPage, choice: Choice): { label: string; value: string }[] {
  const venue = [content.venue.name, content.venue.address].filter((text) => text !== undefined).join(', ');
  return [
    { label: 'For', value: content.client.name },
    { label: 'When', value: `${dateText(content.date, content.terms.locale)}, served at ${content.serveAt}` },
    { label: 'Where', value: venue === '' ? content.placeName : `${venue}, ${content.placeName}` },
    { label: 'Guests', value: guestsText(choice) },
  ];
}

function correctionText(
  { dish, contains, mayContain, lostMarks, unsaid }: DishCorrection,
  { content, today }: ProposalPage,
): string {
  const laws = content.kitchen.allergenLaws;
  const said = [
    contains.length > 0 ? `contains ${names(contains, laws).join(', ')}` : '',
    mayContain.length > 0 ? `may contain ${names(mayContain, laws).join(', ')}` : '',
    unsaid ? 'has ingredients whose allergens are not known at present; ask us before eating it' : '',
    lostMarks.length > 0 ? `is no longer to be taken as ${lostMarks.join(', ')}` : '',
  ].filter((text) => text !== '');
  return `Correction, ${dateText(today, content.terms.locale)}: ${dish} ${said.join('; it ')}. This was not so in the offer as issued.`;
}

function termsOf({ content }: ProposalPage): string[] {
  const { guarantee, serviceCharge } = content.terms;
  const terms = [
    `Your final count is due ${daysBeforeText(guarantee.daysBefore)}; after that it may only rise. The bill is for the larger of that count and the guests served, and never for less than ${guarantee.floorRate} of the count accepted.`,
  ];
  if (serviceCharge)
    terms.push(
      `${serviceCharge.label}: ${serviceCharge.rate} of ${serviceCharge.base.join(', ')}. It is a charge of ours and not a gratuity.`,
    );
  return terms;
}

function acceptanceOf({ state, content, issued }: ProposalPage): string[] {
  if (state !== 'offered' || !issued) return [];
  const { name, email } = content.kitchen;
  return [
    `To accept, sign a printed copy of this offer, revision ${issued.revision}, digest ${shortDigest(issued.digest)}, with the menu and counts you choose, and send it to ${email ?? name} by ${dateText(content.validUntil, content.terms.locale)}.`,
    'We then hold the date for you; it is confirmed when the deposit is in.',
    'A signed copy or an acceptance file shows which offer was accepted. It does not prove who accepted it, so we write back to you before anything is bought.',
  ];
}
