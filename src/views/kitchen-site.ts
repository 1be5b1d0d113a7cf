import type { Book } from '../book/book.ts';
import type { Site, SiteContent } from '../build/site.ts';
import type { Day } from '../engine/calendar/day.ts';
import { CARD_CAUTION, LABEL_CAUTION } from '../engine/safety/cautions.ts';
import { allergensCsv } from '../exports/allergens-csv.ts';
import { invoice } from '../exports/invoice.ts';
import { packOutCsv } from '../exports/pack-out-csv.ts';
import { prepCalendar } from '../exports/prep-calendar.ts';
import type { PrepPlanDocument } from '../exports/prep-plan-document.ts';
import {
  PREP_PLAN_SCHEMA_FILE,
  PREP_PLAN_SCHEMA_FROM_EVENT,
  prepPlanJsonSchema,
} from '../exports/prep-plan-schema.ts';
import { shoppingCsv } from '../exports/shopping-csv.ts';
import type { CurrentEvent } from '../offers/current-event.ts';
import { recordText } from '../offers/write-once.ts';
import type { BrandView } from './brand-view.ts';
import { buffetCards } from './buffet-cards.ts';
import { dayPages } from './day-pages.ts';
import { nameOwners, ownersOfOver } from './file-owners.ts';
import { invoiceView } from './invoice-view-of.ts';
import { jointOrders } from './joint-orders-of.ts';
import { kitchenMadeFrom } from './kitchen-made-from.ts';
import type { BannerView } from './kitchen-view.ts';
import { kitchenView } from './kitchen-view-of.ts';
import { labelSheetView } from './label-sheet-of.ts';
import { leftoversView } from './leftovers-view-of.ts';
import { ownerMoneyView } from './owner-money-of.ts';
import { placeCards } from './place-cards.ts';
import { type PlannedEvent, plannedEvents } from './planned-event.ts';
import { type SortedEvents, sortedEvents } from './sorted-events.ts';

const BUFFET_CARDS = 'buffet-cards.pdf';
const PLACE_CARDS = 'place-cards.pdf';

/** The files beside an event's page, with what they are. */
const EVENT_FILES = [
  { file: 'prep-plan.pdf', what: 'The plan on paper' },
  { file: 'labels.pdf', what: 'Labels for the containers' },
  { file: BUFFET_CARDS, what: 'Cards that stand beside the dishes on the line' },
  { file: PLACE_CARDS, what: 'Cards for the guests’ places' },
  { file: 'shopping.csv', what: 'Shopping list for a spreadsheet' },
  { file: 'pack-out.csv', what: 'Pack-out list for a spreadsheet' },
  { file: 'allergens.csv', what: 'Dishes by allergen and diet, with the way each comes in' },
  { file: 'prep.ics', what: 'Tasks for a calendar' },
  { file: 'prep-plan.json', what: 'The whole plan as data' },
  { file: PREP_PLAN_SCHEMA_FROM_EVENT, what: 'The form of that data, as JSON Schema' },
] as const;

/**
 * What the kitchen works from: coming events, their plans, papers and lists, a page for each day of work, and every
 * event's invoice. Events that are cancelled or have no day are on the front page alone.
 */
export function kitchenSite(
  book: Book,
  brand: BrandView,
  told: BannerView | null,
  today: Day,
): Pick<Site, 'part' | 'stays'> {
  const sorted = sortedEvents(book, today);
  let made: Promise<SiteContent> | undefined;
  return {
    part: {
      get from() {
        return kitchenMadeFrom(book, brand, told, today);
      },
      accent: brand.accent,
      make: (between = async () => undefined) => {
        made ??= kitchenContent(book, sorted, brand, told, today, between);
        return made;
      },
    },
    stays: (file) => ownersOfOver(file, book, sorted.past, today),
  };
}

async function kitchenContent(
  book: Book,
  sorted: SortedEvents,
  brand: BrandView,
  told: BannerView | null,
  today: Day,
  between: () => Promise<void>,
): Promise<SiteContent> {
  const site: SiteContent = { pages: [], prints: [], files: [] };
  const events = await plannedEvents(
    book,
    sorted.coming.map(({ offer }) => offer.proposal),
    today,
    between,
  );
  const sides = events.flatMap(({ side }) => (side ? [side.plan] : []));
  const orders = await jointOrders(book, sides, today);
  const front = kitchenView(book, events, sorted, orders, brand, told, today);
  // What waits is the office's, on the front page alone; no page is made anew because a letter came in.
  const banner = told && told.errors > 0 ? { ...told, waiting: [] } : null;
  const left = leftoversView(book, brand, banner);
  site.pages.push({
    file: 'private/kitchen/index.html',
    route: '/kitchen/',
    view: { ...front, leftovers: left !== undefined },
  });
  if (left)
    site.pages.push({
      file: 'private/kitchen/leftovers/index.html',
      route: '/kitchen/leftovers/',
      view: left,
    });
  const plans = events.flatMap(({ plan }) => (plan.ok ? [plan.value] : []));
  for (const plan of plans) addEvent(site, plan, book, brand, banner, today);
  for (const event of events) addMoney(site, event, book, brand, banner);
  if (plans.length > 0)
    site.files.push({
      file: `private/kitchen/${PREP_PLAN_SCHEMA_FILE}`,
      content: recordText(prepPlanJsonSchema()),
    });
  for (const event of [...sorted.coming, ...sorted.past]) addInvoice(site, event, brand, banner);
  site.pages.push(...dayPages(book, plans, sides, orders, brand, banner));
  nameOwners(site, [...sorted.coming, ...sorted.past], plans);
  return site;
}

