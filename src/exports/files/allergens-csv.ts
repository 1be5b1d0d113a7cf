import { columnsFor, stated } from '../../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { DIETS } from '../../engine/food/diet.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanDish } from '../form/food.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { csvText } from './csv-text.ts';

/**
 * The dishes of an event by allergen and diet, a row for each and for the portions made separately. A field says `contains`,
 * `may contain`, `not known`, or `not an ingredient`, with kinds where the law wants them; none is ever empty, and
 * nothing is called free of anything. Diets say `yes`, `no` or `not known`. At the end the ways in.
 */
export function allergensCsv(
  plan: Pick<PrepPlanDocument, 'dishes'>,
  laws: readonly AllergenLaw[],
  say: Say,
): string {
  const words = plan.dishes.map((dish) => ({
    contains: dish.allergenPaths.map(({ allergen }) => allergen),
    mayContain: dish.mayContainPaths.map(({ allergen }) => allergen),
  }));
  const columns = columnsFor(laws, words);
  const header = [
    say('csv.course'),
    say('csv.dish'),
    say('csv.separately-for'),
    ...columns.map(({ name }) => name),
    ...DIETS,
    say('csv.contains-by'),
    say('csv.may-contain-by'),
    say('csv.not-stated'),
  ];
  const rows = plan.dishes.map((dish, index) => {
    const { contains = [], mayContain = [] } = words[index] ?? {};
    return [
      dish.course,
      dish.name,
      dish.apartFrom === ''
        ? ''
        : dish.needs.map(({ need, guests }) => say('plan.counted', { count: guests, what: need })).join(', '),
      ...columns.map((column) => {
        const found = (texts: readonly string[]) => stated(texts).filter(column.takes);
        const named = (says: 'csv.contains' | 'csv.may-contain', some: ReturnType<typeof stated>) => {
          const kinds = column.kindNamed ? some.flatMap(({ kind }) => kind ?? []) : [];
          return kinds.length > 0 ? say(WITH_KINDS[says], { kinds: kinds.join(', ') }) : say(says);
        };
        const [inside, warned] = [found(contains), found(mayContain)];
        const said = [
          inside.length > 0 ? named('csv.contains', inside) : '',
          warned.length > 0 ? named('csv.may-contain', warned) : '',
          dish.unsaid.length > 0 && inside.length === 0 ? say('csv.not-known') : '',
        ].filter((text) => text !== '');
        return said.length > 0 ? said.join('; ') : say('csv.not-an-ingredient');
      }),
      ...DIETS.map((diet) => dietText(dish, diet, say)),
      waysText(dish.allergenPaths, say),
      waysText(dish.mayContainPaths, say),
      dish.unsaid.join(', '),
    ];
  });
  return csvText(header, rows);
}

const WITH_KINDS = {
  'csv.contains': 'csv.contains-kinds',
  'csv.may-contain': 'csv.may-contain-kinds',
} as const;

function dietText({ diets }: PlanDish, diet: string, say: Say): string {
  const suits = diets.find((each) => each.diet === diet)?.suits ?? 'unknown';
  return say(SUITS[suits]);
}

const SUITS = { yes: 'csv.yes', no: 'csv.no', unknown: 'csv.not-known' } as const;

/** `milk: Tart → Filling → Butter | Tart → Cheese; wheat: …` */
function waysText(sources: PlanDish['allergenPaths'], say: Say): string {
  return sources
    .map(({ allergen, paths }) => say('csv.way', { allergen, paths: paths.join(' | ') }))
    .join('; ');
}
