import type { PlanCoverage } from '../../exports/form/event.ts';
import type { PlanDish } from '../../exports/form/food.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { NOT_ALL_KNOWN } from '../../exports/words/allergen-as-read.ts';
import type { Say } from '../../words/words-in.ts';

/**
 * An event's last good plan while it cannot be made again: amounts and tasks stay, and of a dish whose recipe cannot be
 * read now no allergen list is complete and no diet is claimed. `why` stands among what is to be looked at.
 */
export function stalePlan(
  plan: PrepPlanDocument,
  isReadable: (recipe: string) => boolean,
  why: PrepPlanDocument['findings'][number],
  say: Say,
): PrepPlanDocument {
  const isUnknown = ({ recipe, apartFrom }: PlanDish) => !isReadable(apartFrom === '' ? recipe : apartFrom);
  const { crewMeals = [] } = plan;
  const asKnown = (dish: PlanDish) => (isUnknown(dish) ? unknownDish(dish, say) : dish);
  const names = [...plan.dishes, ...crewMeals].filter(isUnknown).map(({ name }) => name);
  const unread = plan.recipes.filter(({ id }) => !isReadable(id)).map(({ name }) => name);
  return {
    ...plan,
    dishes: plan.dishes.map(asKnown),
    ...(plan.crewMeals && { crewMeals: crewMeals.map(asKnown) }),
    coverage: plan.coverage.map((each) => withoutUnknown(each, names)),
    labels: plan.labels.map((label) =>
      names.includes(label.dish) ? { ...label, contains: notAllKnown(label.contains) } : label,
    ),
    ...(plan.prepLabels && {
      prepLabels: plan.prepLabels.map((label) =>
        unread.includes(label.dish) ? { ...label, contains: notAllKnown(label.contains) } : label,
      ),
    }),
    findings: [why, ...plan.findings],
  };
}

function unknownDish(dish: PlanDish, say: Say): PlanDish {
  return {
    ...dish,
    needs: dish.apartFrom === '' ? [] : dish.needs,
    unsaid: [...dish.unsaid, say('plan.stale.recipe', { dish: dish.name })],
    diets: dish.diets.map(({ diet }) => ({ diet, suits: 'unknown', because: [dish.name] })),
  };
}

function notAllKnown(contains: readonly string[]): readonly string[] {
  return contains.includes(NOT_ALL_KNOWN) ? contains : [...contains, NOT_ALL_KNOWN];
}

function withoutUnknown(coverage: PlanCoverage, names: readonly string[]): PlanCoverage {
  const courses = coverage.courses.map((course) => {
    const isKnown = (dish: string) => !names.some((name) => dish === name || dish.startsWith(`${name} (`));
    const [suits, apart] = [course.suits.filter(isKnown), course.apart.filter(isKnown)];
    const unknown = [...course.suits, ...course.apart].filter((dish) => !isKnown(dish));
    if (unknown.length === 0) return course;
    const fed = suits.length + apart.length > 0;
    const roles = course.roles.map((each) => ({ ...each, dishes: each.dishes.filter(isKnown) }));
    return { ...course, suits, apart, roles, fed, notKnown: [...course.notKnown, ...unknown] };
  });
  const fed = courses.filter((course) => course.fed).length;
  const whole = fed === courses.length ? 'every course' : fed > 0 ? 'some courses' : 'nothing';
  return { ...coverage, courses, whole: coverage.whole === null ? null : whole };
}
