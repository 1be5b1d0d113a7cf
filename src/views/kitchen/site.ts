import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { PREP_PLAN_SCHEMA_FILE, prepPlanJsonSchema } from '../../exports/form/prep-plan.ts';
import { invoice } from '../../exports/invoice.ts';
import { figuresAsRead } from '../../exports/words/figures-as-read.ts';
import type { CurrentEvent } from '../../offers/event/current-event.ts';
import { recordText } from '../../offers/write-once.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import { nameOwners, ownersOfOver } from '../file-owners.ts';
import type { Site, SiteContent, SitePage } from '../site.ts';
import { kitchenCacheKey } from './cache-key.ts';
import { DAY_PAPER, keptDays, keptPlan } from './day/kept-days.ts';
import { dayPages } from './day/pages.ts';
import { addEvent } from './event-pages.ts';
import { invoiceView } from './invoice-view-of.ts';
import { jointOrders } from './joint-orders-of.ts';
import type { KeptPlan, PlansAtHand } from './kept-plan.ts';
import { leftoversView } from './leftovers-view-of.ts';
import type { OwnerMoneyView } from './owner-money.ts';
import { ownerMoneyView } from './owner-money-of.ts';
import { plannedEvents } from './planned-event.ts';
import { plannedTogether } from './schedule-for.ts';
import { shownPlans, staleBanner } from './shown-plans.ts';
import { addSiteSheets } from './site-sheets-of.ts';
import { type SortedEvents, sortedEvents } from './sorted-events.ts';
import type { BannerView } from './view.ts';
import { kitchenView } from './view-of.ts';

/**
 * What the kitchen works from: coming events, their plans, papers and lists, a page for each day of work, and every
 * event's invoice. Events that are cancelled or have no day are on the front page alone.
 */
