import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { scaleOf } from '../../engine/measure/temperature.ts';
import { moneyText } from '../../engine/money/money.ts';
import { type EventWork, eventWork, type Schedule, servedOf } from '../../engine/plan/clock/event-work.ts';
import { keptBack } from '../../engine/plan/clock/kept-back.ts';
import { thrownAway } from '../../engine/plan/clock/throw-away.ts';
import { rentalsFor } from '../../engine/plan/containers/service-ware.ts';
import { drinkCounts } from '../../engine/plan/drinks/drinks-plan.ts';
import type { EventPlan, PlannedDish } from '../../engine/plan/event-plan.ts';
import { broughtTo, fuelsFor } from '../../engine/plan/load/brought.ts';
import { type CarrierLack, carrierLacks } from '../../engine/plan/load/carriers-out.ts';
import { type EventLoad, eventLoad } from '../../engine/plan/load/event-load.ts';
import { kitFor } from '../../engine/plan/load/kit.ts';
import { powerPlan } from '../../engine/plan/load/power.ts';
import { suppliesGrams, unweighedKit } from '../../engine/plan/load/supplies.ts';
import { vanLoad } from '../../engine/plan/load/van-load.ts';
import type { OrderedPlan } from '../../engine/plan/purchases/ordered.ts';
import { substitutionNotices } from '../../offers/corrections/told.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { guestListOf } from '../../offers/guest-list/guest-list.ts';
import { numberOfTables } from '../../offers/guest-list/tables.ts';
import { eatenOf } from '../../offers/learned/eaten-so-far.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { wordsIn } from '../../words/words-in.ts';
import type { PlanDish } from '../form/food.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { safetySheet } from '../safety-sheet.ts';
import { clockOf } from '../words/clock-text.ts';
import { clockFinding } from '../words/clock-words.ts';
import { crewCautions } from '../words/crew-cautions.ts';
import { eatenText } from '../words/eaten-text.ts';
import { statementsIn } from '../words/statement-text.ts';
import { planAlerts } from './alerts.ts';
import { carrierFindings, planCarriers } from './carriers.ts';
import { planCoverage } from './coverage.ts';
import { planDay } from './days.ts';
import { decidedAndOpen } from './decided-and-open.ts';
import { planDish } from './dish.ts';
import { planDrinks } from './drinks.ts';
import { eventFacts } from './event-facts.ts';
import { keptBackFindings, planKeptBack } from './kept-back.ts';
import { kitFindings } from './kit.ts';
import { planLabels } from './labels.ts';
import { planLeader } from './leader.ts';
import { planOdds } from './odds.ts';
import { planOrders } from './orders.ts';
import { planPackOut } from './pack-out.ts';
import { planPower, powerFindings } from './power.ts';
import { planPrepLabels } from './prep-labels.ts';
import { planRecipe } from './recipe.ts';
import { returnList } from './return-list.ts';
import { planPurchase } from './shopping.ts';
import { substitutionAlerts } from './substitution-alerts.ts';
import { apartFindings, listFindings, seatFindings } from './table-findings.ts';
import { planTables } from './tables.ts';
import { planTimeline } from './timeline.ts';
import { planVan, vanFindings } from './van.ts';