/** An event is billed whether it is coming or over, and whether or not it can be planned now. */
function addInvoice(
  site: SiteContent,
  event: CurrentEvent,
  brand: BrandView,
  banner: BannerView | null,
): void {
  const made = invoice(event);
  if (!made.ok) return;
  const { id } = made.value.event;
  const folder = `private/kitchen/events/${id}/invoice`;
  const view = invoiceView(made.value, event.offer.terms, brand, banner);
  site.pages.push({ file: `${folder}/index.html`, route: `/kitchen/events/${id}/invoice/`, view });
  site.prints.push({
    file: `${folder}/invoice.pdf`,
    route: `/print/invoice/${id}/`,
    view: { ...view, banner: null },
    title: `Invoice: ${view.title}`,
    author: brand.name,
    language: brand.language,
  });
  const record = made.value;
  site.files.push({
    file: `${folder}/invoice.json`,
    get content() {
      return recordText(record);
    },
  });
}

/** What a coming event earns and costs, on a page of its own that the crew's pages only link to. */
function addMoney(
  site: SiteContent,
  { id, offer, side }: PlannedEvent,
  book: Book,
  brand: BrandView,
  banner: BannerView | null,
): void {
  if (!side) return;
  site.pages.push({
    file: `private/kitchen/events/${id}/money/index.html`,
    route: `/kitchen/events/${id}/money/`,
    get view() {
      return ownerMoneyView(book, side, offer.terms, brand, banner);
    },
  });
}

function addEvent(
  site: SiteContent,
  plan: PrepPlanDocument,
  book: Book,
  brand: BrandView,
  banner: BannerView | null,
  today: Day,
): void {
  const { id, occasion, client, dateText } = plan.event;
  const folder = `private/kitchen/events/${id}`;
  const cards = buffetCards(plan);
  const places = placeCards(plan, brand);
  const none = [...(cards.length > 0 ? [] : [BUFFET_CARDS]), ...(places ? [] : [PLACE_CARDS])];
  const files = EVENT_FILES.filter(({ file }) => !none.includes(file));
  const view = { kind: 'event' as const, brand, banner, plan, files };
  const paper = { author: brand.name, language: brand.language };
  site.pages.push({ file: `${folder}/index.html`, route: `/kitchen/events/${id}/`, view });
  site.prints.push(
    {
      file: `${folder}/prep-plan.pdf`,
      route: `/print/prep-plan/${id}/`,
      view: { ...view, banner: null },
      title: `Prep plan: ${occasion}, ${client}`,
      ...paper,
    },
    {
      file: `${folder}/labels.pdf`,
      route: `/print/labels/${id}/`,
      view: {
        kind: 'labels',
        brand,
        plan,
        sheet: labelSheetView(book.kitchen.labelSheet),
        caution: LABEL_CAUTION,
      },
      title: `Labels: ${occasion}, ${client}`,
      ...paper,
    },
  );
  if (cards.length > 0) {
    const job = `${occasion}, ${dateText}`;
    site.prints.push({
      file: `${folder}/${BUFFET_CARDS}`,
      route: `/print/buffet-cards/${id}/`,
      view: { kind: 'buffet cards', brand, job, cards, caution: CARD_CAUTION },
      title: `Buffet cards: ${occasion}, ${client}`,
      ...paper,
    });
  }
  if (places)
    site.prints.push({
      file: `${folder}/${PLACE_CARDS}`,
      route: `/print/place-cards/${id}/`,
      view: places,
      title: `Place cards: ${occasion}, ${client}`,
      ...paper,
    });
  const { allergenLaws, timeZone } = book.kitchen;
  const made: readonly (readonly [name: string, text: () => string])[] = [
    ['prep-plan.json', () => recordText({ $schema: PREP_PLAN_SCHEMA_FROM_EVENT, ...plan })],
    ['shopping.csv', () => shoppingCsv(plan)],
    ['pack-out.csv', () => packOutCsv(plan)],
    ['allergens.csv', () => allergensCsv(plan, allergenLaws)],
    ['prep.ics', () => prepCalendar(plan, timeZone, today)],
  ];
  for (const [name, text] of made)
    site.files.push({
      file: `${folder}/${name}`,
      // Of hundreds of events, the texts are not all held at once.
      get content() {
        return text();
      },
    });
}
