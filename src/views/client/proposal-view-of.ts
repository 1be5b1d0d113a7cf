import { letterHtml } from '../../book/bodies/render-letter.ts';
import { columnsFor } from '../../engine/food/allergen-columns.ts';
import { CLIENT_CAUTIONS } from '../../engine/safety/cautions.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { DishCorrection } from '../../offers/corrections/corrections.ts';
import { termsAsTheyStand } from '../../offers/corrections/dishes-now.ts';
import { shortDigest } from '../../offers/digest.ts';
import { bodyKey } from '../../offers/issue/body-key.ts';
import { offeredFood } from '../../offers/issue/dish-terms.ts';
import { proposalAddress } from '../../offers/issue/proposal-address.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import { brandView } from '../brand/brand-view-of.ts';
import { legendFor } from '../diet-marks.ts';
import { withRoles } from '../dish-roles.ts';
import { allergenTable } from './allergen-table-of.ts';
import { comparisonView } from './comparison-view-of.ts';
import { conditions } from './conditions.ts';
import { needLabels } from './need-filter-of.ts';
import { changesView } from './offer-changes-view.ts';
import { names, packageView } from './package-view-of.ts';
import { proposalChoiceView } from './proposal-choice-of.ts';
import type { ProposalPage } from './proposal-page.ts';
import { proposalQuote } from './proposal-quote-of.ts';
import { factsOf, onItsDay, standingText } from './proposal-standing.ts';
import type { ProposalView } from './proposal-view.ts';

/** What every sheet says of the state, so that a sheet by itself is never taken for an open offer. */
const SHEET_STATES: Readonly<Record<OfferState, string>> = {
  draft: 'Draft, not an offer',
  offered: '',
  expired: 'Expired',
  withdrawn: 'Withdrawn',
  accepted: 'Accepted',
};

/** An accepted event that was moved or is off says so on each sheet too. */
function sheetState({ state, event, content }: ProposalPage): string {
  if (event?.state === 'cancelled') return 'Cancelled';
  if (event?.state === 'postponed') return 'Accepted, put off';
  return event?.date && event.date !== content.date ? 'Accepted, moved' : SHEET_STATES[state];
}

/** A proposal's page and PDF as finished text. */
export function proposalView(page: ProposalPage): ProposalView {
  const { issued, accepted, billed } = page;
  const frozen = withRoles(onItsDay(page), page.roles);
  const terms = termsAsTheyStand(frozen.terms, page);
  const content = { ...frozen, terms };
  const { kitchen } = content;
  const choice = billed?.planned ?? accepted?.choice ?? content.proposed;
  const columns = columnsFor(kitchen.allergenLaws, [...offeredFood(terms).values()]);
  const touched = new Set(page.dishesNow.map(({ recipe }) => recipe));
  const agreed = new Map([...offeredFood(frozen.terms)].filter(([recipe]) => touched.has(recipe)));
  const packages = terms.packages.map((chosen) =>
    packageView(chosen, {
      terms,
      laws: kitchen.allergenLaws,
      agreed,
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
    stateText: standingText(page),
    changes: changesView(page),
    sheetMarks: {
      state: sheetState(page),
      offer: issued ? `Offer, revision ${issued.revision}, digest ${shortDigest(issued.digest)}` : '',
    },
    address: page.site === undefined ? '' : proposalAddress(page.site, content.link),
    title: content.occasion,
    client: content.client.name,
    facts: factsOf(page, choice, billed?.served ?? null),
    revision: issued?.revision ?? null,
    digest: issued?.digest ?? '',
    shortDigest: issued ? shortDigest(issued.digest) : '',
    since: sinceIssued(page),
    notices: content.notices,
    letterHtml: letterHtml(content.letter),
    packages,
    legend: legendFor(
      packages.flatMap((each) =>
        each.courses.flatMap((course) => course.dishes.flatMap((dish) => dish.marks)),
      ),
      kitchen.glutenTested,
    ),
    needs: needLabels(columns),
    allergenTable: allergenTable(terms, kitchen.allergenLaws),
    quote: proposalQuote(page, terms),
    comparison: comparisonView(content),
    termsHtml: letterHtml(content.legal),
    terms: conditions(content, accepted?.choice ?? null, page.event),
    acceptance: acceptanceOf(page),
    cautions: CLIENT_CAUTIONS,
    answering: proposalChoiceView({ ...page, content: frozen }),
  };
}

/** What is no longer as it was issued: corrections of allergens before what was done since. */
function sinceIssued(page: ProposalPage): ProposalView['since'] {
  const { corrections, changes, content } = page;
  const what = [corrections.length > 0 ? 'corrected' : '', changes.length > 0 ? 'changed' : ''];
  const head = `${what.filter((word) => word !== '').join(' and ')} since this was issued`;
  return {
    head: `${head.charAt(0).toUpperCase()}${head.slice(1)}`,
    texts: [
      ...corrections.flatMap((each) => correctionTexts(each, page)),
      ...changes.map(({ on, text }) => `Change, ${dateText(on, content.terms.locale)}: ${text}`),
    ],
  };
}

function correctionTexts(
  { instead, dish, contains, mayContain, lostMarks, unsaid, unreadable, toldOn }: DishCorrection,
  { content, today }: ProposalPage,
): string[] {
  const laws = content.kitchen.allergenLaws;
  const said = [
    contains.length > 0 ? `contains ${names(contains, laws).join(', ')}` : '',
    mayContain.length > 0 ? `may contain ${names(mayContain, laws).join(', ')}` : '',
    unsaid ? 'has ingredients whose allergens are not known at present; ask us before eating it' : '',
    lostMarks.length > 0 ? `is no longer to be taken as ${lostMarks.join(', ')}` : '',
  ].filter((text) => text !== '');
  const since =
    instead === undefined
      ? 'This was not so in the offer as issued.'
      : 'This was not known when the dish was changed.';
  const day = dateText(toldOn ?? today, content.terms.locale);
  return [
    ...(said.length === 0 ? [] : [`Correction, ${day}: ${dish} ${said.join('; it ')}. ${since}`]),
    ...(unreadable
      ? [
          `${dish}: ask us before eating it. We can’t confirm right now what is in it, so don’t rely on any diet or allergen shown for it here.`,
        ]
      : []),
  ];
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
