import { columnsFor, stated } from '../../engine/food/allergen-columns.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { DIETS } from '../../engine/food/diet.ts';
import type { PlanDish } from '../form/food.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';
import { csvText } from './csv-text.ts';

/**
 * The dishes of an event by allergen and diet, a row for each and for the portions made separately. A field says `contains`,
 * `may contain`, `not known`, or `not an ingredient`, with kinds where the law wants them; none is ever empty, and
 * nothing is called free of anything. Diets say `yes`, `no` or `not known`. At the end the ways in.
 */
export function allergensCsv(plan: Pick<PrepPlanDocument, 'dishes'>, laws: readonly AllergenLaw[]): string {
  const words = plan.dishes.map((dish) => ({
    contains: dish.allergenPaths.map(({ allergen }) => allergen),
    mayContain: dish.mayContainPaths.map(({ allergen }) => allergen),
  }));
  const columns = columnsFor(laws, words);
  const header = [
    'course',
    'dish',
    'made separately for',
    ...columns.map(({ name }) => name),
    ...DIETS,
    'contains by way of',
    'may contain by way of',
    'not stated',
  ];
  const rows = plan.dishes.map((dish, index) => {
    const { contains = [], mayContain = [] } = words[index] ?? {};
    return [
      dish.course,
      dish.name,
      dish.apartFrom === '' ? '' : dish.needs.map(({ need, guests }) => `${guests} × ${need}`).join(', '),
      ...columns.map((column) => {
        const found = (texts: readonly string[]) => stated(texts).filter(column.takes);
        const named = (says: string, some: ReturnType<typeof stated>) => {
          const kinds = column.kindNamed ? some.flatMap(({ kind }) => kind ?? []) : [];
          return kinds.length > 0 ? `${says}: ${kinds.join(', ')}` : says;
        };
        const [inside, warned] = [found(contains), found(mayContain)];
        const said = [
          inside.length > 0 ? named('contains', inside) : '',
          warned.length > 0 ? named('may contain', warned) : '',
          dish.unsaid.length > 0 && inside.length === 0 ? 'not known' : '',
        ].filter((text) => text !== '');
        return said.length > 0 ? said.join('; ') : 'not an ingredient';
      }),
      ...DIETS.map((diet) => dietText(dish, diet)),
      waysText(dish.allergenPaths),
      waysText(dish.mayContainPaths),
      dish.unsaid.join(', '),
    ];
  });
  return csvText(header, rows);
}

function dietText({ diets }: PlanDish, diet: string): string {
  const suits = diets.find((each) => each.diet === diet)?.suits ?? 'unknown';
  return suits === 'unknown' ? 'not known' : suits;
}

/** `milk: Tart → Filling → Butter | Tart → Cheese; wheat: …` */
function waysText(sources: PlanDish['allergenPaths']): string {
  return sources.map(({ allergen, paths }) => `${allergen}: ${paths.join(' | ')}`).join('; ');
}