export function kitchenSite(
  book: Book,
  brand: BrandView,
  told: BannerView | null,
  today: Day,
  plans: PlansAtHand,
): Pick<Site, 'part' | 'stays'> {
  const sorted = sortedEvents(book, today);
  let made: Promise<SiteContent> | undefined;
  const planned: (() => KeptPlan)[] = [];
  return {
    part: {
      get cacheKey() {
        return kitchenCacheKey(book, brand, told, today, plans);
      },
      accent: brand.accent,
      make: (between = async () => undefined) => {
        made ??= kitchenContent(book, sorted, brand, told, today, plans, planned, between);
        return made;
      },
      plans: () => planned,
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
  atHand: PlansAtHand,
  planned: (() => KeptPlan)[],
  between: () => Promise<void>,
): Promise<SiteContent> {
  const { locale } = book.kitchen;
  const site: SiteContent = { pages: [], prints: [], files: [] };
  const events = await plannedEvents(
    book,
    sorted.coming.map(({ offer }) => offer.proposal),
    today,
    between,
  );
  const sides = events.flatMap(({ side }) => (side ? [side.plan] : []));
  const orders = await jointOrders(book, sides, today);
  const shown = shownPlans(book, events, atHand, today);
  const stale = shown.filter((each) => each.stale !== '');
  const front = kitchenView(book, events, sorted, orders, brand, told, today, stale);
  // What waits is the office's, on the front page alone; no page is made again because a letter came in.
  const banner = told && told.errors > 0 ? { ...told, waiting: [] } : null;
  const left = leftoversView(book, brand, banner);
  site.pages.push({
    file: 'private/kitchen/index.html',
    route: '/kitchen/',
    view: figuresAsRead({ ...front, leftovers: left !== undefined }, locale),
  });
  if (left)
    site.pages.push({
      file: 'private/kitchen/leftovers/index.html',
      route: '/kitchen/leftovers/',
      view: figuresAsRead(left, locale),
    });
  const plans = events.flatMap(({ plan }) => (plan.ok ? [plan.value] : []));
  for (const plan of plans) addEvent(site, plan, book, brand, banner, today);
  for (const { plan, kept, stale: why } of shown)
    addEvent(site, plan, book, brand, staleBanner(why, banner), kept.on);
  const pages = new Set([...plans, ...shown.map(({ plan }) => plan)].map(({ event }) => event.id));
  addSiteSheets(site, book, sorted.coming, pages, brand, banner);
  const moneyOf = new Map(
    events.flatMap(({ id, offer, side }) => {
      // Asked for by the page and by what is kept, and made once.
      let view: OwnerMoneyView | undefined;
      return side
        ? [[id, () => (view ??= ownerMoneyView(book, side, offer.terms, brand, banner))] as const]
        : [];
    }),
  );
  for (const [id, view] of moneyOf) addMoney(site, id, () => figuresAsRead(view(), locale));
  for (const { id, kept, stale: why } of shown) {
    const { money } = kept;
    if (money)
      addMoney(site, id, () => figuresAsRead({ ...money, brand, banner: staleBanner(why, banner) }, locale));
  }
  if (plans.length + shown.length > 0)
    site.files.push({
      file: `private/kitchen/${PREP_PLAN_SCHEMA_FILE}`,
      content: recordText(prepPlanJsonSchema()),
    });
  for (const event of [...sorted.coming, ...sorted.past])
    addInvoice(site, event, brand, banner, book.kitchen.tipLine === true);
  const { schedule } = plannedTogether(book, today);
  const days = dayPages(
    book,
    [...plans, ...stale.map(({ plan }) => plan)],
    sides,
    orders,
    schedule,
    brand,
    banner,
  );
  // What is kept of a plan is data; what is shown of it is read so each time.
  for (const page of [...days, ...keptDays(shown, new Set(days.map(({ file }) => file)), brand)])
    addDay(site, { ...page, view: figuresAsRead(page.view, locale) });
  nameOwners(site, [...sorted.coming, ...sorted.past], [...plans, ...shown.map(({ plan }) => plan)]);
  for (const plan of plans) planned.push(() => keptPlan(book, plan, moneyOf.get(plan.event.id), days, today));
  return site;
}

/** A day's page and its paper; a plan kept before days had one has none. */
function addDay(site: SiteContent, page: SitePage): void {
  site.pages.push(page);
  const { view } = page;
  if (view.kind !== 'day' || view.paper === undefined) return;
  const { brand, date, dateText } = view;
  site.prints.push({
    file: `private/kitchen/days/${date}/${DAY_PAPER}`,
    route: `/print/day/${date}/`,
    view: { ...view, banner: null },
    title: wordsIn(brand.language)('paper.day', { day: dateText }),
    author: brand.name,
    language: brand.language,
  });
}

/** An event is billed whether it is coming or over, and whether or not it can be planned now. */
function addInvoice(
  site: SiteContent,
  event: CurrentEvent,
  brand: BrandView,
  banner: BannerView | null,
  tipLine: boolean,
): void {
  const made = invoice(event);
  if (!made.ok) return;
  const { id } = made.value.event;
  const folder = `private/kitchen/events/${id}/invoice`;
  const view = figuresAsRead(
    invoiceView(made.value, event.offer.terms, brand, banner, tipLine),
    brand.locale,
  );
  site.pages.push({ file: `${folder}/index.html`, route: `/kitchen/events/${id}/invoice/`, view });
  site.prints.push({
    file: `${folder}/invoice.pdf`,
    route: `/print/invoice/${id}/`,
    view: { ...view, banner: null },
    title: wordsIn(brand.locale)('invoice.title', { event: view.title }),
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

/** What an event earns and costs, on a page of its own that the crew's pages only link to. */
function addMoney(site: SiteContent, id: string, view: () => OwnerMoneyView): void {
  site.pages.push({
    file: `private/kitchen/events/${id}/money/index.html`,
    route: `/kitchen/events/${id}/money/`,
    get view() {
      return view();
    },
  });
}
