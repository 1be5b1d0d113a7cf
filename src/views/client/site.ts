import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import { knownSince } from '../../offers/corrections/known-since.ts';
import { dated, toldOf } from '../../offers/corrections/told.ts';
import { acceptedOffer } from '../../offers/event/accepted-offer.ts';
import { offeredRoles } from '../../offers/event/offered-roles.ts';
import { eventStatus } from '../../offers/event/status.ts';
import { heldOffer } from '../../offers/issue/held-offer.ts';
import { offerContent } from '../../offers/issue/offer-content.ts';
import { offerState } from '../../offers/offer-state.ts';
import { recordText } from '../../offers/write-once.ts';
import type { Offer } from '../../schema/offer.ts';
import { languageOf } from '../../words/languages.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { Site } from '../site.ts';
import { billedNow } from './billed-now.ts';
import { proposalCacheKey } from './cache-key.ts';
import { CURRENT_FILE, type CurrentFile } from './current-file.ts';
import { eventChanges } from './event-changes-of.ts';
import type { ProposalPage } from './proposal-page.ts';
import { proposalView } from './proposal-view-of.ts';

/**
 * What clients open. For each issued offer: a page, a PDF, `offer.json` and where it stands, all made from the frozen
 * offer and what is live of its event and its allergens; and for each draft that says `share: draft`, a page and a PDF.
 * Nothing lists them. An issued offer is published even where its proposal has been edited into an error since; while a
 * revision of it cannot be read, none is shown.
 */
export function clientSite(book: Book, today: Day): Site {
  const site: Site = { pages: [], prints: [], files: [] };
  for (const offers of book.offers.values()) {
    const offer = offers.at(-1);
    if (!offer || (!book.events.has(offer.proposal) && heldOffer(book, offer.proposal))) continue;
    addPage(site, issuedPage(book, offer, today), offer);
  }
  for (const proposal of book.proposals.values()) {
    const draft =
      book.offers.has(proposal.id) || heldOffer(book, proposal.id)
        ? undefined
        : draftPage(book, proposal, today);
    if (draft) addPage(site, draft, undefined);
  }
  site.files.push({ file: 'public/robots.txt', content: 'User-agent: *\nDisallow: /\n' });
  return site;
}

function issuedPage(book: Book, offer: Offer, today: Day): ProposalPage {
  const event = acceptedOffer(book, offer.proposal);
  // The page shows what was accepted, which may be an earlier revision than the newest.
  const shown = event.ok ? event.value.offer : offer;
  const status = event.ok ? eventStatus(shown, event.value.facts) : undefined;
  const proposal = book.proposals.get(offer.proposal);
  const { corrections, dishesNow } = knownSince(shown, book, status?.substitutions ?? []);
  return {
    content: shown,
    look: lookOf(book),
    state: proposal ? offerState(book, proposal, today) : stateWithoutProposal(event.ok, offer, today),
    issued: { revision: shown.revision, digest: shown.digest, on: shown.issued },
    corrections: corrections.map((each) => dated(each, toldOf(book, shown))),
    dishesNow,
    roles: offeredRoles(book, shown.terms, status?.substitutions ?? []),
    changes: event.ok ? eventChanges(event.value.facts, shown.terms.locale) : [],
    accepted: status
      ? { choice: status.accepted.acceptance.choice, on: status.accepted.acceptance.accepted }
      : null,
    billed: status ? billedNow(status, shown.terms.locale) : null,
    event: status ? { state: status.state, date: status.date } : null,
    earlier: offerBefore(book, shown),
    counts:
      status?.state === 'confirmed' && status.deadline && !status.served
        ? {
            choice: status.choice,
            guests: status.accepted.acceptance.choice.guests,
            until: status.deadline,
            floor: status.floor,
          }
        : null,
    today,
    site: book.kitchen.site,
  };
}

/** Nothing but the look: a page goes to another thread with all it holds. */
function lookOf({ kitchen: { fonts, mark } }: Book): ProposalPage['look'] {
  return { fonts, mark };
}

/** The revision that came before an offer; a number may be missing among them. */
function offerBefore(book: Book, { proposal, revision }: Offer): Offer | null {
  return book.offers.get(proposal)?.findLast((each) => each.revision < revision) ?? null;
}

function stateWithoutProposal(accepted: boolean, offer: Offer, today: Day): ProposalPage['state'] {
  if (accepted) return 'accepted';
  return today > offer.validUntil ? 'expired' : 'offered';
}

function draftPage(book: Book, proposal: Proposal, today: Day): ProposalPage | undefined {
  if (!proposal.shareDraft) return undefined;
  const content = offerContent(book, proposal);
  if (!content.ok) return undefined;
  return {
    content: content.value,
    look: lookOf(book),
    state: proposal.withdrawn ? 'withdrawn' : 'draft',
    issued: null,
    corrections: [],
    dishesNow: [],
    roles: offeredRoles(book, content.value.terms, []),
    changes: [],
    accepted: null,
    billed: null,
    event: null,
    earlier: null,
    counts: null,
    today,
    site: book.kitchen.site,
  };
}

/** The views are made when they are asked for: a build asks for those alone that were made from something else. */
function addPage(site: Site, page: ProposalPage, offer: Offer | undefined): void {
  const { link, occasion, client, kitchen } = page.content;
  const folder = `public/proposals/${link}`;
  const known = {
    cacheKey: proposalCacheKey(page),
    accent: kitchen.accent,
    title: occasion,
    client: client.name,
  };
  site.pages.push({
    file: `${folder}/index.html`,
    route: `/proposals/${link}/`,
    known,
    source: page,
    get view() {
      return proposalView(page);
    },
  });
  site.prints.push({
    file: `${folder}/proposal.pdf`,
    route: `/print/proposal/${link}/`,
    known,
    get view() {
      return proposalView(page);
    },
    title: wordsIn(kitchen.locale)('page.pdf-title', { occasion, client: client.name }),
    author: kitchen.name,
    language: languageOf(kitchen.locale),
  });
  if (!offer || !page.issued) return;
  const { digest } = page.issued;
  site.files.push({
    file: `${folder}/offer.json`,
    cacheKey: digest,
    get content() {
      return recordText(page.content);
    },
  });
  const current: CurrentFile = { version: 1, offer: digest, state: page.state };
  site.files.push({ file: `${folder}/${CURRENT_FILE}`, content: recordText(current) });
}
