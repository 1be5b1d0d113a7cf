import { createHash } from 'node:crypto';
import type { Book } from './book.ts';
import { eachText, misnamedTexts, textsOf } from './files/content-texts.ts';
import { listContent } from './files/list-content.ts';
import type { Finding } from './findings/finding.ts';
import type { KeptReading } from './kept-reading.ts';
import { openLedger, placeIn } from './ledger.ts';
import { readCorrections } from './read/corrections.ts';
import { readEvents } from './read/events.ts';
import { inboxFindings } from './read/inbox.ts';
import { storeRoomTexts } from './read/ingredients.ts';
import { readKeptPlans } from './read/kept-plans.ts';
import { readMark } from './read/mark.ts';
import { readMenus } from './read/menus.ts';
import { type OfferCheck, readOffers, type SoundOffers } from './read/offers.ts';
import { readPhotos } from './read/photos.ts';
import { readProposals } from './read/proposals.ts';
import { readSiteSheets } from './read/site-sheets.ts';
import { readStock } from './read/stock.ts';
import { readTold } from './read/told.ts';

/** A content folder, read: the Book of all that is sound, and what is wrong with single files. */
export interface ReadContent {
  /** undefined where kitchen.yaml cannot be used: everything rests on it. */
  readonly book: Book | undefined;
  /** In no order. What several sound files do not fit together in is for `src/check` to say. */
  readonly findings: Finding[];
}

/**
 * Reads a content folder from the files as they are now. Every problem of every file
 * is found in one run. An error holds back what it is in and what rests on that, nothing else. Never throws on
 * content. `checkOffer` tells an altered offer from one as issued; `sound` knows which were found so before, and `kept` what the
 * same texts came to: nothing else is kept between calls.
 */
export async function readContent(
  contentDir: string,
  checkOffer?: OfferCheck,
  sound?: SoundOffers,
  kept?: KeptReading,
): Promise<ReadContent> {
  const ledger = openLedger(kept?.yaml);
  const folder = listContent(contentDir);
  ledger.findings.push(...folder.findings);
  const fileDigests = new Map<string, string>();
  const texts = (collection: Parameters<typeof textsOf>[1]) => {
    const found = textsOf(folder, collection, ledger.findings);
    // What waits in the inbox is in no Book, and of what a build has recorded clients' pages alone are made.
    if (collection !== 'inbox' && collection !== 'corrections')
      for (const { file, text } of found) fileDigests.set(file, digestOfText(text));
    return found;
  };

  const menuTexts = {
    kitchen: texts('kitchen'),
    suppliers: texts('suppliers'),
    storeRoom: storeRoomTexts(),
    ingredients: texts('ingredients'),
    misnamedFoods: misnamedTexts(folder),
    prices: texts('prices'),
    recipes: texts('recipes'),
    packages: texts('packages'),
  };
  const menus = (kept?.menus ?? readMenus)(ledger, menuTexts, folder.pictures);
  if (!menus) return { book: undefined, findings: ledger.findings };
  const { kitchenFile, ...rest } = menus;
  const mark = readMark(ledger, folder, kitchenFile.source, kitchenFile.text.mark);
  const kitchen = { ...menus.kitchen, mark };
  const siteSheets = readSiteSheets(ledger, texts('site-sheets'), folder.pictures);
  const proposals = readProposals(
    ledger,
    texts('proposals'),
    folder.pictures,
    kitchen,
    menus.packages,
    menus.recipes,
    siteSheets,
  );
  const offers = readOffers(ledger, eachText(folder, 'offers', ledger.findings), checkOffer, sound);
  const events = readEvents(ledger, texts('events'), offers);
  ledger.findings.push(...inboxFindings(texts('inbox')));

  const { photos, findings: ofPhotos } = await readPhotos(contentDir, folder.pictures);
  ledger.findings.push(...ofPhotos);

  const book: Book = {
    ...rest,
    kitchen,
    proposals,
    siteSheets,
    stock: readStock(ledger, texts('stock'), menus.ingredients),
    offers,
    events,
    keptPlans: readKeptPlans(ledger, folder),
    told: readTold(ledger, texts('told')),
    corrections: readCorrections(ledger, texts('corrections')),
    photos,
    fileDigests,
    held: ledger.held,
    placeOf: (item, path, part) => placeIn(ledger, item, path, part),
  };
  return { book, findings: ledger.findings };
}

function digestOfText(text = ''): string {
  return createHash('sha256').update(text).digest('hex');
}