/** A plan and the event it is for as on a day, as the one document that pages, papers and lists are made from. */
export function prepPlan(
  book: Book,
  plan: OrderedPlan,
  schedule: Schedule,
  offer: Offer,
  status: EventStatus,
  notesOf: (recipe: string) => string,
  today: Day,
): PrepPlanDocument {
  const { kitchen } = book;
  const { measures: system, allergenLaws: laws, locale, stations } = kitchen;
  const cooked = new Map(plan.recipes.map(({ recipe }) => [recipe.id, recipe.name]));
  const nameOf = (id: string) =>
    cooked.get(id) ??
    book.recipes.get(id)?.name ??
    book.ingredients.get(id)?.name ??
    book.suppliers.get(id)?.name ??
    id;
  const say = wordsIn(locale);
  const inWords = statementsIn(locale);
  const work = eventWork(plan, schedule);
  const served = servedOf(plan.input, schedule);
  const load = eventLoad(plan, served, kitchen);
  const lacks = lacksOf(plan, load, schedule, kitchen);
  const clockWords = { say, locale, system, stations, equipment: kitchen.equipment };
  const list = guestListOf(book.events.get(plan.input.id)?.facts ?? []);
  const tables = list ? planTables(list, plan, offer, status, locale) : null;
  const seats = tables?.seats ?? [];
  const dishes = plan.dishes.map((each) => ({
    ...planDish(each, system, laws, nameOf, plan.foodSafety, inWords, say),
    ...outUntil(work, each),
    ...earlierOf(book, plan, each),
  }));
  const crewMeals = plan.crewMeals.map((each) => ({
    ...planDish(each, system, laws, nameOf, plan.foodSafety, inWords, say),
    ...outUntil(work, each),
  }));
  const kept = served ? keptBack(plan, work, served.clock) : [];
  const notices = substitutionNotices(book, offer);
  const toldOn = (fact: SubstitutionFact) => notices.find((each) => each.fact === fact)?.toldOn;
  const orders = planOrders(plan.order, locale);
  const odds = planOdds(plan, kitchen);
  const drinks = planDrinks(plan, kitchen);
  const brought = served ? broughtTo(served, kitchen.equipment) : [];
  const power = powerPlan(brought, plan.input.venueKit?.circuits);
  const kit = kitFor(kitchen, {
    plan,
    served,
    brought,
    tables: list && numberOfTables(list.guests),
  });
  const van = vanLoad(
    plan,
    load,
    {
      rentals: rentalsFor(kitchen, plan.input.style, plan.input.guests, drinkCounts(plan.drinks)),
      brought,
      fuels: fuelsFor(brought),
      supplies: suppliesGrams(plan, kit),
      kit: unweighedKit(kit, say('lists.kit')),
    },
    kitchen,
  );
  const packOut = planPackOut(plan, served, kitchen, offer.terms, status.choice, {
    throwAways: work.throwAways,
    kit,
    load,
  });
  const prepLabels = planPrepLabels(plan, kitchen);
  return {
    version: 1,
    kind: 'prep plan',
    event: {
      ...eventFacts(book, plan, offer, status),
      ...decidedAndOpen(offer, status, { dishes, orders, tables }, today),
    },
    alerts: [
      ...substitutionAlerts(status.substitutions, locale, nameOf, toldOn),
      ...planAlerts(plan, nameOf, seats, locale),
    ],
    coverage: planCoverage(plan.coverage),
    dishes,
    ...(crewMeals.length > 0 && { crewMeals }),
    ...(kept.length > 0 && { keptBack: planKeptBack(kept, system, say) }),
    ...(odds && { odds }),
    ...(drinks && { drinks }),
    tables,
    recipes: plan.recipes.map((each) =>
      planRecipe(each, plan, {
        system,
        laws,
        stations,
        notesOf,
        nameOf,
        containers: kitchen.containers,
        inWords,
        say,
      }),
    ),
    shopping: plan.purchases.map((each) =>
      planPurchase(each, system, kitchen.currency, book.suppliers, nameOf, inWords),
    ),
    orders,
    foodCost: plan.foodCost && moneyText(plan.foodCost),
    deliveryFees: moneyText(plan.order.fees),
    foodUsed: plan.foodCost && plan.order.used && moneyText(plan.order.used),
    timeline: planTimeline(work.timeline, plan.input.date, kitchen.locale),
    days: work.days.map((day) =>
      planDay(day, work.waiting, {
        ...clockWords,
        system,
        event: plan.input.id,
        crew: plan.input.cooks && day.day.daysBefore === 0 ? plan.input.cooks : kitchen.crew,
        idOf: ({ recipe, number }) => `${plan.input.id}.${recipe.id}.${number}`,
      }),
    ),
    packOut,
    leader: planLeader(plan, served, work.throwAways, odds, kitchen, say),
    ...(power && { power: planPower(power, say) }),
    ...(load.loading && { carriers: planCarriers(load, { system, locale, say, inWords }) }),
    ...(van && { van: planVan(van, { system }) }),
    returns: returnList(packOut, plan, kitchen),
    labels: planLabels(plan, kitchen, seats, work.throwAways, load),
    ...(prepLabels.length > 0 && { prepLabels }),
    findings: [
      ...(tables ? [...seatFindings(tables, say), ...apartFindings(tables, plan, say)] : []),
      ...work.findings.map((finding) => clockFinding(finding, clockWords)),
      ...carrierFindings(load, lacks, { system, locale, say, inWords }),
      ...(van ? vanFindings(van, { system, say }) : []),
      ...plan.findings.map(({ about, what, wayOut }) => ({
        about: nameOf(about),
        what: inWords(what),
        wayOut: inWords(wayOut),
      })),
      ...(power ? powerFindings(power, say) : []),
      ...kitFindings(kit, say, locale),
      ...keptBackFindings(kept, say),
      ...(list ? listFindings(list, offer, status, inWords, say) : []),
    ],
    safetySheet: safetySheet(
      plan,
      scaleOf(system),
      locale,
      (id) => book.suppliers.get(id)?.name ?? id,
      work.throwAways,
    ),
    cautions: crewCautions(say),
    lastChange: null,
  };
}

/** Until when a dish may stand neither hot nor cold. */
function outUntil({ throwAways }: EventWork, { dish }: PlannedDish): Pick<PlanDish, 'throwAway'> {
  const food = thrownAway(throwAways, dish.recipe);
  return food ? { throwAway: { left: clockOf(food.left), by: clockOf(food.by) } } : {};
}

/** What events before this one tell of a dish; portions made separately are not asked about. */
function earlierOf(book: Book, { input }: EventPlan, { dish }: PlannedDish): Pick<PlanDish, 'earlier'> {
  if (dish.portions?.apart) return {};
  const { packageId = '', style, date } = input;
  const eaten = eatenOf(
    book,
    { recipe: dish.recipe.id, style, packageId, course: dish.course },
    { before: date },
  );
  if (!eaten) return {};
  const { spread: _, ...earlier } = eatenText(eaten, wordsIn(book.kitchen.locale));
  return { earlier };
}

/** The carriers that an event and the others of its date have too few of; none where the kitchen states none. */
function lacksOf(
  { input }: EventPlan,
  { loading }: EventLoad,
  schedule: Schedule,
  kitchen: Book['kitchen'],
): CarrierLack[] {
  if (!loading) return [];
  const date = schedule.on(input.date).clock.served.map((served) => ({
    served,
    carriers:
      served.plan.input.id === input.id
        ? loading.carriers
        : (eventLoad(served.plan, served, kitchen).loading?.carriers ?? []),
  }));
  const own = date.find(({ served }) => served.plan.input.id === input.id);
  return own ? carrierLacks(own, date) : [];
}
