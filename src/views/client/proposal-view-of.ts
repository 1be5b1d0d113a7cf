import { letterHtml } from '../../book/bodies/render-letter.ts';
import { columnsFor } from '../../engine/food/allergen-columns.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { DishCorrection } from '../../offers/corrections/corrections.ts';
import { termsAsTheyStand } from '../../offers/corrections/dishes-now.ts';
import { shortDigest } from '../../offers/digest.ts';
import { bodyKey } from '../../offers/issue/body-key.ts';
import { offeredFood } from '../../offers/issue/dish-terms.ts';
import { proposalAddress } from '../../offers/issue/proposal-address.ts';
import type { OfferState } from '../../offers/offer-state.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { brandView } from '../brand/brand-view-of.ts';
import { legendFor, markWords } from '../diet-marks.ts';
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
import { factsOf, onItsDay, stateSentences } from './proposal-state.ts';
import type { ProposalView } from './proposal-view.ts';

/** Standing cautions for clients and their guests; every proposal shows them. */
const CAUTIONS: readonly WordKey[] = [
  'dishes.caution.tell-us',
  'dishes.caution.shared',
  'dishes.caution.suppliers',
  'dishes.caution.code',
];

/** What every sheet says of the state, so that a sheet by itself is never taken for an open offer. */
const SHEET_STATES: Readonly<Record<OfferState, WordKey | null>> = {
  draft: 'page.sheet.draft',
  offered: null,
  expired: 'page.sheet.expired',
  withdrawn: 'page.sheet.withdrawn',
  accepted: 'page.sheet.accepted',
};

/** An accepted event that was moved or is off says so on each sheet too. */
function sheetState({ state, event, content }: ProposalPage, say: Say): string {
  if (event?.state === 'cancelled') return say('page.sheet.cancelled');
  if (event?.state === 'postponed') return say('page.sheet.postponed');
  if (event?.date && event.date !== content.date) return say('page.sheet.moved');
  const words = SHEET_STATES[state];
  return words === null ? '' : say(words);
}

/** A proposal's page and PDF as finished text. */
export function proposalView(page: ProposalPage): ProposalView {
  const { issued, accepted, billed } = page;
  const frozen = withRoles(onItsDay(page), page.roles);
  const terms = termsAsTheyStand(frozen.terms, page);
  const content = { ...frozen, terms };
  const { kitchen } = content;
  const say = wordsIn(terms.locale);
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
    stateText: stateSentences(page),
    changes: changesView(page),
    sheetMarks: {
      state: sheetState(page, say),
      offer: issued ? offerMark(issued, say) : '',
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
      say,
      terms.packages.flatMap((each) => each.courses.flatMap(({ dishes }) => dishes)),
      kitchen.glutenTested,
    ),
    needs: needLabels(columns, terms.locale),
    allergenTable: allergenTable(terms, kitchen.allergenLaws),
    quote: proposalQuote(page, terms),
    comparison: comparisonView(content),
    termsHtml: letterHtml(content.legal),
    terms: conditions(content, accepted?.choice ?? null, page.event),
    acceptance: acceptanceOf(page),
    cautions: CAUTIONS.map((caution) => say(caution)),
    answering: proposalChoiceView({ ...page, content: frozen }),
  };
}

/** Which offer a sheet belongs to. */
function offerMark({ revision, digest }: NonNullable<ProposalPage['issued']>, say: Say): string {
  return say('page.offer-mark', { revision, reference: shortDigest(digest) });
}

/** What is no longer as it was issued: corrections of allergens before what was done since. */
function sinceIssued(page: ProposalPage): ProposalView['since'] {
  const { corrections, changes, content } = page;
  const { locale } = content.terms;
  const say = wordsIn(locale);
  const both = corrections.length > 0 && changes.length > 0;
  const one = corrections.length > 0 ? 'dishes.corrected' : 'dishes.changed';
  return {
    head: say(both ? 'dishes.corrected-and-changed' : one),
    texts: [
      ...corrections.flatMap((each) => correctionTexts(each, page, say)),
      ...changes.map(({ on, text }) => say('dishes.change', { date: dateText(on, locale), text })),
    ],
  };
}

function correctionTexts(
  { instead, dish, contains, mayContain, lostMarks, unsaid, unreadable, toldOn }: DishCorrection,
  { content, today }: ProposalPage,
  say: Say,
): string[] {
  const laws = content.kitchen.allergenLaws;
  const named = (texts: readonly string[]) => names(texts, laws, content.terms.locale).join(', ');
  const what = [
    contains.length > 0 ? say('dishes.correction.contains', { dish, allergens: named(contains) }) : '',
    mayContain.length > 0 ? say('dishes.correction.may-contain', { dish, allergens: named(mayContain) }) : '',
    unsaid ? say('dishes.correction.unknown', { dish }) : '',
    lostMarks.length > 0
      ? say('dishes.correction.marks', {
          dish,
          marks: lostMarks.map((mark) => markWords(mark, content.terms.locale)).join(', '),
        })
      : '',
  ].filter((text) => text !== '');
  const spoken = { date: dateText(toldOn ?? today, content.terms.locale), what: what.join(' ') };
  const words = instead === undefined ? 'dishes.correction.offered' : 'dishes.correction.swapped';
  return [
    ...(what.length === 0 ? [] : [say(words, spoken)]),
    ...(unreadable ? [say('dishes.correction.unreadable', { dish })] : []),
  ];
}

function acceptanceOf({ state, content, issued }: ProposalPage): string[] {
  if (state !== 'offered' || !issued) return [];
  const { name, email } = content.kitchen;
  const { locale } = content.terms;
  const say = wordsIn(locale);
  return [
    say('page.accept.sign', {
      revision: issued.revision,
      reference: shortDigest(issued.digest),
      to: email ?? name,
      date: dateText(content.validUntil, locale),
    }),
    say('page.accept.holds'),
    say('page.accept.proof'),
  ];
}
