import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { allergensCsv } from '../../exports/files/allergens-csv.ts';
import { packOutCsv } from '../../exports/files/pack-out-csv.ts';
import { prepCalendar } from '../../exports/files/prep-calendar.ts';
import { returnCsv } from '../../exports/files/return-csv.ts';
import { shoppingCsv } from '../../exports/files/shopping-csv.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { PREP_PLAN_SCHEMA_FROM_EVENT } from '../../exports/form/prep-plan.ts';
import { figuresAsRead } from '../../exports/words/figures-as-read.ts';
import { recordText } from '../../offers/write-once.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { SiteContent } from '../site.ts';
import { planAsRead } from '../sums-as-read.ts';
import { buffetCards } from './buffet-cards.ts';
import { dayOfCheck } from './day/day-checks.ts';
import { labelSheetView } from './label-sheet-of.ts';
import { lossesOfEvent } from './losses.ts';
import { placeCards } from './place-cards.ts';
import { planNumber } from './plan-number.ts';
import { runSheet } from './run-sheet.ts';
import { staleBanner } from './shown-plans.ts';
import type { BannerView } from './view.ts';

const BUFFET_CARDS = 'buffet-cards.pdf';
const PLACE_CARDS = 'place-cards.pdf';
const RETURN_LIST = 'return-list.csv';

/** The files beside an event's page, with what they are. */
const EVENT_FILES = [
  { file: 'prep-plan.pdf', what: 'event.plan-paper' },
  { file: 'labels.pdf', what: 'event.labels' },
  { file: BUFFET_CARDS, what: 'event.buffet-cards' },
  { file: PLACE_CARDS, what: 'event.place-cards' },
  { file: 'shopping.csv', what: 'event.shopping-file' },
  { file: 'pack-out.csv', what: 'event.pack-out-file' },
  { file: RETURN_LIST, what: 'event.return-file' },
  { file: 'allergens.csv', what: 'event.allergens-file' },
  { file: 'prep.ics', what: 'event.calendar' },
  { file: 'prep-plan.json', what: 'event.plan-data' },
  { file: PREP_PLAN_SCHEMA_FROM_EVENT, what: 'event.plan-schema' },
] as const;

/** An event's page, papers and lists, all of them from its plan; `today` is the day the plan is of. */
export function addEvent(
  site: SiteContent,
  plan: PrepPlanDocument,
  book: Book,
  brand: BrandView,
  banner: BannerView | null,
  today: Day,
): void {
  const { id, occasion, client, dateText } = plan.event;
  const folder = `private/kitchen/events/${id}`;
  const say = wordsIn(brand.locale);
  const job = `${occasion}, ${client}`;
  // Pages and papers are for people; the files beside them are for programs, and keep 24 hours and points.
  const read = planAsRead(plan, book.kitchen.locale);
  const cards = buffetCards(read, brand.locale);
  const places = placeCards(plan, brand);
  const { returns } = plan;
  const none = [
    ...(cards.length > 0 ? [] : [BUFFET_CARDS]),
    ...(places ? [] : [PLACE_CARDS]),
    ...(returns ? [] : [RETURN_LIST]),
  ];
  const files = EVENT_FILES.filter(({ file }) => !none.includes(file)).map(({ file, what }) => ({
    file,
    what: say(what),
  }));
  const losses = lossesOfEvent(book, id);
  const view = {
    kind: 'event' as const,
    brand,
    banner,
    plan: read,
    number: planNumber(plan),
    runSheet: figuresAsRead(runSheet(plan), book.kitchen.locale),
    awayChecks: read.safetySheet.checks.filter((_, at) => {
      const check = plan.safetySheet.checks[at];
      return check !== undefined && dayOfCheck(plan, check) === undefined;
    }),
    files,
    ...(losses.length > 0 && { losses }),
  };
  const paper = { author: brand.name, language: brand.language };
  site.pages.push({ file: `${folder}/index.html`, route: `/kitchen/events/${id}/`, view });
  site.prints.push(
    {
      file: `${folder}/prep-plan.pdf`,
      route: `/print/prep-plan/${id}/`,
      view: { ...view, banner: banner?.stale === undefined ? null : staleBanner(banner.stale, null) },
      title: say('plan.title', { event: job }),
      ...paper,
    },
    {
      file: `${folder}/labels.pdf`,
      route: `/print/labels/${id}/`,
      view: {
        kind: 'labels',
        brand,
        plan: read,
        sheet: labelSheetView(book.kitchen.labelSheet),
        caution: say('cautions.label'),
      },
      title: say('labels.title', { event: job }),
      ...paper,
    },
  );
  if (cards.length > 0) {
    site.prints.push({
      file: `${folder}/${BUFFET_CARDS}`,
      route: `/print/buffet-cards/${id}/`,
      view: {
        kind: 'buffet cards',
        brand,
        job: `${occasion}, ${dateText}`,
        cards,
        caution: say('cautions.card'),
      },
      title: say('cards.buffet-title', { event: job }),
      ...paper,
    });
  }
  if (places)
    site.prints.push({
      file: `${folder}/${PLACE_CARDS}`,
      route: `/print/place-cards/${id}/`,
      view: places,
      title: say('cards.place-title', { event: job }),
      ...paper,
    });
  const { allergenLaws, timeZone, locale } = book.kitchen;
  const made: readonly (readonly [name: string, text: () => string])[] = [
    ['prep-plan.json', () => recordText({ $schema: PREP_PLAN_SCHEMA_FROM_EVENT, ...plan })],
    ['shopping.csv', () => shoppingCsv(plan, say)],
    ['pack-out.csv', () => packOutCsv(plan, say)],
    ...(returns ? [[RETURN_LIST, () => returnCsv(returns, say)] as const] : []),
    ['allergens.csv', () => allergensCsv(plan, allergenLaws, say)],
    ['prep.ics', () => prepCalendar(plan, timeZone, locale, today)],
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
