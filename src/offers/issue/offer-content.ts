import type { Book } from '../../book/book.ts';
import type { Package } from '../../engine/menu/package.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { quote } from '../../engine/quote/quote.ts';
import { choiceAtCount, comparisonCounts } from '../../engine/quote/scaled-choice.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { Offer } from '../../schema/offer.ts';
import { notices } from './notices.ts';
import { offeredDishes } from './offered-dishes.ts';
import { packageTiers } from './package-tiers.ts';
import { proposalTerms } from './proposal-terms.ts';
import { proposedChoice } from './proposed-choice.ts';

/** What an offer says, before it is issued: a draft's page is made from the same record. */
export type OfferContent = Omit<Offer, 'digest' | 'issued' | 'revision'>;

/**
 * A proposal as the client would get it now: terms resolved from the kitchen, the packages and today's prices,
 * letter and stories as text, and sample totals by which a later reading tests itself.
 * Fails where a package priced by its food cost uses food without a price.
 */
export function offerContent(book: Book, proposal: Proposal): Parsed<OfferContent> {
  const { kitchen } = book;
  const tiers = new Map<Package, ReturnType<typeof packageTiers>>();
  for (const each of proposal.packages) tiers.set(each, packageTiers(each, proposal.date, book));
  for (const result of tiers.values()) if (!result.ok) return notParsed(result.what, result.wayOut);
  const terms = proposalTerms(proposal, kitchen, (each) => {
    const result = tiers.get(each);
    return result?.ok ? result.value : [];
  });
  const { notIncluded } = proposal;
  const choices = proposal.packages.map((each) => proposedChoice(proposal, each));
  const [proposed] = choices;
  if (!proposed) return notParsed('the proposal has no package', 'name at least one under `packages`');
  return parsed({
    version: 1,
    kind: 'offer',
    proposal: proposal.id,
    link: proposal.link,
    kitchen: {
      name: kitchen.name,
      ...present({ town: kitchen.town, email: kitchen.email, phone: kitchen.phone }),
      locale: kitchen.locale,
      measures: kitchen.measures,
      paper: kitchen.paper,
      accent: kitchen.accent,
      allergenLaws: [...kitchen.allergenLaws],
      timeZone: kitchen.timeZone,
      acceptances: kitchen.acceptances,
      ...present({ glutenTested: kitchen.glutenTested }),
      ...(kitchen.tellPriceSteps ? { tellPriceSteps: true as const } : {}),
    },
    client: { name: proposal.client.name, ...present({ email: proposal.client.email }) },
    occasion: proposal.occasion,
    date: proposal.date,
    serveAt: proposal.serveAt,
    placeName: proposal.place.name,
    venue: Object.fromEntries(proposal.venue),
    validUntil: proposal.validUntil,
    guests: proposal.guests,
    needs: Object.fromEntries(proposal.needs),
    letter: proposal.letter,
    legal: kitchen.terms ?? '',
    ...(notIncluded.length > 0 ? { notIncluded: [...notIncluded] } : {}),
    terms,
    proposed,
    stories: storiesOf(book, proposal.packages),
    samples: samplesOf(terms, choices),
    notices: notices(offeredDishes(kitchen, proposal), kitchen.locale),
  });
}

/** The proposed total, and every package's at five counts. */
function samplesOf(terms: Terms, choices: readonly Choice[]): Offer['samples'] {
  return choices.flatMap((choice) => {
    const chosen = terms.packages.find((each) => each.id === choice.package);
    if (!chosen) return [];
    const counts = comparisonCounts(atTable(choice.guests));
    const samples = [choice, ...counts.map((count) => choiceAtCount(chosen, choice, count))];
    return samples.map((sample) => ({ choice: sample, total: quote(terms, sample).total }));
  });
}

function storiesOf(book: Book, packages: readonly Package[]): Record<string, string> {
  return Object.fromEntries(
    packages.flatMap(({ id }) => {
      const story = book.packageBodies.get(id)?.trim() ?? '';
      return story === '' ? [] : [[id, story]];
    }),
  );
}

function present<T extends Record<string, string | undefined>>(fields: T): { [K in keyof T]?: string } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: string;
  };
}
