import type { Book } from '../../book/book.ts';
import { notAsked, SITE_QUESTIONS, type SiteQuestion, type SiteSheet } from '../../engine/menu/site-sheet.ts';
import { dateText } from '../../exports/words/date-text.ts';
import type { CurrentEvent } from '../../offers/event/current-event.ts';
import type { WordKey } from '../../words/catalogues.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { SiteContent } from '../site.ts';
import type { SiteSheetView } from './site-sheet-view.ts';
import type { BannerView, KitchenView } from './view.ts';

/** What each question is called, and how it is asked. */
const WORDS: Readonly<Record<SiteQuestion, readonly [label: WordKey, ask: WordKey]>> = {
  power: ['site.power', 'site.power-ask'],
  water: ['site.water', 'site.water-ask'],
  'cold space': ['site.cold-space', 'site.cold-space-ask'],
  ovens: ['site.ovens', 'site.ovens-ask'],
  burners: ['site.burners', 'site.burners-ask'],
  cover: ['site.cover', 'site.cover-ask'],
  surface: ['site.surface', 'site.surface-ask'],
  stairs: ['site.stairs', 'site.stairs-ask'],
  'way in': ['site.way-in', 'site.way-in-ask'],
  parking: ['site.parking', 'site.parking-ask'],
  trash: ['site.trash', 'site.trash-ask'],
  contact: ['site.contact', 'site.contact-ask'],
  phone: ['site.phone', 'site.phone-ask'],
};

const YES_NO: ReadonlySet<SiteQuestion> = new Set(['water', 'cold space', 'cover']);

/** A page for each place that has a site sheet, with the form to take to the visit. */
export function addSiteSheets(
  site: SiteContent,
  book: Book,
  coming: readonly CurrentEvent[],
  planned: ReadonlySet<string>,
  brand: BrandView,
  banner: BannerView | null,
): void {
  for (const sheet of book.siteSheets.values()) {
    const folder = `private/kitchen/site-sheets/${sheet.id}`;
    const view = siteSheetView(book, sheet, coming, planned, brand, banner);
    site.pages.push({ file: `${folder}/index.html`, route: `/kitchen/site-sheets/${sheet.id}/`, view });
    site.prints.push({
      file: `${folder}/site-visit.pdf`,
      route: `/print/site-visit/${sheet.id}/`,
      view: { ...view, banner: null },
      title: wordsIn(brand.language)('site.form', { name: sheet.name }),
      author: brand.name,
      language: brand.language,
    });
  }
}

/** The places that have a site sheet, by name, as the front page lists them. */
export function siteSheetLinks({ siteSheets, kitchen }: Book): KitchenView['siteSheets'] {
  const say = wordsIn(kitchen.locale);
  return [...siteSheets.values()]
    .toSorted((one, other) => one.name.localeCompare(other.name, kitchen.locale))
    .map(({ id, name, facts }) => ({
      id,
      name,
      missing: say('site.front-missing', { n: notAsked(facts).length }),
    }));
}

function siteSheetView(
  book: Book,
  sheet: SiteSheet,
  coming: readonly CurrentEvent[],
  planned: ReadonlySet<string>,
  brand: BrandView,
  banner: BannerView | null,
): SiteSheetView {
  const say = wordsIn(brand.language);
  const { id, name, address = '', facts, photos, notes = '' } = sheet;
  const known = new Set<string>(SITE_QUESTIONS);
  return {
    kind: 'site sheet',
    brand,
    banner,
    id,
    name,
    address,
    file: `site-sheets/${id}.yaml`,
    questions: SITE_QUESTIONS.map((question) => ({
      label: say(WORDS[question][0]),
      ask: say(WORDS[question][1]),
      answer: facts.get(question) ?? '',
      yesNo: YES_NO.has(question),
    })),
    more: [...facts].filter(([fact]) => !known.has(fact)).map(([label, answer]) => ({ label, answer })),
    missing: notAsked(facts).map((question) => say(WORDS[question][0])),
    photos,
    notes,
    events: coming
      .filter(({ offer }) => book.proposals.get(offer.proposal)?.siteSheet?.id === id)
      .map(({ offer, status }) => ({
        id: offer.proposal,
        occasion: offer.occasion,
        client: offer.client.name,
        dateText: dateText(status.lastDate, brand.locale),
        planned: planned.has(offer.proposal),
      })),
  };
}
