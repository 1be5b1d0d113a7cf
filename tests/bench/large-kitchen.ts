import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Book } from '../../src/book/book.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import type { Parsed } from '../../src/engine/parsed.ts';
import { takeAcceptance } from '../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../src/offers/answers/make-acceptance.ts';
import type { Judged } from '../../src/offers/answers/refusal.ts';
import { confirmation } from '../../src/offers/event/confirm.ts';
import { factFile } from '../../src/offers/event/fact-file.ts';
import { nextOffer, offerFile } from '../../src/offers/issue/issue.ts';
import { recordText } from '../../src/offers/write-once.ts';
import type { EventFact } from '../../src/schema/event-fact.ts';
import { largeMenus } from './large-menus.ts';
import { type LargeProposal, largeProposals } from './large-proposals.ts';
import { largeFoods, largePriceLists, largeSuppliers } from './large-store.ts';
import { seeded } from './seeded.ts';

/** How much a large kitchen has of everything. */
export interface LargeSize {
  readonly proposals: number;
  readonly events: number;
  readonly recipes: number;
  readonly ingredients: number;
  readonly suppliers: number;
}

/** The day on which the large kitchen is built. */
export const LARGE_TODAY = '2027-04-26' as Day;

/**
 * Writes a kitchen of a size into an empty folder: the same seed gives the same files. Offers, acceptances and
 * confirmations are made by the product's own functions.
 */
export async function makeLargeKitchen(dir: string, size: LargeSize, seed = 1): Promise<void> {
  await rm(dir, { recursive: true, force: true });
  const random = seeded(seed);
  const foods = largeFoods(random, size.ingredients);
  const { ids: suppliers, yaml } = largeSuppliers(size.suppliers);
  const menus = largeMenus(random, foods, size.recipes, Math.max(4, Math.floor(size.recipes / 12)));
  const proposals = largeProposals(random, { ...size, today: LARGE_TODAY }, menus.packages);
  const shelves = Map.groupBy(foods, ({ shelf }) => shelf);
  await writeAll(dir, {
    'kitchen.yaml': KITCHEN,
    'suppliers.yaml': yaml,
    ...largePriceLists(random, foods, suppliers),
    ...Object.fromEntries(
      [...shelves].map(([shelf, own]) => [
        `ingredients/${shelf}.yaml`,
        own.map((food) => food.yaml).join(''),
      ]),
    ),
    ...menus.files,
    ...Object.fromEntries(proposals.map(({ id, text }) => [`proposals/${id}.md`, text])),
  });
  await writeHistory(dir, proposals);
}

async function writeHistory(dir: string, proposals: readonly LargeProposal[]): Promise<void> {
  const { book, findings } = await readBook(dir);
  const errors = findings.filter(({ severity }) => severity === 'error');
  if (!book || errors.length > 0)
    throw new Error(`the large kitchen has errors: ${JSON.stringify(errors.slice(0, 3))}`);
  for (const { id, fate, issued, answered } of proposals) {
    if (fate === 'draft') continue;
    const offer = must(nextOffer(book, book.proposals.get(id)!, issued));
    await write(offerFile(dir, offer), recordText(offer));
    if (fate === 'offered' || fate === 'expired') continue;
    const known = { ...book, offers: new Map([[id, [offer]]]), events: new Map() };
    const signature = { name: `Guest of ${id}`, email: `${id}@client.example`, note: '', accepted: answered };
    const acceptance = makeAcceptance(offer, offer.proposed, signature);
    const accepted = must(takeAcceptance(known, JSON.stringify(acceptance), answered));
    await write(factFile(dir, id, 1, 'accepted'), recordText(accepted));
    const confirmed = must(
      confirmation(withFacts(known, id, accepted), id, DEPOSIT(answered), answered),
    ).fact;
    await write(factFile(dir, id, 2, 'confirmed'), recordText(confirmed));
  }
}

const DEPOSIT = (on: Day) => ({ amount: undefined, on, method: undefined });

function withFacts(book: Book, id: string, fact: EventFact): Book {
  return { ...book, events: new Map([[id, { id, facts: [fact] }]]) };
}

function must<T>(given: Parsed<T> | Judged<T>): T {
  if (!given.ok) throw new Error(JSON.stringify(given));
  return given.value;
}

async function writeAll(dir: string, files: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(files)) await write(join(dir, name), text);
}

async function write(file: string, text: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, text);
}

const KITCHEN = `name: Millrace Kitchen
town: Low Town
email: post@millrace.example
phone: 555-0170
site: https://millrace.example
locale: en-US
currency: USD
measures: us
time zone: America/New_York
paper: letter
accent: "#3a5a40"
allergens: us, eu
acceptances: post
buying: 3 days before
set-up: 1 h
overage: { buffet: 8 % }
no meat: 8 %
tax: { by: invoice }
places:
  low-town:
    name: Low Town
    tax: { food: 7 %, drink: 7 %, rental: 6 %, labour: 0 %, delivery: 0 %, service charge: 7 % }
    prices include tax: no
    delivery: 85.00
service charge: { rate: 20 %, on: [food, drink] }
guarantee: { deadline: 7 days before, floor: 90 % }
payments: [30 % when accepted, balance 7 days before]
terms: |
  The menu as written, our own serving dishes, set-up and clearing.
crew: { people: 6, hours: 8 hours, from: "7:00" }
capacity: { guests a day: 900, events a day: 6 }
stations:
  cold: { name: Cold bench, places: 3 }
  stove: { name: Stove, places: 2 }
  oven: { name: Ovens, places: 2 }
staff:
  server:
    name: Servers
    price: 38.00 per hour
    pay: 24.00 per hour
    one per: { buffet: 30 guests }
    hours: 6 hours
    at least: 2
containers:
  deep-pan: { name: "Full pan, 4 in", holds: 420 fl oz, depth: 4 in, fill: 85 % }
  shallow-pan: { name: "Full pan, 2½ in", holds: 240 fl oz, depth: 2½ in, fill: 75 %, for: cold }
equipment:
  oven: { name: Convection oven, count: 2, holds: "5 shallow-pan, 3 deep-pan" }
rentals:
  dinner-plate: { name: Dinner plates, amount: 1 each per guest, spare: 5 % }
add-ons:
  coffee: { name: Coffee table, price: 4.50 per guest, class: drink }
  late-hour: { name: Late hour of service, price: 240.00 per hour, class: labour }
`;
