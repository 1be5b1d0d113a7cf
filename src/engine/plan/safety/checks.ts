import type { Ingredient } from '../../food/ingredient.ts';
import type { TemperatureScale } from '../../measure/temperature.ts';
import { coldRoomCheck, kitchenChecks, thawingCheck } from '../../safety/kitchen-checks.ts';
import { type Delivery, receivingChecks } from '../../safety/receiving-checks.ts';
import { CHECK_STAGES, type SafetyCheck } from '../../safety/safety-check.ts';
import { endChecks, serviceChecks } from '../../safety/service-checks.ts';
import type { EventPlan } from '../event-plan.ts';

/**
 * Everything to measure for an event, in the order of the work: deliveries, thawing, then day by day the cold room,
 * cooking, cooling and heating again, then transport, service and what is left. Suppliers are told by name.
 */
export function safetyChecks(
  plan: EventPlan,
  scale: TemperatureScale,
  supplierName: (id: string) => string,
): SafetyCheck[] {
  const { foodSafety: rules, purchases, recipes, beside, days, input } = plan;
  const cooked = recipes.filter(({ batches }) => batches.n !== 0n);
  const frozen = [
    ...purchases.flatMap(({ ingredient }) => (ingredient.storage === 'frozen' ? [ingredient.name] : [])),
    ...cooked.flatMap(({ recipe }) => (recipe.hold === 'frozen' ? [recipe.name] : [])),
  ];
  const inKitchen = [
    ...days.flatMap(({ daysBefore }) => (daysBefore > 0 ? [coldRoomCheck(daysBefore, rules, scale)] : [])),
    ...cooked.flatMap(({ recipe, batches }) =>
      kitchenChecks({ recipe, batches: Number(batches.ceil().n) }, rules, scale),
    ),
  ];
  const served = new Map(
    [...plan.crewMeals, ...plan.dishes, ...beside].map(({ dish }) => [dish.recipe.id, dish]),
  );
  const atThePlace = [...served.values()].flatMap((dish) =>
    serviceChecks(dish, input.away?.service, rules, scale),
  );
  return [
    ...receivingChecks(deliveries(plan, supplierName), rules, scale),
    ...[thawingCheck(frozen, rules, scale) ?? []].flat(),
    ...inKitchen.sort(byTime),
    ...atThePlace.sort((a, b) => CHECK_STAGES.indexOf(a.stage) - CHECK_STAGES.indexOf(b.stage)),
    ...endChecks(rules, scale),
  ];
}

/** What each supplier brings, by the supplier's name; food of which no pack was found stands alone, at the end, under no id. */
function deliveries({ purchases }: EventPlan, supplierName: (id: string) => string): Delivery[] {
  const bySupplier = new Map<string, Ingredient[]>();
  for (const { ingredient, packs } of purchases) {
    const suppliers = packs.length === 0 ? [''] : [...new Set(packs.map(({ pack }) => pack.supplier))];
    for (const id of suppliers) bySupplier.set(id, [...(bySupplier.get(id) ?? []), ingredient]);
  }
  const unknown = bySupplier.get('') ?? [];
  const known = [...bySupplier].flatMap(([id, foods]) =>
    id === '' ? [] : [{ supplierName: supplierName(id), foods }],
  );
  return [
    ...known.sort(bySupplierName),
    ...(unknown.length === 0 ? [] : [{ supplierName: supplierName(''), foods: unknown }]),
  ];
}

function bySupplierName(a: Delivery, b: Delivery): number {
  return a.supplierName < b.supplierName ? -1 : a.supplierName > b.supplierName ? 1 : 0;
}

/** The earliest day first, what is done at serving last; on one day by stage. Equals keep the order of the recipes. */
function byTime(a: SafetyCheck, b: SafetyCheck): number {
  const days = (b.when?.daysBefore ?? 0) - (a.when?.daysBefore ?? 0);
  const serving = Number(a.when?.atServing ?? false) - Number(b.when?.atServing ?? false);
  return days || serving || CHECK_STAGES.indexOf(a.stage) - CHECK_STAGES.indexOf(b.stage);
}
