import { createHash } from 'node:crypto';
import type { Book } from './book.ts';
import { checkBook } from './check-book.ts';
import { eachText, textsOf } from './content-texts.ts';
import type { Finding } from './finding.ts';
import { openLedger, placeIn } from './ledger.ts';
import { linkAddOn } from './link-add-on.ts';
import { listContent } from './list-content.ts';
import { readEvents } from './read-events.ts';
import { inboxFindings } from './read-inbox.ts';
import { readIngredients } from './read-ingredients.ts';
import { readKitchen, readPart } from './read-kitchen.ts';
import { readMark } from './read-mark.ts';
import { type OfferCheck, readOffers, type SoundOffers } from './read-offers.ts';
import { readPackages } from './read-packages.ts';
import { readPhotos } from './read-photos.ts';
import { readPriceLists, settlePins } from './read-price-lists.ts';
import { readProposals } from './read-proposals.ts';
import { readRecipes } from './read-recipes.ts';
import { readStock } from './read-stock.ts';
import { readSuppliers } from './read-suppliers.ts';
import { readTold } from './read-told.ts';

/** A content folder, read: the Book of all that is sound, and everything the author is to be told. */
export interface ReadBook {
  /** undefined where kitchen.yaml cannot be used: everything rests on it. */
  readonly book: Book | undefined;
  /** All findings of all files, in no order; those that depend on the day are `findingsOn`'s. */
  readonly findings: Finding[];
}

/**
 * Reads a content folder from the files as they are now; nothing is kept between calls. Every problem of every file
 * is found in one run. An error holds back what it is in and what rests on that, nothing else. Never throws on
 * content. `checkOffer` tells an altered offer from one as issued; `sound` knows which were found so before.
 */
export async function readBook(
  contentDir: string,
  checkOffer?: OfferCheck,
  sound?: SoundOffers,
): Promise<ReadBook> {
  const ledger = openLedger();
  const folder = listContent(contentDir);
  ledger.findings.push(...folder.findings);
  const fileDigests = new Map<string, string>();
  const texts = (collection: Parameters<typeof textsOf>[1]) => {
    const found = textsOf(folder, collection, ledger.findings);
    // What waits in the inbox is in no Book.
    if (collection !== 'inbox') for (const { file, text } of found) fileDigests.set(file, digestOfText(text));
    return found;
  };

  const kitchenFile = readKitchen(ledger, texts('kitchen'));
  if (!kitchenFile) return { book: undefined, findings: ledger.findings };
  const { frame, parts } = kitchenFile;
  const { currency } = frame;
  const sellers = readSuppliers(ledger, texts('suppliers'), currency);
  const foods = readIngredients(ledger, texts('ingredients'));
  const prices = readPriceLists(ledger, texts('prices'), sellers, currency, foods);
  const ingredients = settlePins(ledger, foods, prices);
  const { recipes, bodies: recipeBodies } = readRecipes(
    ledger,
    texts('recipes'),
    folder.pictures,
    ingredients,
    prices,
    { stations: frame.stations, containers: parts.containers },
  );
  const addOns = readPart(
    ledger,
    kitchenFile.source,
    'add-ons',
    kitchenFile.text['add-ons'] ?? {},
    (reading, id, text) => linkAddOn(reading, id, text, currency, recipes),
  );
  const mark = readMark(ledger, folder, kitchenFile.source, kitchenFile.text.mark);
  const kitchen = { ...frame, ...parts, addOns, mark };
  const { packages, bodies: packageBodies } = readPackages(
    ledger,
    texts('packages'),
    folder.pictures,
    currency,
    recipes,
    addOns,
  );
  const proposals = readProposals(ledger, texts('proposals'), folder.pictures, kitchen, packages);
  const offers = readOffers(ledger, eachText(folder, 'offers', ledger.findings), checkOffer, sound);
  const events = readEvents(ledger, texts('events'), offers);
  ledger.findings.push(...inboxFindings(texts('inbox')));

  const { photos, findings: ofPhotos } = await readPhotos(contentDir, folder.pictures);
  ledger.findings.push(...ofPhotos);

  const book: Book = {
    kitchen,
    suppliers: new Map([...sellers].map(([id, { supplier }]) => [id, supplier])),
    ingredients,
    recipes,
    packages,
    proposals,
    prices,
    stock: readStock(ledger, texts('stock'), ingredients),
    offers,
    events,
    told: readTold(ledger, texts('told')),
    recipeBodies,
    packageBodies,
    photos,
    fileDigests,
    held: ledger.held,
    placeOf: (item, path, part) => placeIn(ledger, item, path, part),
  };
  return { book, findings: [...ledger.findings, ...checkBook(book)] };
}

function digestOfText(text = ''): string {
  return createHash('sha256').update(text).digest('hex');
}
