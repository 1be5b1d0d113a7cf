import type Fraction from 'fraction.js';
import { allergenText } from '../../engine/food/allergen.ts';
import type { AllergenLaw } from '../../engine/food/allergen-law.ts';
import { declaredNames, outsideLaw } from '../../engine/food/allergen-law.ts';
import type { AllergenSource } from '../../engine/food/allergens-of.ts';
import { printedNumberText } from '../../engine/measure/mixed-number.ts';
import { perGuestText } from '../../engine/measure/per-guest.ts';
import { scaleOf } from '../../engine/measure/temperature.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import { riskSaid } from '../../engine/odds/risk.ts';
import type { PlannedContainer, PlannedDish } from '../../engine/plan/event-plan.ts';
import type { SafetyRules } from '../../engine/safety/limit.ts';
import type { Say } from '../../words/words-in.ts';
import type { PlanContainer, PlanDish } from '../form/food.ts';
import { amountText } from '../words/amount-text.ts';
import { wholePercentOf } from '../words/percent-text.ts';
import type { SayStatement } from '../words/statement-text.ts';
import { planRaw } from './raw.ts';

/** A planned dish as the document says it; `nameOf` turns an id on an allergen's way into a name. */
export function planDish(
  planned: PlannedDish,
  system: MeasureSystem,
  laws: readonly AllergenLaw[],
  nameOf: (id: string) => string,
  rules: SafetyRules,
  inWords: SayStatement,
  say: Say,
): PlanDish {
  const { dish } = planned;
  const raw = planRaw(dish.recipe, rules, scaleOf(system), say, inWords);
  return {
    course: dish.course,
    name: dish.name,
    recipe: dish.recipe.id,
    apartFrom: dish.portions?.apart?.recipe ?? '',
    changes: (dish.portions?.apart?.changes ?? []).map(inWords),
    needs: dish.portions?.needs ?? [],
    counted: numberText(planned.counted),
    perGuest: perGuestText(dish.perGuest),
    overage: overageText(dish, inWords),
    need: amountText(planned.need, system, 'at-least'),
    asMade: amountText(planned.needAsMade, system, 'at-least'),
    contains: allergenNames(planned.contains, laws),
    mayContain: allergenNames(planned.mayContain, laws),
    allergenPaths: waysIn(planned.contains, nameOf),
    mayContainPaths: waysIn(planned.mayContain, nameOf),
    unsaid: planned.unsaid.map(nameOf),
    ...(raw && { raw }),
    diets: planned.diets.map(({ diet, suits, because }) => ({ diet, suits, because: because.map(nameOf) })),
    containers: planned.containers.map((each) => planContainer(each, system, inWords)),
    why: planned.why.map(inWords),
  };
}

/** The extra carried, or the chosen risk that stands in its place. */
function overageText({ overage, demand, takeRate }: PlannedDish['dish'], inWords: SayStatement): string {
  return demand?.helpings !== undefined && takeRate?.shortOneIn !== undefined
    ? inWords(riskSaid(takeRate.shortOneIn))
    : wholePercentOf(overage);
}

function waysIn(sources: readonly AllergenSource[], nameOf: (id: string) => string) {
  return sources.map(({ allergen, paths }) => ({
    allergen: allergenText(allergen),
    paths: paths.map((path) => path.map(nameOf).join(' → ')),
  }));
}

/** Names by law, and after them in their own words what no law of the kitchen's asks for but the facts state. */
export function allergenNames(sources: readonly AllergenSource[], laws: readonly AllergenLaw[]): string[] {
  const allergens = sources.map((source) => source.allergen);
  return [...declaredNames(allergens, laws), ...outsideLaw(allergens, laws).map(allergenText)];
}

/** An exact count for people: `100`, `47½`. Nothing is nought. */
export function numberText(count: Fraction): string {
  return count.n === 0n ? '0' : printedNumberText(count);
}

function planContainer(
  planned: PlannedContainer,
  system: MeasureSystem,
  inWords: SayStatement,
): PlanContainer {
  return {
    stage: planned.stage,
    container: planned.container,
    name: inWords(planned.containerName),
    count: planned.count,
    each: amountText(planned.each, system, 'line'),
    lastFull: wholePercentOf(planned.lastFull),
    why: planned.why.map(inWords),
  };
}
