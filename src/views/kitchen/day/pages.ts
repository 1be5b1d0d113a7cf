import type { Book } from '../../../book/book.ts';
import type { Schedule } from '../../../engine/plan/clock/event-work.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { statementsIn } from '../../../exports/words/statement-text.ts';
import { bodyKey } from '../../../offers/issue/body-key.ts';
import { wordsIn } from '../../../words/words-in.ts';
import type { BrandView } from '../../brand/brand-view.ts';
import type { Site } from '../../site.ts';
import type { JointShopping } from '../joint-orders-of.ts';
import type { BannerView } from '../view.ts';
import { dayCold } from './cold-of.ts';
import { dayCrew } from './crew-of.ts';
import { dayFile } from './kept-days.ts';
import { dayRecipes } from './recipes-of.ts';
import { dayView, workDates } from './view-of.ts';
import { dayWorkView } from './work-of.ts';

/** A page for every day with work: `plans` are the documents, `sides` the same in exact values. */
export function dayPages(
  book: Book,
  plans: readonly PrepPlanDocument[],
  sides: readonly EventPlan[],
  orders: readonly JointShopping[],
  schedule: Schedule,
  brand: BrandView,
  banner: BannerView | null,
): Site['pages'] {
  const { kitchen } = book;
  const { stations, locale, crew, containers, measures: system, allergenLaws: laws } = kitchen;
  const notesOf = (recipe: string) => bodyKey(book.recipeBodies.get(recipe) ?? '');
  const nameOf = (id: string) => book.recipes.get(id)?.name ?? id;
  return workDates(plans).map((date) => {
    const working = sides.filter(({ days }) => days.some((day) => day.date === date));
    const order = orders.find((each) => working.some((plan) => each.plans.includes(plan)));
    return {
      file: dayFile(date),
      route: `/kitchen/days/${date}/`,
      view: dayView(date, plans, stations, locale, brand, banner, {
        recipes: dayRecipes(working, date, {
          system,
          laws,
          stations,
          notesOf,
          nameOf,
          containers,
          inWords: statementsIn(locale),
          say: wordsIn(locale),
        }),
        shopping: order?.shopping ?? null,
        together: new Set(order?.plans.map(({ input }) => input.id)),
        crew: dayCrew(working, date, crew, wordsIn(locale)),
        // What was made before and waits for its event stands in the cold on a day without work for it as well.
        cold: dayCold(
          sides.filter(({ input, days }) => date <= input.date && days.some((day) => day.date <= date)),
          date,
          kitchen,
        ),
        timeZone: kitchen.timeZone,
        work: dayWorkView(schedule, date, kitchen),
      }),
    };
  });
}
